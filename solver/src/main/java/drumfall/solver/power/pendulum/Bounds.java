// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.power.pendulum;

/** Refuses a figure that is out of its range, in one sentence with the nearest figure that would do. */
public final class Bounds {
    /** Beyond a bound that is itself refused no figure is nearest; this is near enough to work with, in SI units. */
    private static final double BEYOND = 1e-6;

    private Bounds() {}

    /**
     * Requires a figure at or above a bound.
     *
     * @param name of the figure
     * @param owner what it belongs to
     * @param value SI, finite
     * @param least the bound
     * @param unit its symbol; empty for a number
     * @throws IllegalArgumentException if it is below, infinite or no number
     */
    public static void atLeast(String name, String owner, double value, double least, String unit) {
        if (!(value >= least)) {
            throw refused(name, owner, value, "at least", least, unit, least);
        }
        finite(name, owner, value, unit);
    }

    /**
     * Requires a figure above a bound.
     *
     * @param name of the figure
     * @param owner what it belongs to
     * @param value SI, finite
     * @param bound the bound
     * @param unit its symbol; empty for a number
     * @throws IllegalArgumentException if it is not above, infinite or no number
     */
    public static void moreThan(String name, String owner, double value, double bound, String unit) {
        if (!(value > bound)) {
            throw refused(name, owner, value, "more than", bound, unit, bound + BEYOND);
        }
        finite(name, owner, value, unit);
    }

    /**
     * Requires a figure below a bound.
     *
     * @param name of the figure
     * @param owner what it belongs to
     * @param value SI
     * @param bound the bound
     * @param unit its symbol; empty for a number
     * @throws IllegalArgumentException if it is not below or no number
     */
    public static void lessThan(String name, String owner, double value, double bound, String unit) {
        if (!(value < bound)) {
            throw refused(name, owner, value, "less than", bound, unit, bound - BEYOND);
        }
    }

    /**
     * Requires a figure to be some number.
     *
     * @param name of the figure
     * @param owner what it belongs to
     * @param value SI
     * @param unit its symbol; empty for a number
     * @throws IllegalArgumentException if it is infinite or no number
     */
    public static void finite(String name, String owner, double value, String unit) {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException("The %s (%s) of %s must be finite. Maybe %s."
                    .formatted(name, with(value, unit), owner, with(0, unit)));
        }
    }

    private static IllegalArgumentException refused(
            String name, String owner, double value, String rule, double bound, String unit, double nearest) {
        return new IllegalArgumentException("The %s (%s) of %s must be %s %s. Maybe %s."
                .formatted(name, with(value, unit), owner, rule, with(bound, unit), with(nearest, unit)));
    }

    private static String with(double value, String unit) {
        return unit.isEmpty() ? String.valueOf(value) : value + " " + unit;
    }
}
