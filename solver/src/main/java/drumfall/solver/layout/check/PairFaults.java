// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.layout.check;

import drumfall.solver.layout.Layout;
import drumfall.solver.layout.PartKind;
import drumfall.solver.layout.Rule;
import drumfall.solver.layout.Shortfall;
import drumfall.solver.layout.size.Gaps;
import drumfall.solver.layout.size.MovementParts;
import java.util.List;

/** Round parts on different arbors, and pillars, that meet along the arbors and are not clear in the elevation. */
final class PairFaults {
    private final Gaps gaps;
    private final MovementParts parts;
    private final List<Body> bodies;
    private final List<Shortfall> faults;

    PairFaults(Layout layout, List<Body> bodies, List<Shortfall> faults) {
        this.gaps = layout.need().gaps();
        this.parts = layout.need().parts();
        this.bodies = bodies;
        this.faults = faults;
    }

    void find() {
        for (int i = 0; i < bodies.size(); i++) {
            for (int j = i + 1; j < bodies.size(); j++) {
                Body first = bodies.get(i);
                Body second = bodies.get(j);
                if (first.arbor() != second.arbor() && !inMesh(first, second) && !inMesh(second, first)) {
                    check(first, second);
                }
            }
        }
    }

    private void check(Body first, Body second) {
        long reach = first.radius() + second.radius();
        long squared = first.place().squaredDistance(second.place());
        if (first.meets(second.span(), gaps.spacing()) && Distances.less(squared, reach + gaps.radial())) {
            long found = Distances.floorRoot(squared) - reach;
            faults.add(Shortfall.between(Rule.RADIAL_GAP, first.part(), second.part(), gaps.radial(), found));
        }
    }

    /** Whether the first is a gear whose mate, or the rod or hub that carries its mate, is the second. */
    private boolean inMesh(Body gear, Body other) {
        return switch (gear.kind()) {
            case WHEEL -> other.arbor() == gear.arbor() + 1 && (other.kind() == PartKind.PINION || carries(other));
            case PINION -> other.arbor() == gear.arbor() - 1 && carries(other);
            case PALLETS ->
                other.arbor() == parts.escapeArbor() && (other.kind() == PartKind.ESCAPE_WHEEL || carries(other));
            case CANNON_PINION ->
                other.is(PartKind.MINUTE_WHEEL, parts.minuteArbor()) || other.is(PartKind.ROD, parts.minuteArbor());
            case HOUR_WHEEL ->
                other.is(PartKind.MINUTE_PINION, parts.minuteArbor()) || other.is(PartKind.ROD, parts.minuteArbor());
            case MINUTE_WHEEL, MINUTE_PINION -> other.is(PartKind.ROD, parts.centreArbor());
            default -> false;
        };
    }

    private static boolean carries(Body body) {
        return body.kind() == PartKind.ROD || body.kind() == PartKind.HUB;
    }
}
