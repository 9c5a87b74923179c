// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.power.pendulum;

import java.util.List;

/**
 * Arcs read while a pendulum swings down freely.
 *
 * @param readings at least four, periods rising, the last arc smaller than the first
 */
public record RingDown(List<Reading> readings) {
    /** Readings below which two decays cannot be told apart and given an uncertainty. */
    public static final int LEAST_READINGS = 4;

    /**
     * One reading.
     *
     * @param periods counted from any moment, whole swings to and fro
     * @param semiArc rad, positive
     */
    public record Reading(double periods, double semiArc) {
        /**
         * Checks the figures.
         *
         * @throws IllegalArgumentException if the count is not finite or the arc not positive
         */
        public Reading {
            if (!Double.isFinite(periods) || !(semiArc > 0 && semiArc < Math.PI)) {
                throw new IllegalArgumentException(
                        "The reading (%s rad after %s periods) must have an arc of more than 0 and less than π. Maybe leave it out."
                                .formatted(semiArc, periods));
            }
        }
    }

    /**
     * Checks the order and copies the list.
     *
     * @throws IllegalArgumentException if there are too few readings or they do not ring down
     */
    public RingDown {
        readings = List.copyOf(readings);
        if (readings.size() < LEAST_READINGS) {
            throw new IllegalArgumentException(
                    "The readings (%d) of a ring-down must be at least %d. Maybe read the arc more often."
                            .formatted(readings.size(), LEAST_READINGS));
        }
        for (int i = 1; i < readings.size(); i++) {
            if (!(readings.get(i).periods() > readings.get(i - 1).periods())) {
                throw new IllegalArgumentException(
                        "The periods (%s) of reading (%d) must be more than those before it (%s). Maybe sort the readings."
                                .formatted(
                                        readings.get(i).periods(),
                                        i + 1,
                                        readings.get(i - 1).periods()));
            }
        }
        double first = readings.get(0).semiArc();
        double last = readings.get(readings.size() - 1).semiArc();
        if (!(last < first)) {
            throw new IllegalArgumentException(
                    "The last arc (%s rad) of a ring-down must be less than the first (%s rad). Maybe the columns are swapped."
                            .formatted(last, first));
        }
    }

    /**
     * Quality factor from two arcs of a purely viscous ring-down, {@code Q = π n / ln(A0 / A1)}.
     *
     * @param periods between them, positive
     * @param first rad, positive
     * @param last rad, positive, less than the first
     */
    public static double quality(double periods, double first, double last) {
        return Math.PI * periods / Math.log(first / last);
    }

    /** The two decays that meet the readings best. */
    public RingDownFit fit() {
        return new DecayFit(this).fit();
    }
}
