// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.power.answers;

/**
 * Bending of a round rod whose loads stand anywhere between its supports: the most that any places can give.
 *
 * <p>One force bends most in the middle, {@code F l / 4}; it tilts a support most from {@code 0.4226 l}, by
 * {@code F l² / (9 √3 E I)}, and no place tilts more. Several forces bend no more than their sum at the worst place.
 *
 * @param load sum of the forces' sizes, N
 * @param span between the supports, m, positive
 * @param diameter m, positive
 * @param modulus of elasticity, Pa, positive
 */
public record RodBound(double load, double span, double diameter, double modulus) {
    /** Modulus of elasticity of steel, Pa; from memory, 200 to 210 GPa in handbooks. */
    public static final double STEEL = 200e9;

    /** Greatest bending stress, Pa: {@code 8 F l / (π d³)}. */
    public double stress() {
        return 8 * load * span / (Math.PI * diameter * diameter * diameter);
    }

    /** Greatest slope anywhere between the supports, rad. */
    public double slope() {
        double inertia = Math.PI * Math.pow(diameter, 4) / 64;
        return load * span * span / (9 * Math.sqrt(3) * modulus * inertia);
    }
}
