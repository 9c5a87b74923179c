// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.halves;

/**
 * What a lower half brings to overlaps of neighbouring arbors, as far as the frame's depth makes it matter.
 *
 * @param apart pairs of its own that must not meet, arbors counted from the centre; see
 *     {@link drumfall.solver.layout.place.PlaneRoom}
 * @param centreWheel tip radius of the centre wheel, m; negative infinity if nothing matters
 * @param wheelRoom first centre distance less the radius of the wheel on the arbor after the centre, m; infinite if it
 *     does not matter
 * @param hubRoom the same less the radius of the hub on that arbor, m
 */
record LowerReach(long apart, double centreWheel, double wheelRoom, double hubRoom) {
    /** Nothing matters. */
    static final LowerReach NONE = new LowerReach(0, UpperReach.POINT, UpperReach.FREE, UpperReach.FREE);

    /** Whether this reach serves for every one with a centre wheel no smaller. */
    boolean servesForAll() {
        return apart == 0 && wheelRoom == UpperReach.FREE && hubRoom == UpperReach.FREE;
    }

    /**
     * Whether upper halves that go beside another half with a centre wheel no smaller go beside this one; see
     * {@link UpperReach#servesFor}.
     */
    boolean servesFor(LowerReach other) {
        return (apart & ~other.apart) == 0 && wheelRoom >= other.wheelRoom && hubRoom >= other.hubRoom;
    }

    /** A reach that this and another one serve for. */
    LowerReach worst(LowerReach other) {
        return new LowerReach(
                apart | other.apart,
                Math.max(centreWheel, other.centreWheel),
                Math.min(wheelRoom, other.wheelRoom),
                Math.min(hubRoom, other.hubRoom));
    }
}
