// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.explain;

import drumfall.solver.brief.Brief;
import drumfall.solver.explain.Easing.Effect;
import drumfall.solver.explain.Nearest.Verdict;
import drumfall.solver.rating.Demand;
import drumfall.solver.rating.Rating;
import drumfall.solver.rating.TrainRater;
import drumfall.solver.search.Existence;
import drumfall.solver.search.TrainExistence;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.BooleanSupplier;
import java.util.stream.IntStream;

/**
 * Finds how far one figure of a brief without trains must be eased for a train to exist, everything else kept.
 *
 * <p>Where easing only ever adds trains, the nearest value is found between a value without trains and one with: by halves;
 * a train found is rated at tighter values and shortens the way. Where easing also hardens
 * other demands, these are set aside at first; that bounds the value from below, and from there on every step is searched
 * with all demands. A figure on which weights or teeth depend is searched step by step from the beginning.
 */
public final class NearestValues {
    /** Steps searched one by one before giving up. */
    private static final int ONE_BY_ONE = 40;

    private final Easing easing;
    private final EasingSteps steps;
    private final BooleanSupplier cancelled;
    private final Set<Demand> aside;

    /** The largest number of steps proved to have no train. */
    private int without;

    /** The smallest number of steps known to have a train, demands set aside; -1 if none is known. */
    private int with = -1;

    private Optional<Rating> train = Optional.empty();

    private NearestValues(Brief brief, Easing easing, BooleanSupplier cancelled) {
        this.easing = easing;
        this.steps = new EasingSteps(brief, easing);
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
        NearestValues values = new NearestValues(brief, easing, cancelled);
        OptionalInt standing = IntStream.range(0, clashes.list().size())
                .filter(i -> !clashes.list().get(i).holdsAny(easing.eases()) && easing.effect() != Effect.CHOICE)
                .findFirst();
        return standing.isPresent() ? values.answer(Verdict.NONE, 0, standing) : values.find();
    }

    private Nearest find() {
        if (steps.last() == 0) {
            return answer(Verdict.NONE, 0);
        }
        if (easing.effect() == Effect.OPEN) {
            return oneByOne(1);
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
        return aside.isEmpty() ? answer(Verdict.NEAREST, with) : oneByOne(with);
    }

    private boolean halve() {
        while (with - without > 1) {
            if (!ask((with + without) >>> 1)) {
                return false;
            }
        }
        return true;
    }

    /** Whether the question was answered. */
    private boolean ask(int count) {
        Brief brief = steps.at(count).orElseThrow();
        Existence existence = TrainExistence.of(brief, aside, cancelled);
        if (existence.none()) {
            without = count;
        } else if (existence.some()) {
            train = existence.train();
            with = tightened(count);
        }
        return existence.some() || existence.none();
    }

    /** The fewest steps, by halves, at which the train that was found still meets the brief. */
    private int tightened(int count) {
        int low = without;
        int high = count;
        while (high - low > 1) {
            int middle = (high + low) >>> 1;
            Optional<Rating> rating = rated(middle, aside);
            if (rating.filter(Rating::feasible).isPresent()) {
                high = middle;
                train = rating;
            } else {
                low = middle;
            }
        }
        return high;
    }

    private Optional<Rating> rated(int count, Set<Demand> waived) {
        return steps.at(count)
                .map(brief ->
                        new TrainRater(brief, waived).rate(train.orElseThrow().train()));
    }

    private Nearest oneByOne(int from) {
        int to = Math.min(steps.last(), from + ONE_BY_ONE);
        for (int count = from; count <= to; count++) {
            Existence existence = TrainExistence.of(steps.at(count).orElseThrow(), Set.of(), cancelled);
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
