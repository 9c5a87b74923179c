// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.wording;

import drumfall.solver.brief.Brief;
import drumfall.solver.brief.LeastRoom;
import drumfall.solver.brief.RoomFigure;
import drumfall.solver.quantity.Quantity;
import drumfall.solver.rating.Rating;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Words and figures for the room that movements take, where a brief wants it small: as trains are told apart by it, rounded up
 * to whole steps of its resolution.
 *
 * @param least what the brief wants small
 * @param objectives how many figures stand before it in a cell
 * @param figures units and digits
 */
public record RoomWording(LeastRoom least, int objectives, FigureWording figures) {
    /**
     * Words for a brief; empty if it does not want the room small.
     *
     * @param brief the brief
     * @param figures units and digits
     */
    public static Optional<RoomWording> of(Brief brief, FigureWording figures) {
        return brief.frame()
                .least()
                .map(least -> new RoomWording(least, brief.objectives().size(), figures));
    }

    /**
     * What a figure of the room is called, for example "movement height".
     *
     * @param figure which
     */
    public static String name(RoomFigure figure) {
        return Words.BOOK.phrase("room." + figure.name());
    }

    /** What is wanted small, as it is called. */
    public String name() {
        return name(least.figure());
    }

    /**
     * The steps of room in a rating's cell; empty if they were not measured.
     *
     * @param rating of the brief
     */
    private OptionalLong steps(Rating rating) {
        List<Long> numbers = rating.cell().numbers();
        return numbers.size() <= objectives || numbers.get(objectives) == Long.MAX_VALUE
                ? OptionalLong.empty()
                : OptionalLong.of(numbers.get(objectives));
    }

    /** Whether the room that a train takes is known. */
    public boolean known(Rating rating) {
        return steps(rating).isPresent();
    }

    private Optional<BigFraction> exact(Rating rating) {
        return steps(rating).stream().mapToObj(least::size).findFirst();
    }

    /**
     * The room that a train takes, rounded up to whole steps, m or m&sup2;; empty if it was not measured.
     *
     * @param rating of the brief
     */
    public OptionalDouble size(Rating rating) {
        return exact(rating).stream().mapToDouble(BigFraction::doubleValue).findFirst();
    }

    /**
     * Whether one train takes less room than another one, by a step at least; not if that is not known of both.
     *
     * @param option one train
     * @param other the other one
     */
    public boolean less(Rating option, Rating other) {
        return known(option)
                && known(other)
                && steps(option).getAsLong() < steps(other).getAsLong();
    }

    /**
     * The room that a train takes in words, with as many digits as tell steps apart; said to be that or less if it is small
     * enough.
     *
     * @param rating of a train whose room is known
     */
    public String shown(Rating rating) {
        BigFraction size = exact(rating).orElseThrow();
        String words = figures.precise(least.figure().dimension(), size.doubleValue());
        // A step less would be less than is enough, so it was not told.
        boolean small = least.enough()
                .filter(enough -> size.subtract(least.resolution().exact()).compareTo(enough.exact()) < 0)
                .isPresent();
        return small ? Words.BOOK.phrase("room.enough", words) : words;
    }

    /** The steps in which it is told apart, as typed. */
    public String resolution() {
        return least.resolution().text();
    }

    /** What is small enough, as typed; empty if every size counts. */
    public Optional<String> enough() {
        return least.enough().map(Quantity::text);
    }
}
