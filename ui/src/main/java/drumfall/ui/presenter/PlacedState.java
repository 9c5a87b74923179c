// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.presenter;

import drumfall.solver.layout.Layout;
import drumfall.solver.layout.LayoutOutcome.Merit;
import drumfall.solver.train.Train;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What there is to see of the layout of the chosen train. */
public sealed interface PlacedState {
    /** The layout on the screen: the one asked for, or the last one of the same train. */
    Optional<Seen> seen();

    /** What is the matter and what to do next; empty if all is well. */
    Optional<String> sentence();

    /** One word for the state, as texts are named by it. */
    String key();

    /** Whether a layout is being looked for. */
    default boolean busy() {
        return false;
    }

    /**
     * A layout and its train.
     *
     * @param layout where everything stands
     * @param train gives the counts
     * @param front what stands before the front plate
     */
    record Seen(Layout layout, Train train, PlacedFront front) {
        /** Checks that layout and train have the same meshes. */
        public Seen {
            int placed = layout.need().parts().meshes().size();
            if (placed != train.meshes().size()) {
                throw new IllegalArgumentException(
                        "The meshes (%d) of the layout must be those (%d) of the train. Maybe it is of another train."
                                .formatted(placed, train.meshes().size()));
            }
        }
    }

    /** No train is chosen. */
    record NoTrain() implements PlacedState {
        @Override
        public String key() {
            return "notrain";
        }

        @Override
        public Optional<Seen> seen() {
            return Optional.empty();
        }

        @Override
        public Optional<String> sentence() {
            return Optional.of(Texts.of("placed.notrain") + " " + Texts.of("placed.notrain.next"));
        }
    }

    /**
     * Being placed.
     *
     * @param seen the last layout of the same train
     */
    record Placing(Optional<Seen> seen) implements PlacedState {
        @Override
        public String key() {
            return "placing";
        }

        @Override
        public Optional<String> sentence() {
            return Optional.of(Texts.of("placed.busy"));
        }

        @Override
        public boolean busy() {
            return true;
        }
    }

    /**
     * Placed.
     *
     * @param layout the layout
     * @param merit what is known of it
     * @param least the weight that drives the train so placed
     * @param bob the recommended weight beside the bob; empty if no weight drives the train
     * @param size the room that it takes
     */
    record Placed(Seen layout, Merit merit, PlacedLeast least, Optional<PlacedBob> bob, PlacedSize size)
            implements PlacedState {
        @Override
        public String key() {
            return "placed";
        }

        @Override
        public Optional<Seen> seen() {
            return Optional.of(layout);
        }

        @Override
        public Optional<String> sentence() {
            Optional<String> found =
                    merit == Merit.BEST_FOUND ? Optional.of(Texts.of("placed.bestfound")) : Optional.empty();
            Optional<String> undrawn = layout.front().refusal().map(reason -> Texts.of("placed.front.undrawn", reason));
            String all = Stream.of(found, bob.flatMap(PlacedBob::words), undrawn)
                    .flatMap(Optional::stream)
                    .collect(Collectors.joining(" "));
            return Optional.of(all).filter(words -> !words.isEmpty());
        }
    }

    /**
     * There is no layout, or placing was stopped or broke down.
     *
     * @param seen the last layout of the same train
     * @param words what is the matter and what to do next
     */
    record Unplaced(Optional<Seen> seen, String words) implements PlacedState {
        @Override
        public String key() {
            return "unplaced";
        }

        @Override
        public Optional<String> sentence() {
            return Optional.of(words);
        }
    }
}
