// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.rules;

import drumfall.solver.brief.MeshLock;
import drumfall.solver.brief.MeshPlace;
import drumfall.solver.halves.LowerHalf;
import drumfall.solver.halves.MeshChoice;
import drumfall.solver.halves.UpperHalf;
import drumfall.solver.power.ArborRole;
import drumfall.solver.power.WeightFigure;
import drumfall.solver.rating.Demand;
import drumfall.solver.rating.TrainLimits;
import drumfall.solver.rating.TrainRater;
import drumfall.solver.ratio.WheelAndPinion;
import drumfall.solver.train.DrumRun;
import drumfall.solver.train.Reeving;
import drumfall.solver.train.ToothModule;
import drumfall.solver.train.Train;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;
import org.chocosolver.solver.constraints.Constraint;
import org.chocosolver.solver.variables.IntVar;

/** The rules, each one claim of the field; methods return a constraint and post nothing. */
final class RuleBook {
    private final TrainVariables train;
    private final TrainRater rater;
    private final TrainLimits limits;

    RuleBook(TrainVariables train, TrainRater rater) {
        this.train = train;
        this.rater = rater;
        this.limits = rater.limits();
    }

    /** The rules that define a train of the brief, by name. */
    Map<String, Constraint> defining() {
        Map<String, Constraint> rules = new LinkedHashMap<>();
        for (int i = 0; i < train.meshes(); i++) {
            String place = " " + MeshPlace.of(i, train.above);
            rules.put(Demand.STEPS_UP + place, stepsUp(i));
            rules.put(Demand.TOOTH_SIZE + place, teethPrint(i));
            rules.put(Demand.PRINT_BED + place, wheelFitsBed(i));
            rules.put(Demand.FRAME + place, meshFitsFrame(i));
        }
        for (int i = 0; i + 1 < train.meshes(); i++) {
            rules.put(Demand.CLEARANCE + " arbor " + (i + 1), nextWheelClearsArbor(i));
        }
        rules.put(Demand.CLEARANCE + " drum flange", flangeClearsArbor());
        rules.put(Demand.CLEARANCE + " escape wheel", escapeWheelClearsArbor());
        rules.put("ROUGH BEAT", beatRoughlyKept());
        rules.put("BEAT", beatKept());
        rules.put(Demand.SECONDS_HAND.name(), secondsHandServed());
        rules.put(Demand.ARC.name(), arcKept());
        rules.put("ROUGH RUN", runRoughlyKept());
        rules.put(Demand.RUN_AT_LEAST.name(), runsLongEnough());
        rules.put(Demand.RUN_AT_MOST.name(), runsNotTooLong());
        rules.put(Demand.SINGLE_LAYER.name(), windsInOneLayer());
        rules.put(Demand.WEIGHT_LIMIT.name(), weightKept());
        rules.put(Demand.TOOTH_BENDING.name(), teethBear());
        if (!rater.refused().isEmpty()) {
            rules.put("PLACE FOR ARBORS", notRefused());
        }
        locks().forEach(rules::put);
        return rules;
    }

    /** {@code z >= p}. */
    Constraint stepsUp(int mesh) {
        return train.model.arithm(train.wheel[mesh], ">=", train.leaves[mesh]);
    }

    /** Teeth exist that print at the module and run. */
    Constraint teethPrint(int mesh) {
        return claim(v -> limits.teeth().print(train.mesh(v[0], v[1], v[2])), train.mesh(mesh));
    }

    /** {@code d_a <= bed}. */
    Constraint wheelFitsBed(int mesh) {
        return claim(v -> limits.fitsBed(train.mesh(v[0], v[1], v[2])), train.mesh(mesh));
    }

    /** Wheel and pinion both inside the frame in some direction. */
    Constraint meshFitsFrame(int mesh) {
        return claim(v -> limits.fitsFrame(train.mesh(v[0], v[1], v[2])), train.mesh(mesh));
    }

    /** {@code a_i - r_ring - r_a(i+1) >= gap}. */
    Constraint nextWheelClearsArbor(int mesh) {
        return claim(
                v -> limits.clears(
                        train.mesh(v[0], v[1], v[2]),
                        role(mesh),
                        limits.wheelTipDiameter(train.mesh(v[3], v[4], v[5])) / 2),
                train.side(mesh, mesh + 2));
    }

    /** {@code a_1 - r_ring - r_flange >= gap}. */
    Constraint flangeClearsArbor() {
        return claim(
                v -> limits.clears(
                        train.mesh(v[0], v[1], v[2]),
                        role(1),
                        limits.drumFlangeRadius(train.drums.get(v[3]).doubleValue())),
                train.side(0, 1, train.drum));
    }

    /** {@code a_n - r_ring - r_w >= gap}. */
    Constraint escapeWheelClearsArbor() {
        int last = train.meshes() - 1;
        return claim(
                v -> limits.clears(train.mesh(v[0], v[1], v[2]), role(last), limits.escapeWheelRadius()),
                train.mesh(last));
    }

    /** {@code B_min <= 2 N ∏ z / ∏ p <= B_max}, in floating point with a margin. */
    Constraint beatRoughlyKept() {
        double[] beats = limits.roughBeatsPerHour();
        IntVar[] over = Stream.concat(Stream.of(below(train.wheel)), Stream.of(train.escape))
                .toArray(IntVar[]::new);
        return new Constraint("", new RatioRule(over, below(train.leaves), beats[0] / 2, beats[1] / 2));
    }

    /** The pendulum's length and the beats an hour are in range, exactly. */
    Constraint beatKept() {
        return claim(
                v -> {
                    long wheels = 1;
                    long leaves = 1;
                    for (int i = 0; i < train.below; i++) {
                        wheels *= v[2 * i];
                        leaves *= v[2 * i + 1];
                    }
                    return limits.beatKept(wheels, leaves, v[2 * train.below]);
                },
                counts(train.above, train.meshes(), train.escape));
    }

    /** {@code ∏ z / ∏ p = 60} an even number of meshes below the centre. */
    Constraint secondsHandServed() {
        return claim(v -> limits.secondsHandServed(pairs(v)), counts(train.above, train.meshes()));
    }

    /** {@code A <= A_sat}. */
    Constraint arcKept() {
        return claim(v -> limits.arcKept(v[0]), train.escape);
    }

    /** {@code H_min / n_d <= R_up <= H_max / n_d} over all drums, in floating point with a margin. */
    Constraint runRoughlyKept() {
        double from = Double.POSITIVE_INFINITY;
        double to = 0;
        for (BigFraction drum : train.drums) {
            for (Reeving reeving : rater.choices().reevings()) {
                double[] hours = limits.hoursPerTurn(limits.drumRun(drum, reeving));
                from = Math.min(from, hours[0]);
                to = Math.max(to, hours[1]);
            }
        }
        return new Constraint("", new RatioRule(above(train.wheel), above(train.leaves), from, to));
    }

    /** {@code R_up n_d >= H_min}, exactly. */
    Constraint runsLongEnough() {
        return claim(v -> limits.runsLongEnough(hours(v), drumRun(v, 2 * train.above)), upperCounts());
    }

    /** {@code R_up n_d <= H_max}, exactly. */
    Constraint runsNotTooLong() {
        return claim(v -> limits.runsNotTooLong(hours(v), drumRun(v, 2 * train.above)), upperCounts());
    }

    /** {@code (n_d + 2) s u + u <= drum length}. */
    Constraint windsInOneLayer() {
        return claim(v -> limits.windsInOneLayer(drumRun(v, 0)), train.drum, train.falls);
    }

    /** {@code F / (b m Y) <= σ} at every mesh under the recommended weight. */
    Constraint teethBear() {
        return claim(
                v -> {
                    Train fixed = train.train(v);
                    return limits.teethBear(fixed, recommendedWeight(fixed));
                },
                train.all());
    }

    /** It is not known that the arbors have no place. */
    Constraint notRefused() {
        return claim(v -> !rater.refused().holds(train.train(v)), train.all());
    }

    private double recommendedWeight(Train fixed) {
        WeightFigure weight = rater.walk().weigh(fixed);
        return rater.objectives().recommended(weight.leastWeight());
    }

    /** The recommended weight is light enough for the brief, for the line and for the ratchet. */
    Constraint weightKept() {
        return claim(
                v -> {
                    Train fixed = train.train(v);
                    double recommended = recommendedWeight(fixed);
                    return limits.lightEnough(recommended) && limits.carried(fixed, recommended);
                },
                train.all());
    }

    /** What the maker holds fast, one rule for each held figure. */
    Map<String, Constraint> locks() {
        Map<String, Constraint> rules = new LinkedHashMap<>();
        var locks = rater.brief().locks();
        locks.drumDiameter()
                .ifPresent(held -> rules.put(
                        "LOCK drum", claim(v -> train.drums.get(v[0]).compareTo(held.exact()) == 0, train.drum)));
        locks.falls().ifPresent(held -> rules.put("LOCK falls", train.model.arithm(train.falls, "=", held)));
        locks.escapeTeeth().ifPresent(held -> rules.put("LOCK escape", train.model.arithm(train.escape, "=", held)));
        if (locks.motionDistance().isPresent() || locks.palletDistance().isPresent()) {
            rules.put("LOCK holes", claim(v -> limits.holesKept(v[0]), train.escape));
        }
        for (int i = 0; i < train.meshes(); i++) {
            int mesh = i;
            locks.at(MeshPlace.of(i, train.above)).ifPresent(lock -> meshLocks(mesh, lock, rules));
        }
        return rules;
    }

    private void meshLocks(int mesh, MeshLock lock, Map<String, Constraint> rules) {
        String name = "LOCK " + lock.place();
        lock.wheel().ifPresent(held -> rules.put(name + " wheel", train.model.arithm(train.wheel[mesh], "=", held)));
        lock.leaves().ifPresent(held -> rules.put(name + " leaves", train.model.arithm(train.leaves[mesh], "=", held)));
        lock.module()
                .ifPresent(held -> rules.put(
                        name + " module",
                        claim(
                                v -> train.modules.get(v[0]).equals(ToothModule.ofMetres(held.exact())),
                                train.module[mesh])));
        lock.distance()
                .ifPresent(held -> rules.put(
                        name + " distance",
                        claim(v -> lock.distanceMetBy(train.mesh(v[0], v[1], v[2])), train.mesh(mesh))));
    }

    /**
     * Redundant: the meshes above the centre, drum and reeving are those of a listed half.
     *
     * @param index number of the half
     */
    Constraint upperHalfListed(IntVar index, List<UpperHalf> halves) {
        List<int[]> rows = halves.stream()
                .map(half -> row(half.meshes(), drumNumber(half), half.reeving().falls()))
                .toList();
        return listed(index, train.side(0, train.above, train.drum, train.falls), rows);
    }

    /**
     * Redundant: the meshes below the centre and the escape wheel are those of a listed half.
     *
     * @param index number of the half
     */
    Constraint lowerHalfListed(IntVar index, List<LowerHalf> halves) {
        List<int[]> rows = halves.stream()
                .map(half -> row(half.meshes(), half.escapeTeeth()))
                .toList();
        return listed(index, train.side(train.above, train.meshes(), train.escape), rows);
    }

    private int drumNumber(UpperHalf half) {
        return IntStream.range(0, train.drums.size())
                .filter(i -> train.drums.get(i).compareTo(half.drumDiameter()) == 0)
                .findFirst()
                .orElseThrow();
    }

    private static int[] row(List<MeshChoice> meshes, int... end) {
        IntStream counts = meshes.stream()
                .flatMapToInt(choice ->
                        IntStream.of(choice.mesh().toothCount(), choice.mesh().leafCount(), choice.moduleNumber()));
        return IntStream.concat(counts, Arrays.stream(end)).toArray();
    }

    private static Constraint listed(IntVar index, IntVar[] side, List<int[]> rows) {
        IntVar[] variables = Stream.concat(Stream.of(index), Stream.of(side)).toArray(IntVar[]::new);
        return new Constraint("", new ListedRule(variables, rows));
    }

    private Constraint claim(ClaimRule.Claim claim, IntVar... variables) {
        return new Constraint("", new ClaimRule(claim, variables));
    }

    private ArborRole role(int arbor) {
        if (arbor == 0) {
            return ArborRole.DRUM;
        }
        return arbor == train.above ? ArborRole.CENTRE : ArborRole.INTERMEDIATE;
    }

    private IntVar[] below(IntVar[] all) {
        return Arrays.copyOfRange(all, train.above, train.meshes());
    }

    private IntVar[] above(IntVar[] all) {
        return Arrays.copyOfRange(all, 0, train.above);
    }

    private IntVar[] counts(int from, int to, IntVar... end) {
        return Stream.concat(
                        IntStream.range(from, to).boxed().flatMap(i -> Stream.of(train.wheel[i], train.leaves[i])),
                        Stream.of(end))
                .toArray(IntVar[]::new);
    }

    private IntVar[] upperCounts() {
        return counts(0, train.above, train.drum, train.falls);
    }

    private BigFraction hours(int[] values) {
        BigFraction hours = BigFraction.ONE;
        for (int i = 0; i < train.above; i++) {
            hours = hours.multiply(BigFraction.of(values[2 * i], values[2 * i + 1]));
        }
        return hours;
    }

    private DrumRun drumRun(int[] values, int from) {
        return limits.drumRun(
                train.drums.get(values[from]), Reeving.of(values[from + 1]).orElseThrow());
    }

    private static List<WheelAndPinion> pairs(int[] values) {
        List<WheelAndPinion> pairs = new ArrayList<>();
        for (int i = 0; i + 1 < values.length; i += 2) {
            pairs.add(new WheelAndPinion(values[i], values[i + 1]));
        }
        return pairs;
    }
}
