// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.power.answers;

import drumfall.solver.train.Reeving;

/**
 * The key that winds the drum: line tension {@code W g}, or through a pulley {@code W g / (1 + η)}, since the fall that is
 * pulled is then the tighter one; times {@code (D + u) / 2}. The drum's own friction is not in it.
 *
 * @param weight kg
 * @param gravity m/s²
 * @param reeving how the line carries the weight
 * @param pulleyEfficiency {@code η}, more than 0, at most 1
 * @param lineArm half the effective drum diameter, m
 */
public record Winding(double weight, double gravity, Reeving reeving, double pulleyEfficiency, double lineArm) {
    /** Tension of the line at the drum while winding, N. */
    public double tension() {
        double pull = weight * gravity;
        return reeving == Reeving.SINGLE ? pull : pull / (1 + pulleyEfficiency);
    }

    /** Torque at the key, N m. */
    public double torque() {
        return tension() * lineArm;
    }
}
