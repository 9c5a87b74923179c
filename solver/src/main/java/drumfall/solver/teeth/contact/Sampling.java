// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.teeth.contact;

/**
 * How finely a pitch is looked at.
 *
 * @param samples equally spaced driver angles in the result, at least 8
 * @param scan equally spaced angles at which changes of contact are looked for, at least 8
 * @param nodes points per smooth piece of the driver's flank at which a contact is looked for, at least 3
 * @param quadrature Gauss points per smooth stretch of the pitch, 2 to 16
 * @param stretches parts into which each smooth stretch is cut, at least 1
 * @param tolerance width to which a change of contact is located, as a share of the pitch, &gt; 0
 * @param spells whether spells shorter than a scan, in which another pair grazes past, are searched for
 */
public record Sampling(
        int samples, int scan, int nodes, int quadrature, int stretches, double tolerance, boolean spells) {
    /** Worst and mean good to 1e-4. */
    public static final Sampling SWIFT = new Sampling(32, 24, 5, 5, 1, 1e-6, false);

    /** Worst and mean good to 1e-7. */
    public static final Sampling EXACT = new Sampling(128, 64, 9, 10, 2, 1e-12, true);

    /**
     * Checks the counts.
     *
     * @throws IllegalArgumentException if one is out of its range
     */
    public Sampling {
        atLeast("samples", samples, 8);
        atLeast("scan", scan, 8);
        atLeast("nodes", nodes, 3);
        atLeast("quadrature", quadrature, 2);
        atLeast("stretches", stretches, 1);
        if (quadrature > 16) {
            throw new IllegalArgumentException("The quadrature (" + quadrature
                    + ") of a sampling must be at most 16 points. Maybe raise stretches.");
        }
        if (!(tolerance > 0)) {
            throw new IllegalArgumentException(
                    "The tolerance (" + tolerance + ") of a sampling must be above 0 pitches. Maybe take 1e-6.");
        }
    }

    private static void atLeast(String name, int value, int least) {
        if (value < least) {
            throw new IllegalArgumentException("The " + name + " (" + value + ") of a sampling must be at least "
                    + least + ". Maybe take " + least + ".");
        }
    }
}
