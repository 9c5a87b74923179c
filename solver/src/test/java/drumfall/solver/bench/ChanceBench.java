// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.bench;

import drumfall.solver.brief.Brief;
import drumfall.solver.brief.BundledBriefs;
import drumfall.solver.power.books.Place;
import drumfall.solver.rating.Rating;
import drumfall.solver.rating.TrainRater;
import drumfall.solver.rating.answers.Change;
import drumfall.solver.rating.answers.PowerAnswers;
import drumfall.solver.rating.answers.WeightChance;
import drumfall.solver.rating.why.WhereFromBook;
import drumfall.solver.samples.Briefs;
import drumfall.solver.samples.DemoTrain;
import java.util.Locale;

/** Measures the spread of the weight, answers and cards of one train; a main to run by hand, never asserted. */
public final class ChanceBench {
    private static final int ROUNDS = 5;

    private ChanceBench() {}

    /** Prints seconds and figures. */
    public static void main(String[] arguments) {
        for (int round = 0; round < ROUNDS; round++) {
            // A band of its own each round, so that no curve is known beforehand.
            Brief brief = Briefs.with(BundledBriefs.demo(), "/friction/teeth/low = \"0.15%d\"".formatted(round));
            TrainRater rater = new TrainRater(brief);
            Rating rating = rater.rate(DemoTrain.train());
            long start = System.nanoTime();
            WeightChance chance = WeightChance.of(rater, DemoTrain.train(), WeightChance.USUAL_TRIALS);
            long trials = System.nanoTime();
            PowerAnswers answers = new PowerAnswers(rater, DemoTrain.train(), rating.recommendedWeight());
            double saved =
                    answers.changes().stream().mapToDouble(Change::saved).max().orElseThrow();
            long changes = System.nanoTime();
            int cards = WhereFromBook.of(rater, rating).cards().size();
            long end = System.nanoTime();
            System.out.printf(
                    Locale.ROOT,
                    "%d trials %.3f s, changes %.3f s, %d cards %.4f s; kg 5 %% %.3f 50 %% %.3f 95 %% %.3f, recommended %.3f runs for %.3f; best change %.3f kg; pendulum %.3f%n",
                    chance.trials(),
                    (trials - start) / 1e9,
                    (changes - trials) / 1e9,
                    cards,
                    (end - changes) / 1e9,
                    chance.quantile(0.05),
                    chance.quantile(0.5),
                    chance.quantile(0.95),
                    rating.recommendedWeight(),
                    chance.thatRun(rating.recommendedWeight()),
                    saved,
                    answers.books().at(Place.PENDULUM) / answers.books().weightPower());
        }
    }
}
