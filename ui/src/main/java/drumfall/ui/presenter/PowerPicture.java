// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.presenter;

import drumfall.solver.power.answers.ArcCurve;
import drumfall.solver.power.answers.Coasting;
import drumfall.solver.power.answers.FreeSpin;
import drumfall.solver.power.answers.RatchetHold;
import drumfall.solver.power.books.PowerBooks;
import java.util.List;
import java.util.Optional;

/**
 * The power of a train at a setting.
 *
 * @param setting weight, friction and quality
 * @param least least running weight at this friction and quality, kg; infinite if none drives the train
 * @param recommended the same with its reserve, kg
 * @param escapeAngle arc at which a tooth escapes, rad
 * @param books where the power goes; empty under the least weight
 * @param curve arc against weight, from the escape angle on, the weights rising; empty if no weight reaches it
 * @param steps the way of the power; empty without books
 * @param coasting how long the clock goes on while it is wound; empty without books
 * @param spins how long each arbor by itself spins, from the drum
 * @param ratchet ratchet and click with the weight at rest; empty if the click does not rest on the teeth
 */
public record PowerPicture(
        PowerSetting setting,
        double least,
        double recommended,
        double escapeAngle,
        Optional<PowerBooks> books,
        List<ArcCurve.Point> curve,
        List<PowerStep> steps,
        Optional<Coasting> coasting,
        List<FreeSpin> spins,
        Optional<RatchetHold> ratchet) {
    /** Copies the lists. */
    public PowerPicture {
        curve = List.copyOf(curve);
        steps = List.copyOf(steps);
        spins = List.copyOf(spins);
    }

    /** Share of the weight's power that the pendulum gets. */
    public double delivered() {
        return steps.stream()
                .filter(PowerStep::arrives)
                .mapToDouble(PowerStep::share)
                .sum();
    }
}
