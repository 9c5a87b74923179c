// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.power;

/**
 * Friction of one arbor in the walk from the escape wheel upwards.
 *
 * <p>With the force arm {@code a} of a mesh, {@code k = slope / a}; an arbor that must hand {@code M_out} to its wheel's
 * mesh needs {@code M_in = (M_out (1 + k_w) + slope · weight + standing) / (1 - k_p)}. The step is split where the
 * wheel's side ends and the pinion's begins, because the search joins partial trains there.
 *
 * @param wheelSlope friction torque for each newton at the wheel, m
 * @param pinionSlope friction torque for each newton at the pinion, or at the drum's line, m
 * @param standing torque that is always there: bearing drag, the rod's weight, the hands on the centre arbor, N m
 * @param gravity m/s&sup2;
 */
public record ArborFriction(double wheelSlope, double pinionSlope, double standing, double gravity) {
    private static final double KILOGRAMS_PER_MICROGRAM = 1e-9;

    /**
     * Torque the arbor needs for what stands on its wheel's side.
     *
     * @param out torque to hand on, {@code M_out}, N m
     * @param wheelArm arm of the wheel's mesh force, m
     * @param wheelMass µg
     */
    public double load(double out, double wheelArm, long wheelMass) {
        return out * (1 + wheelSlope / wheelArm) + (wheelSlope * weight(wheelMass) + standing);
    }

    /**
     * Torque the arbor's pinion must be given.
     *
     * @param load answer of {@link #load}, N m
     * @param pinionArm arm of the pinion's mesh force, m
     * @param pinionMass µg
     * @return N m, or infinity if friction holds the arbor whatever the torque
     */
    public double drive(double load, double pinionArm, long pinionMass) {
        double passed = 1 - pinionSlope / pinionArm;
        return passed > 0 ? (load + pinionSlope * weight(pinionMass)) / passed : Double.POSITIVE_INFINITY;
    }

    /**
     * Tension of the line at the drum.
     *
     * @param load answer of {@link #load} for the great wheel, N m
     * @param lineArm half the effective drum diameter, m
     * @param drumMass µg
     * @return N, or infinity if friction holds the drum whatever the tension
     */
    public double tension(double load, double lineArm, long drumMass) {
        double arm = lineArm - pinionSlope;
        return arm > 0 ? (load + pinionSlope * weight(drumMass)) / arm : Double.POSITIVE_INFINITY;
    }

    private double weight(long micrograms) {
        return micrograms * KILOGRAMS_PER_MICROGRAM * gravity;
    }
}
