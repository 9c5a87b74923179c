// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.presenter;

import drumfall.solver.power.Criterion;
import drumfall.ui.presenter.ShownFigure.Rounding;
import java.util.Arrays;
import java.util.Optional;

/** Figures of the chosen train that the window shows and that can say where they come from. */
public enum Figure {
    /** How long a winding lasts. */
    DURATION(Rounding.DOWN, "duration"),
    /** Hours for a turn of the drum. */
    HOURS_PER_DRUM_TURN(Rounding.NEAREST, "turn-of-arbor-1"),
    /** Turns of the drum in a full fall. */
    DRUM_TURNS(Rounding.NEAREST, "drum-turns"),
    /** Beats an hour. */
    BEATS_PER_HOUR(Rounding.NEAREST, "beats-per-hour"),
    /** Seconds of a beat. */
    BEAT(Rounding.NEAREST, "beat"),
    /** Length of the simple pendulum of the same period. */
    PENDULUM_LENGTH(Rounding.NEAREST, "pendulum-length"),
    /** Least running weight with its reserve. */
    RECOMMENDED_WEIGHT(Rounding.UP, "recommended-weight"),
    /** Least running weight. */
    LEAST_WEIGHT(Rounding.UP, "least-weight"),
    /** Tension of the line at the drum. */
    LINE_TENSION(Rounding.UP, "tension-running", "tension-binding"),
    /** Torque the escape wheel needs. */
    ESCAPE_TORQUE(Rounding.UP, "escape-torque"),
    /** Length of line to cut. */
    LINE_LENGTH(Rounding.NEAREST, "line-length"),
    /** Material in the printed parts. */
    FILAMENT(Rounding.NEAREST, "filament");

    private final Rounding rounding;
    private final String running;
    private final String binding;

    Figure(Rounding rounding, String card) {
        this(rounding, card, card);
    }

    Figure(Rounding rounding, String running, String binding) {
        this.rounding = rounding;
        this.running = running;
        this.binding = binding;
    }

    /** Which way it is rounded. */
    public Rounding rounding() {
        return rounding;
    }

    /**
     * The name of the solver's card of it.
     *
     * @param deciding the criterion that decides the weight
     */
    String card(Criterion deciding) {
        return deciding == Criterion.BINDING ? binding : running;
    }

    /** The figure of a card of the solver's; empty if the window has no name of its own for it. */
    static Optional<Figure> ofCard(String name) {
        return Arrays.stream(values())
                .filter(figure -> figure.running.equals(name) || figure.binding.equals(name))
                .findFirst();
    }

    /** What it is called. */
    public String title() {
        return Texts.of("shown." + name());
    }
}
