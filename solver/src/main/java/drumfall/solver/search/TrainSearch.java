// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.search;

import drumfall.solver.brief.Brief;
import drumfall.solver.halves.HalfTables;
import drumfall.solver.halves.LowerHalf;
import drumfall.solver.halves.LowerHalves;
import drumfall.solver.halves.PairFront;
import drumfall.solver.halves.UpperHalf;
import drumfall.solver.halves.UpperHalves;
import drumfall.solver.rating.CellFront;
import drumfall.solver.rating.PlaneLimits;
import drumfall.solver.rating.Refused;
import drumfall.solver.rating.TrainRater;
import drumfall.solver.rating.placing.TrainPlacing;
import drumfall.solver.rules.TrainRules;
import drumfall.solver.search.SearchProgress.Stage;
import drumfall.solver.train.Train;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.BooleanSupplier;
import java.util.function.IntPredicate;
import java.util.function.Predicate;

/**
 * Finds the front of a brief.
 *
 * <p>For every number of meshes below the centre the lower halves are listed, for every number above it the upper halves
 * to go with them, and the constraint model joins both. The same brief gives the same front.
 */
public final class TrainSearch {
    /** One mesh choice in so many at each place is tried first, for early options and quick comparisons. */
    private static final int[] SAMPLES = {7, 3};

    private final TrainRater all;
    private final SearchListener listener;
    private final BooleanSupplier cancelled;
    private final SearchSettings settings;
    private final Predicate<Train> placeable;
    private final Set<Train> newlyRefused = new LinkedHashSet<>();
    private TrainRater rater;
    private HalfTables tables;
    private final CellFront front;
    private final Map<Shape, Joined> joined = new HashMap<>();

    private record Shape(int above, int below) {}

    /** Halves that have been joined, each with each: what their trains can bring, the front has. */
    private record Joined(Set<UpperHalf> uppers, Set<LowerHalf> lowers) {}

    TrainSearch(
            TrainRater rater,
            SearchListener listener,
            BooleanSupplier cancelled,
            SearchSettings settings,
            Predicate<Train> placeable) {
        this.all = rater;
        this.rater = rater;
        this.tables = new HalfTables(rater);
        this.listener = listener;
        this.cancelled = cancelled;
        this.settings = settings;
        this.placeable = placeable;
        this.front = new CellFront(rater.objectives().asked());
    }

    /**
     * Searches the trains of a brief.
     *
     * @param brief the brief
     * @param listener is told how it goes on
     * @param cancelled asked all the time; once true the search ends within a tenth of a second
     */
    public static SearchOutcome run(Brief brief, SearchListener listener, BooleanSupplier cancelled) {
        return run(brief, listener, cancelled, SearchSettings.USUAL);
    }

    /**
     * Searches the trains of a brief in a stated way; the front does not depend on it.
     *
     * @param brief the brief
     * @param listener is told how it goes on
     * @param cancelled asked all the time; once true the search ends within a tenth of a second
     * @param settings which shortcuts are taken
     */
    public static SearchOutcome run(
            Brief brief, SearchListener listener, BooleanSupplier cancelled, SearchSettings settings) {
        return of(new TrainRater(brief), listener, cancelled, settings).outcome();
    }

    private static TrainSearch of(
            TrainRater rater, SearchListener listener, BooleanSupplier cancelled, SearchSettings settings) {
        TrainPlacing placing = new TrainPlacing(rater);
        return new TrainSearch(
                packing(rater, cancelled, settings),
                listener,
                cancelled,
                settings,
                train -> placing.placeable(train, cancelled));
    }

    private static TrainRater packing(TrainRater rater, BooleanSupplier cancelled, SearchSettings settings) {
        return settings.take(Shortcut.PACK_PLANES) ? rater.within(PlaneLimits.of(rater, cancelled)) : rater;
    }

    /**
     * Searches the trains of a brief without looking for a reason where there are none: the outcome is then proved and
     * empty.
     *
     * @param brief the brief
     * @param listener is told how it goes on
     * @param cancelled asked all the time; once true the search ends within a tenth of a second
     */
    public static SearchOutcome unexplained(Brief brief, SearchListener listener, BooleanSupplier cancelled) {
        return unexplained(brief, listener, cancelled, SearchSettings.USUAL);
    }

    static SearchOutcome unexplained(
            Brief brief, SearchListener listener, BooleanSupplier cancelled, SearchSettings settings) {
        return of(new TrainRater(brief), listener, cancelled, settings).found();
    }

    SearchOutcome outcome() {
        SearchOutcome found = found();
        if (found instanceof SearchOutcome.Stopped || !found.front().isEmpty()) {
            return found;
        }
        return new SearchOutcome.NoTrain(ClashFinder.smallestClash(all.brief(), listener, cancelled));
    }

    SearchOutcome found() {
        return inRounds() ? new SearchOutcome.Proved(front.ratings()) : new SearchOutcome.Stopped(front.ratings());
    }

    /**
     * Whether any train meets a brief with some demands waived; unknown if cancelled.
     *
     * @param rater rates against the brief, demands waived
     * @param cancelled asked all the time
     * @param settings which shortcuts are taken
     */
    static Existence existence(TrainRater rater, BooleanSupplier cancelled, QuestionSettings settings) {
        TrainPlacing placing = new TrainPlacing(rater);
        return existence(
                packing(rater, cancelled, settings.search()),
                cancelled,
                settings,
                train -> placing.placeable(train, cancelled));
    }

    /**
     * Whether any train that can be built meets a brief with some demands waived; unknown if cancelled.
     *
     * <p>Only trains that meet everything asked for and can be built come onto the front, so that the first one there is the
     * answer and the search ends; an empty front that is proved complete is the other answer.
     *
     * @param rater rates against the brief, demands waived
     * @param cancelled asked all the time
     * @param settings which shortcuts are taken
     * @param placeable whether the arbors of a train have a place
     */
    static Existence existence(
            TrainRater rater, BooleanSupplier cancelled, QuestionSettings settings, Predicate<Train> placeable) {
        boolean firstWillDo = settings.take(QuestionShortcut.FIRST_TRAIN);
        TrainSearch[] search = new TrainSearch[1];
        search[0] = new TrainSearch(
                rater,
                SearchListener.SILENT,
                () -> cancelled.getAsBoolean() || (firstWillDo && search[0].front.size() > 0),
                settings.search(),
                placeable);
        while (true) {
            boolean complete = search[0].throughAllShapes();
            if (search[0].front.size() > 0) {
                return Existence.of(search[0].front.ratings().get(0));
            }
            if (!complete) {
                return Existence.UNKNOWN;
            }
            if (!search[0].learnt()) {
                return Existence.NONE;
            }
        }
    }

    /**
     * Goes through all trains; those that could change the front are refused if their arbors have no place or if their weight
     * runs the clocks of too few builders. As long as
     * some are newly refused, all are gone through again, their halves distrusted. See {@link Refused} for why the last
     * front is complete.
     */
    private boolean inRounds() {
        do {
            if (!throughAllShapes()) {
                return false;
            }
        } while (learnt());
        return true;
    }

    /** Whether a train that would change the front has a place and serves enough builders; remembers those that do not. */
    private boolean hasPlace(Train train) {
        if (rater.refused().holds(train) || newlyRefused.contains(train)) {
            return false;
        }
        boolean placed = rater.servesBuilders(train) && placeable.test(train);
        if (!placed) {
            newlyRefused.add(train);
        }
        return placed;
    }

    /** Takes what was refused in a round into the next; false if there was nothing. */
    private boolean learnt() {
        if (newlyRefused.isEmpty()) {
            return false;
        }
        rater = all.knowing(rater.refused().and(List.copyOf(newlyRefused)));
        tables = tables.knowing(rater);
        newlyRefused.clear();
        return true;
    }

    private boolean throughAllShapes() {
        for (int below : rater.choices().meshesBelowLeft()) {
            tell(Stage.LISTING, 0, below, 0);
            if (!settings.take(Shortcut.LIST_HALVES)) {
                if (!throughShapes(
                        above -> search(new TrainRules(rater, above, below, front, this::hasPlace), above, below))) {
                    return false;
                }
                continue;
            }
            List<LowerHalf> known = List.of();
            if (settings.take(Shortcut.THIN_HALVES)) {
                for (int stride : SAMPLES) {
                    List<LowerHalf> sample = LowerHalves.sample(tables, below, stride, prospects(), cancelled);
                    if (rater.refused().isEmpty() && !throughShapes(above -> joinSample(above, stride, sample))) {
                        return false;
                    }
                    known = sample;
                }
            }
            List<LowerHalf> lowers = settings.take(Shortcut.THIN_HALVES)
                    ? LowerHalves.thinned(tables, below, known, prospects(), cancelled)
                    : LowerHalves.all(tables, below, cancelled);
            if (!throughShapes(above -> join(above, lowers))) {
                return false;
            }
        }
        return true;
    }

    /** The front that halves are held against. */
    private CellFront prospects() {
        return settings.take(Shortcut.KEEP_TO_FRONT)
                ? front
                : new CellFront(rater.objectives().asked());
    }

    private boolean throughShapes(IntPredicate shape) {
        for (int above : rater.choices().meshesAboveLeft()) {
            if (cancelled.getAsBoolean() || !shape.test(above)) {
                return false;
            }
        }
        return !cancelled.getAsBoolean();
    }

    private boolean joinSample(int above, int stride, List<LowerHalf> lowers) {
        if (lowers.isEmpty()) {
            return true;
        }
        tell(Stage.LISTING, above, lowers.get(0).meshes().size(), 0);
        return search(UpperHalves.sample(tables, above, stride, lowers, prospects(), cancelled), lowers);
    }

    /** Joins what has not been joined in an earlier round. */
    private boolean join(int above, List<LowerHalf> lowers) {
        if (lowers.isEmpty()) {
            return true;
        }
        int below = lowers.get(0).meshes().size();
        tell(Stage.LISTING, above, below, 0);
        List<UpperHalf> uppers = settings.take(Shortcut.THIN_HALVES)
                ? UpperHalves.thinned(tables, above, lowers, prospects(), cancelled)
                : UpperHalves.all(tables, above, lowers, cancelled);
        Shape shape = new Shape(above, below);
        Joined before = joined.getOrDefault(shape, new Joined(Set.of(), Set.of()));
        if (!search(less(uppers, before.uppers), lowers)
                || !search(common(uppers, before.uppers), less(lowers, before.lowers))) {
            return false;
        }
        if (settings.take(Shortcut.JOIN_ONCE)) {
            joined.put(shape, new Joined(Set.copyOf(uppers), Set.copyOf(lowers)));
        }
        return true;
    }

    private static <T> List<T> less(List<T> halves, Set<T> known) {
        return halves.stream().filter(half -> !known.contains(half)).toList();
    }

    private static <T> List<T> common(List<T> halves, Set<T> known) {
        return halves.stream().filter(known::contains).toList();
    }

    private boolean search(List<UpperHalf> uppers, List<LowerHalf> lowers) {
        if (settings.take(Shortcut.BEST_FIRST)) {
            PairFront best = PairFront.of(rater, uppers, lowers, front, cancelled);
            if (!decide(best.uppers(), best.lowers())) {
                return false;
            }
        }
        return decide(uppers, lowers);
    }

    private boolean decide(List<UpperHalf> uppers, List<LowerHalf> lowers) {
        if (cancelled.getAsBoolean()) {
            return false;
        }
        return uppers.isEmpty()
                || lowers.isEmpty()
                || search(
                        new TrainRules(rater, uppers, lowers, front, this::hasPlace),
                        uppers.get(0).meshes().size(),
                        lowers.get(0).meshes().size());
    }

    private boolean search(TrainRules rules, int above, int below) {
        return rules.search(
                cancelled,
                rating -> listener.frontChanged(front.ratings()),
                done -> tell(Stage.JOINING, above, below, done));
    }

    private void tell(Stage stage, int above, int below, double done) {
        listener.progressed(new SearchProgress(stage, above, below, done));
    }
}
