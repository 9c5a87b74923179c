// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.halves;

/**
 * The best of a group of upper halves, each figure on its own.
 *
 * @param meshes from the drum to the centre
 * @param line weight by the torque at the centre
 * @param carried heaviest least running weight that ratchet and line carry, kg
 * @param sums what the parts add, the drum and the escape wheel among them
 */
record UpperBest(int meshes, DrumLine line, double carried, PartSums sums) {
    /** Whether this is nowhere worse. */
    boolean covers(UpperBest other) {
        return line.running() <= other.line.running()
                && line.runningSlope() <= other.line.runningSlope()
                && sums.filament() <= other.sums.filament()
                && sums.largestTip() <= other.sums.largestTip()
                && sums.centreDistances() <= other.sums.centreDistances()
                && meshes <= other.meshes
                && line.binding() <= other.line.binding()
                && line.bindingSlope() <= other.line.bindingSlope()
                && carried >= other.carried
                && (sums.moduleBits() & ~other.sums.moduleBits()) == 0;
    }
}
