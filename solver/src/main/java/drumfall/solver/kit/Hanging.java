// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.kit;

/**
 * What hangs below the drum's arbor, metres, each at least 0. No brief says where the floor is, so nothing is held against
 * it; the maker compares.
 *
 * @param lead line above the wound weight
 * @param fall of the weight
 * @param shell height of the weight's shell with its lid
 * @param pulley diameter over the pulley's rims, 0 without one
 */
public record Hanging(double lead, double fall, double shell, double pulley) {
    /** From the drum's axis to the lower end of the run-down shell, without the hook that the maker chooses. */
    public double lowest() {
        return lead + fall + pulley + shell;
    }
}
