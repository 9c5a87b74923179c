// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.presenter;

import drumfall.solver.brief.Brief;
import drumfall.solver.rating.Rating;
import drumfall.solver.search.Clash;
import drumfall.solver.train.Train;
import java.util.List;
import java.util.Optional;

/**
 * Trains found for one brief, and how much of that is proved.
 *
 * @param brief the brief they answer
 * @param ratings the trains, first objective first
 * @param standing what is known of them
 * @param clash why there is no train; present exactly for {@link Standing#NO_TRAIN}
 * @param stepsTimes how many times as large as the brief's the steps are that tell trains apart, see
 *     {@link drumfall.solver.search.SearchOutcome#stepsTimes}
 */
public record Front(Brief brief, List<Rating> ratings, Standing standing, Optional<Clash> clash, int stepsTimes) {
    /** How much is proved. */
    public enum Standing {
        /** The search still runs. */
        GROWING,
        /** Nothing is missing. */
        PROVED,
        /** The search was stopped; some may be missing. */
        STOPPED,
        /** It is proved that there is none. */
        NO_TRAIN,
        /** The search broke down; some may be missing. */
        FAILED
    }

    /** Copies the list. */
    public Front {
        ratings = List.copyOf(ratings);
    }

    static Front of(Brief brief, List<Rating> ratings, Standing standing) {
        return of(brief, ratings, standing, 1);
    }

    static Front of(Brief brief, List<Rating> ratings, Standing standing, int stepsTimes) {
        return new Front(brief, ratings, standing, Optional.empty(), stepsTimes);
    }

    /** The brief as it was searched, see {@link drumfall.solver.search.SearchOutcome#searched}. */
    public Brief searched() {
        return brief.inSteps(stepsTimes);
    }

    /** Place of a train in the front; -1 if it is not in it. */
    public int indexOf(Train train) {
        for (int i = 0; i < ratings.size(); i++) {
            if (ratings.get(i).train().equals(train)) {
                return i;
            }
        }
        return -1;
    }
}
