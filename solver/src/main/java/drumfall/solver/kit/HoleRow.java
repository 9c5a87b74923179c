// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.kit;

import drumfall.solver.fitting.PlateHole;
import java.util.OptionalLong;

/**
 * A hole of a plate with its place; lengths in nm.
 *
 * @param plate which plate
 * @param number in the hole table, from 1 in each plate
 * @param name what it is for, such as {@code arbor 2}
 * @param use what it does
 * @param fromDial from the dial centre to the right, seen from the dial
 * @param aboveDial from the dial centre upwards
 * @param fromLeft from the plate's left edge, seen from the dial
 * @param fromBottom from the plate's lower edge
 * @param drawn diameter to draw and print
 * @param drill the drill that finishes it
 * @param seat drawn diameter of the bearing's seat, if there is one of known size
 * @param seatDrill the tool that finishes the seat; empty without one
 * @param seatDepth depth of the seat, 0 without one
 */
public record HoleRow(
        Plate plate,
        int number,
        String name,
        PlateHole.Use use,
        long fromDial,
        long aboveDial,
        long fromLeft,
        long fromBottom,
        long drawn,
        String drill,
        OptionalLong seat,
        String seatDrill,
        long seatDepth) {
    /** The plates. */
    public enum Plate {
        /** The plate next to the dial. */
        FRONT,
        /** The plate next to the wall. */
        BACK
    }
}
