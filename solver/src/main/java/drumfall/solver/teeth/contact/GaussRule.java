// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.teeth.contact;

/** Points and weights of Gauss and Legendre's rule on 0 to 1. */
final class GaussRule {
    private static final int STEPS = 20;

    private final double[] points;
    private final double[] weights;

    GaussRule(int order) {
        points = new double[order];
        weights = new double[order];
        for (int i = 0; i < order; i++) {
            double x = Math.cos(Math.PI * (i + 0.75) / (order + 0.5));
            double slope = 1;
            for (int step = 0; step < STEPS; step++) {
                double[] value = legendre(order, x);
                slope = value[1];
                x -= value[0] / slope;
            }
            points[order - 1 - i] = (1 + x) / 2;
            weights[order - 1 - i] = 1 / ((1 - x * x) * slope * slope);
        }
    }

    private static double[] legendre(int order, double x) {
        double previous = 1;
        double value = x;
        for (int k = 2; k <= order; k++) {
            double next = ((2 * k - 1) * x * value - (k - 1) * previous) / k;
            previous = value;
            value = next;
        }
        return new double[] {value, order * (x * value - previous) / (x * x - 1)};
    }

    int order() {
        return points.length;
    }

    double point(int i) {
        return points[i];
    }

    double weight(int i) {
        return weights[i];
    }
}
