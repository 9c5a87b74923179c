// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.search;

import drumfall.solver.brief.Brief;
import drumfall.solver.brief.Locks;
import drumfall.solver.rating.Demand;
import drumfall.solver.rating.Rating;
import drumfall.solver.rating.TrainRater;
import drumfall.solver.rating.placing.TrainPlacing;
import drumfall.solver.search.SearchProgress.Stage;
import drumfall.solver.train.Train;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.function.BooleanSupplier;
import java.util.stream.IntStream;

/**
 * Answers which of a brief's demands some train meets together, and learns from every answer.
 *
 * <p>Sets of demands are bits in the order of {@link #demands}. A train that was found meets more than it was asked for, so
 * each one answers for every set within what it meets: waiving a demand changes no other figure of a train whose teeth
 * print, and a train has places for fewer demands if it has them for more. A set that no train meets answers for every set
 * around it, since a train that met that one would meet the set, too.
 */
public final class DemandOracle {
    /** Demands without which half trains are many, so that they are given up last. */
    private static final List<Demand> NARROWING =
            List.of(Demand.LINE_LOAD, Demand.WEIGHT_LIMIT, Demand.BEATS_PER_HOUR, Demand.PENDULUM_LENGTH);

    private final Brief brief;
    private final SearchListener listener;
    private final BooleanSupplier cancelled;
    private final QuestionSettings settings;
    private final List<HeldDemand> demands;
    private final TrainRater strict;
    private final TrainPlacing placing;
    private final TrainRater unprinted;
    private final List<Long> met = new ArrayList<>();
    private final List<Long> clashing = new ArrayList<>();
    private int asked;

    /** What the oracle says of a set of demands. */
    public enum Answer {
        /** Some train meets them all. */
        SOME,
        /** No train does. */
        NONE,
        /** The time was over before it was known. */
        UNKNOWN
    }

    /**
     * An oracle that knows nothing yet.
     *
     * @param brief the brief
     * @param listener is told that clashes are looked for
     * @param cancelled asked all the time; once true every new question is answered as unknown
     */
    public DemandOracle(Brief brief, SearchListener listener, BooleanSupplier cancelled) {
        this(brief, listener, cancelled, QuestionSettings.USUAL);
    }

    /**
     * An oracle that knows nothing yet and answers in a stated way; its answers do not depend on it.
     *
     * @param brief the brief
     * @param listener is told that clashes are looked for
     * @param cancelled asked all the time; once true every new question is answered as unknown
     * @param settings which shortcuts are taken
     */
    public DemandOracle(Brief brief, SearchListener listener, BooleanSupplier cancelled, QuestionSettings settings) {
        this.brief = brief;
        this.listener = listener;
        this.cancelled = cancelled;
        this.settings = settings;
        this.demands = HeldDemand.of(brief);
        this.strict = new TrainRater(brief);
        this.placing = new TrainPlacing(strict);
        this.unprinted = new TrainRater(brief, EnumSet.of(Demand.TOOTH_SIZE));
    }

    /** Everything that can be dropped; the bit of each is its index. */
    public List<HeldDemand> demands() {
        return List.copyOf(demands);
    }

    /** Indices of the demands in the order in which giving them up costs least time. */
    public List<Integer> cheapestFirst() {
        return IntStream.range(0, demands.size())
                .boxed()
                .sorted(Comparator.<Integer>comparingInt(
                                i -> NARROWING.indexOf(demands.get(i).demand()))
                        .thenComparing(Comparator.reverseOrder()))
                .toList();
    }

    /** All demands together. */
    public long all() {
        return (1L << demands.size()) - 1;
    }

    /** Whether the time is over. */
    public boolean cancelled() {
        return cancelled.getAsBoolean();
    }

    /**
     * The demands of a set.
     *
     * @param set bits
     */
    public List<HeldDemand> demands(long set) {
        return IntStream.range(0, demands.size())
                .filter(i -> (set >> i & 1) == 1)
                .mapToObj(demands::get)
                .toList();
    }

    /**
     * Whether some train meets a set of demands.
     *
     * @param kept bits of the demands that are kept; all others are dropped
     */
    public Answer meets(long kept) {
        if (met.stream().anyMatch(set -> (kept & ~set) == 0)) {
            return Answer.SOME;
        }
        if (clashing.stream().anyMatch(set -> (set & ~kept) == 0)) {
            return Answer.NONE;
        }
        asked++;
        listener.progressed(new SearchProgress(Stage.EXPLAINING, 0, 0, 1 - 1.0 / (1 + asked)));
        Existence existence = TrainExistence.of(brief.withLocks(locks(kept)), waived(kept), cancelled, settings);
        if (settings.take(QuestionShortcut.LEARN_FROM_TRAINS)) {
            existence.train().ifPresent(rating -> met.add(kept | metBy(rating.train())));
        }
        if (existence.none() && settings.take(QuestionShortcut.LEARN_FROM_CLASHES)) {
            clashing.add(kept);
        }
        return existence.some() ? Answer.SOME : existence.none() ? Answer.NONE : Answer.UNKNOWN;
    }

    /**
     * The largest set around a given one that a known train meets.
     *
     * @param kept bits that some train is known to meet
     */
    public long widened(long kept) {
        return met.stream()
                .filter(set -> (kept & ~set) == 0)
                .max((a, b) -> Integer.compare(Long.bitCount(a), Long.bitCount(b)))
                .orElse(kept);
    }

    /** Teeth that do not print are judged as those of a larger module, as they are where they need not print. */
    private long metBy(Train train) {
        Rating rating = strict.rate(train);
        boolean prints = rating.missed().noneMatch(figure -> figure.demand() == Demand.TOOTH_SIZE);
        long set = bits(prints ? rating : unprinted.rate(train));
        set = prints ? set : set & ~bit(Demand.TOOTH_SIZE);
        return placing.placeable(train, cancelled) ? set : set & ~placesAsked();
    }

    private long bits(Rating rating) {
        return IntStream.range(0, demands.size())
                .filter(i -> demands.get(i).metBy(rating))
                .mapToLong(i -> 1L << i)
                .sum();
    }

    /**
     * What a train that cannot be placed might meet with the others waived; none of it is claimed. Teeth that print belong to
     * it: the train's own may, and yet it stands only with a motion work whose teeth do not.
     */
    private long placesAsked() {
        long directions = IntStream.range(0, demands.size())
                .filter(i -> demands.get(i).holdsDirection())
                .mapToLong(i -> 1L << i)
                .sum();
        return bit(Demand.TOOTH_SIZE) | bit(Demand.FRAME) | bit(Demand.CLEARANCE) | directions;
    }

    private long bit(Demand demand) {
        return IntStream.range(0, demands.size())
                .filter(i -> demands.get(i).demand() == demand)
                .mapToLong(i -> 1L << i)
                .sum();
    }

    private Set<Demand> waived(long kept) {
        Set<Demand> waived = EnumSet.noneOf(Demand.class);
        demands(all() & ~kept).forEach(held -> waived.add(held.demand()));
        waived.remove(Demand.LOCK);
        return waived;
    }

    private Locks locks(long kept) {
        return demands(kept).stream()
                .map(HeldDemand::lock)
                .reduce(HeldDemand::merged)
                .orElse(Locks.NONE);
    }
}
