// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.view.train;

import drumfall.solver.brief.Brief;
import drumfall.solver.power.ArborNeed;
import drumfall.solver.power.PowerPath;
import drumfall.solver.power.pendulum.Pendulum;
import drumfall.solver.rating.Rating;
import drumfall.solver.train.Train;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Power on its way from the weight to the escape wheel while the clock runs at the least weight that keeps its arc.
 *
 * @param weight power the sinking weight gives, {@code W g v}, W
 * @param arbors the arbors from the drum
 * @param pendulum power the pendulum loses, W
 */
record PowerBand(double weight, List<Station> arbors, double pendulum) {
    private static final double SECONDS_PER_HOUR = 3600;

    PowerBand {
        arbors = List.copyOf(arbors);
    }

    /**
     * The power of one arbor.
     *
     * @param torque its wheel hands on, N m
     * @param in power that reaches it, W
     * @param out power its wheel hands on, {@code M ω}, W
     */
    record Station(double torque, double in, double out) {}

    /**
     * The band of a rated train; empty if no weight drives it.
     *
     * @param rating the train and its walk
     * @param brief gives the line's diameter
     */
    static Optional<PowerBand> of(Rating rating, Brief brief) {
        PowerPath path = rating.weight().running();
        return Double.isFinite(path.weight()) ? Optional.of(finite(rating, path, brief)) : Optional.empty();
    }

    private static PowerBand finite(Rating rating, PowerPath path, Brief brief) {
        Train train = rating.train();
        double arm =
                (train.drumDiameter().doubleValue() + brief.line().diameter().si()) / 2;
        double speed = arm * turning(train, 0);
        double sinking = speed / train.reeving().falls();
        List<Station> stations = IntStream.range(0, path.arbors().size())
                .mapToObj(i ->
                        station(path.arbors().get(i), turning(train, i), i == 0 ? path.tension() * arm : Double.NaN))
                .toList();
        return new PowerBand(
                path.weight() * Pendulum.STANDARD_GRAVITY * sinking,
                stations,
                rating.weight().need().pendulumLoss() / train.secondsPerBeat());
    }

    private static Station station(ArborNeed need, double turning, double drumTorque) {
        double in = Double.isNaN(drumTorque) ? need.load() : drumTorque;
        return new Station(need.out(), in * turning, need.out() * turning);
    }

    /** Angular speed of an arbor, rad/s. */
    private static double turning(Train train, int arbor) {
        return 2 * Math.PI / (SECONDS_PER_HOUR * train.hoursPerTurn(arbor));
    }
}
