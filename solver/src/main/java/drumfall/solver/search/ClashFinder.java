// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.search;

import drumfall.solver.brief.Brief;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalLong;
import java.util.function.BooleanSupplier;
import java.util.stream.IntStream;

/**
 * Finds a smallest set of demands that clash.
 *
 * <p>Any clash must contain, of every set of demands that some train meets, at least one demand outside it. A smallest set
 * that hits all complements known so far is tried; if trains meet it, it is grown as far as trains exist, and the
 * complement of the grown set joins the known ones. The first that no train meets is a smallest clash (implicit hitting
 * sets: Ignatiev, Previti, Liffiton and Marques-Silva, "Smallest MUS Extraction with Minimal Hitting Set Dualization", CP
 * 2015).
 *
 * <p>Two things make that quicker. A clash thinned demand by demand comes first: as soon as the sets that hit all complements
 * are as large, it is a smallest one and nothing is asked of them; and what its thinning learns are complements, too. A set
 * that some train meets is widened to all that this train meets, which is as true and has a smaller complement, hit by
 * fewer sets.
 */
final class ClashFinder {
    /** A maker waits for a reason, but not for long; s in nanoseconds. */
    private static final long TIME = 30_000_000_000L;

    private final Brief brief;
    private final QuestionSettings settings;
    private final DemandOracle oracle;
    private final List<Long> complements = new ArrayList<>();

    private ClashFinder(Brief brief, SearchListener listener, BooleanSupplier cancelled, QuestionSettings settings) {
        this.brief = brief;
        this.settings = settings;
        long start = System.nanoTime();
        this.oracle = new DemandOracle(
                brief, listener, () -> cancelled.getAsBoolean() || System.nanoTime() - start > TIME, settings);
    }

    /**
     * A smallest clash of a brief that no train meets.
     *
     * @param brief the brief
     * @param listener is told how it goes on
     * @param cancelled asked all the time; once true, or when the time for it is over, the smallest clash known is given
     *     as not proven smallest
     */
    static Clash smallestClash(Brief brief, SearchListener listener, BooleanSupplier cancelled) {
        return smallestClash(brief, listener, cancelled, QuestionSettings.USUAL);
    }

    /** A smallest clash, found in a stated way; how many demands it holds does not depend on it. */
    static Clash smallestClash(
            Brief brief, SearchListener listener, BooleanSupplier cancelled, QuestionSettings settings) {
        return new ClashFinder(brief, listener, cancelled, settings).find();
    }

    private Clash find() {
        long all = oracle.all();
        long clash = settings.take(QuestionShortcut.THIN_FIRST) ? withoutSuperfluous(all) : all;
        while (true) {
            long candidate = smallestHittingSet(all);
            if (oracle.cancelled()) {
                return clash(clash, false);
            }
            if (Long.bitCount(candidate) >= Long.bitCount(clash)) {
                return clash(clash, true);
            }
            switch (oracle.meets(candidate)) {
                case NONE -> clash = candidate;
                case SOME -> complements.add(all & ~grown(candidate, all));
                case UNKNOWN -> {
                    return clash(clash, false);
                }
            }
        }
    }

    /** A clash from which no single demand can be dropped, unless the time is over before. */
    private long withoutSuperfluous(long all) {
        long clash = all;
        for (int i : oracle.cheapestFirst()) {
            long smaller = clash & ~(1L << i);
            switch (oracle.meets(smaller)) {
                case NONE -> clash = smaller;
                case SOME -> complements.add(all & ~widened(smaller));
                case UNKNOWN -> {
                    return clash;
                }
            }
        }
        return clash;
    }

    /** The set grown, demand by demand, as far as trains exist. */
    private long grown(long set, long all) {
        long grown = widened(set);
        for (int i = 0; i < oracle.demands().size(); i++) {
            long larger = grown | 1L << i;
            if (larger != grown && larger != all && oracle.meets(larger) == DemandOracle.Answer.SOME) {
                grown = widened(larger);
            }
        }
        return grown;
    }

    private long widened(long met) {
        return settings.take(QuestionShortcut.WIDEN_MET) ? oracle.widened(met) : met;
    }

    /** Of the smallest sets that meet every known complement, the one with the earliest demands. */
    private long smallestHittingSet(long all) {
        int size = 0;
        OptionalLong found = hittingSet(0, size);
        while (found.isEmpty() && !oracle.cancelled()) {
            size++;
            found = hittingSet(0, size);
        }
        return found.orElse(all);
    }

    /** A set must take a demand of the first complement it misses: few branches, however many demands there are. */
    private OptionalLong hittingSet(long set, int more) {
        OptionalLong missed = complements.stream()
                .mapToLong(c -> c)
                .filter(c -> (set & c) == 0)
                .findFirst();
        if (missed.isEmpty()) {
            return OptionalLong.of(set);
        }
        if (more == 0 || oracle.cancelled()) {
            return OptionalLong.empty();
        }
        return IntStream.range(0, oracle.demands().size())
                .filter(i -> (missed.getAsLong() >> i & 1) == 1)
                .mapToObj(i -> hittingSet(set | 1L << i, more - 1))
                .flatMapToLong(OptionalLong::stream)
                .min();
    }

    private Clash clash(long set, boolean smallest) {
        List<HeldDemand> members = new ArrayList<>(oracle.demands(set));
        if (members.isEmpty() && Arcs.noEscapeWheelKeepsTheArc(brief)) {
            members.add(Arcs.HELD);
        }
        return new Clash(members, smallest);
    }
}
