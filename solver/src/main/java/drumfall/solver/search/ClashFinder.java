// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.search;

import drumfall.solver.brief.Brief;
import drumfall.solver.brief.Locks;
import drumfall.solver.brief.MeshLock;
import drumfall.solver.brief.Objective;
import drumfall.solver.brief.ObjectiveFigure;
import drumfall.solver.quantity.Dimension;
import drumfall.solver.quantity.Quantity;
import drumfall.solver.rating.Demand;
import drumfall.solver.rating.TrainRater;
import drumfall.solver.search.SearchProgress.Stage;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;
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
 */
final class ClashFinder {
    /** Demands that can be dropped; the others are choices of the brief or laws of the trade. */
    private static final List<Demand> DROPPABLE = List.of(
            Demand.RUN_AT_LEAST,
            Demand.RUN_AT_MOST,
            Demand.SINGLE_LAYER,
            Demand.WEIGHT_LIMIT,
            Demand.LINE_LOAD,
            Demand.PENDULUM_LENGTH,
            Demand.BEATS_PER_HOUR,
            Demand.SECONDS_HAND,
            Demand.PRINT_BED,
            Demand.TOOTH_SIZE,
            Demand.FRAME,
            Demand.CLEARANCE);

    private static final Objective WEIGHT =
            new Objective(ObjectiveFigure.RECOMMENDED_WEIGHT, Optional.of(Quantity.parse(Dimension.NUMBER, "10 %")));

    /** A maker waits for a reason, but not for long; s in nanoseconds. */
    private static final long TIME = 30_000_000_000L;

    private final Brief brief;
    private final SearchListener listener;
    private final BooleanSupplier cancelled;
    private final List<HeldDemand> demands;
    private final List<Long> complements = new ArrayList<>();
    private int asked;

    private ClashFinder(Brief brief, SearchListener listener, BooleanSupplier cancelled) {
        // Whether trains exist does not depend on what is wanted of them, and one objective is the quickest.
        this.brief = brief.withObjectives(List.of(WEIGHT));
        this.listener = listener;
        long start = System.nanoTime();
        this.cancelled = () -> cancelled.getAsBoolean() || System.nanoTime() - start > TIME;
        this.demands = demandsOf(brief);
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
        return new ClashFinder(brief, listener, cancelled).find();
    }

    private Clash find() {
        long all = (1L << demands.size()) - 1;
        long clash = withoutSuperfluous(all);
        while (true) {
            long candidate = smallestHittingSet(all);
            if (cancelled.getAsBoolean()) {
                return clash(clash, false);
            }
            if (Long.bitCount(candidate) >= Long.bitCount(clash)) {
                return clash(clash, true);
            }
            switch (existence(candidate)) {
                case NONE -> clash = candidate;
                case SOME -> complements.add(all & ~grown(candidate, all));
                case UNKNOWN -> {
                    return clash(clash, false);
                }
            }
        }
    }

    /** A clash from which no single demand can be dropped. */
    private long withoutSuperfluous(long all) {
        long clash = all;
        for (int i = demands.size() - 1; i >= 0; i--) {
            long smaller = clash & ~(1L << i);
            switch (existence(smaller)) {
                case NONE -> clash = smaller;
                case SOME -> complements.add(all & ~smaller);
                case UNKNOWN -> {
                    return clash;
                }
            }
        }
        return clash;
    }

    /** The set grown, demand by demand, as far as trains exist. */
    private long grown(long set, long all) {
        long grown = set;
        for (int i = 0; i < demands.size(); i++) {
            long larger = grown | 1L << i;
            if (larger != grown && larger != all && existence(larger) == TrainSearch.Existence.SOME) {
                grown = larger;
            }
        }
        return grown;
    }

    /** Of the smallest sets that meet every known complement, the one with the earliest demands. */
    private long smallestHittingSet(long all) {
        int size = 0;
        OptionalLong found = hittingSet(0, size);
        while (found.isEmpty() && !cancelled.getAsBoolean()) {
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
        if (more == 0 || cancelled.getAsBoolean()) {
            return OptionalLong.empty();
        }
        return IntStream.range(0, demands.size())
                .filter(i -> (missed.getAsLong() >> i & 1) == 1)
                .mapToObj(i -> hittingSet(set | 1L << i, more - 1))
                .flatMapToLong(OptionalLong::stream)
                .min();
    }

    private TrainSearch.Existence existence(long held) {
        asked++;
        listener.progressed(new SearchProgress(Stage.EXPLAINING, 0, 0, 1 - 1.0 / (1 + asked)));
        Set<Demand> waived = EnumSet.noneOf(Demand.class);
        Locks locks = Locks.NONE;
        for (int i = 0; i < demands.size(); i++) {
            HeldDemand demand = demands.get(i);
            boolean kept = (held >> i & 1) == 1;
            if (demand.demand() != Demand.LOCK && !kept) {
                waived.add(demand.demand());
            } else if (demand.demand() == Demand.LOCK && kept) {
                locks = merged(locks, demand.lock());
            }
        }
        return TrainSearch.existence(new TrainRater(brief.withLocks(locks), waived), cancelled);
    }

    private Clash clash(long set, boolean smallest) {
        List<HeldDemand> members = new ArrayList<>();
        for (int i = 0; i < demands.size(); i++) {
            if ((set >> i & 1) == 1) {
                members.add(demands.get(i));
            }
        }
        if (members.isEmpty() && noEscapeWheelKeepsTheArc()) {
            members.add(new HeldDemand(Demand.ARC, Demand.ARC.pointer(), Locks.NONE));
        }
        return new Clash(members, smallest);
    }

    /** The one demand that cannot be dropped and yet be asked for in vain: without an arc there is no weight to work out. */
    private boolean noEscapeWheelKeepsTheArc() {
        TrainRater rater = new TrainRater(brief);
        return rater.choices().escapeTeeth().stream().noneMatch(rater.limits()::arcKept);
    }

    private static List<HeldDemand> demandsOf(Brief brief) {
        List<HeldDemand> demands = new ArrayList<>();
        for (Demand demand : DROPPABLE) {
            if (asks(brief, demand)) {
                demands.add(new HeldDemand(demand, demand.pointer(), Locks.NONE));
            }
        }
        addLocks(brief.locks(), demands);
        return demands;
    }

    private static boolean asks(Brief brief, Demand demand) {
        return switch (demand) {
            case PENDULUM_LENGTH -> brief.beat().pendulumLength().isPresent();
            case BEATS_PER_HOUR -> brief.beat().beatsPerHour().isPresent();
            case SECONDS_HAND -> brief.beat().secondsHand();
            default -> true;
        };
    }

    private static void addLocks(Locks locks, List<HeldDemand> demands) {
        Optional<Integer> none = Optional.empty();
        locks.meshesAbove()
                .ifPresent(held -> add(
                        demands,
                        "/locks/meshesAbove",
                        new Locks(List.of(), Optional.of(held), none, Optional.empty(), none, none)));
        locks.meshesBelow()
                .ifPresent(held -> add(
                        demands,
                        "/locks/meshesBelow",
                        new Locks(List.of(), none, Optional.of(held), Optional.empty(), none, none)));
        locks.drumDiameter()
                .ifPresent(held -> add(
                        demands,
                        "/locks/drumDiameter",
                        new Locks(List.of(), none, none, Optional.of(held), none, none)));
        locks.falls()
                .ifPresent(held -> add(
                        demands,
                        "/locks/falls",
                        new Locks(List.of(), none, none, Optional.empty(), Optional.of(held), none)));
        locks.escapeTeeth()
                .ifPresent(held -> add(
                        demands,
                        "/locks/escapeTeeth",
                        new Locks(List.of(), none, none, Optional.empty(), none, Optional.of(held))));
        for (int i = 0; i < locks.meshes().size(); i++) {
            addMeshLocks(locks.meshes().get(i), "/locks/meshes/" + i, demands);
        }
    }

    private static void addMeshLocks(MeshLock lock, String pointer, List<HeldDemand> demands) {
        lock.wheel()
                .ifPresent(held -> add(
                        demands,
                        pointer + "/wheel",
                        only(new MeshLock(lock.place(), lock.wheel(), Optional.empty(), Optional.empty()))));
        lock.leaves()
                .ifPresent(held -> add(
                        demands,
                        pointer + "/leaves",
                        only(new MeshLock(lock.place(), Optional.empty(), lock.leaves(), Optional.empty()))));
        lock.module()
                .ifPresent(held -> add(
                        demands,
                        pointer + "/module",
                        only(new MeshLock(lock.place(), Optional.empty(), Optional.empty(), lock.module()))));
    }

    private static Locks only(MeshLock lock) {
        return new Locks(
                List.of(lock),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
    }

    private static void add(List<HeldDemand> demands, String pointer, Locks lock) {
        demands.add(new HeldDemand(Demand.LOCK, pointer, lock));
    }

    private static Locks merged(Locks first, Locks second) {
        List<MeshLock> meshes = new ArrayList<>(first.meshes());
        for (MeshLock lock : second.meshes()) {
            Optional<MeshLock> same = meshes.stream()
                    .filter(other -> other.place().equals(lock.place()))
                    .findFirst();
            same.ifPresent(meshes::remove);
            meshes.add(same.map(other -> new MeshLock(
                            lock.place(),
                            lock.wheel().or(other::wheel),
                            lock.leaves().or(other::leaves),
                            lock.module().or(other::module)))
                    .orElse(lock));
        }
        return new Locks(
                meshes,
                second.meshesAbove().or(first::meshesAbove),
                second.meshesBelow().or(first::meshesBelow),
                second.drumDiameter().or(first::drumDiameter),
                second.falls().or(first::falls),
                second.escapeTeeth().or(first::escapeTeeth));
    }
}
