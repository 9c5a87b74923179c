// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.power.books;

import drumfall.solver.teeth.EfficiencyCurve;

/**
 * One mesh of a train that runs.
 *
 * @param toothCount teeth of the wheel
 * @param leafCount leaves of the pinion
 * @param curve what it passes over a pitch
 * @param pitchSeconds time of one pitch, s
 */
public record LoadedMesh(int toothCount, int leafCount, EfficiencyCurve curve, double pitchSeconds) {
    /**
     * Torque the pinion is given.
     *
     * @param out torque that the wheel hands on, N m
     * @param passed share of the work that comes through
     * @return N m
     */
    public double given(double out, double passed) {
        return out * leafCount / toothCount * passed;
    }

    /**
     * Torque the wheel must hand on.
     *
     * @param given torque the pinion needs, N m
     * @param passed share of the work that comes through
     * @return N m, or infinity if nothing does
     */
    public double out(double given, double passed) {
        return given * toothCount / (leafCount * passed);
    }

    /**
     * What the pendulum feels of it.
     *
     * @param memory time over which the pendulum averages, s
     */
    public double felt(double memory) {
        return curve.felt(memory / pitchSeconds);
    }
}
