// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.layout.size;

/**
 * The line from drum to weight and the path in which the weight hangs.
 *
 * @param diameter of the line, nm, positive
 * @param drumRadius from the drum's axis to the middle of the line, half the effective diameter, nm, positive
 * @param side on which the line leaves the drum
 * @param returnDistance from the fall that leaves the drum outwards to the fall that returns to a fixed point at the
 *     height of the drum arbor, nm; 0 for a line of one fall
 * @param weightWidth width of the weight with its pulley, nm, positive
 * @param weightDrop from the drum's axis down to the top of the wound weight, nm, not negative
 */
public record HangingLine(
        long diameter, long drumRadius, Side side, long returnDistance, long weightWidth, long weightDrop) {
    /**
     * Checks the lengths.
     *
     * @throws IllegalArgumentException if a length is out of range
     */
    public HangingLine {
        Nanometres.positive("line diameter", diameter);
        Nanometres.positive("radius of the line on the drum", drumRadius);
        Nanometres.notNegative("distance of the returning fall", returnDistance);
        Nanometres.positive("weight width", weightWidth);
        Nanometres.notNegative("weight drop", weightDrop);
    }

    /** The number of falls, 1 or 2. */
    public int falls() {
        return returnDistance == 0 ? 1 : 2;
    }

    /** From the drum's axis to the fall that leaves the drum, nm, positive to the right. */
    public long firstFall() {
        return side.sign() * drumRadius;
    }

    /** From the drum's axis to the outermost fall, nm, positive to the right. */
    public long lastFall() {
        return side.sign() * (drumRadius + returnDistance);
    }

    /** From the drum's axis to the middle of the weight, nm, positive to the right; rounded towards the drum. */
    public long weightMiddle() {
        return side.sign() * (drumRadius + returnDistance / 2);
    }

    /** The line as seen in a mirror: from the other side of the drum. */
    public HangingLine mirrored() {
        return new HangingLine(diameter, drumRadius, side.mirrored(), returnDistance, weightWidth, weightDrop);
    }
}
