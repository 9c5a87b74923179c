// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.halves;

/**
 * What an upper half brings to overlaps of neighbouring arbors, as far as the frame's depth makes it matter.
 *
 * @param apart pairs of its own that must not meet, see {@link drumfall.solver.layout.place.PlaneRoom}
 * @param drivenRoom last centre distance less the radius of the pinion, or drum, before the centre, m; infinite if it does
 *     not matter
 * @param hubRoom the same less the radius of the hub before the centre, m
 * @param pinion tip radius of the centre arbor's pinion, m; negative infinity if it does not matter
 * @param hub radius of the centre arbor's hub, m
 */
record UpperReach(long apart, double drivenRoom, double hubRoom, double pinion, double hub) {
    /** Room that nothing is too large for. */
    static final double FREE = Double.POSITIVE_INFINITY;

    /** A radius that is too large for nothing. */
    static final double POINT = Double.NEGATIVE_INFINITY;

    /** Nothing matters. */
    static final UpperReach NONE = new UpperReach(0, FREE, FREE, POINT, POINT);

    /** Whether this reach serves for every one. */
    boolean servesForAll() {
        return apart == 0 && drivenRoom == FREE && hubRoom == FREE && pinion == POINT && hub == POINT;
    }

    /**
     * Whether lower halves that go beside another half go beside this one. What does not matter for this half serves for
     * everything; what does not matter for the other one alone serves for nothing, which loses only a comparison.
     */
    boolean servesFor(UpperReach other) {
        return (apart & ~other.apart) == 0
                && drivenRoom >= other.drivenRoom
                && hubRoom >= other.hubRoom
                && pinion <= other.pinion
                && hub <= other.hub;
    }

    /** A reach that serves for this and another one. */
    UpperReach best(UpperReach other) {
        return new UpperReach(
                apart & other.apart,
                Math.max(drivenRoom, other.drivenRoom),
                Math.max(hubRoom, other.hubRoom),
                Math.min(pinion, other.pinion),
                Math.min(hub, other.hub));
    }
}
