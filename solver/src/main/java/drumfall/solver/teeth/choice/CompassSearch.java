// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.teeth.choice;

import java.util.function.ToDoubleFunction;

/**
 * The best place in a box, by steps along the axes that shrink when none of them helps.
 *
 * <p>Compass search (T. G. Kolda, R. M. Lewis and V. Torczon, <i>SIAM Review</i> 45 (2003) 385-482): no derivatives,
 * which a worst phase does not have. Infeasible places are valued minus infinity.
 */
final class CompassSearch {
    private final ToDoubleFunction<double[]> figure;
    private final Range[] box;
    private final double finest;

    CompassSearch(ToDoubleFunction<double[]> figure, double finest, Range... box) {
        this.figure = figure;
        this.finest = finest;
        this.box = box.clone();
    }

    /** The best values found by climbing from the best of some places; the value may still be minus infinity. */
    double[] best(double[]... starts) {
        double[] best = shares(starts[0]);
        double value = figure.applyAsDouble(values(best));
        for (int i = 1; i < starts.length; i++) {
            double[] shares = shares(starts[i]);
            double there = figure.applyAsDouble(values(shares));
            if (there > value) {
                value = there;
                best = shares;
            }
        }
        return climb(best);
    }

    private double[] shares(double[] values) {
        double[] shares = new double[box.length];
        for (int i = 0; i < shares.length; i++) {
            shares[i] = box[i].shareOf(values[i]);
        }
        return shares;
    }

    private double[] climb(double[] start) {
        double[] shares = start;
        double value = figure.applyAsDouble(values(shares));
        double step = 0.25;
        while (step > finest) {
            double[] better = neighbour(shares, value, step);
            double there = figure.applyAsDouble(values(better));
            if (there > value) {
                shares = better;
                value = there;
            } else {
                step /= 2;
            }
        }
        return values(shares);
    }

    private double[] neighbour(double[] shares, double value, double step) {
        double[] best = shares;
        double most = value;
        for (int i = 0; i < shares.length; i++) {
            for (int sign = -1; sign <= 1; sign += 2) {
                double[] moved = shares.clone();
                moved[i] = Math.max(0, Math.min(1, moved[i] + sign * step));
                double there = moved[i] == shares[i] ? most : figure.applyAsDouble(values(moved));
                if (there > most) {
                    most = there;
                    best = moved;
                }
            }
        }
        return best;
    }

    private double[] values(double[] shares) {
        double[] values = new double[shares.length];
        for (int i = 0; i < values.length; i++) {
            values[i] = box[i].at(shares[i]);
        }
        return values;
    }
}
