// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.power.pendulum;

/** The exact effect of a finite arc on a pendulum's period. */
public final class FiniteArc {
    private FiniteArc() {}

    /**
     * Period at a finite arc over the small-arc period, {@code C(A) = 1 / AGM(1, cos(A/2))}, exact.
     *
     * @param semiArc rad, at least 0, less than &pi;
     * @throws IllegalArgumentException if the arc is out of range
     */
    public static double periodRatio(double semiArc) {
        Bounds.atLeast("semiArc", "a pendulum", semiArc, 0, "rad");
        Bounds.lessThan("semiArc", "a pendulum", semiArc, Math.PI, "rad");
        return 1 / agm(1, Math.cos(semiArc / 2));
    }

    /** The arithmetic-geometric mean; each round doubles the digits that agree. */
    private static double agm(double first, double second) {
        double arithmetic = first;
        double geometric = second;
        while (Math.abs(arithmetic - geometric) > 4e-16 * arithmetic) {
            double mean = (arithmetic + geometric) / 2;
            geometric = Math.sqrt(arithmetic * geometric);
            arithmetic = mean;
        }
        return (arithmetic + geometric) / 2;
    }
}
