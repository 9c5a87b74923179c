// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.halves;

import drumfall.solver.brief.MeshPlace;
import drumfall.solver.brief.ObjectiveFigure;
import drumfall.solver.power.ArborRole;
import drumfall.solver.power.Criterion;
import drumfall.solver.power.EscapeNeed;
import drumfall.solver.power.WeightWalk;
import drumfall.solver.rating.TrainRater;
import drumfall.solver.train.DrumRun;
import drumfall.solver.train.Reeving;
import java.util.ArrayList;
import java.util.List;
import java.util.function.BooleanSupplier;
import org.apache.commons.numbers.fraction.BigFraction;

/** Lists the upper halves with a number of meshes that some front may need. */
public final class UpperHalves {
    /** Weight without and for each unit of torque, running and binding, and the room left for the centre wheel. */
    private static final int FIXED_ATTRIBUTES = 5;

    private static final double ROUNDING = 1e-12;

    /** A drum of the brief that winds the line in one layer, with the hours a turn may take. */
    private record DrumChoice(BigFraction diameter, DrumRun run, double fewestHours, double mostHours) {}

    private final HalfRules rules;
    private final int count;
    private final boolean thin;
    private final BooleanSupplier cancelled;
    private final EscapeNeed shortestMemory;
    private final EscapeNeed longestMemory;
    private final List<List<MeshChoice>> choices = new ArrayList<>();
    private final List<DrumChoice> drums = new ArrayList<>();
    private final DominanceTree<UpperHalf> kept;
    private final List<UpperHalf> halves = new ArrayList<>();
    private double fewestHours = Double.POSITIVE_INFINITY;
    private double mostHours;

    /**
     * Prepares a list.
     *
     * @param rater rates against the brief
     * @param count meshes from the drum to the centre, at least 1
     * @param lower the lower halves it will be joined to, at least one
     * @param thin whether to leave out halves that another one replaces; the front is the same either way
     * @param cancelled asked often; once true the list ends early
     */
    public UpperHalves(TrainRater rater, int count, List<LowerHalf> lower, boolean thin, BooleanSupplier cancelled) {
        this.rules = new HalfRules(rater);
        this.count = count;
        this.thin = thin;
        this.cancelled = cancelled;
        this.kept = new DominanceTree<>(FIXED_ATTRIBUTES
                + (rules.asked.contains(ObjectiveFigure.DURATION_ERROR) ? 1 : 0)
                + rules.objectiveAttributes());
        this.shortestMemory = extreme(lower, 1);
        this.longestMemory = extreme(lower, -1);
        MeshChoices allowed = new MeshChoices(rater);
        for (int number = 1; number <= count; number++) {
            choices.add(allowed.at(new MeshPlace(MeshPlace.Side.ABOVE, number)));
        }
        for (BigFraction diameter : rules.limits.drumDiametersLeft()) {
            for (Reeving reeving : rules.limits.reevingsLeft()) {
                addDrum(diameter, reeving);
            }
        }
    }

    private static EscapeNeed extreme(List<LowerHalf> lower, int sign) {
        return lower.stream()
                .map(half -> half.need)
                .min((a, b) -> sign * Double.compare(a.memory(), b.memory()))
                .orElseThrow();
    }

    private void addDrum(BigFraction diameter, Reeving reeving) {
        DrumRun run = rules.limits.drumRun(diameter, reeving);
        if (!rules.limits.windsInOneLayer(run)) {
            return;
        }
        double[] hours = rules.limits.roughHoursPerTurn(run);
        drums.add(new DrumChoice(diameter, run, hours[0], hours[1]));
        fewestHours = Math.min(fewestHours, hours[0]);
        mostHours = Math.max(mostHours, hours[1]);
    }

    /** The halves, least weight first. */
    public List<UpperHalf> list() {
        if (choices.stream().noneMatch(List::isEmpty) && !drums.isEmpty()) {
            extend(new ArrayList<>(), 1, PartSums.NONE);
        }
        if (thin) {
            halves.removeIf(half -> covered(half));
        }
        halves.sort((a, b) -> a.leastWeight[1] != b.leastWeight[1]
                ? Double.compare(a.leastWeight[1], b.leastWeight[1])
                : a.comesBefore(b) ? -1 : 1);
        return halves;
    }

    private void extend(List<MeshChoice> front, double ratio, PartSums sums) {
        boolean last = front.size() == count - 1;
        for (MeshChoice choice : choices.get(front.size())) {
            double product = ratio * choice.ratio;
            if (product > mostHours || cancelled.getAsBoolean()) {
                return;
            }
            if ((last && product < fewestHours) || !clearsArborBefore(front, choice)) {
                continue;
            }
            front.add(choice);
            if (last) {
                putDrums(front, product, sums.with(choice));
            } else {
                extend(front, product, sums.with(choice));
            }
            front.remove(front.size() - 1);
        }
    }

    private boolean clearsArborBefore(List<MeshChoice> front, MeshChoice choice) {
        int arbor = front.size() - 1;
        return front.isEmpty()
                || rules.limits.clears(front.get(arbor).mesh, HalfJoin.role(arbor, count), choice.tipRadius);
    }

    private void putDrums(List<MeshChoice> meshes, double hours, PartSums sums) {
        BigFraction exact = null;
        for (DrumChoice drum : drums) {
            if (hours < drum.fewestHours || hours > drum.mostHours || !flangeClears(meshes, drum)) {
                continue;
            }
            exact = exact == null ? exactHours(meshes) : exact;
            if (rules.limits.runsLongEnough(exact, drum.run) && rules.limits.runsNotTooLong(exact, drum.run)) {
                add(meshes, drum, sums);
            }
        }
    }

    private boolean flangeClears(List<MeshChoice> meshes, DrumChoice drum) {
        return rules.limits.clears(
                meshes.get(0).mesh,
                HalfJoin.role(1, count),
                rules.limits.drumFlangeRadius(drum.diameter.doubleValue()));
    }

    private static BigFraction exactHours(List<MeshChoice> meshes) {
        return meshes.stream()
                .map(choice -> choice.mesh.counts().ratio())
                .reduce(BigFraction.ONE, BigFraction::multiply);
    }

    private void add(List<MeshChoice> meshes, DrumChoice drum, PartSums sums) {
        double diameter = drum.diameter.doubleValue();
        long drumMass = rules.movement.parts().drumMass(diameter);
        long escapeMass = rules.movement.parts().escapeWheelMass();
        UpperHalf half = new UpperHalf(
                meshes,
                drum.diameter,
                drum.run,
                sums.withMass(drumMass + escapeMass),
                rules.rater.objectives().durationError(hours(meshes), drum.run),
                rules.movement.lineArm(diameter),
                drumMass,
                weights(meshes, drum, drumMass, longestMemory));
        if (Double.isInfinite(half.leastWeight[0]) || Double.isInfinite(half.leastWeight[2])) {
            return;
        }
        if (thin) {
            if (covered(half)) {
                return;
            }
            kept.add(point(half, weights(meshes, drum, drumMass, shortestMemory)), half);
        }
        halves.add(half);
    }

    private static double hours(List<MeshChoice> meshes) {
        long teeth = 1;
        long leaves = 1;
        for (MeshChoice choice : meshes) {
            teeth *= choice.teeth;
            leaves *= choice.leaves;
        }
        return (double) teeth / leaves;
    }

    /**
     * The weight as a rising line of the torque at the centre: constant and slope, running then binding. The walk is a
     * chain of rising lines, so two points of it give the line.
     */
    private double[] weights(List<MeshChoice> meshes, DrumChoice drum, long drumMass, EscapeNeed need) {
        double running = weight(meshes, drum, drumMass, need, Criterion.RUNNING, 0);
        double binding = weight(meshes, drum, drumMass, need, Criterion.BINDING, 0);
        return new double[] {
            running,
            weight(meshes, drum, drumMass, need, Criterion.RUNNING, 1) - running,
            binding,
            weight(meshes, drum, drumMass, need, Criterion.BINDING, 1) - binding
        };
    }

    private double weight(
            List<MeshChoice> meshes,
            DrumChoice drum,
            long drumMass,
            EscapeNeed need,
            Criterion criterion,
            double centreLoad) {
        double load = centreLoad;
        double hours = 1;
        for (int i = count - 1; i >= 0; i--) {
            MeshChoice choice = meshes.get(i);
            hours *= choice.ratio;
            double passed = choice.passed(criterion, WeightWalk.pitchesRemembered(need, hours, choice.teeth));
            load = rules.step(criterion, load, HalfJoin.role(i + 1, count), choice, passed, HalfJoin.role(i, count));
        }
        double tension = rules.movement
                .regime(criterion)
                .arbor(ArborRole.DRUM)
                .tension(load, rules.movement.lineArm(drum.diameter.doubleValue()), drumMass);
        return rules.movement.weightFor(tension, drum.run.reeving());
    }

    /** Asks at its best, with the longest memory, whether another half at its worst, with the shortest, replaces it. */
    private boolean covered(UpperHalf half) {
        double[] best = point(half, half.leastWeight);
        for (int i = 0; i < 4; i++) {
            best[i] *= 1 - ROUNDING;
        }
        return kept.covers(best, (point, entry, asked) -> replaces(point, entry, asked, half));
    }

    private double[] point(UpperHalf half, double[] weights) {
        boolean duration = rules.asked.contains(ObjectiveFigure.DURATION_ERROR);
        int fixed = FIXED_ATTRIBUTES + (duration ? 1 : 0);
        double[] point = new double[fixed + rules.objectiveAttributes()];
        System.arraycopy(weights, 0, point, 0, 4);
        point[4] = -rules.limits.clearance(half.lastMesh().mesh, HalfJoin.role(count - 1, count), 0);
        if (duration) {
            point[FIXED_ATTRIBUTES] = half.durationError;
        }
        rules.writeObjectives(point, fixed, half.sums);
        return point;
    }

    private static boolean replaces(double[] point, UpperHalf entry, double[] asked, UpperHalf half) {
        boolean lighter = HalfRules.surelyLess(point[1], asked[1]) && HalfRules.surelyLess(point[3], asked[3]);
        return lighter || entry.comesBefore(half);
    }
}
