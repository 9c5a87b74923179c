// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.presenter;

import drumfall.solver.brief.Brief;
import drumfall.solver.rating.Rating;
import drumfall.solver.rating.TrainRater;
import drumfall.solver.train.Train;
import java.util.Optional;

/** Rates the chosen and the tried train against the last brief that was in order. */
final class Choice {
    private TrainRater rater;
    private Optional<Rating> rating = Optional.empty();
    private Optional<Rating> trial = Optional.empty();

    Choice(Brief brief) {
        this.rater = new TrainRater(brief);
    }

    Brief brief() {
        return rater.brief();
    }

    /** Takes another brief; both trains are rated anew. */
    void follow(Brief brief) {
        if (!brief.equals(rater.brief())) {
            rater = new TrainRater(brief);
            rating = rating.flatMap(earlier -> rate(earlier.train()));
            trial = trial.flatMap(earlier -> rate(earlier.train()));
        }
    }

    /** Takes another chosen train, and drops the tried one if the chosen one is new. */
    void choose(Optional<Train> train) {
        if (!train.equals(rating.map(Rating::train))) {
            rating = train.flatMap(this::rate);
            trial = Optional.empty();
        }
    }

    /**
     * Tries a train.
     *
     * @return whether it could be rated
     */
    boolean attempt(Train train) {
        Optional<Rating> rated = rate(train);
        if (rated.isPresent()) {
            trial = rated;
        }
        return rated.isPresent();
    }

    void dropTrial() {
        trial = Optional.empty();
    }

    Optional<Rating> rating() {
        return rating;
    }

    Optional<Rating> trial() {
        return trial;
    }

    /** A typed train may be beyond what the formulas allow, for example counts whose products overflow. */
    private Optional<Rating> rate(Train train) {
        try {
            return Optional.of(rater.rate(train));
        } catch (ArithmeticException | IllegalArgumentException beyond) {
            System.getLogger(Choice.class.getName())
                    .log(System.Logger.Level.DEBUG, "A typed train cannot be rated.", beyond);
            return Optional.empty();
        }
    }
}
