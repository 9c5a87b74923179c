// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.halves;

/**
 * Weight as a rising line of the torque on the drum arbor, with the drum's bearings in the middle of their bands.
 *
 * @param running weight when running without any torque, kg
 * @param runningSlope more weight when running for each unit of torque, kg/(N m)
 * @param binding the same for binding
 * @param bindingSlope the same for binding
 */
record DrumLine(double running, double runningSlope, double binding, double bindingSlope) {
    /** A line that neither undercuts. */
    DrumLine least(DrumLine other) {
        return new DrumLine(
                Math.min(running, other.running),
                Math.min(runningSlope, other.runningSlope),
                Math.min(binding, other.binding),
                Math.min(bindingSlope, other.bindingSlope));
    }
}
