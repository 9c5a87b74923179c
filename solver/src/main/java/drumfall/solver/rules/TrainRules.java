// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.rules;

import drumfall.solver.halves.LowerHalf;
import drumfall.solver.halves.UpperHalf;
import drumfall.solver.rating.CellFront;
import drumfall.solver.rating.Rating;
import drumfall.solver.rating.TrainRater;
import drumfall.solver.train.Train;
import java.util.List;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import java.util.function.DoubleConsumer;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.chocosolver.solver.Model;
import org.chocosolver.solver.Settings;
import org.chocosolver.solver.Solver;
import org.chocosolver.solver.constraints.Constraint;
import org.chocosolver.solver.search.SearchState;
import org.chocosolver.solver.search.loop.monitors.IMonitorOpenNode;
import org.chocosolver.solver.search.strategy.Search;
import org.chocosolver.solver.variables.IntVar;

/**
 * The constraint model of all trains with a number of meshes above and below the centre, and its search.
 *
 * <p>Counts, modules, drum, reeving and escape wheel are variables, every demand is a posted rule, and every train found
 * satisfies all of them whatever was listed beforehand; only whether arbors have a place, and whether enough builders are
 * served, is asked of each train that was found, so that it is known which trains fail by that. Each is rated anew; a train that the rules let through and the
 * rating does not is a fault of the program and is reported as one.
 */
public final class TrainRules {
    private final TrainRater rater;
    private final TrainVariables train;
    private final RuleBook rules;
    private final CellFront front;
    private final Predicate<Train> placeable;
    private IntVar[] decisions;

    /**
     * A model without listed halves, for small briefs: every count is decided one by one.
     *
     * @param rater rates against the brief
     * @param above meshes from the drum to the centre
     * @param below meshes from the centre to the escape wheel
     * @param front takes in what is found
     * @param placeable whether the arbors of a train that meets all other demands have a place
     */
    public TrainRules(TrainRater rater, int above, int below, CellFront front, Predicate<Train> placeable) {
        this.rater = rater;
        this.front = front;
        this.placeable = placeable;
        Model model = new Model("train", Settings.init());
        this.train = new TrainVariables(model, rater.brief(), rater.choices(), above, below);
        this.rules = new RuleBook(train, rater);
        rules.defining().forEach(this::post);
        this.decisions = train.all();
    }

    /**
     * A model that joins listed halves.
     *
     * @param rater rates against the brief
     * @param uppers the upper halves, at least one, all with the same number of meshes
     * @param lowers the lower halves, at least one, all with the same number of meshes
     * @param front takes in what is found, and keeps the search on what can change it
     * @param placeable whether the arbors of a train that meets all other demands have a place
     */
    public TrainRules(
            TrainRater rater,
            List<UpperHalf> uppers,
            List<LowerHalf> lowers,
            CellFront front,
            Predicate<Train> placeable) {
        this(rater, uppers.get(0).meshes().size(), lowers.get(0).meshes().size(), front, placeable);
        IntVar upper = train.model.intVar("upper half", 0, uppers.size() - 1, false);
        IntVar lower = train.model.intVar("lower half", 0, lowers.size() - 1, false);
        post("UPPER HALF LISTED", rules.upperHalfListed(upper, uppers));
        post("LOWER HALF LISTED", rules.lowerHalfListed(lower, lowers));
        post("FRONT", new Constraint("", new FrontRule(upper, uppers, lower, lowers, rater, front, placeable)));
        this.decisions =
                Stream.concat(Stream.of(upper, lower), Stream.of(train.all())).toArray(IntVar[]::new);
    }

    private void post(String name, Constraint rule) {
        rule.setName(name);
        rule.post();
    }

    /**
     * Searches all trains that can change the front.
     *
     * @param cancelled asked at every step; once true the search ends early
     * @param found told of each train that changed the front
     * @param progress told the share of the first unknown's values that are done, from 0 to 1
     * @return whether the search went through everything
     */
    public boolean search(BooleanSupplier cancelled, Consumer<Rating> found, DoubleConsumer progress) {
        Solver solver = train.model.getSolver();
        solver.setSearch(Search.inputOrderLBSearch(decisions));
        solver.addStopCriterion(cancelled::getAsBoolean);
        IntVar first = decisions[0];
        int from = first.getLB();
        double size = Math.max(1, first.getUB() - from);
        solver.plugMonitor(new OpenNode(() -> progress.accept(Math.min(1, (first.getLB() - from) / size))));
        while (solver.solve()) {
            Train fixed = train.train();
            if (placeable.test(fixed)) {
                take(rater.rate(fixed), found);
            }
        }
        return solver.getSearchState() == SearchState.TERMINATED && !solver.isStopCriterionMet();
    }

    private void take(Rating rating, Consumer<Rating> found) {
        if (!rating.feasible()) {
            throw new IllegalStateException("The rules allow the train (%s) but its rating misses %s."
                    .formatted(rating.train(), rating.missed().toList()));
        }
        if (front.add(rating)) {
            found.accept(rating);
        }
    }

    private record OpenNode(Runnable told) implements IMonitorOpenNode {
        @Override
        public void beforeOpenNode() {
            told.run();
        }
    }
}
