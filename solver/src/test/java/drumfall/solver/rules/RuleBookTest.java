// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.rules;

import static org.assertj.core.api.Assertions.assertThat;

import drumfall.solver.brief.Brief;
import drumfall.solver.rating.Demand;
import drumfall.solver.rating.TrainRater;
import drumfall.solver.samples.Briefs;
import drumfall.solver.samples.HandTeeth;
import drumfall.solver.samples.SmallBriefs;
import drumfall.solver.samples.Trains;
import drumfall.solver.train.Train;
import java.util.Map;
import java.util.Random;
import java.util.function.Function;
import java.util.stream.Stream;
import org.chocosolver.solver.Cause;
import org.chocosolver.solver.Model;
import org.chocosolver.solver.constraints.Constraint;
import org.chocosolver.solver.exception.ContradictionException;
import org.chocosolver.solver.variables.IntVar;
import org.chocosolver.util.ESat;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Every rule on its own, on the same fixed train under a brief that it satisfies and under one that it violates: 8.5 hours a
 * drum turn, 7.52 days, 7308 beats an hour, a layer of 39.1 mm, wheels of 70, 60, 47 and 50 mm, 4.5 kg.
 */
class RuleBookTest {
    private static final String LINE = "68/8 m1 | 58/9 m1 · 45/10 m1 · 48/8 m1 · E21";

    private static Stream<Arguments> rules() {
        return Stream.of(
                rule(
                        "stepsUp",
                        book -> book.stepsUp(0),
                        "",
                        "9/10 m1 | 58/9 m1 · 45/10 m1 · 48/8 m1 · E21",
                        "/teeth/wheelTeeth/from = 6"),
                // 4.5 kg on two falls at 18.75 mm: 0.41 N m, 12.2 N at the great wheel's 34 mm; on 5 mm of width,
                // module
                // 1 mm and the factor 0.4: 6.1 MPa.
                rule(
                        "teethBear",
                        book -> book.teethBear(),
                        "/material/allowable = \"6.2 MPa\"",
                        LINE,
                        "/material/allowable = \"6 MPa\""),
                rule(
                        "wheelFitsBed",
                        book -> book.wheelFitsBed(0),
                        "/printer/bedWidth = \"70 mm\"",
                        LINE,
                        "/printer/bedWidth = \"69.99 mm\""),
                rule(
                        "meshFitsFrame",
                        book -> book.meshFitsFrame(0),
                        "/frame/width = \"70 mm\"",
                        LINE,
                        "/frame/width = \"69.99 mm\""),
                // Third wheel of 25 mm beside a rod of 1 mm on a centre distance of 27.5 mm: 1.5 mm.
                rule(
                        "nextWheelClearsArbor",
                        book -> book.nextWheelClearsArbor(2),
                        "/parts/gap = \"1.5 mm\"",
                        LINE,
                        "/parts/gap = \"1.501 mm\""),
                // Flange of 22.5 mm beside the centre rod of 1.5 mm on 38 mm: 14 mm.
                rule(
                        "flangeClearsArbor",
                        book -> book.flangeClearsArbor(),
                        "/frame/depth = \"200 mm\" & /parts/gap = \"14 mm\"",
                        LINE,
                        "/frame/depth = \"200 mm\" & /parts/gap = \"14.001 mm\""),
                // Escape wheel of 26 mm beside a rod of 1 mm on 28 mm: 1 mm.
                rule(
                        "escapeWheelClearsArbor",
                        book -> book.escapeWheelClearsArbor(),
                        "/parts/gap = \"1 mm\"",
                        LINE,
                        "/parts/gap = \"1.001 mm\""),
                rule(
                        "beatRoughlyKept",
                        book -> book.beatRoughlyKept(),
                        beats("7308", "7308"),
                        LINE,
                        beats("7309", "7400")),
                rule("beatKept", book -> book.beatKept(), beats("7308", "7308"), LINE, beats("7308.0000001", "7400")),
                rule(
                        "secondsHandServed",
                        book -> book.secondsHandServed(),
                        "/beat/secondsHand = false",
                        LINE,
                        "/beat/secondsHand = true & /beat/pendulumLength = remove"),
                rule(
                        "arcKept",
                        book -> book.arcKept(),
                        "",
                        LINE,
                        "/escapement/reserveArc = \"12 deg\" & /beat/pendulumLength/from = \"0.2 m\""),
                rule(
                        "runRoughlyKept",
                        book -> book.runRoughlyKept(),
                        "",
                        LINE,
                        "/run/atLeast = \"12 d\" & /run/wanted = \"12 d\" & /run/atMost = \"13 d\""),
                rule(
                        "runsLongEnough",
                        book -> book.runsLongEnough(),
                        "/run/atLeast = \"180.375 h\"",
                        LINE,
                        "/run/atLeast = \"180.376 h\""),
                rule("runsNotTooLong", book -> book.runsNotTooLong(), run("180.376 h"), LINE, run("180.375 h")),
                rule(
                        "windsInOneLayer",
                        book -> book.windsInOneLayer(),
                        "/drum/length = \"39.2 mm\"",
                        LINE,
                        "/drum/length = \"39.1 mm\""),
                rule(
                        "weightKept by the limit",
                        book -> book.weightKept(),
                        "/weight/limit = \"4.6 kg\"",
                        LINE,
                        "/weight/limit = \"4.4 kg\""),
                rule(
                        "weightKept by the line",
                        book -> book.weightKept(),
                        "/line/ratedLoad = \"180 N\"",
                        LINE,
                        "/line/ratedLoad = \"170 N\""),
                // Teeth of a 24th part hold 4.90 kg, of a 26th part 4.18 kg.
                rule("weightKept by the ratchet", book -> book.weightKept(), ratchet(24), LINE, ratchet(26)),
                lock("LOCK drum", "/locks/drumDiameter", "\"36 mm\"", "\"34 mm\""),
                lock("LOCK falls", "/locks/falls", "2", "1"),
                lock("LOCK escape", "/locks/escapeTeeth", "21", "24"),
                // 5 1/2 of 21 spaces to either side: r_w / cos(5.5 π / 21) with r_w of 26 mm.
                lock("LOCK holes", "/locks/palletDistance", "\"38.225584 mm\"", "\"38.225586 mm\""),
                lock(
                        "LOCK above-1 wheel",
                        "/locks/meshes",
                        mesh("above", 1, "wheel", "68"),
                        mesh("above", 1, "wheel", "69")),
                lock(
                        "LOCK below-2 leaves",
                        "/locks/meshes",
                        mesh("below", 2, "leaves", "10"),
                        mesh("below", 2, "leaves", "9")),
                lock(
                        "LOCK below-3 module",
                        "/locks/meshes",
                        mesh("below", 3, "module", "\"1.000 mm\""),
                        mesh("below", 3, "module", "\"1.25 mm\"")),
                // 48 teeth and 8 leaves of 1 mm stand 28 mm apart.
                lock(
                        "LOCK below-3 distance",
                        "/locks/meshes",
                        mesh("below", 3, "distance", "\"28.001 mm\""),
                        mesh("below", 3, "distance", "\"28.0011 mm\"")));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("rules")
    void a_rule_lets_a_train_through_or_not(
            String name, Function<RuleBook, Constraint> rule, String satisfying, String line, String violating) {
        assertThat(holds(rule, satisfying, LINE)).isTrue();
        assertThat(holds(rule, violating, line)).isFalse();
    }

    // The rating must say the same of the train as all rules together, rule names and demands being one list.
    @Test
    void all_rules_together_hold_exactly_where_the_rating_finds_nothing_missed() {
        var random = new Random(9);
        int through = 0;
        for (Brief brief : SmallBriefs.some(40, 900)) {
            TrainRater rater = new TrainRater(brief);
            for (int i = 0; i < 40; i++) {
                Train train = Trains.random(brief, random);
                boolean all = book(rater, train).defining().values().stream().allMatch(RuleBookTest::satisfied);
                assertThat(all)
                        .as("%s", train)
                        .isEqualTo(rater.rate(train).feasible() || onlyMeshLockMissing(rater, train));
                through += all ? 1 : 0;
            }
        }
        assertThat(through).isGreaterThan(10);
    }

    /** Locks on numbers of meshes, or on meshes a train does not have, choose the shapes that are searched. */
    private static boolean onlyMeshLockMissing(TrainRater rater, Train train) {
        return rater.rate(train)
                .missed()
                .allMatch(missed -> missed.demand() == Demand.LOCK
                        && rater.brief().locks().meshes().stream()
                                .anyMatch(lock ->
                                        missed.place().startsWith(lock.place().toString())
                                                && lock.place().number()
                                                        > train.meshes().size() - train.meshesAbove()));
    }

    @Test
    void every_rule_of_the_book_has_a_name_of_its_own_and_is_in_this_table() {
        TrainRater rater = new TrainRater(Briefs.demoWith(""));
        Map<String, Constraint> all = book(rater, train(LINE)).defining();

        assertThat(all)
                .containsKeys(
                        "BEAT",
                        "ROUGH BEAT",
                        "SECONDS_HAND",
                        "ARC",
                        "ROUGH RUN",
                        "RUN_AT_LEAST",
                        "RUN_AT_MOST",
                        "SINGLE_LAYER",
                        "WEIGHT_LIMIT",
                        "CLEARANCE drum flange",
                        "CLEARANCE escape wheel",
                        "CLEARANCE arbor 1",
                        "STEPS_UP above-1",
                        "TOOTH_SIZE below-3",
                        "TOOTH_BENDING",
                        "PRINT_BED below-1",
                        "FRAME below-2");
        // Four meshes with four rules each, three clearances between them, and the twelve of the whole train.
        assertThat(all).hasSize(4 * 4 + 3 + 12);
    }

    private static Arguments rule(
            String name, Function<RuleBook, Constraint> rule, String satisfying, String line, String violating) {
        return Arguments.of(name, rule, satisfying, line, violating);
    }

    private static Arguments lock(String name, String pointer, String held, String other) {
        Function<RuleBook, Constraint> rule = book -> book.locks().get(name);
        return Arguments.of(name, rule, pointer + " = " + held, LINE, pointer + " = " + other);
    }

    private static String mesh(String side, int number, String figure, String value) {
        return "[{\"place\": {\"side\": \"%s\", \"number\": %d}, \"%s\": %s}]".formatted(side, number, figure, value);
    }

    private static String beats(String from, String to) {
        return "/beat/pendulumLength = remove & /beat/beatsPerHour = {\"from\": \"%s\", \"to\": \"%s\"}"
                .formatted(from, to);
    }

    private static String ratchet(int teeth) {
        return "/drum/ratchet = {\"teeth\": %d, \"toothDepth\": \"2.5 mm\", \"thickness\": \"5 mm\"}".formatted(teeth);
    }

    private static String run(String atMost) {
        return "/run/atLeast = \"7 d\" & /run/wanted = \"7 d\" & /run/atMost = \"%s\"".formatted(atMost);
    }

    private static boolean holds(Function<RuleBook, Constraint> rule, String edits, String line) {
        return satisfied(rule.apply(
                book(HandTeeth.rater(Briefs.demoWith("/parts/hubWall = \"0 mm\" & " + edits)), train(line))));
    }

    /** Both ways a rule answers: asked whether it is satisfied, and by filtering when it is posted alone. */
    private static boolean satisfied(Constraint rule) {
        ESat asked = rule.isSatisfied();
        assertThat(asked).isNotEqualTo(ESat.UNDEFINED);
        Model model = rule.getPropagator(0).getModel();
        model.getEnvironment().worldPush();
        rule.post();
        boolean filtered = propagates(model);
        model.unpost(rule);
        assertThat(filtered).isEqualTo(asked == ESat.TRUE);
        return filtered;
    }

    private static boolean propagates(Model model) {
        try {
            model.getSolver().propagate();
            return true;
        } catch (ContradictionException contradiction) {
            return false;
        } finally {
            model.getSolver().getEngine().flush();
            model.getSolver().getEngine().reset();
        }
    }

    private static RuleBook book(TrainRater rater, Train train) {
        int above = train.meshesAbove();
        Model model = new Model();
        TrainVariables variables = new TrainVariables(
                model, rater.brief(), rater.choices(), above, train.meshes().size() - above);
        for (int i = 0; i < train.meshes().size(); i++) {
            fix(variables.wheel[i], train.meshes().get(i).toothCount());
            fix(variables.leaves[i], train.meshes().get(i).leafCount());
            fix(
                    variables.module[i],
                    variables.modules.indexOf(train.meshes().get(i).module()));
        }
        fix(variables.drum, variables.drums.indexOf(train.drumDiameter()));
        fix(variables.falls, train.reeving().falls());
        fix(variables.escape, train.escapeTeeth());
        return new RuleBook(variables, rater);
    }

    private static void fix(IntVar variable, int value) {
        try {
            variable.instantiateTo(value, Cause.Null);
        } catch (ContradictionException outside) {
            throw new IllegalArgumentException(
                    "The value (%d) of %s is no choice of the brief.".formatted(value, variable), outside);
        }
    }

    private static Train train(String line) {
        return Trains.of(line, "36", 2);
    }
}
