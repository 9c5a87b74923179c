// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.train;

import drumfall.solver.ratio.WheelAndPinion;

/**
 * One mesh with its size.
 *
 * @param counts wheel and pinion
 * @param module the module both share
 */
public record Mesh(WheelAndPinion counts, ToothModule module) {
    /**
     * A mesh from its three numbers.
     *
     * @param toothCount teeth of the wheel
     * @param leafCount leaves of the pinion
     * @param module the module
     */
    public static Mesh of(int toothCount, int leafCount, ToothModule module) {
        return new Mesh(new WheelAndPinion(toothCount, leafCount), module);
    }

    /** Teeth of the wheel. */
    public int toothCount() {
        return counts.toothCount();
    }

    /** Leaves of the pinion. */
    public int leafCount() {
        return counts.leafCount();
    }

    /** Depthing {@code a = m (z + p) / 2} in metres. */
    public double centreDistance() {
        return module.metres() * (counts.toothCount() + counts.leafCount()) / 2;
    }

    /** Counts and module, for example {@code 64/8 m1.25}. */
    @Override
    public String toString() {
        return counts + " m" + module;
    }
}
