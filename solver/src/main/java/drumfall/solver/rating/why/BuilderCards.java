// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.rating.why;

import drumfall.solver.rating.BuilderLimits;
import drumfall.solver.rating.Demand;
import drumfall.solver.rating.DemandFigure;
import drumfall.solver.rating.Rating;
import drumfall.solver.rating.TrainRater;

/** Card of the share of builders whose clock the recommended weight runs, where the brief asks for one. */
final class BuilderCards {
    private final CardShelf shelf;
    private final TrainRater rater;
    private final Rating rating;

    BuilderCards(CardShelf shelf, TrainRater rater, Rating rating) {
        this.shelf = shelf;
        this.rater = rater;
        this.rating = rating;
    }

    void make() {
        rating.demands().stream()
                .filter(figure -> figure.demand() == Demand.BUILDERS)
                .mapToDouble(DemandFigure::figure)
                .forEach(this::make);
    }

    private void make(double share) {
        Card builders = shelf.given(
                "builders",
                "n",
                BuilderLimits.TRIALS,
                "1",
                "as many as give the share to about half a percent; few enough to ask of many trains");
        Card served = WhereFromChance.running(
                shelf,
                rater,
                rating.train(),
                "builders-that-run",
                share * BuilderLimits.TRIALS,
                shelf.get("recommended-weight"),
                builders);
        shelf.figure(
                "builders-served",
                "p",
                share,
                "1",
                "p = k / n",
                in -> in[0] / in[1],
                "the share of builders whose clock the recommended weight keeps going",
                served,
                builders);
    }
}
