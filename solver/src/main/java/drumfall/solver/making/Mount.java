// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.making;

import drumfall.solver.layout.size.Face;
import drumfall.solver.teeth.outline.Point;
import java.util.List;
import java.util.OptionalInt;

/**
 * How a printed part stands in the clock. A part that faces the dial stands as it lay on the bed, seen from before the
 * clock; one that faces the back plate has been turned over about its vertical axis.
 *
 * @param arbor number of the train's arbor that it stands on, from 0 at the drum, if it does
 * @param up which way the side that lies up on the bed faces; the front for a part that may face either way
 * @param stances where it stands, once for each of it; none if that is not known, or it hangs outside the frame
 */
public record Mount(OptionalInt arbor, Face up, List<Stance> stances) {
    /** Outside the frame, or facing either way. */
    public static final Mount LOOSE = new Mount(OptionalInt.empty(), Face.FRONT, List.of());

    /** Copies the list. */
    public Mount {
        stances = List.copyOf(stances);
    }

    /**
     * A place in the frame.
     *
     * @param x of its axis, m to the right of the plates' middle, seen from the dial
     * @param y of its axis, m above the plates' middle
     * @param bed of the side that lay on the bed, m before the back plate's inner face
     */
    public record Stance(double x, double y, double bed) {}

    private int sign() {
        return up == Face.FRONT ? 1 : -1;
    }

    /**
     * Where a point of the part stands, mm from its axis to the right and upwards, seen from the dial.
     *
     * @param onBed the point as it lay on the bed, mm
     */
    public Point turned(Point onBed) {
        return new Point(sign() * onBed.x(), onBed.y());
    }

    /**
     * Whether the part, as it lies on the bed, turns clockwise.
     *
     * @param inClock whether it does so in the clock, seen from the dial
     * @param up which way the side that lies up on the bed faces
     */
    public static boolean clockwiseOnBed(boolean inClock, Face up) {
        return inClock == (up == Face.FRONT);
    }

    /**
     * Its rear end, m before the back plate's inner face.
     *
     * @param stance one of its places
     * @param height of the part, m
     */
    public double rear(Stance stance, double height) {
        return up == Face.FRONT ? stance.bed() : stance.bed() - height;
    }

    /**
     * Its front end, m before the back plate's inner face.
     *
     * @param stance one of its places
     * @param height of the part, m
     */
    public double front(Stance stance, double height) {
        return rear(stance, height) + height;
    }
}
