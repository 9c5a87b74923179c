// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.power.pendulum;

import java.util.List;

/**
 * Least squares for {@code A(n) = A0 e^(-δ n) - c (1 - e^(-δ n)) / δ}, by Gauss and Newton with halved steps.
 *
 * <p>Counts are scaled to a span of 1 and arcs to a first one of 1, so the three columns are of like size and the normal
 * equations keep more than half of the digits. As {@code δ} vanishes the second term becomes {@code c n}: a straight line.
 */
final class DecayFit {
    private static final int MOST_ROUNDS = 200;
    private static final double SMALL_DECAY = 1e-4;

    private final double[] counts;
    private final double[] arcs;
    private final double span;
    private final double scale;

    DecayFit(RingDown ringDown) {
        List<RingDown.Reading> readings = ringDown.readings();
        double start = readings.get(0).periods();
        this.span = readings.get(readings.size() - 1).periods() - start;
        this.scale = readings.get(0).semiArc();
        this.counts = readings.stream()
                .mapToDouble(reading -> (reading.periods() - start) / span)
                .toArray();
        this.arcs = readings.stream()
                .mapToDouble(reading -> reading.semiArc() / scale)
                .toArray();
    }

    RingDownFit fit() {
        double[] values = {1, -Math.log(arcs[arcs.length - 1]), 0};
        double squares = squares(values);
        for (int round = 0; round < MOST_ROUNDS; round++) {
            double[] step = step(values);
            double[] next = improved(values, step, squares);
            double nextSquares = squares(next);
            boolean done = !(nextSquares < squares);
            values = nextSquares <= squares ? next : values;
            squares = Math.min(squares, nextSquares);
            if (done) {
                break;
            }
        }
        return scaledBack(values, squares);
    }

    /** The whole step, or the largest of its halves that lessens the sum of squares. */
    private double[] improved(double[] values, double[] step, double squares) {
        for (double share = 1; share > 1e-6; share /= 2) {
            double[] next = new double[3];
            for (int i = 0; i < 3; i++) {
                next[i] = values[i] + share * step[i];
            }
            if (squares(next) < squares) {
                return next;
            }
        }
        return values;
    }

    private double[] step(double[] values) {
        double[] slopeSum = new double[3];
        for (int i = 0; i < counts.length; i++) {
            double[] slope = slopes(values, counts[i]);
            double residual = arcs[i] - arc(values, counts[i]);
            for (int j = 0; j < 3; j++) {
                slopeSum[j] += slope[j] * residual;
            }
        }
        double[][] inverse = SymmetricThree.inverse(normal(values));
        double[] step = new double[3];
        for (int i = 0; i < 3; i++) {
            for (int j = 0; j < 3; j++) {
                step[i] += inverse[i][j] * slopeSum[j];
            }
        }
        return step;
    }

    private double[][] normal(double[] values) {
        double[][] normal = new double[3][3];
        for (double count : counts) {
            double[] slope = slopes(values, count);
            for (int i = 0; i < 3; i++) {
                for (int j = 0; j < 3; j++) {
                    normal[i][j] += slope[i] * slope[j];
                }
            }
        }
        return normal;
    }

    private double squares(double[] values) {
        double sum = 0;
        for (int i = 0; i < counts.length; i++) {
            double residual = arcs[i] - arc(values, counts[i]);
            sum += residual * residual;
        }
        return sum;
    }

    private static double arc(double[] values, double count) {
        return values[0] * Math.exp(-values[1] * count) - values[2] * line(values[1], count);
    }

    private static double[] slopes(double[] values, double count) {
        double fallen = Math.exp(-values[1] * count);
        return new double[] {
            fallen, -values[0] * count * fallen - values[2] * lineSlope(values[1], count), -line(values[1], count)
        };
    }

    /** {@code (1 - e^(-δ n)) / δ}. */
    private static double line(double decay, double count) {
        return decay == 0 ? count : -Math.expm1(-decay * count) / decay;
    }

    /** The derivative of {@link #line} by the decay; its series where the closed form cancels. */
    private static double lineSlope(double decay, double count) {
        return Math.abs(decay) < SMALL_DECAY
                ? count * count * (-0.5 + decay * count / 3)
                : (count * Math.exp(-decay * count) - line(decay, count)) / decay;
    }

    private RingDownFit scaledBack(double[] values, double squares) {
        double variance = squares / (counts.length - 3);
        double[][] inverse = SymmetricThree.inverse(normal(values));
        return new RingDownFit(
                values[0] * scale,
                values[1] / span,
                Math.sqrt(variance * inverse[1][1]) / span,
                values[2] * scale / span,
                Math.sqrt(variance * inverse[2][2]) * scale / span,
                Math.sqrt(variance) * scale);
    }
}
