// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.search;

import drumfall.solver.brief.Brief;
import drumfall.solver.rating.Rating;
import java.util.List;
import java.util.function.Function;

/** How a search ended. */
public sealed interface SearchOutcome {
    /** The front, first objective first; empty if there is none. */
    List<Rating> front();

    /**
     * How many times as large the steps are by which objectives were told apart, because with the brief's own the front held
     * too many trains (see {@link SearchSettings#mostTrains}); 1 if they are the brief's.
     */
    int stepsTimes();

    /**
     * The brief as it was searched: its objectives in steps {@link #stepsTimes} times as large.
     *
     * @param asked the brief that was to be searched
     */
    default Brief searched(Brief asked) {
        return asked.inSteps(stepsTimes());
    }

    /** What the heading over the front says. */
    String heading();

    /**
     * Tells the three cases apart.
     *
     * @param proved the front is complete
     * @param stopped the search ended early
     * @param noTrain no train meets the brief
     * @param <T> what the answers are
     */
    <T> T fold(Function<Proved, T> proved, Function<Stopped, T> stopped, Function<NoTrain, T> noTrain);

    /**
     * Every non-dominated cell has its train.
     *
     * @param front the trains
     * @param stepsTimes how many times as large as the brief's the steps are
     */
    record Proved(List<Rating> front, int stepsTimes) implements SearchOutcome {
        /**
         * In the brief's own steps.
         *
         * @param front the trains
         */
        public Proved(List<Rating> front) {
            this(front, 1);
        }

        /** Copies the list. */
        public Proved {
            front = List.copyOf(front);
        }

        @Override
        public String heading() {
            return "proved complete";
        }

        @Override
        public <T> T fold(Function<Proved, T> proved, Function<Stopped, T> stopped, Function<NoTrain, T> noTrain) {
            return proved.apply(this);
        }
    }

    /**
     * The search was stopped; trains may be missing and better ones may exist.
     *
     * @param front what was found until then
     * @param stepsTimes how many times as large as the brief's the steps are
     */
    record Stopped(List<Rating> front, int stepsTimes) implements SearchOutcome {
        /**
         * In the brief's own steps.
         *
         * @param front what was found until then
         */
        public Stopped(List<Rating> front) {
            this(front, 1);
        }

        /** Copies the list. */
        public Stopped {
            front = List.copyOf(front);
        }

        @Override
        public String heading() {
            return "stopped: may be incomplete";
        }

        @Override
        public <T> T fold(Function<Proved, T> proved, Function<Stopped, T> stopped, Function<NoTrain, T> noTrain) {
            return stopped.apply(this);
        }
    }

    /**
     * It is proved that no train of the brief's choices meets all demands.
     *
     * @param clash why
     */
    record NoTrain(Clash clash) implements SearchOutcome {
        @Override
        public List<Rating> front() {
            return List.of();
        }

        @Override
        public int stepsTimes() {
            return 1;
        }

        @Override
        public String heading() {
            return "no train exists";
        }

        @Override
        public <T> T fold(Function<Proved, T> proved, Function<Stopped, T> stopped, Function<NoTrain, T> noTrain) {
            return noTrain.apply(this);
        }
    }
}
