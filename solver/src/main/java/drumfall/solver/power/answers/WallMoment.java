// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.power.answers;

/**
 * A line that hangs beside the screw turns the clock on its wall: {@code W g x}.
 *
 * @param weight kg
 * @param gravity m/s²
 * @param offset of the line from the plumb line through the screw, m
 */
public record WallMoment(double weight, double gravity, double offset) {
    /** N m. */
    public double moment() {
        return weight * gravity * offset;
    }
}
