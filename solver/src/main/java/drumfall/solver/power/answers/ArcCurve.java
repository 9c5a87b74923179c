// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.power.answers;

import drumfall.solver.power.books.BookKeeper;
import drumfall.solver.power.books.LoadedClock;
import drumfall.solver.power.escape.Deadbeat;
import drumfall.solver.power.escape.HeldArc;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;

/**
 * The arc that a clock keeps under each weight, at the worst the pendulum ever feels and on the mean.
 *
 * <p>The worst arc is the walk to the weight turned round: the weight that keeps an arc rises with the arc, so halving finds
 * the arc of a weight. At the running weight it is the arc asked for.
 */
public final class ArcCurve {
    private static final int HALVINGS = 60;

    private final LoadedClock clock;
    private final BookKeeper keeper;
    private final Deadbeat escapement;
    private final double heaviest;

    /**
     * The curve of a clock.
     *
     * @param clock the clock
     * @param heaviest heaviest weight that may be hung, kg, which is proposed where too much arc is asked for
     */
    public ArcCurve(LoadedClock clock, double heaviest) {
        this.clock = clock;
        this.keeper = new BookKeeper(clock);
        this.escapement = clock.movement().escapement().with(clock.train().escapeTeeth());
        this.heaviest = heaviest;
    }

    /**
     * One weight and its arcs.
     *
     * @param weight kg
     * @param worstArc least arc, rad; empty if the escapement stops at times
     * @param meanArc arc on the mean, rad; empty if the escapement stops
     */
    public record Point(double weight, OptionalDouble worstArc, OptionalDouble meanArc) {}

    /** The arc that no weight reaches, rad; 0 if there is no such escapement. */
    public double saturationArc() {
        return escapement.exists() ? escapement.saturationArc() : 0;
    }

    /**
     * Weights at equal steps with their arcs.
     *
     * @param from kg
     * @param to kg
     * @param count at least 2
     */
    public List<Point> points(double from, double to, int count) {
        return IntStream.range(0, count)
                .mapToObj(i -> point(from + (to - from) * i / (count - 1)))
                .toList();
    }

    private Point point(double weight) {
        return new Point(weight, worstArcUnder(weight), keeper.arcUnder(weight));
    }

    /**
     * The weight that keeps an arc at the worst that the pendulum ever feels.
     *
     * @param semiArc rad, from the escape angle to less than the arc that no weight exceeds
     * @return kg
     * @throws IllegalArgumentException if the arc is out of range
     */
    public double weightKeeping(double semiArc) {
        double least = escapement.form().escapeAngle();
        double most = saturationArc();
        if (!(semiArc >= least)) {
            throw new IllegalArgumentException(
                    "The semiArc (%.4f rad) must be at least %.4f rad, where a tooth escapes. Maybe ask for %.4f rad."
                            .formatted(semiArc, least, least));
        }
        if (!(semiArc < most)) {
            throw new IllegalArgumentException(
                    "The semiArc (%.4f rad) must be less than %.4f rad, which no weight exceeds. %s"
                            .formatted(semiArc, most, nearest()));
        }
        return weight(semiArc);
    }

    private String nearest() {
        OptionalDouble arc = worstArcUnder(heaviest);
        return arc.isPresent()
                ? "Maybe ask for %.4f rad, which %.4g kg keep.".formatted(arc.getAsDouble(), heaviest)
                : "Maybe give the pallets less friction or more lift.";
    }

    /**
     * The least arc under a weight.
     *
     * @param weight kg
     * @return rad; empty if the weight does not keep even the escape angle at all times
     */
    public OptionalDouble worstArcUnder(double weight) {
        double low = escapement.form().escapeAngle();
        if (!escapement.exists() || !(weight(low) <= weight)) {
            return OptionalDouble.empty();
        }
        double high = escapement.saturationArc();
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (low + high) / 2;
            if (weight(middle) <= weight) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return OptionalDouble.of(low);
    }

    private double weight(double semiArc) {
        double reserve = semiArc - escapement.form().escapeAngle();
        HeldArc held = new HeldArc(escapement, clock.movement().pendulum(), reserve);
        return clock.weightKeeping(held.need(clock.train().secondsPerBeat()));
    }
}
