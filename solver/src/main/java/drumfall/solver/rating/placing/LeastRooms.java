// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.rating.placing;

import drumfall.solver.brief.LeastRoom;
import drumfall.solver.layout.SizeLimit;
import drumfall.solver.layout.Wish;
import drumfall.solver.quantity.Dimension;
import drumfall.solver.quantity.Quantity;
import drumfall.solver.rating.Rating;
import drumfall.solver.rating.TrainRater;
import drumfall.solver.train.Train;
import java.math.BigInteger;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.function.BooleanSupplier;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * The least room that trains take, in whole steps of the resolution that a brief asks for; what is as small as is enough has
 * the number of steps of what is enough. Not safe for use by several threads at once.
 */
public final class LeastRooms {
    private static final BigInteger NANOMETRES = BigInteger.valueOf(1_000_000_000);

    private final TrainPlacing placing;
    private final LeastRoom asked;
    private final Wish wish;
    private final BigFraction step;
    private final long enough;
    private final Map<Train, OptionalLong> known = new HashMap<>();

    private LeastRooms(TrainPlacing placing, LeastRoom asked) {
        this.placing = placing;
        this.wish = wish(asked);
        this.asked = asked;
        this.step = nanometres(asked.resolution());
        this.enough =
                asked.enough().map(LeastRooms::nanometres).map(this::steps).orElse(1L);
    }

    /**
     * The rooms that a brief asks for; empty if it asks for none.
     *
     * @param rater the rater of the brief
     * @param placing places its trains
     */
    public static Optional<LeastRooms> of(TrainRater rater, TrainPlacing placing) {
        return rater.brief().frame().least().map(asked -> new LeastRooms(placing, asked));
    }

    /**
     * A rating with the room that its train takes in its cell, behind the objectives, if the brief asks for little room.
     *
     * @param rater rated it
     * @param rating of a train that meets every demand
     * @param cancelled asked now and then; true ends the work, and the rating is as it was
     */
    public static Rating roomed(TrainRater rater, Rating rating, BooleanSupplier cancelled) {
        Optional<LeastRooms> rooms = of(rater, new TrainPlacing(rater));
        if (rooms.isEmpty()) {
            return rating;
        }
        OptionalLong steps = rooms.get().steps(rating.train(), cancelled);
        return steps.isEmpty() ? rating : rating.withRoom(steps.getAsLong());
    }

    static Wish wish(LeastRoom asked) {
        return switch (asked.figure()) {
            case MOVEMENT_HEIGHT -> Wish.COMPACT;
            case MOVEMENT_WIDTH -> Wish.NARROW;
            case MOVEMENT_DEPTH -> Wish.SHALLOW;
            case PLATE_AREA -> Wish.SMALL_PLATE;
        };
    }

    /** Nanometres, or square nanometres of an area, exactly. */
    private static BigFraction nanometres(Quantity size) {
        return size.exact().multiply(NANOMETRES.pow(size.dimension() == Dimension.AREA ? 2 : 1));
    }

    private long steps(BigFraction size) {
        BigFraction steps = size.divide(step);
        BigInteger[] whole = steps.getNumerator().divideAndRemainder(steps.getDenominator());
        return whole[0].longValueExact() + (whole[1].signum() > 0 ? 1 : 0);
    }

    /** The wish as the brief has it. */
    public LeastRoom asked() {
        return asked;
    }

    /** The number of steps at which a movement is small enough. */
    public long enough() {
        return enough;
    }

    /**
     * The steps, rounded up, of the least room that a train takes; empty if it has no place or the work was cancelled.
     *
     * @param train the train
     * @param cancelled asked now and then; true ends the work
     */
    public OptionalLong steps(Train train, BooleanSupplier cancelled) {
        OptionalLong before = known.get(train);
        if (before != null) {
            return before;
        }
        OptionalLong least = placing.least(train, wish, cancelled);
        if (least.isEmpty()) {
            return OptionalLong.empty();
        }
        long steps = Math.max(enough, steps(BigFraction.of(least.getAsLong())));
        known.put(train, OptionalLong.of(steps));
        return OptionalLong.of(steps);
    }

    /**
     * The most that a layout of so many steps measures.
     *
     * @param steps their number
     */
    public SizeLimit limit(long steps) {
        BigFraction most = step.multiply(BigInteger.valueOf(steps));
        return new SizeLimit(
                wish, most.getNumerator().divide(most.getDenominator()).longValueExact());
    }
}
