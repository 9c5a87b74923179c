// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.layout.check;

import drumfall.solver.layout.Layout;
import drumfall.solver.layout.LayoutNeed;
import drumfall.solver.layout.Part;
import drumfall.solver.layout.PartKind;
import drumfall.solver.layout.Planes;
import drumfall.solver.layout.Rule;
import drumfall.solver.layout.Shortfall;
import drumfall.solver.layout.Span;
import drumfall.solver.layout.size.DrumSize;
import drumfall.solver.layout.size.Face;
import drumfall.solver.layout.size.MotionSize;
import drumfall.solver.layout.size.MovementParts;
import java.util.List;

/** Planes too thin, too close to the plates, out of the depth, or a drum without room for its click. */
final class PlaneFaults {
    private final LayoutNeed need;
    private final MovementParts parts;
    private final Planes planes;
    private final List<Shortfall> faults;

    PlaneFaults(Layout layout, List<Shortfall> faults) {
        this.need = layout.need();
        this.parts = need.parts();
        this.planes = layout.planes();
        this.faults = faults;
    }

    void find() {
        for (int mesh = 0; mesh < parts.meshes().size(); mesh++) {
            Part wheel = new Part(PartKind.WHEEL, mesh);
            checkPlane(wheel, planes.gears().get(mesh), parts.meshes().get(mesh).planeThickness());
        }
        Part escape = new Part(PartKind.ESCAPE_WHEEL, parts.escapeArbor());
        checkPlane(
                escape,
                planes.gears().get(parts.meshes().size()),
                parts.escape().thickness());
        checkDrum();
        parts.motion().ifPresent(this::checkMotion);
        checkDepth();
    }

    private void checkDrum() {
        DrumSize size = parts.drum();
        Part drum = new Part(PartKind.DRUM, 0);
        checkPlane(drum, planes.drum(), size.length());
        Span great = planes.gears().get(0);
        long between = size.face() == Face.FRONT
                ? planes.drum().from() - great.to()
                : great.from() - planes.drum().to();
        checkApart(new Part(PartKind.WHEEL, 0), drum, size.clickSpace(), between);
    }

    private void checkMotion(MotionSize motion) {
        Part cannon = new Part(PartKind.CANNON_PINION, parts.centreArbor());
        Part hour = new Part(PartKind.HOUR_WHEEL, parts.centreArbor());
        Span first = planes.motion().get(0);
        Span second = planes.motion().get(1);
        checkThickness(cannon, first, motion.firstThickness());
        checkThickness(hour, second, motion.secondThickness());
        long plate = planes.innerDepth() + need.envelope().plateThickness();
        checkApart(cannon, cannon, need.gaps().spacing(), first.from() - plate);
        checkApart(cannon, hour, need.gaps().spacing(), second.from() - first.to());
    }

    private void checkDepth() {
        long plate = need.envelope().plateThickness();
        long front = parts.motion().isPresent()
                ? planes.motion().get(1).to() + need.gaps().axial()
                : planes.innerDepth() + plate;
        Part deepest = new Part(PartKind.DRUM, 0);
        if (planes.depth() < front + plate) {
            faults.add(Shortfall.of(Rule.STATED_DEPTH, deepest, planes.depth(), front + plate));
        }
        long needed = Math.max(planes.depth(), front + plate);
        if (needed > need.envelope().depth()) {
            faults.add(Shortfall.of(Rule.DEPTH, deepest, need.envelope().depth(), needed));
        }
    }

    /** The plane is thick enough and clear of both plates, with every arbor at either end of its shake. */
    private void checkPlane(Part part, Span plane, long thickness) {
        checkThickness(part, plane, thickness);
        checkApart(part, part, need.gaps().axial(), plane.from());
        checkApart(part, part, need.gaps().spacing(), planes.innerDepth() - plane.to());
    }

    private void checkThickness(Part part, Span plane, long asked) {
        if (plane.length() < asked) {
            faults.add(Shortfall.of(Rule.PLANE_THICKNESS, part, asked, plane.length()));
        }
    }

    private void checkApart(Part first, Part second, long asked, long found) {
        if (found < asked) {
            faults.add(
                    first.equals(second)
                            ? Shortfall.of(Rule.AXIAL_GAP, first, asked, found)
                            : Shortfall.between(Rule.AXIAL_GAP, first, second, asked, found));
        }
    }
}
