// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.plugin.sheet.content;

import drumfall.solver.rating.Rating;
import drumfall.solver.train.GoingTrain;
import java.util.ArrayList;
import java.util.List;

/** What the clock is and what it hangs on. */
final class KeyFigures {
    private static final double HOURS_A_DAY = 24;

    private final Clock clock;
    private final List<List<String>> rows = new ArrayList<>();

    private KeyFigures(Clock clock) {
        this.clock = clock;
    }

    static String line(Clock clock) {
        return clock.train() + ", " + duration(clock.rating()) + " on a fall of "
                + clock.lengths().ofRoom(clock.brief().fall().height().si());
    }

    private static String duration(Rating rating) {
        double hours = rating.durationRoundedDown().doubleValue();
        return hours < 2 * HOURS_A_DAY
                ? Words.number(hours, 1) + " hours"
                : Words.number(hours / HOURS_A_DAY, 2) + " days";
    }

    static Section section(Clock clock) {
        KeyFigures figures = new KeyFigures(clock);
        figures.going();
        figures.weight();
        figures.line();
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Table(
                "Figures of the design",
                List.of(new Block.Column("Figure", 3, false), new Block.Column("Value", 4, false)),
                figures.rows));
        if (clock.answers().isEmpty()) {
            blocks.add(new Block.Paragraph("No weight drives this train, so that this sheet has no figures that depend"
                    + " on the weight. Ask the program why before you print anything."));
        }
        return new Section("The design", blocks);
    }

    private void going() {
        GoingTrain going = clock.train().going();
        add("Train", clock.train().toString());
        add("Runs for", duration(clock.rating()));
        add("Beats an hour", Words.number(going.beatsPerHour().doubleValue(), 2));
        add("One beat", Words.number(going.secondsPerBeat().doubleValue(), 4) + " s");
        add("Simple pendulum of that beat", clock.lengths().of(clock.rating().pendulumLength(), 1));
    }

    private void weight() {
        Rating rating = clock.rating();
        add("Least weight, pulley included", Words.kilograms(rating.weight().leastWeight()));
        add(
                "Least weight of a smooth and of a rough clock",
                Words.kilograms(rating.leastSmoothest()) + " and " + Words.kilograms(rating.leastRoughest()));
        add("Recommended weight, pulley included", Words.kilograms(rating.recommendedWeight()));
        clock.answers().ifPresent(answers -> {
            add("Arc to expect on it, each side", Words.degrees(answers.books().semiArc()));
            add(
                    "Arc at which a tooth escapes, each side",
                    Words.degrees(clock.loaded().movement().escapement().escapeAngle()));
        });
    }

    private void line() {
        double lead = clock.brief().fall().topLead().si();
        double tie = clock.brief().fall().tieOff().si();
        add("Drum", clock.lengths().of(clock.train().drumDiameter().doubleValue(), 1) + " diameter");
        add("Line to cut", clock.lengths().of(clock.drumRun().lineLength(lead, tie), 0));
        add("Turns of the drum to wind", Words.number(clock.drumRun().turns(), 1));
        clock.answers().ifPresent(answers -> {
            add("Torque at the key", Words.number(answers.winding().torque(), 2) + " N m");
            add(
                    "Goes on while it is wound, for",
                    Words.seconds(answers.coasting().seconds()));
        });
    }

    private void add(String figure, String value) {
        rows.add(List.of(figure, value));
    }
}
