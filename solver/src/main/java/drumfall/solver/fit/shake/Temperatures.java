// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.fit.shake;

import drumfall.solver.fit.FitException;

/**
 * Temperatures of the room where the clock is made and where it goes.
 *
 * @param fitted where parts were measured, °C, −50 to 100
 * @param coldest where it goes, °C, not above fitted
 * @param hottest where it goes, °C, not below fitted
 */
public record Temperatures(double fitted, double coldest, double hottest) {
    private static final double ARCTIC = -50;
    private static final double BOILING = 100;

    /**
     * Checks the order.
     *
     * @throws FitException if a temperature is out of range
     */
    public Temperatures {
        FitException.requireNumber("fitting temperature", "the room", fitted, ARCTIC, BOILING, "°C");
        FitException.requireNumber("coldest temperature", "the room", coldest, ARCTIC, fitted, "°C");
        FitException.requireNumber("hottest temperature", "the room", hottest, fitted, BOILING, "°C");
    }

    /** One temperature only: nothing drifts. */
    public static Temperatures steady(double temperature) {
        return new Temperatures(temperature, temperature, temperature);
    }
}
