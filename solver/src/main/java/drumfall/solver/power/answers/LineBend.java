// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.power.answers;

/**
 * A cord bent round a drum or a pulley: fibre cord is content from 4 to 6 of its own diameters, and 6 to 8 are recommended
 * (B. Toss, <i>The Complete Rigger's Apprentice</i>, p. 56).
 *
 * @param diameter of the drum or of the pulley's groove, m
 * @param lineDiameter of the cord, m, positive
 */
public record LineBend(double diameter, double lineDiameter) {
    /** Least recommended diameter in diameters of the cord. */
    public static final double LEAST = 6;

    /** What just fits must not miss by rounding; far below anything that can be made, m. */
    private static final double ROUNDING = 1e-12;

    /** Diameter in diameters of the cord. */
    public double ratio() {
        return diameter / lineDiameter;
    }

    /** Least diameter that is recommended for the cord, m. */
    public double leastDiameter() {
        return LEAST * lineDiameter;
    }

    /** Whether the cord is bent no more than recommended. */
    public boolean gentle() {
        return diameter >= leastDiameter() - ROUNDING;
    }
}
