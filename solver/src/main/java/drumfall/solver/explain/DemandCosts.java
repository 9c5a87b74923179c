// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.explain;

import drumfall.solver.brief.Brief;
import drumfall.solver.brief.BriefChange;
import drumfall.solver.brief.Objective;
import drumfall.solver.brief.ObjectiveFigure;
import drumfall.solver.layout.SizeLimit;
import drumfall.solver.quantity.Dimension;
import drumfall.solver.quantity.Quantity;
import drumfall.solver.rating.Cell;
import drumfall.solver.rating.Rating;
import drumfall.solver.rating.TrainRater;
import drumfall.solver.rating.placing.LeastRooms;
import drumfall.solver.rating.placing.TrainPlacing;
import drumfall.solver.search.SearchListener;
import drumfall.solver.search.SearchOutcome;
import drumfall.solver.search.TrainSearch;
import drumfall.solver.train.Train;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import java.util.stream.IntStream;

/**
 * What the demands of a brief cost a chosen train: each figure is eased by itself, the changed brief is searched, and the
 * lightest train that is no worse in every other objective, and takes no more of the room that the brief wants small, is
 * held beside the chosen one.
 *
 * <p>Objectives are told apart by their resolution, as on the front: a gain is told only where the weight falls into a lower
 * cell.
 */
public final class DemandCosts {
    private static final Objective WEIGHT =
            new Objective(ObjectiveFigure.RECOMMENDED_WEIGHT, Optional.of(Quantity.parse(Dimension.NUMBER, "1 %")));

    private final List<Objective> objectives;
    private final int weight;
    private final Rating chosen;
    private final ExplainSettings settings;
    /** The room that the chosen train takes, if the brief wants that small: lighter trains that take more do not count. */
    private final Optional<SizeLimit> room;

    private DemandCosts(Brief brief, Train chosen, ExplainSettings settings, BooleanSupplier cancelled) {
        this.settings = settings;
        this.room = room(brief, chosen, cancelled);
        List<Objective> asked = new ArrayList<>(brief.objectives());
        if (asked.stream().noneMatch(objective -> objective.figure() == ObjectiveFigure.RECOMMENDED_WEIGHT)) {
            asked.add(WEIGHT);
        }
        this.objectives = List.copyOf(asked);
        this.weight = IntStream.range(0, objectives.size())
                .filter(i -> objectives.get(i).figure() == ObjectiveFigure.RECOMMENDED_WEIGHT)
                .findFirst()
                .orElseThrow();
        this.chosen = new TrainRater(brief.withObjectives(objectives)).rate(chosen);
    }

    private static Optional<SizeLimit> room(Brief brief, Train chosen, BooleanSupplier cancelled) {
        TrainRater rater = new TrainRater(brief);
        return LeastRooms.of(rater, new TrainPlacing(rater)).flatMap(rooms -> {
            OptionalLong steps = rooms.steps(chosen, cancelled);
            return steps.isPresent() ? Optional.of(rooms.limit(steps.getAsLong())) : Optional.empty();
        });
    }

    /**
     * What the demands cost a train.
     *
     * @param brief the brief
     * @param chosen a train that meets it
     * @param told is told of each cost as it becomes known
     * @param listener is told how each search goes on
     * @param cancelled asked all the time; once true the costs known are given
     * @return the costs, the largest gain first
     */
    public static List<Cost> of(
            Brief brief, Train chosen, Consumer<Cost> told, SearchListener listener, BooleanSupplier cancelled) {
        return of(brief, chosen, told, listener, cancelled, ExplainSettings.USUAL);
    }

    /**
     * What the demands cost a train of a front that was thinned.
     *
     * @param brief the brief
     * @param stepsTimes how many times as large as the brief's the steps are in which gains are told, see
     *     {@link SearchOutcome#stepsTimes}
     * @param chosen a train that meets the brief
     * @param told is told of each cost as it becomes known
     * @param listener is told how each search goes on
     * @param cancelled asked all the time; once true the costs known are given
     * @return the costs, the largest gain first
     */
    public static List<Cost> of(
            Brief brief,
            int stepsTimes,
            Train chosen,
            Consumer<Cost> told,
            SearchListener listener,
            BooleanSupplier cancelled) {
        DemandCosts costs = new DemandCosts(brief.inSteps(stepsTimes), chosen, ExplainSettings.USUAL, cancelled);
        return costs.all(brief, told, listener, cancelled);
    }

    /** What the demands cost a train, found in a stated way; the costs do not depend on it. */
    static List<Cost> of(
            Brief brief,
            Train chosen,
            Consumer<Cost> told,
            SearchListener listener,
            BooleanSupplier cancelled,
            ExplainSettings settings) {
        return new DemandCosts(brief, chosen, settings, cancelled).all(brief, told, listener, cancelled);
    }

    private List<Cost> all(Brief brief, Consumer<Cost> told, SearchListener listener, BooleanSupplier cancelled) {
        List<Cost> known = new ArrayList<>();
        for (CostStep step : CostStep.of(brief)) {
            if (cancelled.getAsBoolean()) {
                break;
            }
            Cost cost = cost(step, listener, cancelled);
            known.add(cost);
            told.accept(cost);
        }
        known.sort(Comparator.comparingDouble(Cost::gain).reversed());
        return known;
    }

    private Cost cost(CostStep step, SearchListener listener, BooleanSupplier cancelled) {
        Brief asked = step.brief().withObjectives(objectives);
        SearchOutcome outcome = TrainSearch.unexplained(
                settings.take(ExplainShortcut.NO_HEAVIER) ? noHeavier(asked, cancelled) : asked,
                room,
                listener,
                cancelled);
        Optional<Rating> best = outcome.front().stream()
                .filter(rating -> noWorseElsewhere(rating.cell()))
                .min(Comparator.comparingDouble(Rating::recommendedWeight))
                // Held against the limit on the weight that the brief has, not the one that was searched with.
                .map(rating -> new TrainRater(asked).rate(rating.train()));
        double gain = best.filter(rating -> weightCell(rating) < weightCell(chosen))
                .map(rating -> chosen.recommendedWeight() - rating.recommendedWeight())
                .orElse(0.0);
        boolean proved = outcome.fold(complete -> true, stopped -> false, none -> true);
        return new Cost(step, best, gain, proved);
    }

    /**
     * The brief with the upper edge of the chosen train's cell of weight as the limit, if that train still meets it, has places
     * and is no worse elsewhere: a search that need not look at heavier ones is quick.
     *
     * <p>The train that is sought is then in that cell or a lower one, as the chosen train or one that is nowhere worse is on
     * the front. The limit leaves out heavier cells and nothing else, of the next one perhaps not all by rounding: none of
     * these is at least as good as one that stays, so the cells that stay are on the front as before, each with the train that
     * stood for it. A limit within the cell could leave out just that train.
     */
    private Brief noHeavier(Brief changed, BooleanSupplier cancelled) {
        TrainRater rater = new TrainRater(changed);
        Rating still = rater.rate(chosen.train());
        double edge = Cell.upperEdge(objectives.get(weight), weightCell(still));
        if (!still.feasible()
                || !noWorseElsewhere(still.cell())
                || edge >= changed.weight().limit().si()
                || new TrainPlacing(rater)
                        .blame(chosen.train(), room, cancelled)
                        .isPresent()) {
            return changed;
        }
        String limit = BigDecimal.valueOf(edge).toPlainString() + " kg";
        return BriefChange.of(changed, "/weight/limit", limit).accepted().orElse(changed);
    }

    private boolean noWorseElsewhere(Cell cell) {
        return IntStream.range(0, objectives.size())
                .allMatch(i -> i == weight
                        || cell.numbers().get(i) <= chosen.cell().numbers().get(i));
    }

    private long weightCell(Rating rating) {
        return rating.cell().numbers().get(weight);
    }
}
