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
import drumfall.solver.halves.WantedPairs;
import drumfall.solver.layout.SizeLimit;
import drumfall.solver.rating.Blame;
import drumfall.solver.rating.CellFront;
import drumfall.solver.rating.PlaneLimits;
import drumfall.solver.rating.Rating;
import drumfall.solver.rating.Refused;
import drumfall.solver.rating.TrainRater;
import drumfall.solver.rating.placing.LeastRooms;
import drumfall.solver.rating.placing.TrainPlacing;
import drumfall.solver.rules.TrainRules;
import drumfall.solver.search.SearchProgress.Stage;
import drumfall.solver.train.Train;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BooleanSupplier;
import java.util.function.Function;
import java.util.function.IntPredicate;

/**
 * Finds the front of a brief.
 *
 * <p>For every number of meshes below the centre the lower halves are listed, for every number above it the upper halves
 * to go with them, and the constraint model joins both. The same brief gives the same front.
 */
public final class TrainSearch {
    /**
     * One mesh choice in so many at each place is tried first, at most, for early options and quick comparisons; fewer
     * would leave too little of what a sample of three meshes finds.
     */
    private static final int WIDEST_STRIDE = 5;

    /** A place with fewer choices is sampled more closely: it is quickly gone through, and few of few choices find nothing. */
    private static final int SAMPLED = 200;

    private final TrainRater all;
    private final SearchListener listener;
    private final BooleanSupplier cancelled;
    private final SearchSettings settings;
    private final Function<Train, Optional<Blame>> unplaced;
    private final FrontBound bound;
    private Refused.Fresh newlyRefused = new Refused.Fresh();
    private TrainRater rater;
    private HalfTables tables;
    private final CellFront front;
    private final Map<Shape, Joined> joined = new HashMap<>();
    private final Map<Integer, List<LowerHalf>> listed = new HashMap<>();

    private record Shape(int above, int below) {}

    /** Halves that have been joined, each with each: what their trains can bring, the front has. */
    private record Joined(Set<UpperHalf> uppers, Set<LowerHalf> lowers) {}

    /** A search whose front may be as large as it will. */
    TrainSearch(
            TrainRater rater,
            SearchListener listener,
            BooleanSupplier cancelled,
            SearchSettings settings,
            Function<Train, Optional<Blame>> unplaced) {
        this(rater, listener, cancelled, settings, unplaced, FrontBound.NONE);
    }

    private TrainSearch(
            TrainRater rater,
            SearchListener listener,
            BooleanSupplier cancelled,
            SearchSettings settings,
            Function<Train, Optional<Blame>> unplaced,
            FrontBound bound) {
        this.front = new CellFront(rater.objectives().asked());
        this.bound = bound;
        this.all = rater;
        this.rater = rater;
        this.tables = new HalfTables(rater);
        this.listener = listener;
        this.cancelled = () -> cancelled.getAsBoolean() || bound.exceededBy(front.size());
        this.settings = settings;
        this.unplaced = unplaced;
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
     * @param settings which shortcuts are taken, and from what size on the front is thinned
     */
    public static SearchOutcome run(
            Brief brief, SearchListener listener, BooleanSupplier cancelled, SearchSettings settings) {
        return new FrontThinning(brief, listener, cancelled, settings).outcome();
    }

    /** Searches in the brief's own steps; stopped as soon as the front exceeds a bound. */
    static SearchOutcome once(
            Brief brief,
            SearchListener listener,
            BooleanSupplier cancelled,
            SearchSettings settings,
            FrontBound bound) {
        TrainRater rater = new TrainRater(brief);
        TrainPlacing placing = new TrainPlacing(rater);
        Optional<LeastRooms> rooms = LeastRooms.of(rater, placing);
        return rooms.isEmpty()
                ? of(rater, placing, listener, cancelled, settings, bound).outcome()
                : new RoomSearch(rooms.get(), listener, cancelled, bound)
                        .outcome(widened -> of(rater, placing, widened, cancelled, settings, bound), placing);
    }

    /** The same search where trains have less room: what is refused stays refused, and trains that fit stay found. */
    TrainSearch within(Function<Train, Optional<Blame>> unplacedThere, List<Rating> fitting) {
        TrainSearch next = new TrainSearch(all, listener, cancelled, settings, unplacedThere, bound);
        if (settings.take(Shortcut.CARRY_OVER)) {
            next.rater = rater;
            next.tables = tables;
            next.listed.putAll(listed);
            fitting.forEach(next.front::add);
        }
        return next;
    }

    private static TrainSearch of(
            TrainRater rater,
            TrainPlacing placing,
            SearchListener listener,
            BooleanSupplier cancelled,
            SearchSettings settings,
            FrontBound bound) {
        return new TrainSearch(
                packing(rater, cancelled, settings),
                listener,
                cancelled,
                settings,
                train -> placing.blame(train, cancelled),
                bound);
    }

    private static TrainRater packing(TrainRater rater, BooleanSupplier cancelled, SearchSettings settings) {
        return settings.take(Shortcut.PACK_PLANES) ? rater.within(PlaneLimits.of(rater, cancelled)) : rater;
    }

    /**
     * Searches the trains of a brief without looking for a reason where there are none: the outcome is then proved and
     * empty. The room that movements take is looked at as a limit alone, even if the brief wants it small.
     *
     * @param brief the brief
     * @param listener is told how it goes on
     * @param cancelled asked all the time; once true the search ends within a tenth of a second
     */
    public static SearchOutcome unexplained(Brief brief, SearchListener listener, BooleanSupplier cancelled) {
        return unexplained(brief, listener, cancelled, SearchSettings.USUAL);
    }

    /**
     * The same for trains in a limited room.
     *
     * @param brief the brief
     * @param room what layouts may measure at most, beside what the brief asks
     * @param listener is told how it goes on
     * @param cancelled asked all the time; once true the search ends within a tenth of a second
     */
    public static SearchOutcome unexplained(
            Brief brief, Optional<SizeLimit> room, SearchListener listener, BooleanSupplier cancelled) {
        TrainRater rater = new TrainRater(brief);
        TrainPlacing placing = new TrainPlacing(rater);
        return new TrainSearch(
                        packing(rater, cancelled, SearchSettings.USUAL),
                        listener,
                        cancelled,
                        SearchSettings.USUAL,
                        train -> placing.blame(train, room, cancelled))
                .found();
    }

    static SearchOutcome unexplained(
            Brief brief, SearchListener listener, BooleanSupplier cancelled, SearchSettings settings) {
        TrainRater rater = new TrainRater(brief);
        return of(rater, new TrainPlacing(rater), listener, cancelled, settings, FrontBound.NONE)
                .found();
    }

    SearchOutcome outcome() {
        return explained(found());
    }

    /** An outcome with the reason if there is no train. */
    SearchOutcome explained(SearchOutcome found) {
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
                train -> placing.blame(train, cancelled));
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
     * @param unplaced what is to blame if the arbors of a train have no place
     */
    static Existence existence(
            TrainRater rater,
            BooleanSupplier cancelled,
            QuestionSettings settings,
            Function<Train, Optional<Blame>> unplaced) {
        boolean firstWillDo = settings.take(QuestionShortcut.FIRST_TRAIN);
        TrainSearch[] search = new TrainSearch[1];
        search[0] = new TrainSearch(
                rater,
                SearchListener.SILENT,
                () -> cancelled.getAsBoolean() || (firstWillDo && search[0].front.size() > 0),
                settings.search(),
                unplaced);
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
        if (rater.refused().holds(train) || newlyRefused.holds(train)) {
            return false;
        }
        Optional<Blame> blame = rater.servesBuilders(train) ? unplaced.apply(train) : Optional.of(Blame.TOGETHER);
        blame.ifPresent(to -> newlyRefused.add(train, to));
        return blame.isEmpty();
    }

    /** Takes what was refused in a round into the next; false if there was nothing. */
    private boolean learnt() {
        if (newlyRefused.isEmpty()) {
            return false;
        }
        rater = all.knowing(rater.refused().and(newlyRefused));
        tables = tables.knowing(rater);
        newlyRefused = new Refused.Fresh();
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
            List<LowerHalf> lowers =
                    settings.take(Shortcut.THIN_HALVES) ? thinned(below) : LowerHalves.all(tables, below, cancelled);
            listed.put(below, lowers);
            if (!throughShapes(above -> join(above, lowers))) {
                return false;
            }
        }
        return true;
    }

    /** The lower halves that the front may need; what earlier rounds listed, or a sample joined at once, makes that quick. */
    private List<LowerHalf> thinned(int below) {
        List<LowerHalf> known = listed.getOrDefault(below, List.of());
        if (known.isEmpty()) {
            int stride = Math.max(2, Math.min(WIDEST_STRIDE, tables.choicesBelow() / SAMPLED));
            List<LowerHalf> sample = LowerHalves.sample(tables, below, stride, prospects(), cancelled);
            throughShapes(above -> joinSample(above, stride, sample));
            known = sample;
        }
        return LowerHalves.thinned(tables, below, known, prospects(), cancelled);
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
        if (settings.take(Shortcut.KEEP_TO_FRONT)) {
            WantedPairs wanted = WantedPairs.of(rater, uppers, lowers, front, cancelled);
            return decide(wanted.uppers(), wanted.lowers());
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
