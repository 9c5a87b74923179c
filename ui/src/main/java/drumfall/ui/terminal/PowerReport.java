// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.terminal;

import drumfall.solver.power.books.BookEntry;
import drumfall.solver.power.books.PowerBooks;
import drumfall.solver.quantity.Dimension;
import drumfall.solver.rating.TrainRater;
import drumfall.solver.rating.answers.Change;
import drumfall.solver.rating.answers.PowerAnswers;
import drumfall.solver.rating.answers.WeightChance;
import drumfall.solver.train.Train;
import drumfall.ui.wording.FigureWording;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** What a weight does to a train, for people: the books and the answers at the bench. */
final class PowerReport {
    private static final double MICROWATTS = 1e6;
    private static final int BUILDERS = 20;

    private final TrainRater rater;
    private final Train train;
    private final PowerAnswers answers;
    private final FigureWording figures;

    PowerReport(TrainRater rater, Train train, double weight, FigureWording figures) {
        this.rater = rater;
        this.train = train;
        this.answers = new PowerAnswers(rater, train, weight);
        this.figures = figures;
    }

    /** One line for each place that takes power. */
    List<String> books() {
        PowerBooks books = answers.books();
        TextTable table = TextTable.of("rate.books.columns");
        for (BookEntry entry : books.entries()) {
            table.row(
                    Phrases.phrase("rate.books." + entry.place().name(), entry.number() + 1),
                    microwatts(entry.power()),
                    FigureWording.percent(books.share(entry)),
                    entry.place().friction() ? FigureWording.percent(books.shareOfFriction(entry)) : "");
        }
        return table.row(
                        Phrases.phrase("rate.books.all"), microwatts(books.weightPower()), FigureWording.percent(1), "")
                .lines();
    }

    private static String microwatts(double watts) {
        return String.format(Locale.ROOT, "%.2f µW", watts * MICROWATTS);
    }

    /** Sentences about the weight that hangs. */
    List<String> answers() {
        List<String> lines = new ArrayList<>();
        var books = answers.books();
        double weight = books.weight();
        WeightChance chance = WeightChance.of(rater, train, WeightChance.USUAL_TRIALS);
        lines.add(Phrases.phrase(
                "rate.answers.hangs",
                figures.figure(Dimension.MASS, weight),
                figures.figure(Dimension.ANGLE, books.semiArc())));
        lines.add(Phrases.phrase(
                "rate.answers.chance",
                (int) Math.floor(chance.thatRun(weight) * BUILDERS + 1e-9),
                BUILDERS,
                figures.figure(Dimension.MASS, chance.quantile(0.5)),
                figures.figure(Dimension.MASS, chance.quantile(0.95))));
        lines.add(Phrases.phrase(
                "rate.answers.key",
                figures.figure(Dimension.TORQUE, answers.winding().torque()),
                Math.round(Math.floor(answers.coasting().beats()))));
        lines.add(Phrases.phrase(
                "rate.answers.shock",
                figures.figure(Dimension.FORCE, answers.hangingShock().load()),
                figures.figure(Dimension.LENGTH, answers.hangingShock().drop()),
                figures.figure(Dimension.FORCE, answers.hangingShock().force())));
        lines.add(Phrases.phrase(
                answers.lineBend().gentle() ? "rate.answers.bend" : "rate.answers.sharp",
                figures.figure(Dimension.LENGTH, answers.lineBend().leastDiameter())));
        lines.add(ratchet());
        return lines;
    }

    private String ratchet() {
        double allowable = rater.limits().ratchet().allowable();
        return answers.ratchet()
                .map(hold -> Phrases.phrase(
                        "rate.answers.ratchet",
                        figures.figure(Dimension.FORCE, hold.force()),
                        figures.figure(Dimension.STRESS, hold.toothBending()),
                        figures.figure(Dimension.STRESS, allowable),
                        figures.figure(Dimension.STRESS, hold.pinShear())))
                .orElseGet(() -> Phrases.phrase("rate.answers.noRatchet"));
    }

    /** One line for each change. */
    List<String> changes() {
        TextTable table = TextTable.of("rate.changes.columns");
        for (Change change : answers.changes()) {
            table.row(
                    Phrases.phrase("rate.changes." + change.kind().name(), change.number() + 1),
                    Double.isInfinite(change.saved())
                            ? Phrases.phrase("rate.changes.none")
                            : figures.figure(Dimension.MASS, change.saved()));
        }
        return table.lines();
    }
}
