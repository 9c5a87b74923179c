// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.power.answers;

import drumfall.solver.power.pendulum.Bounds;

/**
 * One click that holds the drum against the whole pull of the line by one tooth of the ratchet.
 *
 * <p>The moments about the drum give the force, {@code F = S r_l / r}. The tooth is a beam held at its root and loaded where
 * the click bears, the step from which the Lewis equation starts (Shigley, <i>Mechanical Engineering Design</i>, ch. 14;
 * from memory); the click's pin is sheared through once. The force is taken square to the tooth and none is shared.
 *
 * @param pull of the line at the drum, {@code S}, N, not negative
 * @param lineArm {@code r_l}, m, positive
 * @param contactRadius from the ratchet's axis to where the click bears, {@code r}, m, positive
 * @param contactHeight from the root to there, {@code h}, m, positive
 * @param rootThickness of the tooth, {@code t}, m, positive
 * @param width common to ratchet and click, {@code b}, m, positive
 * @param pinDiameter of the click's pin, {@code d}, m, positive
 */
public record RatchetHold(
        double pull,
        double lineArm,
        double contactRadius,
        double contactHeight,
        double rootThickness,
        double width,
        double pinDiameter) {
    /**
     * Checks the sizes.
     *
     * @throws IllegalArgumentException if one is out of its range
     */
    public RatchetHold {
        Bounds.atLeast("pull", "the line", pull, 0, "N");
        Bounds.moreThan("lineArm", "the drum", lineArm, 0, "m");
        Bounds.moreThan("contactRadius", "the ratchet", contactRadius, 0, "m");
        Bounds.moreThan("contactHeight", "the ratchet", contactHeight, 0, "m");
        Bounds.moreThan("rootThickness", "a ratchet tooth", rootThickness, 0, "m");
        Bounds.moreThan("width", "ratchet and click", width, 0, "m");
        Bounds.moreThan("pinDiameter", "the click", pinDiameter, 0, "m");
    }

    /** Force between click and tooth, N. */
    public double force() {
        return pull * lineArm / contactRadius;
    }

    /** Greatest bending stress at the tooth's root, {@code 6 F h / (b t²)}, Pa. */
    public double toothBending() {
        return 6 * force() * contactHeight / (width * rootThickness * rootThickness);
    }

    /** Mean shear stress in the click's pin, {@code 4 F / (π d²)}, Pa. */
    public double pinShear() {
        return 4 * force() / (Math.PI * pinDiameter * pinDiameter);
    }

    /**
     * Least thickness of the tooth at its root for a stress that may be let stand, {@code √(6 F h / (b σ))}, m.
     *
     * @param allowable stress, Pa, positive
     * @throws IllegalArgumentException if the stress is out of its range
     */
    public double leastRootThickness(double allowable) {
        Bounds.moreThan("allowable", "the ratchet", allowable, 0, "Pa");
        return Math.sqrt(6 * force() * contactHeight / (width * allowable));
    }
}
