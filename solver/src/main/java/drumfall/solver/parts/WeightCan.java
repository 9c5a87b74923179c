// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.parts;

/**
 * The shell of a weight: a can filled with shot around a rod.
 *
 * @param shotDensity bulk density of the shot, kg/m&sup3;, positive
 * @param wall thickness of its walls, floor and lid, m, positive
 * @param rod diameter of the rod through it, m, positive
 */
public record WeightCan(double shotDensity, double wall, double rod) {
    /**
     * A size for printed clocks that hang on a wall; common practice, no source. Steel shot poured: 0.6 of steel's 7750 kg/m3
     * (Beckett 1903, p. 53), loose packing from memory.
     */
    public static final WeightCan CUSTOMARY = new WeightCan(0.6 * 7750, 0.0024, 0.006);

    /**
     * Height of the tubes above the floor, whose chamber below the lid's spigot holds the shot, m.
     *
     * @param shot kg, not negative
     * @param diameter of the can, m, more than rod and walls
     * @param layer height of a printed layer, of which there is a whole number, m, positive
     */
    public double tubeHeight(double shot, double diameter, double layer) {
        double outer = diameter / 2 - wall;
        double inner = rod / 2 + wall;
        double height = shot / shotDensity / (Math.PI * (outer * outer - inner * inner)) + wall;
        return Math.ceil(height / layer - 1e-9) * layer;
    }

    /**
     * Height over floor and lid, m.
     *
     * @param shot kg, not negative
     * @param diameter of the can, m, more than rod and walls
     * @param layer height of a printed layer, m, positive
     */
    public double height(double shot, double diameter, double layer) {
        return tubeHeight(shot, diameter, layer) + 2 * wall;
    }
}
