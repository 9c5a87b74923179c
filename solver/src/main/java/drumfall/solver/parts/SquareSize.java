// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.parts;

/**
 * The square on the drum's arbor that the key takes hold of, with the round collar below it.
 *
 * @param collar height of the collar, m, positive
 * @param around across the flats of the square over the wall around its bore, m, positive
 * @param length of the square, m, positive
 */
public record SquareSize(double collar, double around, double length) {
    /** A size for printed clocks that hang on a wall; common practice, no source. */
    public static final SquareSize CUSTOMARY = new SquareSize(0.005, 0.003, 0.012);

    /**
     * Across the flats, m.
     *
     * @param bore diameter of its bore, m
     */
    public double side(double bore) {
        return bore + 2 * around;
    }

    /**
     * Radius of the collar, m: a wall beyond the square's corners, so that the key comes to rest on it.
     *
     * @param bore diameter of its bore, m
     * @param wall the thinnest wall that is printed, m
     */
    public double collarRadius(double bore, double wall) {
        return side(bore) / Math.sqrt(2) + wall;
    }

    /**
     * Volume of both, cubic metres.
     *
     * @param bore diameter of its bore, m
     * @param wall the thinnest wall that is printed, m
     */
    public double volume(double bore, double wall) {
        double round = collarRadius(bore, wall);
        double hole = Math.PI * bore * bore / 4;
        return (Math.PI * round * round - hole) * collar + (side(bore) * side(bore) - hole) * length;
    }
}
