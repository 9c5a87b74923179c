// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.power;

import drumfall.solver.power.escape.EscapeNeed;

/**
 * The least running weight of a train and how it comes about.
 *
 * @param need of the escape wheel
 * @param running the walk that keeps the arc
 * @param binding the walk that overcomes every mesh at its worst at once
 */
public record WeightFigure(EscapeNeed need, PowerPath running, PowerPath binding) {
    /** The smallest weight that meets both criteria, kg; infinite if none does. */
    public double leastWeight() {
        return Math.max(running.weight(), binding.weight());
    }

    /** The criterion that decides. */
    public Criterion deciding() {
        return running.weight() >= binding.weight() ? Criterion.RUNNING : Criterion.BINDING;
    }
}
