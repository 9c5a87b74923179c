// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.layout;

import drumfall.solver.layout.size.Nanometres;

/**
 * A point of the elevation, seen from the dial.
 *
 * @param x from the dial centre to the right, nm, within a metre
 * @param y from the dial centre upwards, nm, within a metre
 */
public record Place(long x, long y) {
    /** The dial centre. */
    public static final Place DIAL_CENTRE = new Place(0, 0);

    /**
     * Checks that squared distances stay exact.
     *
     * @throws IllegalArgumentException if the point is further than a metre away either way
     */
    public Place {
        if (Math.abs(x) > Nanometres.LONGEST || Math.abs(y) > Nanometres.LONGEST) {
            throw new IllegalArgumentException(
                    "The place (%d nm, %d nm) must be within 1 m of the dial centre. Maybe the unit is not nanometres."
                            .formatted(x, y));
        }
    }

    /**
     * The point at a distance and a direction from the dial centre, to the nearest nanometre.
     *
     * @param distance nm
     * @param direction rad, anticlockwise from the right
     */
    public static Place polar(long distance, double direction) {
        return new Place(Math.round(distance * Math.cos(direction)), Math.round(distance * Math.sin(direction)));
    }

    /** This point moved by another's coordinates. */
    public Place plus(Place step) {
        return new Place(x + step.x, y + step.y);
    }

    /** This point moved back by another's coordinates. */
    public Place minus(Place step) {
        return new Place(x - step.x, y - step.y);
    }

    /** The squared distance to another point, nm&sup2;, exact. */
    public long squaredDistance(Place other) {
        long across = x - other.x;
        long up = y - other.y;
        return across * across + up * up;
    }

    /** The distance to another point, nm. */
    public double distance(Place other) {
        return Math.hypot((double) (x - other.x), (double) (y - other.y));
    }

    /** The direction to another point, rad anticlockwise from the right, from -&pi; to &pi;. */
    public double directionTo(Place other) {
        return Math.atan2((double) (other.y - y), (double) (other.x - x));
    }

    /** This point as seen in a mirror on the dial's vertical. */
    public Place mirrored() {
        return new Place(-x, y);
    }
}
