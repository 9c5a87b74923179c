// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.fit.shake;

/**
 * The chance that an end shake misses the wanted band.
 *
 * @param below chance of too little
 * @param above chance of too much
 * @param standardError upper bound of the standard error of their sum; 0 if the chance is exact
 * @param exact whether it comes from the exact distribution
 */
public record Chance(double below, double above, double standardError, boolean exact) {
    /** Chance of too little or too much. */
    public double outside() {
        return below + above;
    }
}
