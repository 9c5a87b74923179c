// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.teeth;

/**
 * What the train arithmetic, the parts and the power walk need to know of a pair of teeth; everything is for module 1
 * and scales with the module.
 */
public interface MeshLoss {
    /** What this is, in a few words, shown beside every figure that rests on it. */
    String label();

    /**
     * Efficiency over one pitch, the wheel driving.
     *
     * @param toothCount teeth of the wheel
     * @param leafCount leaves of the pinion
     * @param friction coefficient of friction at the teeth, at least 0
     */
    EfficiencyCurve curve(int toothCount, int leafCount, double friction);

    /**
     * Tip radius of the wheel over the module.
     *
     * @param toothCount teeth of the wheel
     * @param leafCount leaves of the pinion it drives
     */
    double wheelTipRadius(int toothCount, int leafCount);

    /**
     * Tip radius of the pinion over the module.
     *
     * @param toothCount teeth of the wheel that drives it
     * @param leafCount leaves of the pinion
     */
    double pinionTipRadius(int toothCount, int leafCount);

    /**
     * Arm of the normal force about the axis of a gear, over the module.
     *
     * @param count teeth or leaves
     */
    double forceArm(int count);
}
