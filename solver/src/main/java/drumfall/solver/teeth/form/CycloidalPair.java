// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.teeth.form;

import drumfall.solver.teeth.flank.ToothLimitException;

/**
 * A wheel and a pinion of the clockmaker's form on the sum of their pitch radii.
 *
 * @param wheel the wheel
 * @param pinion the pinion
 */
public record CycloidalPair(CycloidalWheel wheel, CycloidalPinion pinion) {
    private static final double WHEEL_DEDENDUM = Math.PI / 2;
    private static final double PINION_CLEARANCE = 0.4;
    private static final double FILLET = 0.2;

    /**
     * Checks that the wheel was rolled for the pinion.
     *
     * @throws IllegalArgumentException if the leaf counts differ
     */
    public CycloidalPair {
        if (wheel.leafCount() != pinion.leafCount()) {
            throw new IllegalArgumentException("The leafCount (" + pinion.leafCount()
                    + ") of the pinion must be the one its wheel is rolled for, " + wheel.leafCount()
                    + ". Maybe roll another wheel.");
        }
    }

    /**
     * The customary pair: practical addendum, exact epicycloid, the chart's top for the leaf count.
     *
     * @param toothCount teeth of the wheel
     * @param leafCount leaves of the pinion
     * @throws ToothLimitException if there are too few leaves
     */
    public static CycloidalPair customary(int toothCount, int leafCount) {
        return of(toothCount, leafCount, WheelTop.EPICYCLOID, LeafTop.customary(leafCount));
    }

    /**
     * A pair with chosen tops, the rest customary: wheel teeth half a pitch thick.
     *
     * @param toothCount teeth of the wheel
     * @param leafCount leaves of the pinion
     * @param wheelTop curve of the wheel's addendum
     * @param leafTop top of the leaves
     * @throws ToothLimitException if there are too few leaves
     */
    public static CycloidalPair of(int toothCount, int leafCount, WheelTop wheelTop, LeafTop leafTop) {
        return of(new Proportions(
                toothCount,
                leafCount,
                wheelTop,
                leafTop.addendum(leafCount),
                CycloidalWheel.PRACTICAL,
                Math.PI / 2,
                LeafTop.thickness(leafCount),
                FILLET));
    }

    /**
     * What a maker may choose of a cycloidal pair.
     *
     * @param toothCount teeth of the wheel
     * @param leafCount leaves of the pinion
     * @param wheelTop curve of the wheel's addendum
     * @param leafAddendum height of the leaves' tops, modules
     * @param practical part of the theoretical wheel addendum in use, above 0 to 1
     * @param toothThickness wheel tooth along the pitch circle, modules
     * @param leafThickness leaf along the pitch circle, modules
     * @param fillet radius at both roots, modules
     */
    public record Proportions(
            int toothCount,
            int leafCount,
            WheelTop wheelTop,
            double leafAddendum,
            double practical,
            double toothThickness,
            double leafThickness,
            double fillet) {}

    /**
     * A pair of the given proportions; each root clears the other's tip, the pinion's by 0.4 modules (BS 978-2:1952,
     * from memory), the wheel's by its customary half pitch or 0.4 modules if that is deeper.
     *
     * @param p the proportions
     * @throws ToothLimitException if a tooth cannot be drawn
     */
    public static CycloidalPair of(Proportions p) {
        double addendum = p.practical * CycloidalWheel.theoreticalAddendum(p.toothCount, p.leafCount, p.toothThickness);
        double depth = Math.max(WHEEL_DEDENDUM, p.leafAddendum + PINION_CLEARANCE);
        return new CycloidalPair(
                new CycloidalWheel(p.toothCount, p.leafCount, p.wheelTop, p.toothThickness, addendum, depth, p.fillet),
                new CycloidalPinion(
                        p.leafCount, p.leafThickness, p.leafAddendum, addendum + PINION_CLEARANCE, p.fillet));
    }

    /** The pair with the wheel driving, as in the going train. */
    public MeshPair wheelDriving() {
        return new MeshPair(wheel, pinion, centreDistance());
    }

    /** The pair with the pinion driving, as in the motion work. */
    public MeshPair pinionDriving() {
        return new MeshPair(pinion, wheel, centreDistance());
    }

    private double centreDistance() {
        return wheel.pitchRadius() + pinion.pitchRadius();
    }
}
