// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.halves;

import drumfall.solver.power.ArborFriction;
import drumfall.solver.power.ArborRole;
import drumfall.solver.power.Criterion;
import drumfall.solver.train.Reeving;

/**
 * Weight as a rising line of the torque on the drum arbor, with the drum's bearings in the middle of their bands.
 *
 * @param running weight when running without any torque, kg
 * @param runningSlope more weight when running for each unit of torque, kg/(N m)
 * @param binding the same for binding
 * @param bindingSlope the same for binding
 */
record DrumLine(double running, double runningSlope, double binding, double bindingSlope) {
    /**
     * The line of a drum.
     *
     * @param rules steps of the walk
     * @param lineArm arm of the line about the axis, m
     * @param mass µg
     * @param reeving how the line carries the weight
     */
    static DrumLine of(HalfRules rules, double lineArm, long mass, Reeving reeving) {
        double running = weight(rules, Criterion.RUNNING, 0, lineArm, mass, reeving);
        double binding = weight(rules, Criterion.BINDING, 0, lineArm, mass, reeving);
        return new DrumLine(
                running,
                weight(rules, Criterion.RUNNING, 1, lineArm, mass, reeving) - running,
                binding,
                weight(rules, Criterion.BINDING, 1, lineArm, mass, reeving) - binding);
    }

    private static double weight(
            HalfRules rules, Criterion criterion, double load, double lineArm, long mass, Reeving reeving) {
        ArborFriction friction = rules.movement.regime(criterion).arbor(ArborRole.DRUM);
        return rules.movement.weightFor(friction.tension(load, lineArm, mass), reeving);
    }

    /**
     * The line behind meshes that pass a torque on without binding.
     *
     * @param constant torque on the drum arbor if the centre needed none, or less, N m
     * @param slope torque on the drum arbor for each unit at the centre, or less
     */
    DrumLine behind(double constant, double slope) {
        return new DrumLine(running + runningSlope * constant, runningSlope * slope, binding, 0);
    }

    /** A line that neither undercuts. */
    DrumLine least(DrumLine other) {
        return new DrumLine(
                Math.min(running, other.running),
                Math.min(runningSlope, other.runningSlope),
                Math.min(binding, other.binding),
                Math.min(bindingSlope, other.bindingSlope));
    }
}
