// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.explain;

import drumfall.solver.brief.Brief;
import drumfall.solver.brief.Objective;
import drumfall.solver.rating.Cell;
import drumfall.solver.rating.Rating;
import drumfall.solver.train.Train;
import java.util.List;
import java.util.stream.IntStream;

/**
 * How a train of the maker's own stands to a front.
 *
 * @param rating the train held against the brief
 * @param place where it stands
 * @param options numbers of the listed options that say so, from 1: the one it is or that stands for it, or those that beat
 *     it; empty if it misses a demand or nothing is known to beat it
 */
public record Standing(Rating rating, Place place, List<Integer> options) {
    /** Where a train stands. */
    public enum Place {
        /** It misses a demand. */
        MISSES,
        /** It is one of the listed options. */
        LISTED,
        /** A listed option has the same objectives, and room where that counts, at their resolutions and stands for it. */
        STOOD_FOR,
        /** A listed option is at least as good in every objective, and room where that counts, and better in one. */
        BEATEN,
        /** It meets the brief and nothing found so far beats it; the search was stopped before this train came up. */
        NOT_BEATEN_SO_FAR,
        /** It meets every demand on its figures and a complete front is without it: its arbors have no places. */
        NO_PLACES
    }

    /** Copies the list. */
    public Standing {
        options = List.copyOf(options);
    }

    /**
     * Holds a train against a front. Where the brief wants the movement small, a train whose cell lacks the room that it takes
     * is held by its objectives alone, as one without places is; see
     * {@link drumfall.solver.rating.placing.LeastRooms#roomed}.
     *
     * @param rating of the train against the brief of the front
     * @param front the listed options in order
     * @param searched the brief as it was searched, whose steps tell trains apart, see
     *     {@link drumfall.solver.search.SearchOutcome#searched}
     */
    public static Standing of(Rating rating, List<Rating> front, Brief searched) {
        List<Objective> steps = searched.objectives();
        Standing standing = of(
                rating.toldApart(steps),
                front.stream().map(option -> option.toldApart(steps)).toList());
        return new Standing(rating, standing.place, standing.options);
    }

    /**
     * The same in the brief's own steps.
     *
     * @param rating of the train against the brief of the front
     * @param front the listed options in order
     */
    public static Standing of(Rating rating, List<Rating> front) {
        if (!rating.feasible()) {
            return new Standing(rating, Place.MISSES, List.of());
        }
        List<Train> trains = front.stream().map(Rating::train).toList();
        int listed = trains.indexOf(rating.train());
        if (listed >= 0) {
            return new Standing(rating, Place.LISTED, List.of(listed + 1));
        }
        int known = rating.cell().numbers().size();
        List<Cell> cells =
                front.stream().map(option -> option.cell().first(known)).toList();
        int like = cells.indexOf(rating.cell());
        if (like >= 0) {
            return new Standing(rating, Place.STOOD_FOR, List.of(like + 1));
        }
        List<Integer> beating = IntStream.range(0, front.size())
                .filter(i -> cells.get(i).dominates(rating.cell()))
                .mapToObj(i -> i + 1)
                .toList();
        return new Standing(rating, beating.isEmpty() ? Place.NOT_BEATEN_SO_FAR : Place.BEATEN, beating);
    }

    /**
     * The same held against a front that is proved complete, which only trains without places escape; see
     * {@link drumfall.solver.rating.Refused}.
     */
    public Standing proved() {
        return place == Place.NOT_BEATEN_SO_FAR ? new Standing(rating, Place.NO_PLACES, options) : this;
    }
}
