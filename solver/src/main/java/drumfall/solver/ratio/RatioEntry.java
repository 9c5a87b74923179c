// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.ratio;

import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * One ratio found, with the trains that give it.
 *
 * @param approximation the ratio and its exact error
 * @param trains the trains, by rising product of leaves, then with the fewest teeth on the smallest wheel first
 * @param allListed whether these are all the trains of this ratio within the bounds of the query
 */
public record RatioEntry(Approximation approximation, List<RatioTrain> trains, boolean allListed) {
    /** Copies the list. */
    public RatioEntry {
        trains = List.copyOf(trains);
    }

    /** The exact ratio, wheels over pinions. */
    public BigFraction ratio() {
        return approximation.ratio();
    }

    /** The ratio less the target, exact. */
    public BigFraction error() {
        return approximation.error();
    }
}
