// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.layout.check;

import drumfall.solver.layout.DirectionLock;
import drumfall.solver.layout.Layout;
import drumfall.solver.layout.LayoutNeed;
import drumfall.solver.layout.Part;
import drumfall.solver.layout.PartKind;
import drumfall.solver.layout.Place;
import drumfall.solver.layout.PlaceLock;
import drumfall.solver.layout.Rule;
import drumfall.solver.layout.Shortfall;
import drumfall.solver.layout.size.EscapeSize;
import drumfall.solver.layout.size.MovementParts;
import java.util.List;

/** Arbors off their centre distances, off the dial centre or off their locks. */
final class PlaceFaults {
    /** A micrometre: what centre distances are held to. */
    private static final double TOLERANCE = 1_000;

    private final Layout layout;
    private final LayoutNeed need;
    private final MovementParts parts;
    private final List<Shortfall> faults;

    PlaceFaults(Layout layout, List<Shortfall> faults) {
        this.layout = layout;
        this.need = layout.need();
        this.parts = need.parts();
        this.faults = faults;
    }

    void find() {
        for (int mesh = 0; mesh < parts.meshes().size(); mesh++) {
            Part wheel = new Part(PartKind.WHEEL, mesh);
            Part pinion = new Part(PartKind.PINION, mesh + 1);
            checkDistance(wheel, pinion, parts.meshes().get(mesh).centreDistance());
        }
        parts.motion().ifPresent(motion -> {
            Part cannon = new Part(PartKind.CANNON_PINION, parts.centreArbor());
            checkDistance(cannon, new Part(PartKind.MINUTE_WHEEL, parts.minuteArbor()), motion.centreDistance());
        });
        checkPallets();
        checkCentre();
        need.locks().places().forEach(this::checkPlaceLock);
        need.locks().directions().forEach(this::checkDirectionLock);
    }

    private void checkDistance(Part wheel, Part pinion, long asked) {
        double found = layout.place(wheel.number()).distance(layout.place(pinion.number()));
        if (Math.abs(found - asked) > TOLERANCE) {
            faults.add(Shortfall.between(Rule.CENTRE_DISTANCE, wheel, pinion, asked, Math.round(found)));
        }
    }

    private void checkPallets() {
        EscapeSize escape = parts.escape();
        Place asked = away(parts.escapeArbor(), escape.palletDistance(), escape.palletDirection());
        double off = asked.distance(layout.palletPlace());
        if (off > TOLERANCE) {
            Part pallets = new Part(PartKind.PALLETS, parts.palletArbor());
            Part wheel = new Part(PartKind.ESCAPE_WHEEL, parts.escapeArbor());
            faults.add(Shortfall.between(Rule.PALLET_PLACE, wheel, pallets, 0, Math.round(off)));
        }
    }

    private void checkCentre() {
        Place centre = layout.place(parts.centreArbor());
        checkCentreWay(0, Math.max(Math.abs(centre.x()), Math.abs(centre.y())));
        need.envelope()
                .dialPlace()
                .fromLeft()
                .ifPresent(asked -> checkCentreWay(asked, -layout.frameCorner().x()));
        need.envelope()
                .dialPlace()
                .fromBottom()
                .ifPresent(asked -> checkCentreWay(asked, -layout.frameCorner().y()));
    }

    private void checkCentreWay(long asked, long found) {
        if (asked != found) {
            faults.add(Shortfall.of(Rule.DIAL_CENTRE, new Part(PartKind.ROD, parts.centreArbor()), asked, found));
        }
    }

    private void checkPlaceLock(PlaceLock lock) {
        if (!layout.place(lock.arbor()).equals(lock.place())) {
            double off = layout.place(lock.arbor()).distance(lock.place());
            faults.add(Shortfall.of(Rule.LOCKED_PLACE, new Part(PartKind.ROD, lock.arbor()), 0, Math.round(off)));
        }
    }

    private void checkDirectionLock(DirectionLock lock) {
        boolean motion = lock.mesh() == parts.meshes().size();
        int from = motion ? parts.centreArbor() : lock.mesh();
        int to = motion ? parts.minuteArbor() : lock.mesh() + 1;
        Place asked = away(from, need.centreDistance(lock.mesh()), lock.direction());
        double off = asked.distance(layout.place(to));
        if (off > TOLERANCE) {
            Part first = new Part(PartKind.ROD, from);
            Part second = new Part(PartKind.ROD, to);
            faults.add(Shortfall.between(Rule.LOCKED_DIRECTION, first, second, 0, Math.round(off)));
        }
    }

    private Place away(int arbor, long distance, double direction) {
        Place from = layout.place(arbor);
        return new Place(
                from.x() + Math.round(distance * Math.cos(direction)),
                from.y() + Math.round(distance * Math.sin(direction)));
    }
}
