// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.search;

import drumfall.solver.rating.Rating;
import java.util.List;
import java.util.function.Function;

/** How a search ended. */
public sealed interface SearchOutcome {
    /** The front, first objective first; empty if there is none. */
    List<Rating> front();

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
     */
    record Proved(List<Rating> front) implements SearchOutcome {
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
     */
    record Stopped(List<Rating> front) implements SearchOutcome {
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
        public String heading() {
            return "no train exists";
        }

        @Override
        public <T> T fold(Function<Proved, T> proved, Function<Stopped, T> stopped, Function<NoTrain, T> noTrain) {
            return noTrain.apply(this);
        }
    }
}
