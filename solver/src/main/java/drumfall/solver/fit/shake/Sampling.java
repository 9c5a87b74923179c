// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.fit.shake;

import drumfall.solver.fit.FitException;

/**
 * How the Monte Carlo sample is drawn.
 *
 * @param seed where the sequence starts; the same seed gives the same sample on every machine
 * @param trials movements to draw, even, 100 to 10 000 000
 * @param antithetic whether every draw is followed by its mirror image, which makes the sampled mean exact
 */
public record Sampling(long seed, int trials, boolean antithetic) {
    private static final int FEWEST = 100;
    private static final int MOST = 10_000_000;

    /**
     * Checks the count.
     *
     * @throws FitException if it is out of range or odd
     */
    public Sampling {
        FitException.requireCount("number of trials", "the sample", trials, FEWEST, MOST);
        if (trials % 2 != 0) {
            throw FitException.refused("number of trials", trials, "the sample", "be even", "take " + (trials + 1));
        }
    }

    /** Draws that are independent of one another. */
    int independent() {
        return antithetic ? trials / 2 : trials;
    }
}
