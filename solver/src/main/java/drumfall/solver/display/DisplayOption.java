// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.display;

import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * One speed that a display can be given, with the trains that give it.
 *
 * @param turns turns of the display for one turn of the arbor, exact
 * @param error how far the display goes wrong
 * @param trains at least one
 * @param allListed whether these are all the trains asked for of this speed
 */
public record DisplayOption(BigFraction turns, DisplayError error, List<DisplayTrain> trains, boolean allListed) {
    /** Copies the list. */
    public DisplayOption {
        trains = List.copyOf(trains);
    }

    /** Seconds of one turn of the display, exact. */
    public BigFraction secondsPerTurn() {
        return error.secondsPerTurn();
    }
}
