// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.halves;

import java.util.Arrays;

/**
 * The best of a group of upper halves, each figure on its own.
 *
 * @param meshes from the drum to the centre
 * @param line weight by the torque at the centre
 * @param carried heaviest least running weight that ratchet and line carry, kg
 * @param sums what the parts add, the drum and the escape wheel among them
 */
record UpperBest(int meshes, DrumLine line, double carried, PartSums sums) {
    private static final int FIGURES = 9;

    /**
     * Number of figures that groups are told apart by.
     *
     * @param modules that the brief has
     */
    static int attributes(int modules) {
        return FIGURES + modules;
    }

    /**
     * Figures that are all nowhere larger if a group is nowhere worse.
     *
     * @param modules that the brief has
     */
    double[] point(int modules) {
        double[] point = Arrays.copyOf(
                new double[] {
                    meshes,
                    -carried,
                    line.binding(),
                    line.bindingSlope(),
                    line.running(),
                    line.runningSlope(),
                    sums.centreDistances(),
                    sums.largestTip(),
                    sums.filament()
                },
                attributes(modules));
        for (int i = 0; i < modules; i++) {
            point[FIGURES + i] = sums.moduleBits() >> i & 1;
        }
        return point;
    }
}
