// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.layout.drag;

import drumfall.solver.layout.DirectionLock;
import drumfall.solver.layout.Layout;
import drumfall.solver.layout.Place;
import drumfall.solver.layout.size.MovementParts;

/**
 * The circle on which an arbor can go about its neighbour towards the dial centre.
 *
 * @param arbor the arbor that goes
 * @param anchor its neighbour
 * @param middle where the neighbour stands
 * @param radius centre distance, nm
 * @param mesh between the two
 */
record Arc(int arbor, int anchor, Place middle, long radius, int mesh) {
    static Arc of(Layout layout, int arbor) {
        MovementParts parts = layout.need().parts();
        int centre = parts.centreArbor();
        boolean minute = parts.motion().isPresent() && arbor == parts.minuteArbor();
        if (arbor < 0 || arbor == centre || (arbor > parts.escapeArbor() && !minute)) {
            throw new IllegalArgumentException(
                    "The drawn arbor (%d) must be in mesh with a neighbour towards the centre arbor (%d). Maybe draw the escape arbor or move the dial."
                            .formatted(arbor, centre));
        }
        int anchor = minute ? centre : arbor < centre ? arbor + 1 : arbor - 1;
        int mesh = minute ? parts.meshes().size() : Math.min(arbor, anchor);
        return new Arc(arbor, anchor, layout.place(anchor), layout.need().centreDistance(mesh), mesh);
    }

    /** The point in a direction from the neighbour, the same as under the lock of that direction. */
    Place at(double angle) {
        Place step = Place.polar(radius, lock(angle).direction());
        return isTowardsDrum() ? middle.minus(step) : middle.plus(step);
    }

    /** The lock of the direction, which runs from the wheel's arbor to the pinion's. */
    DirectionLock lock(double angle) {
        return new DirectionLock(mesh, isTowardsDrum() ? angle + Math.PI : angle);
    }

    private boolean isTowardsDrum() {
        return arbor < anchor;
    }

    double angleTo(Place point) {
        return middle.directionTo(point);
    }
}
