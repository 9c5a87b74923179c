// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.presenter;

/** Figures of the chosen train that the window shows and that can say where they come from. */
public enum Figure {
    /** How long a winding lasts. */
    DURATION,
    /** Hours for a turn of the drum. */
    HOURS_PER_DRUM_TURN,
    /** Turns of the drum in a full fall. */
    DRUM_TURNS,
    /** Beats an hour. */
    BEATS_PER_HOUR,
    /** Seconds of a beat. */
    BEAT,
    /** Length of the simple pendulum of the same period. */
    PENDULUM_LENGTH,
    /** Least running weight with its reserve. */
    RECOMMENDED_WEIGHT,
    /** Least running weight. */
    LEAST_WEIGHT,
    /** Tension of the line at the drum. */
    LINE_TENSION,
    /** Torque the escape wheel needs. */
    ESCAPE_TORQUE,
    /** Length of line to cut. */
    LINE_LENGTH,
    /** Material in the printed parts. */
    FILAMENT;

    /** What it is called. */
    public String title() {
        return Texts.of("shown." + name());
    }
}
