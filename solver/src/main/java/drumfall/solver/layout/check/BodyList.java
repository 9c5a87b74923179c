// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.layout.check;

import drumfall.solver.layout.Layout;
import drumfall.solver.layout.LayoutNeed;
import drumfall.solver.layout.PartKind;
import drumfall.solver.layout.Place;
import drumfall.solver.layout.Span;
import drumfall.solver.layout.size.MotionSize;
import drumfall.solver.layout.size.MovementParts;
import java.util.ArrayList;
import java.util.List;

/** Lists the round parts of a movement from its sizes, kind by kind. */
final class BodyList {
    private final Layout layout;
    private final LayoutNeed need;
    private final MovementParts parts;
    private final List<Body> bodies = new ArrayList<>();

    BodyList(Layout layout) {
        this.layout = layout;
        this.need = layout.need();
        this.parts = need.parts();
    }

    List<Body> all() {
        addMeshes();
        addHubs();
        addRods();
        add(PartKind.DRUM, 0, parts.drum().flangeRadius(), layout.planes().drum());
        Span last = layout.planes().gears().get(parts.meshes().size());
        add(PartKind.ESCAPE_WHEEL, parts.escapeArbor(), parts.escape().wheelTipRadius(), last);
        add(PartKind.PALLETS, parts.palletArbor(), parts.escape().palletRadius(), last);
        parts.motion().ifPresent(this::addMotion);
        addPillars();
        return bodies;
    }

    private void addMeshes() {
        for (int mesh = 0; mesh < parts.meshes().size(); mesh++) {
            Span plane = layout.planes().gears().get(mesh);
            add(PartKind.WHEEL, mesh, parts.meshes().get(mesh).wheelTipRadius(), plane);
            add(PartKind.PINION, mesh + 1, parts.meshes().get(mesh).pinionTipRadius(), plane);
        }
    }

    private void addHubs() {
        List<Span> gears = layout.planes().gears();
        for (int arbor = 1; arbor <= parts.escapeArbor(); arbor++) {
            Span pinion = gears.get(arbor - 1);
            Span wheel = gears.get(arbor);
            long rear = Math.min(pinion.to(), wheel.to());
            long front = Math.max(pinion.from(), wheel.from());
            add(PartKind.HUB, arbor, parts.arbors().get(arbor).hubRadius(), new Span(rear, front));
        }
    }

    private void addRods() {
        long plate = need.envelope().plateThickness();
        Span plates = new Span(-plate, layout.planes().innerDepth() + plate);
        for (int arbor = 0; arbor <= parts.escapeArbor(); arbor++) {
            boolean front =
                    arbor == parts.centreArbor() || parts.arbors().get(arbor).reachesFront();
            Span span = front ? new Span(-plate, Math.max(plates.to(), lastMotion())) : plates;
            add(PartKind.ROD, arbor, parts.arbors().get(arbor).rodRadius(), span);
        }
        add(PartKind.ROD, parts.palletArbor(), parts.escape().palletRodRadius(), plates);
    }

    private long lastMotion() {
        return layout.planes().motion().stream().mapToLong(Span::to).max().orElse(0);
    }

    private void addMotion(MotionSize motion) {
        Span first = layout.planes().motion().get(0);
        Span second = layout.planes().motion().get(1);
        Span spaced = new Span(first.from(), Math.max(first.to(), second.from()));
        add(PartKind.CANNON_PINION, parts.centreArbor(), motion.cannonTipRadius(), spaced);
        add(PartKind.MINUTE_WHEEL, parts.minuteArbor(), motion.minuteWheelTipRadius(), first);
        add(PartKind.HOUR_WHEEL, parts.centreArbor(), motion.hourWheelTipRadius(), second);
        // The leaves of the minute pinion go back to its wheel, and the hour wheel's spacer stands on the cannon
        // pinion.
        Span leaves = new Span(Math.min(first.to(), second.to()), second.to());
        add(PartKind.MINUTE_PINION, parts.minuteArbor(), motion.minutePinionTipRadius(), leaves);
        Span stud = new Span(Math.min(layout.planes().innerDepth(), lastMotion()), lastMotion());
        add(PartKind.ROD, parts.minuteArbor(), motion.studRadius(), stud);
    }

    private void addPillars() {
        long plate = need.envelope().plateThickness();
        Span span = new Span(-plate, layout.planes().innerDepth() + plate);
        List<Place> corners = layout.pillarPlaces();
        for (int corner = 0; corner < corners.size(); corner++) {
            long radius = need.envelope().pillars().orElseThrow().radius();
            bodies.add(Body.pillar(corner, corners.get(corner), radius, span));
        }
    }

    private void add(PartKind kind, int arbor, long radius, Span span) {
        bodies.add(Body.onArbor(kind, arbor, layout.place(arbor), radius, span));
    }
}
