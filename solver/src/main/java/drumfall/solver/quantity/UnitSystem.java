// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.quantity;

import java.util.Arrays;
import java.util.List;

/** Which units a person reads; times, angles and numbers are the same in both. */
public enum UnitSystem {
    /** Millimetres, kilograms, newtons. */
    METRIC,
    /** Inches, pounds, pounds-force. */
    IMPERIAL;

    /**
     * A unit and the least amount of it that is shown in it.
     *
     * @param unit the unit
     * @param least the least amount; zero for the smallest unit
     */
    record Step(Unit unit, double least) {}

    /** The units in which amounts are shown, the largest first; the last one takes whatever is smaller. */
    List<Step> stepsFor(Dimension dimension) {
        boolean metric = this == METRIC;
        return switch (dimension) {
            case LENGTH -> metric ? steps(dimension, "m:1", "mm:0.1", "µm:0") : steps(dimension, "ft:3", "in:0");
            case AREA -> metric ? steps(dimension, "cm²:0") : steps(dimension, "in²:0");
            case MASS -> metric ? steps(dimension, "kg:1", "g:0") : steps(dimension, "lb:1", "oz:0");
            // Clockmakers speak of a 30-hour clock, and of days from two days up: common practice, no source.
            case TIME -> steps(dimension, "d:2", "h:1", "min:1", "s:0");
            case ANGLE -> steps(dimension, "°:0");
            case FORCE -> metric ? steps(dimension, "N:0") : steps(dimension, "lbf:1", "ozf:0");
            case TORQUE -> metric ? steps(dimension, "N m:1", "N mm:0") : steps(dimension, "lbf in:1", "ozf in:0");
            case DENSITY -> metric ? steps(dimension, "g/cm³:0") : steps(dimension, "lb/in³:0");
            case STRESS -> metric ? steps(dimension, "GPa:1", "MPa:1", "kPa:1", "Pa:0") : steps(dimension, "psi:0");
            case NUMBER -> steps(dimension, ":0");
        };
    }

    /** The unit in which nothing is shown: millimetres, not micrometres. */
    Unit unitOfZero(Dimension dimension) {
        boolean metricLength = this == METRIC && dimension == Dimension.LENGTH;
        List<Step> steps = stepsFor(dimension);
        return metricLength ? dimension.unit("mm") : steps.get(steps.size() - 1).unit();
    }

    private static List<Step> steps(Dimension dimension, String... entries) {
        return Arrays.stream(entries).map(entry -> step(dimension, entry)).toList();
    }

    private static Step step(Dimension dimension, String entry) {
        int colon = entry.indexOf(':');
        return new Step(dimension.unit(entry.substring(0, colon)), Double.parseDouble(entry.substring(colon + 1)));
    }
}
