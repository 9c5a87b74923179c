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
 * @param pipeLength length of the hour wheel's pipe
 * @param fingers length of the clutch's fingers
 * @param grip by how much their bore is smaller in radius
 */
public record HandSize(
        double minuteLength,
        double hourLength,
        double tip,
        double thickness,
        double pipeWall,
        double pipeLength,
        double fingers,
        double grip) {
    /** A size for printed clocks that hang on a wall; common practice, no source. */
    public static final HandSize CUSTOMARY = new HandSize(0.1, 0.07, 0.003, 0.0024, 0.0012, 0.012, 0.006, 0.0001);

    /** From the hour wheel's front to the end of the clutch's fingers, m: its pipe, both hands with their collars, fingers. */
    public double beyond() {
        return pipeLength + 2 * thickness + fingers;
    }
}
