// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.parts;

/**
 * Hands, the cannon pinion's and the hour wheel's pipes, and the clutch that lets the hands be set; metres, all positive.
 *
 * @param minuteLength length of the minute hand
 * @param hourLength length of the hour hand
 * @param tip width of their tips
 * @param thickness of the hands and their collars
 * @param pipeWall wall of the cannon's and the hour wheel's pipes
 * @param fingers length of the clutch's fingers
 * @param grip by how much their bore is smaller in radius
 */
public record HandSize(
        double minuteLength,
        double hourLength,
        double tip,
        double thickness,
        double pipeWall,
        double fingers,
        double grip) {
    /** A size for printed clocks that hang on a wall; common practice, no source. */
    public static final HandSize CUSTOMARY = new HandSize(0.1, 0.07, 0.003, 0.0024, 0.0012, 0.006, 0.0001);

    /** A pipe just short of a whole layer is one, in layers. */
    private static final double ROUNDING = 1e-9;

    /**
     * Length of the hour wheel's pipe, m, in whole layers: both hands pass before the winding square, which stands before the
     * motion work, wherever the end shake of its arbor lets it stand. A dial has its place behind them.
     *
     * @param square the winding square with its collar
     * @param gap least gap along the arbors, m, not negative
     * @param spacing from one plane to the next, m, not negative
     * @param layer height of a printed layer, m, positive
     */
    public double hourPipe(SquareSize square, double gap, double spacing, double layer) {
        double room = gap + spacing + square.collar() + square.length() + 2 * thickness;
        return layer * Math.ceil(room / layer - ROUNDING);
    }

    /**
     * From the hour wheel's front to the end of the clutch's fingers, m: its pipe, a gap so that the hour wheel is free, both
     * hands with their collars, fingers.
     *
     * @param square the winding square with its collar
     * @param gap least gap along the arbors, m, not negative
     * @param spacing from one plane to the next, m, not negative
     * @param layer height of a printed layer, m, positive
     */
    public double beyond(SquareSize square, double gap, double spacing, double layer) {
        return hourPipe(square, gap, spacing, layer) + gap + 2 * thickness + fingers;
    }
}
