// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.explain;

import drumfall.solver.brief.Brief;
import drumfall.solver.brief.Objective;
import drumfall.solver.brief.ObjectiveFigure;
import drumfall.solver.explain.Easing.Effect;
import drumfall.solver.explain.Nearest.Verdict;
import drumfall.solver.quantity.Dimension;
import drumfall.solver.quantity.Quantity;
import drumfall.solver.rating.Demand;
import drumfall.solver.rating.Rating;
import drumfall.solver.rating.TrainRater;
import drumfall.solver.rating.placing.TrainPlacing;
import drumfall.solver.search.Existence;
import drumfall.solver.search.SearchListener;
import drumfall.solver.search.SearchOutcome;
import drumfall.solver.search.TrainExistence;
import drumfall.solver.search.TrainSearch;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.BooleanSupplier;
import java.util.stream.IntStream;

/**
 * Finds how far one figure of a brief without trains must be eased for a train to exist, everything else kept.
 *
 * <p>Where easing only ever adds trains, the nearest value is found between a value without trains and one with: by halves,
 * since every value tighter than one without trains has none either, and every looser one than one with trains has some; a
 * train found is rated at tighter values and shortens the way. Where easing also hardens other demands, these are set aside
 * at first; with fewer demands there are no fewer trains, which bounds the value from below, and from there on every step is
 * searched with all demands, empty spans in one go. A figure on which weights or teeth depend is searched step by step from
 * the beginning.
 *
 * <p>A clash of which easing touches no demand stands at every value: its demands ask the same of the same trains there, as
 * easing adds none but by meeting the demands it eases. Where there is more to choose from it does add others, and no clash
 * answers. The train that is first asked for where the weight is eased is the lightest one, so that it decides all the
 * tighter limits; that it cannot be lighter is not taken for granted, a step less is asked about as everywhere.
 */
public final class NearestValues {
    /** Steps searched one by one before giving up. */
    private static final int ONE_BY_ONE = 40;

    /** Steps asked about together at first, where that can be done. */
    private static final int SPAN = 8;

    /** Finer than any step a maker would type. */
    private static final List<Objective> WEIGHT = List.of(
            new Objective(ObjectiveFigure.RECOMMENDED_WEIGHT, Optional.of(Quantity.parse(Dimension.MASS, "0.1 g"))));

    private final Easing easing;
    private final EasingSteps steps;
    private final NewTrains beyond;
    private final BooleanSupplier cancelled;
    private final Set<Demand> aside;
    private final ExplainSettings settings;

    /** The largest number of steps proved to have no train. */
    private int without;

    /** The smallest number of steps known to have a train, demands set aside; -1 if none is known. */
    private int with = -1;

    private Optional<Rating> train = Optional.empty();

    private NearestValues(Brief brief, Easing easing, BooleanSupplier cancelled, ExplainSettings settings) {
        this.settings = settings;
        this.easing = easing;
        this.steps = new EasingSteps(brief, easing);
        this.beyond = new NewTrains(brief, easing, steps);
        this.cancelled = cancelled;
        this.aside = easing.effect() == Effect.TRADE ? easing.hardens() : Set.of();
    }

    /**
     * What easing one figure does.
     *
     * @param brief a brief that no train meets
     * @param easing the figure and the way
     * @param clashes the clashes known of the brief; one that the figure cannot touch answers at once
     * @param cancelled asked all the time; once true the answer is what is known
     */
    public static Nearest of(Brief brief, Easing easing, Clashes clashes, BooleanSupplier cancelled) {
        return of(brief, easing, clashes, cancelled, ExplainSettings.USUAL);
    }

    /** What easing one figure does, found in a stated way; verdict and value do not depend on it. */
    static Nearest of(
            Brief brief, Easing easing, Clashes clashes, BooleanSupplier cancelled, ExplainSettings settings) {
        NearestValues values = new NearestValues(brief, easing, cancelled, settings);
        OptionalInt standing = settings.take(ExplainShortcut.CLASH_STANDS)
                ? IntStream.range(0, clashes.list().size())
                        .filter(i ->
                                !easing.easesAll() && !clashes.list().get(i).holdsAny(easing.eases()))
                        .findFirst()
                : OptionalInt.empty();
        return standing.isPresent() ? values.answer(Verdict.NONE, 0, standing) : values.find();
    }

    private Nearest find() {
        if (steps.last() == 0) {
            return answer(Verdict.NONE, 0);
        }
        if (easing.effect() == Effect.OPEN) {
            return oneByOne(Math.min(steps.last(), 1 + ONE_BY_ONE));
        }
        if (!settings.take(ExplainShortcut.SET_ASIDE) && !aside.isEmpty()) {
            return inSpans(1);
        }
        if (!settings.take(ExplainShortcut.HALVE_STEPS) && aside.isEmpty()) {
            return oneByOne(steps.last());
        }
        if (!ask(steps.last())) {
            return answer(Verdict.UNKNOWN, without);
        }
        if (with < 0) {
            return answer(Verdict.NONE, without);
        }
        if (!halve()) {
            return answer(Verdict.UNKNOWN, without);
        }
        return aside.isEmpty() ? answer(Verdict.NEAREST, with) : inSpans(with);
    }

    private boolean halve() {
        // The lightest train is known already where the weight is eased: one step less needs only the proof.
        boolean ok = !easesWeight() || with - without <= 1 || ask(with - 1);
        while (ok && with - without > 1) {
            ok = ask((with + without) >>> 1);
        }
        return ok;
    }

    /** Whether the question was answered. */
    private boolean ask(int count) {
        Brief brief = settings.take(ExplainShortcut.NEW_TRAINS_ONLY) && aside.isEmpty()
                ? beyond.at(count, without)
                : steps.at(count).orElseThrow();
        Existence existence = easesWeight() && with < 0 ? lightest(brief) : exists(brief, aside);
        if (existence.none()) {
            without = count;
        } else if (existence.some()) {
            train = existence.train();
            with = settings.take(ExplainShortcut.RATE_TIGHTER) ? tightened(count) : count;
        }
        return existence.some() || existence.none();
    }

    private boolean easesWeight() {
        return settings.take(ExplainShortcut.LIGHTEST_AT_ONCE)
                && easing.pointer().equals("/weight/limit");
    }

    private Existence exists(Brief brief, Set<Demand> waived) {
        return TrainExistence.of(brief, waived, cancelled, settings.questions());
    }

    private Existence lightest(Brief brief) {
        SearchOutcome outcome = TrainSearch.unexplained(brief.withObjectives(WEIGHT), SearchListener.SILENT, cancelled);
        return outcome.front().stream()
                .min(Comparator.comparingDouble(Rating::recommendedWeight))
                .map(Existence::of)
                .orElse(outcome instanceof SearchOutcome.Stopped ? Existence.UNKNOWN : Existence.NONE);
    }

    /**
     * The fewest steps, by halves, at which the train that was found still meets the brief and has places for its arbors, of
     * which a rating does not speak. A train that can be built at some steps can be built at more, since easing only adds.
     */
    private int tightened(int count) {
        int low = without;
        int high = count;
        while (high - low > 1) {
            int middle = (high + low) >>> 1;
            Optional<Rating> rating = built(middle);
            if (rating.isPresent()) {
                high = middle;
                train = rating;
            } else {
                low = middle;
            }
        }
        return high;
    }

    private Optional<Rating> built(int count) {
        TrainRater rater = new TrainRater(steps.at(count).orElseThrow(), aside);
        Rating rating = rater.rate(train.orElseThrow().train());
        return rating.feasible() && new TrainPlacing(rater).placeable(rating.train(), cancelled)
                ? Optional.of(rating)
                : Optional.empty();
    }

    private Nearest oneByOne(int to) {
        for (int count = 1; count <= to; count++) {
            Existence existence = exists(steps.at(count).orElseThrow(), Set.of());
            if (existence.some()) {
                train = existence.train();
                return answer(Verdict.NEAREST, count);
            }
            if (!existence.none()) {
                return answer(Verdict.UNKNOWN, count - 1);
            }
        }
        return answer(to == steps.last() ? Verdict.NONE : Verdict.UNKNOWN, to);
    }

    /** From one step on with all demands: spans proved empty are passed over, others halved down to single steps. */
    private Nearest inSpans(int from) {
        FallSpans spans = new FallSpans(steps);
        int near = from;
        int size = settings.take(ExplainShortcut.FALL_SPANS) ? SPAN : 1;
        while (near <= steps.last()) {
            int far = Math.min(steps.last(), near + size - 1);
            Optional<Brief> asked = far > near ? spans.over(near, far) : steps.at(near);
            Existence existence = asked.map(brief -> exists(brief, Set.of())).orElse(Existence.UNKNOWN);
            if (existence.none()) {
                near = far + 1;
                size *= settings.take(ExplainShortcut.FALL_SPANS) ? 2 : 1;
            } else if (far > near) {
                size = (far - near + 1) / 2;
            } else if (existence.some()) {
                train = existence.train();
                return answer(Verdict.NEAREST, near);
            } else {
                return answer(Verdict.UNKNOWN, near - 1);
            }
        }
        return answer(Verdict.NONE, steps.last());
    }

    private Nearest answer(Verdict verdict, int count) {
        return answer(verdict, count, OptionalInt.empty());
    }

    private Nearest answer(Verdict verdict, int count, OptionalInt standing) {
        Optional<Rating> shown = verdict == Verdict.NEAREST
                ? train.map(found -> new TrainRater(steps.at(count).orElseThrow()).rate(found.train()))
                : Optional.empty();
        boolean bracketed = verdict == Verdict.UNKNOWN && with > 0 && aside.isEmpty();
        Optional<String> enough = bracketed ? Optional.of(steps.text(with)) : Optional.empty();
        return new Nearest(easing, verdict, steps.text(0), steps.text(count), enough, standing, shown);
    }
}
