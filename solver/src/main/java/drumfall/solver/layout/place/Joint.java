// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.layout.place;

import drumfall.solver.layout.LayoutNeed;
import drumfall.solver.layout.Place;
import drumfall.solver.layout.size.EscapeSize;
import drumfall.solver.layout.size.MovementParts;
import java.util.ArrayList;
import java.util.List;

/**
 * An arbor and the one, nearer to the dial centre, that it stands at a known distance from.
 *
 * @param arbor its number
 * @param anchor the arbor it stands from; itself for the centre arbor
 * @param mesh the mesh between the two, -1 between escape and pallet arbor and for the centre arbor
 * @param distance nm
 */
record Joint(int arbor, int anchor, int mesh, long distance) {
    /** Every arbor in the order of placing: centre, towards the drum, towards the escape wheel, pallets, minute arbor. */
    static List<Joint> order(LayoutNeed need) {
        MovementParts parts = need.parts();
        int centre = parts.centreArbor();
        List<Joint> joints = new ArrayList<>();
        joints.add(new Joint(centre, centre, -1, 0));
        for (int arbor = centre - 1; arbor >= 0; arbor--) {
            joints.add(new Joint(arbor, arbor + 1, arbor, need.centreDistance(arbor)));
        }
        for (int arbor = centre + 1; arbor <= parts.escapeArbor(); arbor++) {
            joints.add(new Joint(arbor, arbor - 1, arbor - 1, need.centreDistance(arbor - 1)));
        }
        joints.add(new Joint(
                parts.palletArbor(), parts.escapeArbor(), -1, parts.escape().palletDistance()));
        parts.motion()
                .ifPresent(motion -> joints.add(
                        new Joint(parts.minuteArbor(), centre, parts.meshes().size(), motion.centreDistance())));
        return joints;
    }

    /** The distance of two arbors if it is the same in every layout, otherwise -1, nm. */
    static long fixedDistance(LayoutNeed need, int one, int other) {
        return order(need).stream()
                .filter(joint -> joint.joins(one, other))
                .mapToLong(Joint::distance)
                .findFirst()
                .orElse(-1);
    }

    boolean joins(int one, int other) {
        return anchor != arbor && ((one == arbor && other == anchor) || (one == anchor && other == arbor));
    }

    boolean towardsDrum() {
        return arbor < anchor;
    }

    /** The step from the anchor if it is settled by the need alone and not by a place, otherwise null. */
    Place settledStep(LayoutNeed need) {
        if (arbor == anchor) {
            return Place.DIAL_CENTRE;
        }
        if (mesh < 0) {
            EscapeSize escape = need.parts().escape();
            return Place.polar(escape.palletDistance(), escape.palletDirection());
        }
        return need.locks()
                .directionOf(mesh)
                .map(lock -> Place.polar(distance, lock.direction()))
                .map(step -> towardsDrum() ? Place.DIAL_CENTRE.minus(step) : step)
                .orElse(null);
    }
}
