// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.teeth.form;

/**
 * The customary rounded tops of cycloidal leaves, with their addenda.
 *
 * <p>Addenda of BS 978-2:1952, profiles A, B and C (from memory; the ogive of narrow leaves and the one-third ogive of
 * wide ones agree with P. P. Thornton's chart of addendum allowances, 1.71 and 1.61 added to the leaf count).
 */
public enum LeafTop {
    /** A half circle. */
    ROUND(0.525, 0.625),
    /** An ogive of one third more than the leaf's half. */
    SEMI_OGIVE(0.670, 0.805),
    /** A full ogive. */
    OGIVE(0.855, 1.05);

    /** The largest leaf count with the narrow leaf, tooth to space one to two. */
    public static final int MOST_NARROW = 9;

    private final double narrow;
    private final double wide;

    LeafTop(double narrow, double wide) {
        this.narrow = narrow;
        this.wide = wide;
    }

    /**
     * The addendum, modules.
     *
     * @param leafCount number of leaves
     */
    public double addendum(int leafCount) {
        return leafCount <= MOST_NARROW ? narrow : wide;
    }

    /**
     * The leaf's thickness along the pitch circle, modules: tooth to space one to two up to nine leaves, two to three
     * from ten (Thornton's chart, which gives 6, 7, 8 and 10, 12, 16; nine is put with eight).
     *
     * @param leafCount number of leaves
     */
    public static double thickness(int leafCount) {
        return leafCount <= MOST_NARROW ? Math.PI / 3 : 2 * Math.PI / 5;
    }

    /**
     * The top of Thornton's chart: ogive up to nine leaves, one-third ogive from ten.
     *
     * @param leafCount number of leaves
     */
    public static LeafTop customary(int leafCount) {
        return leafCount <= MOST_NARROW ? OGIVE : SEMI_OGIVE;
    }
}
