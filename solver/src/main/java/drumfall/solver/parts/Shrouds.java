// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.parts;

/**
 * The two printed discs of a lantern pinion, and its steel pins.
 *
 * @param thickness of one shroud, m, positive
 * @param wall printed around the pins, m, positive
 */
public record Shrouds(double thickness, double wall) {
    /** Added to a lantern pin's diameter for the hole it is pressed into, m; common practice, no source. */
    public static final double PIN_PLAY = 0.00015;

    /** Density of steel rods and pins, kg/m³ (Beckett, 8th ed. 1903, p. 53: 0.28 lb per cubic inch). */
    public static final double STEEL = 7750;

    /**
     * Radius of a shroud, m.
     *
     * @param tip radius around the pins, m
     */
    public double radius(double tip) {
        return tip + PIN_PLAY / 2 + wall;
    }

    /**
     * Volume of both shrouds, cubic metres.
     *
     * @param pins how many
     * @param diameter of a pin, m
     * @param tip radius around the pins, m
     */
    public double volume(int pins, double diameter, double tip) {
        double hole = diameter + PIN_PLAY;
        return 2 * thickness * Math.PI * (radius(tip) * radius(tip) - pins * hole * hole / 4);
    }

    /**
     * Second moment of both shrouds over their thickness, m⁵.
     *
     * @param pins how many
     * @param diameter of a pin, m
     * @param tip radius around the pins, m
     * @param circle radius of the circle of the pins' middles, m
     */
    double polar(int pins, double diameter, double tip, double circle) {
        double hole = (diameter + PIN_PLAY) / 2;
        double area = Math.PI * hole * hole;
        double disc = Math.PI / 2 * PartInertia.fourth(radius(tip));
        return 2 * thickness * (disc - pins * area * (hole * hole / 2 + circle * circle));
    }

    /**
     * Mass of the pins, kg.
     *
     * @param pins how many
     * @param diameter of a pin, m
     * @param length of a pin, m
     */
    public static double pinMass(int pins, double diameter, double length) {
        return STEEL * pins * Math.PI * diameter * diameter / 4 * length;
    }
}
