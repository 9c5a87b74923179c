// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.terminal;

import drumfall.solver.brief.Arrangement;
import drumfall.solver.layout.Layout;
import drumfall.solver.layout.LayoutOutcome.Merit;
import drumfall.solver.layout.LayoutOutcome.Scope;
import drumfall.solver.layout.Shortfall;
import drumfall.solver.layout.check.LayoutCheck;
import drumfall.solver.rating.Rating;
import drumfall.solver.rating.TrainRater;
import drumfall.solver.rating.placing.PlacedPower;
import drumfall.solver.rating.placing.Placement;
import drumfall.solver.rating.placing.TrainPlacing;
import drumfall.solver.rating.placing.WeightBesideBob;
import drumfall.solver.rating.why.WhereFromBook;
import drumfall.solver.train.Train;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.BooleanSupplier;

/**
 * Where a train's arbors stand, or why they stand nowhere.
 *
 * @param standing what is known of the places
 * @param layout the places, if there are any
 * @param merit how good places that were looked for are
 * @param scope how far the proof reaches that there are none
 * @param conflicts of places that were read, all that they violate; of places that do not exist, the nearest to fitting
 */
record TrainPlaces(
        Standing standing,
        Optional<Layout> layout,
        Optional<Merit> merit,
        Optional<Scope> scope,
        List<Shortfall> conflicts) {
    /** What is known of the places. */
    enum Standing {
        /** Looked for and found. */
        PLACED,
        /** The brief asks for none. */
        LEFT_UNPLACED,
        /** Proved to be none. */
        NO_PLACE,
        /** There are no parts to be placed. */
        UNDRAWN,
        /** The work was stopped. */
        STOPPED,
        /** Read from a file, and sound. */
        SOUND,
        /** Read from a file, and in conflict. */
        UNSOUND
    }

    /** Copies the list. */
    TrainPlaces {
        conflicts = List.copyOf(conflicts);
    }

    /** Least running weight of the train where it stands, kg; empty without sound places. */
    OptionalDouble leastWeight(TrainRater rater, Train train) {
        return layout.isEmpty() || standing == Standing.UNSOUND
                ? OptionalDouble.empty()
                : OptionalDouble.of(PlacedPower.walk(rater, train, layout.get()).leastWeight());
    }

    /** Where the figures of a rating come from, those of sound places among them. */
    WhereFromBook book(TrainRater rater, Rating rating) {
        return layout.filter(placed -> standing != Standing.UNSOUND)
                .map(placed -> WhereFromBook.of(rater, rating, placed))
                .orElseGet(() -> WhereFromBook.of(rater, rating));
    }

    /** The weight beside the swinging bob; empty without sound places or without a weight. */
    Optional<WeightBesideBob> beside(TrainRater rater, Train train, OptionalDouble weight) {
        return weight.isEmpty() || standing == Standing.UNSOUND
                ? Optional.empty()
                : layout.map(placed -> WeightBesideBob.of(rater, train, placed, weight.getAsDouble()));
    }

    /** Looks for places as the brief wishes. */
    static TrainPlaces sought(TrainRater rater, TrainPlacing placing, Train train, BooleanSupplier cancelled) {
        return leavesUnplaced(rater) ? without(Standing.LEFT_UNPLACED) : of(placing.place(train, cancelled));
    }

    static boolean leavesUnplaced(TrainRater rater) {
        return rater.brief().frame().arrangement() == Arrangement.UNPLACED;
    }

    private static TrainPlaces of(Placement placement) {
        if (placement instanceof Placement.Placed placed) {
            return new TrainPlaces(
                    Standing.PLACED,
                    Optional.of(placed.layout()),
                    Optional.of(placed.merit()),
                    Optional.empty(),
                    List.of());
        }
        if (placement instanceof Placement.NoPlace none) {
            return new TrainPlaces(
                    Standing.NO_PLACE,
                    Optional.empty(),
                    Optional.empty(),
                    Optional.of(none.scope()),
                    List.of(none.closest()));
        }
        return without(placement instanceof Placement.Undrawn ? Standing.UNDRAWN : Standing.STOPPED);
    }

    private static TrainPlaces without(Standing standing) {
        return new TrainPlaces(standing, Optional.empty(), Optional.empty(), Optional.empty(), List.of());
    }

    /** Places that were read, checked by who knows nothing of how places are found. */
    static TrainPlaces read(Layout layout) {
        List<Shortfall> faults = LayoutCheck.faults(layout);
        return new TrainPlaces(
                faults.isEmpty() ? Standing.SOUND : Standing.UNSOUND,
                Optional.of(layout),
                Optional.empty(),
                Optional.empty(),
                faults);
    }

    /** How a command ends that asked for the places of a train that meets every demand. */
    ExitCode code() {
        return switch (standing) {
            case PLACED, LEFT_UNPLACED, SOUND -> ExitCode.DONE;
            case STOPPED -> ExitCode.STOPPED;
            case NO_PLACE, UNDRAWN, UNSOUND -> ExitCode.DEMAND_MISSED;
        };
    }
}
