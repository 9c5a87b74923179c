package drumfall.solver.halves;

import drumfall.solver.brief.MeshPlace;
import drumfall.solver.power.ArborRole;
import drumfall.solver.power.Criterion;
import drumfall.solver.power.EscapeNeed;
import drumfall.solver.power.HeldArc;
import drumfall.solver.power.WeightWalk;
import drumfall.solver.rating.TrainRater;
import drumfall.solver.train.Mesh;
import drumfall.solver.train.WheelAndPinion;
import java.util.ArrayList;
import java.util.List;
import java.util.function.BooleanSupplier;
import org.apache.commons.numbers.fraction.BigFraction;

/** Lists the lower halves with a number of meshes that some front may need. */
public final class LowerHalves {
    /** Torque running, torque binding, memory, centre wheel's tip; objectives follow. */
    private static final int FIXED_ATTRIBUTES = 4;

    /** Bounds are computed by other operations than figures; this is far above their rounding and far below any cell. */
    private static final double ROUNDING = 1e-12;

    private final HalfRules rules;
    private final int count;
    private final boolean thin;
    private final BooleanSupplier cancelled;
    private final List<List<MeshChoice>> choices = new ArrayList<>();
    private final double[] beats;
    private final DominanceTree<LowerHalf> kept;
    private final List<LowerHalf> halves = new ArrayList<>();

    private HeldArc heldArc;
    private int escapeTeeth;
    private EscapeNeed leastNeed;
    private double longestMemory;
    private double fewestTurns;
    private double mostTurns;
    private List<TailBounds> tails = List.of();

    /**
     * Prepares a list.
     *
     * @param rater rates against the brief
     * @param count meshes from the centre to the escape wheel, at least 1
     * @param thin whether to leave out halves that another one replaces; the front is the same either way
     * @param cancelled asked often; once true the list ends early
     */
    public LowerHalves(TrainRater rater, int count, boolean thin, BooleanSupplier cancelled) {
        this.rules = new HalfRules(rater);
        this.count = count;
        this.thin = thin;
        this.cancelled = cancelled;
        this.beats = rater.limits().roughBeatsPerHour();
        this.kept = new DominanceTree<>(FIXED_ATTRIBUTES + rules.objectiveAttributes());
        MeshChoices allowed = new MeshChoices(rater);
        for (int number = 1; number <= count; number++) {
            choices.add(allowed.at(new MeshPlace(MeshPlace.Side.BELOW, number)));
        }
    }

    /** The halves, least torque first. */
    public List<LowerHalf> list() {
        if (choices.stream().noneMatch(List::isEmpty)) {
            for (int teeth : rules.limits.escapeTeethLeft()) {
                listWith(teeth);
            }
        }
        if (thin) {
            halves.removeIf(half -> kept.covers(point(half), (point, entry, asked) -> replaces(point, entry, asked, half)));
        }
        halves.sort((a, b) -> a.runningLoad != b.runningLoad
                ? Double.compare(a.runningLoad, b.runningLoad)
                : a.comesBefore(b) ? -1 : 1);
        return halves;
    }

    private void listWith(int teeth) {
        if (!rules.limits.arcKept(teeth)) {
            return;
        }
        escapeTeeth = teeth;
        heldArc = rules.movement.heldArc(teeth);
        fewestTurns = beats[0] / (2 * teeth);
        mostTurns = beats[1] / (2 * teeth);
        leastNeed = heldArc.need(3600 / beats[1]);
        longestMemory = heldArc.need(3600 / beats[0]).memory() * (1 + ROUNDING);
        tails = tailBounds();
        extend(new ArrayList<>(), 1, PartSums.NONE);
    }

    private List<TailBounds> tailBounds() {
        List<TailBounds> bounds = new ArrayList<>();
        bounds.add(TailBounds.none(
                escapeLoad(Criterion.RUNNING, leastNeed), escapeLoad(Criterion.BINDING, leastNeed)));
        for (int length = 1; length < count; length++) {
            bounds.add(bounds.get(length - 1).withInFront(rules, choices.get(count - length), length == 1));
        }
        return bounds;
    }

    private double escapeLoad(Criterion criterion, EscapeNeed need) {
        return rules.movement
                .regime(criterion)
                .arbor(ArborRole.ESCAPE)
                .load(
                        rules.movement.torqueAsked(criterion, need),
                        rules.movement.parts().escapeWheelRadius(),
                        rules.movement.parts().escapeWheelMass());
    }

    private void extend(List<MeshChoice> front, double ratio, PartSums sums) {
        List<MeshChoice> next = choices.get(front.size());
        boolean last = front.size() == count - 1;
        int start = last ? firstAtLeast(next, fewestTurns / ratio) : 0;
        for (int i = start; i < next.size() && !cancelled.getAsBoolean(); i++) {
            MeshChoice choice = next.get(i);
            double product = ratio * choice.ratio;
            if (product > mostTurns) {
                return;
            }
            if (!clearsArborBefore(front, choice)) {
                continue;
            }
            front.add(choice);
            if (last) {
                finish(front, sums.with(choice));
            } else if (worthExtending(front, product, sums.with(choice))) {
                extend(front, product, sums.with(choice));
            }
            front.remove(front.size() - 1);
        }
    }

    private boolean clearsArborBefore(List<MeshChoice> front, MeshChoice choice) {
        return front.isEmpty()
                || rules.limits.clears(
                        front.get(front.size() - 1).mesh, role(front.size() - 1), choice.tipRadius);
    }

    /** Role of the arbor that carries the wheel of a mesh of the half. */
    private static ArborRole role(int index) {
        return index == 0 ? ArborRole.CENTRE : ArborRole.INTERMEDIATE;
    }

    private boolean worthExtending(List<MeshChoice> front, double ratio, PartSums sums) {
        TailBounds.Least tail = tails.get(count - front.size()).between(fewestTurns / ratio, mostTurns / ratio);
        if (Double.isInfinite(tail.running())) {
            return false;
        }
        if (!thin || rules.asked.isEmpty()) {
            return true;
        }
        double[] point = new double[FIXED_ATTRIBUTES + rules.objectiveAttributes()];
        point[0] = loadAtBest(front, Criterion.RUNNING, tail.running()) * (1 - ROUNDING);
        point[1] = loadAtBest(front, Criterion.BINDING, tail.binding()) * (1 - ROUNDING);
        point[2] = -longestMemory;
        point[3] = front.get(0).tipRadius;
        rules.writeObjectives(point, FIXED_ATTRIBUTES, sums.with(leastSums(tail)));
        return !kept.covers(point, LowerHalves::surelyReplaces);
    }

    private static PartSums leastSums(TailBounds.Least tail) {
        return new PartSums((long) tail.filament(), tail.tip(), (long) tail.centres(), 0);
    }

    private double loadAtBest(List<MeshChoice> front, Criterion criterion, double load) {
        double sum = load;
        for (int i = front.size() - 1; i >= 0; i--) {
            MeshChoice choice = front.get(i);
            sum = rules.step(criterion, sum, ArborRole.INTERMEDIATE, choice, choice.passedAtBest(criterion), role(i));
        }
        return sum;
    }

    private void finish(List<MeshChoice> meshes, PartSums sums) {
        long leaves = 1;
        long teeth = 1;
        for (MeshChoice choice : meshes) {
            leaves *= choice.leaves;
            teeth *= choice.teeth;
        }
        double secondsPerBeat = (double) (3600 * leaves) / (2L * escapeTeeth * teeth);
        if (!rules.limits.clears(
                        meshes.get(count - 1).mesh, role(count - 1), rules.limits.escapeWheelRadius())
                || !rules.limits.pendulumFits(secondsPerBeat)
                || !rules.limits.beatsInRange(BigFraction.of(2L * escapeTeeth * teeth, leaves))) {
            return;
        }
        EscapeNeed need = heldArc.need(secondsPerBeat);
        if (thin && coveredAtBest(meshes, need, sums)) {
            return;
        }
        if (rules.limits.asksSecondsHand() && !rules.limits.secondsHandServed(counts(meshes))) {
            return;
        }
        add(meshes, need, sums, leaves, teeth);
    }

    private boolean coveredAtBest(List<MeshChoice> meshes, EscapeNeed need, PartSums sums) {
        double[] point = new double[FIXED_ATTRIBUTES + rules.objectiveAttributes()];
        point[0] = lastStepsAtBest(meshes, Criterion.RUNNING, need) * (1 - ROUNDING);
        point[1] = lastStepsAtBest(meshes, Criterion.BINDING, need) * (1 - ROUNDING);
        point[2] = -need.memory();
        point[3] = meshes.get(0).tipRadius;
        rules.writeObjectives(point, FIXED_ATTRIBUTES, sums);
        return kept.covers(point, LowerHalves::surelyReplaces);
    }

    private double lastStepsAtBest(List<MeshChoice> meshes, Criterion criterion, EscapeNeed need) {
        double load = escapeLoad(criterion, need);
        for (int i = count - 1; i >= 0; i--) {
            MeshChoice choice = meshes.get(i);
            ArborRole below = i == count - 1 ? ArborRole.ESCAPE : ArborRole.INTERMEDIATE;
            load = rules.step(criterion, load, below, choice, choice.passedAtBest(criterion), role(i));
        }
        return load;
    }

    private void add(List<MeshChoice> meshes, EscapeNeed need, PartSums sums, long leaves, long teeth) {
        LowerHalf half = new LowerHalf(
                meshes,
                escapeTeeth,
                need,
                load(meshes, Criterion.RUNNING, need, leaves, teeth),
                load(meshes, Criterion.BINDING, need, leaves, teeth),
                sums);
        if (Double.isInfinite(half.runningLoad) || Double.isInfinite(half.bindingLoad)) {
            return;
        }
        if (thin) {
            double[] point = point(half);
            if (kept.covers(point, (at, entry, asked) -> replaces(at, entry, asked, half))) {
                return;
            }
            kept.add(point, half);
        }
        halves.add(half);
    }

    private double load(List<MeshChoice> meshes, Criterion criterion, EscapeNeed need, long leaves, long teeth) {
        double load = escapeLoad(criterion, need);
        long leavesAbove = leaves;
        long teethAbove = teeth;
        for (int i = count - 1; i >= 0; i--) {
            MeshChoice choice = meshes.get(i);
            leavesAbove /= choice.leaves;
            teethAbove /= choice.teeth;
            double hours = (double) leavesAbove / teethAbove;
            double passed = choice.passed(criterion, WeightWalk.pitchesRemembered(need, hours, choice.teeth));
            ArborRole below = i == count - 1 ? ArborRole.ESCAPE : ArborRole.INTERMEDIATE;
            load = rules.step(criterion, load, below, choice, passed, role(i));
        }
        return load;
    }

    private double[] point(LowerHalf half) {
        double[] point = new double[FIXED_ATTRIBUTES + rules.objectiveAttributes()];
        point[0] = half.runningLoad;
        point[1] = half.bindingLoad;
        point[2] = -half.need.memory();
        point[3] = half.centreWheelTip();
        rules.writeObjectives(point, FIXED_ATTRIBUTES, half.sums);
        return point;
    }

    private static boolean replaces(double[] point, LowerHalf entry, double[] asked, LowerHalf half) {
        return surelyReplaces(point, entry, asked) || entry.comesBefore(half);
    }

    private static boolean surelyReplaces(double[] point, LowerHalf entry, double[] asked) {
        return HalfRules.surelyLess(point[0], asked[0]) && HalfRules.surelyLess(point[1], asked[1]);
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
