// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.halves;

import drumfall.solver.brief.MeshPlace;
import drumfall.solver.power.ArborRole;
import drumfall.solver.power.Criterion;
import drumfall.solver.power.EscapeNeed;
import drumfall.solver.power.WeightWalk;
import drumfall.solver.rating.TrainRater;
import drumfall.solver.train.Mesh;
import drumfall.solver.train.WheelAndPinion;
import java.util.ArrayList;
import java.util.List;
import java.util.function.BooleanSupplier;
import java.util.stream.IntStream;

/** Lists the lower halves with a number of meshes that some front may need. */
public final class LowerHalves {
    /** Bounds are computed by other operations than figures; this is far above their rounding and far below any cell. */
    private static final double ROUNDING = 1e-12;

    /** One choice in so many at each place is sampled. */
    private static final int SAMPLE = 7;

    private final TrainRater rater;
    private final HalfRules rules;
    private final int count;
    private final boolean thin;
    private final BooleanSupplier cancelled;
    private List<List<MeshChoice>> choices = new ArrayList<>();
    private final List<LowerHalf> all = new ArrayList<>();
    /** What each mesh put so far lets through at most when running. */
    private final double[] mostFelt;

    private LowerFront front;
    private EscapeSide escape;

    /**
     * Prepares a list.
     *
     * @param rater rates against the brief
     * @param count meshes from the centre to the escape wheel, at least 1
     * @param thin whether to leave out halves that another one replaces; the front is the same either way
     * @param cancelled asked often; once true the list ends early
     */
    public LowerHalves(TrainRater rater, int count, boolean thin, BooleanSupplier cancelled) {
        this.rater = rater;
        this.rules = new HalfRules(rater);
        this.count = count;
        this.mostFelt = new double[count];
        this.thin = thin;
        this.cancelled = cancelled;
        MeshChoices allowed = new MeshChoices(rater);
        for (int number = 1; number <= count; number++) {
            choices.add(allowed.at(new MeshPlace(MeshPlace.Side.BELOW, number)));
        }
    }

    /** The halves, least running torque first. */
    public List<LowerHalf> list() {
        List<EscapeSide> sides = sides();
        if (sides.isEmpty()) {
            return List.of();
        }
        front = new LowerFront(rules, outlook(sides));
        if (thin) {
            sample(sides);
        }
        for (EscapeSide side : sides) {
            escape = side;
            extend(new ArrayList<>(), 1, PartSums.NONE);
        }
        List<LowerHalf> halves = thin ? front.culled() : all;
        halves.sort((a, b) -> a.runningLoad != b.runningLoad
                ? Double.compare(a.runningLoad, b.runningLoad)
                : a.comesBefore(b) ? -1 : 1);
        return halves;
    }

    /** Lists a sample first: its halves replace most others before these are worked out. */
    private void sample(List<EscapeSide> sides) {
        List<List<MeshChoice>> whole = choices;
        choices = whole.stream().map(LowerHalves::everyFew).toList();
        for (EscapeSide side : sides) {
            escape = new EscapeSide(rules, side.teeth, choices);
            extend(new ArrayList<>(), 1, PartSums.NONE);
        }
        choices = whole;
    }

    private static List<MeshChoice> everyFew(List<MeshChoice> place) {
        return IntStream.range(0, place.size())
                .filter(i -> i % SAMPLE == 0)
                .mapToObj(place::get)
                .toList();
    }

    private List<EscapeSide> sides() {
        if (choices.stream().anyMatch(List::isEmpty)) {
            return List.of();
        }
        return rules.limits.escapeTeethLeft().stream()
                .filter(rules.limits::arcKept)
                .map(teeth -> new EscapeSide(rules, teeth, choices))
                .filter(side -> Double.isFinite(side.leastLoad(choices.get(0))))
                .toList();
    }

    private CentreOutlook outlook(List<EscapeSide> sides) {
        double leastLoad = sides.stream()
                .mapToDouble(side -> side.leastLoad(choices.get(0)))
                .min()
                .orElseThrow();
        double shortest =
                sides.stream().mapToDouble(side -> side.shortestMemory).min().orElseThrow();
        double longest =
                sides.stream().mapToDouble(side -> side.longestMemory).max().orElseThrow();
        return new CentreOutlook(rater, leastLoad, shortest, longest);
    }

    private void extend(List<MeshChoice> meshes, double ratio, PartSums sums) {
        if (meshes.size() == count - 1) {
            for (int group = 0; group < escape.lastMeshes.size(); group++) {
                finishWith(group, meshes, ratio, sums);
            }
            return;
        }
        for (MeshChoice choice : choices.get(meshes.size())) {
            double product = ratio * choice.ratio;
            if (product > escape.mostTurns || cancelled.getAsBoolean()) {
                return;
            }
            if (clearsArborBefore(meshes, choice)) {
                mostFelt[meshes.size()] = choice.felt.felt(escape.longestMemory * choice.teeth * ratio / 3600);
                meshes.add(choice);
                PartSums with = sums.with(choice);
                if (mayMatter(meshes, escape.tail(count - meshes.size(), product), with)) {
                    extend(meshes, product, with);
                }
                meshes.remove(meshes.size() - 1);
            }
        }
    }

    private void finishWith(int group, List<MeshChoice> meshes, double ratio, PartSums sums) {
        List<MeshChoice> last = escape.lastMeshes.get(group);
        if (!mayMatter(meshes, escape.lastTail(group, ratio), sums)) {
            return;
        }
        for (int i = firstAtLeast(last, escape.fewestTurns / ratio); i < last.size(); i++) {
            MeshChoice choice = last.get(i);
            if (ratio * choice.ratio > escape.mostTurns || cancelled.getAsBoolean()) {
                return;
            }
            if (clearsArborBefore(meshes, choice)) {
                mostFelt[meshes.size()] = choice.bestFelt;
                meshes.add(choice);
                finish(meshes, sums.with(choice));
                meshes.remove(meshes.size() - 1);
            }
        }
    }

    private boolean clearsArborBefore(List<MeshChoice> meshes, MeshChoice choice) {
        int before = meshes.size() - 1;
        return meshes.isEmpty() || rules.limits.clears(meshes.get(before).mesh, role(before), choice.tipRadius);
    }

    /** Role of the arbor that carries the wheel of a mesh of the half. */
    private static ArborRole role(int index) {
        return index == 0 ? ArborRole.CENTRE : ArborRole.INTERMEDIATE;
    }

    /** Whether meshes and the best tail behind them might be a half that none so far replaces. */
    private boolean mayMatter(List<MeshChoice> meshes, TailBounds.Least tail, PartSums sums) {
        if (Double.isInfinite(tail.running())) {
            return false;
        }
        if (!thin || meshes.isEmpty()) {
            return true;
        }
        return !front.replacesAny(
                atBest(meshes, Criterion.RUNNING, ArborRole.INTERMEDIATE, tail.running()),
                atBest(meshes, Criterion.BINDING, ArborRole.INTERMEDIATE, tail.binding()),
                escape.longestMemory,
                meshes.get(0).tipRadius,
                sums.with(tail.sums()));
    }

    /** Torque at the centre if every mesh passed on the most it can, a bound from below. */
    private double atBest(List<MeshChoice> meshes, Criterion criterion, ArborRole tail, double load) {
        double sum = load;
        ArborRole below = tail;
        for (int i = meshes.size() - 1; i >= 0; i--) {
            MeshChoice choice = meshes.get(i);
            double passed = criterion == Criterion.RUNNING ? mostFelt[i] : choice.binding;
            sum = rules.step(criterion, sum, below, choice, passed, role(i));
            below = role(i);
        }
        return sum * (1 - ROUNDING);
    }

    private void finish(List<MeshChoice> meshes, PartSums sums) {
        long leaves = 1;
        long teeth = 1;
        for (MeshChoice choice : meshes) {
            leaves *= choice.leaves;
            teeth *= choice.teeth;
        }
        if (!rules.limits.clears(meshes.get(count - 1).mesh, role(count - 1), rules.limits.escapeWheelRadius())
                || !rules.limits.beatKept(teeth, leaves, escape.teeth)) {
            return;
        }
        EscapeNeed need = escape.heldArc.need((double) (3600 * leaves) / (2L * escape.teeth * teeth));
        if (thin && replacedAtBest(meshes, need, sums)) {
            return;
        }
        if (rules.limits.secondsHandServed(counts(meshes))) {
            add(meshes, need, sums, leaves, teeth);
        }
    }

    private boolean replacedAtBest(List<MeshChoice> meshes, EscapeNeed need, PartSums sums) {
        return front.replacesAny(
                atBest(meshes, Criterion.RUNNING, ArborRole.ESCAPE, escape.load(Criterion.RUNNING, need.torque())),
                atBest(meshes, Criterion.BINDING, ArborRole.ESCAPE, escape.load(Criterion.BINDING, need.torque())),
                need.memory(),
                meshes.get(0).tipRadius,
                sums);
    }

    private void add(List<MeshChoice> meshes, EscapeNeed need, PartSums sums, long leaves, long teeth) {
        double running = load(meshes, Criterion.RUNNING, need, leaves, teeth);
        double binding = load(meshes, Criterion.BINDING, need, leaves, teeth);
        if (Double.isInfinite(running) || Double.isInfinite(binding)) {
            return;
        }
        LowerHalf half = new LowerHalf(meshes, escape.teeth, need, running, binding, sums);
        if (thin) {
            front.offer(half);
        } else {
            all.add(half);
        }
    }

    private double load(List<MeshChoice> meshes, Criterion criterion, EscapeNeed need, long leaves, long teeth) {
        double load = escape.load(criterion, need.torque());
        long leavesAbove = leaves;
        long teethAbove = teeth;
        ArborRole below = ArborRole.ESCAPE;
        for (int i = count - 1; i >= 0; i--) {
            MeshChoice choice = meshes.get(i);
            leavesAbove /= choice.leaves;
            teethAbove /= choice.teeth;
            double hours = (double) leavesAbove / teethAbove;
            double passed = choice.passed(criterion, WeightWalk.pitchesRemembered(need, hours, choice.teeth));
            load = rules.step(criterion, load, below, choice, passed, role(i));
            below = role(i);
        }
        return load;
    }

    private static List<WheelAndPinion> counts(List<MeshChoice> meshes) {
        return meshes.stream().map(choice -> choice.mesh).map(Mesh::counts).toList();
    }

    private static int firstAtLeast(List<MeshChoice> sorted, double ratio) {
        int low = 0;
        int high = sorted.size();
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (sorted.get(middle).ratio < ratio) {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        return low;
    }
}
