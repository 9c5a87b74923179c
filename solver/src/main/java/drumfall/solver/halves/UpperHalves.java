// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.halves;

import drumfall.solver.brief.MeshPlace;
import drumfall.solver.brief.ObjectiveFigure;
import drumfall.solver.rating.TrainRater;
import drumfall.solver.train.DrumRun;
import drumfall.solver.train.Reeving;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.BooleanSupplier;
import org.apache.commons.numbers.fraction.BigFraction;

/** Lists the upper halves with a number of meshes that some front may need. */
public final class UpperHalves {
    private final HalfRules rules;
    private final int count;
    private final boolean thin;
    private final BooleanSupplier cancelled;
    private final UpperLines lines;
    private final boolean durationAsked;
    private final List<List<MeshChoice>> choices = new ArrayList<>();
    private final List<DrumChoice> drums = new ArrayList<>();
    private final DominanceTree<UpperHalf> tree;
    private final List<UpperHalf> kept = new ArrayList<>();
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
        this(rater, count, 1, lower, thin, cancelled);
    }

    private UpperHalves(
            TrainRater rater, int count, int stride, List<LowerHalf> lower, boolean thin, BooleanSupplier cancelled) {
        this.rules = new HalfRules(rater);
        this.count = count;
        this.thin = thin;
        this.cancelled = cancelled;
        this.lines = new UpperLines(rules, lower);
        this.durationAsked = rules.asked.contains(ObjectiveFigure.DURATION_ERROR);
        this.tree = new DominanceTree<>(attributes());
        MeshChoices allowed = new MeshChoices(rater);
        for (int number = 1; number <= count; number++) {
            choices.add(LowerHalves.everyFew(allowed.at(new MeshPlace(MeshPlace.Side.ABOVE, number)), stride));
        }
        for (BigFraction diameter : rules.limits.drumDiametersLeft()) {
            for (Reeving reeving : rules.limits.reevingsLeft()) {
                addDrum(diameter, rules.limits.drumRun(diameter, reeving));
            }
        }
    }

    /**
     * A sample of the halves, found quickly: only one choice in a few is tried at each place.
     *
     * @param rater rates against the brief
     * @param count meshes from the drum to the centre, at least 1
     * @param stride one choice in so many is tried
     * @param lower the lower halves it will be joined to, at least one
     * @param cancelled asked often; once true the list ends early
     */
    public static List<UpperHalf> sample(
            TrainRater rater, int count, int stride, List<LowerHalf> lower, BooleanSupplier cancelled) {
        return new UpperHalves(rater, count, stride, lower, true, cancelled).list();
    }

    private void addDrum(BigFraction diameter, DrumRun run) {
        if (rules.limits.windsInOneLayer(run)) {
            double size = diameter.doubleValue();
            double[] hours = rules.limits.hoursPerTurn(run);
            drums.add(new DrumChoice(
                    diameter,
                    run,
                    hours[0],
                    hours[1],
                    rules.movement.lineArm(size),
                    rules.limits.drumFlangeRadius(size),
                    rules.movement.parts().drumMass(size)));
            fewestHours = Math.min(fewestHours, hours[0]);
            mostHours = Math.max(mostHours, hours[1]);
        }
    }

    /** The halves, those that make least of the centre's torque first. */
    public List<UpperHalf> list() {
        if (choices.stream().noneMatch(List::isEmpty) && !drums.isEmpty()) {
            extend(
                    new ArrayList<>(),
                    1,
                    PartSums.NONE.withMass(rules.movement.parts().escapeWheelMass()));
        }
        List<UpperHalf> halves = new ArrayList<>(
                thin
                        ? kept.stream()
                                .takeWhile(half -> !cancelled.getAsBoolean())
                                .filter(half -> !replaced(half))
                                .toList()
                        : kept);
        int slope = 2 * UpperLines.BANDS + 1;
        halves.sort(Comparator.<UpperHalf>comparingDouble(half -> half.lines[slope])
                .thenComparing((a, b) -> a.compareTo(b)));
        return halves;
    }

    private void extend(List<MeshChoice> meshes, double ratio, PartSums sums) {
        boolean last = meshes.size() == count - 1;
        for (MeshChoice choice : choices.get(meshes.size())) {
            double product = ratio * choice.ratio;
            if (product > mostHours * (1 + 1e-9) || cancelled.getAsBoolean()) {
                return;
            }
            if ((last && product < fewestHours * (1 - 1e-9)) || !clearsArborBefore(meshes, choice)) {
                continue;
            }
            meshes.add(choice);
            if (last) {
                putDrums(meshes, sums.with(choice));
            } else {
                extend(meshes, product, sums.with(choice));
            }
            meshes.remove(meshes.size() - 1);
        }
    }

    private boolean clearsArborBefore(List<MeshChoice> meshes, MeshChoice choice) {
        int before = meshes.size() - 1;
        return meshes.isEmpty()
                || rules.limits.clears(meshes.get(before).mesh, HalfJoin.role(before, count), choice.tipRadius);
    }

    private void putDrums(List<MeshChoice> meshes, PartSums sums) {
        double hours = hours(meshes);
        double[] atDrumArbor = null;
        for (DrumChoice drum : drums) {
            if (drum.mayRun(hours)
                    && rules.limits.clears(meshes.get(0).mesh, HalfJoin.role(1, count), drum.flangeRadius())
                    && (drum.surelyRuns(hours) || runs(meshes, drum))) {
                atDrumArbor = atDrumArbor == null ? lines.atDrumArbor(meshes) : atDrumArbor;
                offer(new UpperHalf(
                        meshes,
                        drum,
                        sums.withMass(drum.mass()),
                        rules.rater.objectives().durationError(hours, drum.run()),
                        lines.atLine(atDrumArbor, drum)));
            }
        }
    }

    private boolean runs(List<MeshChoice> meshes, DrumChoice drum) {
        BigFraction hours = meshes.stream()
                .map(choice -> choice.mesh.counts().ratio())
                .reduce(BigFraction.ONE, BigFraction::multiply);
        return rules.limits.runsLongEnough(hours, drum.run()) && rules.limits.runsNotTooLong(hours, drum.run());
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

    private void offer(UpperHalf half) {
        if (!lines.finite(half.lines) || (thin && replaced(half))) {
            return;
        }
        if (thin) {
            tree.add(point(half, true), half);
        }
        kept.add(half);
    }

    private boolean replaced(UpperHalf half) {
        return tree.covers(
                point(half, false),
                (point, entry, asked) -> UpperLines.surelyLess(point, asked) || entry.compareTo(half) < 0);
    }

    private int attributes() {
        return UpperLines.attributes() + 1 + (durationAsked ? 1 : 0) + rules.objectiveAttributes();
    }

    private double[] point(UpperHalf half, boolean offered) {
        double[] point = new double[attributes()];
        lines.write(half.lines, offered, point);
        int next = UpperLines.attributes();
        point[next++] = -rules.limits.clearance(half.lastMesh().mesh, HalfJoin.role(count - 1, count), 0);
        if (durationAsked) {
            point[next++] = half.durationError;
        }
        rules.writeObjectives(point, next, half.sums);
        return point;
    }
}
