// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.search;

import drumfall.solver.layout.SizeLimit;
import drumfall.solver.rating.Rating;
import drumfall.solver.rating.placing.LeastRooms;
import drumfall.solver.rating.placing.TrainPlacing;
import drumfall.solver.train.Train;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.function.BooleanSupplier;
import java.util.function.Function;

/**
 * Finds the front of a brief that asks for little room besides its objectives, by searching with less and less room (the
 * epsilon constraint method: Haimes, Lasdon and Wismer, IEEE Transactions on Systems, Man and Cybernetics, 1971, from
 * memory).
 *
 * <p>The front of each search is complete for the trains that go into its room. The next search gets a step less than the
 * largest of that front takes. Why the trains of all fronts, less those that another one beats, are the front: let a train
 * {@code t} of objectives {@code c} and room {@code s} be beaten by none, and take the last search whose room is at least
 * {@code s}. Its front holds a train {@code u} at least as good as {@code t} in every objective. The next room is less than
 * {@code s}, so no train of this front takes more than {@code s}; {@code u} does not, and since it does not beat {@code t},
 * both have the same cell. No room that is needed is passed over, and the last search finds nothing, or only trains that are
 * small enough.
 *
 * <p>Rejected: the room as an objective among others. On a grid of directions a smaller wheel can lead to a larger layout,
 * so that no half could then stand in place of another.
 */
final class RoomSearch {
    private final LeastRooms rooms;
    private final SearchListener listener;
    private final BooleanSupplier cancelled;
    private final FrontBound bound;
    private final Map<Train, Rating> known = new LinkedHashMap<>();
    private Optional<SearchProgress.Room> searched = Optional.empty();

    RoomSearch(LeastRooms rooms, SearchListener listener, BooleanSupplier cancelled, FrontBound bound) {
        this.rooms = rooms;
        this.listener = listener;
        this.cancelled = cancelled;
        this.bound = bound;
    }

    /**
     * Searches in less and less room.
     *
     * @param search makes a search in all the room there is, of a listener
     * @param placing places the trains
     */
    SearchOutcome outcome(Function<SearchListener, TrainSearch> search, TrainPlacing placing) {
        TrainSearch first = search.apply(new Widened());
        SearchOutcome found = inLessAndLess(first, placing);
        return found.front().isEmpty() ? first.explained(found) : found;
    }

    /** Tells of what a search finds beside what is known of larger rooms. */
    private final class Widened implements SearchListener {
        @Override
        public void frontChanged(List<Rating> found) {
            Map<Train, Rating> both = new LinkedHashMap<>(known);
            found.forEach(rating -> both.putIfAbsent(rating.train(), rating.withRoom(Long.MAX_VALUE)));
            listener.frontChanged(unbeaten(both.values().stream().toList()));
        }

        @Override
        public void progressed(SearchProgress progress) {
            listener.progressed(progress.within(searched));
        }
    }

    private SearchOutcome inLessAndLess(TrainSearch first, TrainPlacing placing) {
        TrainSearch search = first;
        long room = Long.MAX_VALUE;
        while (true) {
            SearchOutcome found = search.found();
            List<Rating> sized = sized(found.front(), room);
            sized.forEach(rating -> known.put(rating.train(), rating));
            List<Rating> front = front();
            listener.frontChanged(front);
            if (found instanceof SearchOutcome.Stopped || cancelled.getAsBoolean() || bound.exceededBy(front.size())) {
                return new SearchOutcome.Stopped(front);
            }
            long most = sized.stream().mapToLong(RoomSearch::room).max().orElse(rooms.enough());
            if (most <= rooms.enough()) {
                return new SearchOutcome.Proved(front());
            }
            room = most - 1;
            List<Rating> fitting = found.front().stream()
                    .filter(rating -> room(known.get(rating.train())) < most)
                    .toList();
            Optional<SizeLimit> limit = Optional.of(rooms.limit(room));
            searched = Optional.of(new SearchProgress.Room(
                    rooms.asked().figure(), rooms.asked().size(room).doubleValue()));
            search = search.within(train -> placing.blame(train, limit, cancelled), fitting);
        }
    }

    /** A train whose room could not be measured before the work was cancelled takes that of the search at most. */
    private List<Rating> sized(List<Rating> found, long room) {
        List<Rating> sized = new ArrayList<>();
        for (Rating rating : found) {
            OptionalLong steps = rooms.steps(rating.train(), cancelled);
            sized.add(rating.withRoom(steps.orElse(room)));
        }
        return sized;
    }

    private static long room(Rating rating) {
        List<Long> cell = rating.cell().numbers();
        return cell.get(cell.size() - 1);
    }

    private List<Rating> front() {
        return unbeaten(List.copyOf(known.values()));
    }

    /** First objective first. */
    private static List<Rating> unbeaten(List<Rating> ratings) {
        return ratings.stream()
                .filter(rating ->
                        ratings.stream().noneMatch(other -> other.cell().dominates(rating.cell())))
                .sorted(Comparator.comparing(
                        rating -> rating.cell().numbers().stream()
                                .mapToLong(number -> number)
                                .toArray(),
                        Arrays::compare))
                .toList();
    }
}
