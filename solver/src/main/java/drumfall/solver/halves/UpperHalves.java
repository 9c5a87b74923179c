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
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.BooleanSupplier;
import org.apache.commons.numbers.fraction.BigFraction;

/** Lists the upper halves with a number of meshes that some front may need. */
public final class UpperHalves {
    /** One choice in so many at each place is tried first: its halves replace most others before these are worked out. */
    private static final int SAMPLE = 7;

    private final HalfRules rules;
    private final int count;
    private final boolean thin;
    private final BooleanSupplier cancelled;
    private final UpperLines lines;
    private final UpperReaches reaches;
    private final boolean durationAsked;
    private final boolean lowerMayBreak;
    private final double heaviest;
    private final List<List<MeshChoice>> choices = new ArrayList<>();
    private final List<double[]> mostFeltAt = new ArrayList<>();
    private final double[] mostFelt;
    private final List<DrumChoice> drums = new ArrayList<>();
    private final DominanceTree<UpperHalf> tree;
    private final List<UpperHalf> kept = new ArrayList<>();
    /** They replace none, so they are not in the tree and would be taken in twice. */
    private final Set<UpperHalf> distrusted = new HashSet<>();

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
        this.mostFelt = new double[count];
        this.thin = thin;
        this.cancelled = cancelled;
        this.lines = new UpperLines(rules, lower);
        this.reaches = new UpperReaches(rules, count, lower);
        this.lowerMayBreak = lower.stream().anyMatch(half -> half.borne < rules.mostCentreTorque);
        this.heaviest = rules.limits.heaviestRecommendedWeight();
        this.durationAsked = rules.asked.contains(ObjectiveFigure.DURATION_ERROR);
        this.tree = new DominanceTree<>(attributes());
        MeshChoices allowed = new MeshChoices(rater);
        for (int number = 1; number <= count; number++) {
            choices.add(LowerHalves.everyFew(allowed.at(new MeshPlace(MeshPlace.Side.ABOVE, number)), stride));
            mostFeltAt.add(choices.get(number - 1).stream()
                    .mapToDouble(lines::mostFelt)
                    .toArray());
        }
        for (BigFraction diameter : rules.choices.drumDiametersLeft()) {
            for (Reeving reeving : rules.choices.reevingsLeft()) {
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
            PartSums start = PartSums.NONE.withMass(rules.movement.parts().escapeWheelMass());
            if (thin && count > 1) {
                extend(new ArrayList<>(), 1, start, SAMPLE);
            }
            extend(new ArrayList<>(), 1, start, 1);
        }
        List<UpperHalf> halves = new ArrayList<>(
                thin
                        ? kept.stream()
                                .takeWhile(half -> !cancelled.getAsBoolean())
                                .filter(half -> !replaced(half, false))
                                .toList()
                        : kept);
        int slope = 2 * UpperLines.BANDS + 1;
        halves.sort(Comparator.<UpperHalf>comparingDouble(half -> half.lines[slope])
                .thenComparing((a, b) -> a.compareTo(b)));
        return halves;
    }

    private void extend(List<MeshChoice> meshes, double ratio, PartSums sums, int stride) {
        boolean last = meshes.size() == count - 1;
        List<MeshChoice> place = choices.get(meshes.size());
        for (int i = 0; i < place.size(); i += stride) {
            MeshChoice choice = place.get(i);
            double product = ratio * choice.ratio;
            if (product > mostHours * (1 + 1e-9) || cancelled.getAsBoolean()) {
                return;
            }
            if ((last && product < fewestHours * (1 - 1e-9)) || !clearsArborBefore(meshes, choice)) {
                continue;
            }
            mostFelt[meshes.size()] = mostFeltAt.get(meshes.size())[i];
            meshes.add(choice);
            if (last) {
                putDrums(meshes, sums.with(choice));
            } else {
                extend(meshes, product, sums.with(choice), stride);
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
        List<DrumChoice> fitting = new ArrayList<>();
        for (DrumChoice drum : drums) {
            if (drum.mayRun(hours)
                    && rules.limits.clears(meshes.get(0).mesh, HalfJoin.role(1, count), drum.flangeRadius())
                    && (drum.surelyRuns(hours) || runs(meshes, drum))) {
                fitting.add(drum);
            }
        }
        if (fitting.isEmpty() || (thin && replacedAtBest(meshes, hours, sums, fitting))) {
            return;
        }
        double[] atDrumArbor = lines.atDrumArbor(meshes);
        for (DrumChoice drum : fitting) {
            offer(half(meshes, hours, sums, drum, atDrumArbor));
        }
    }

    private UpperReach reach(List<MeshChoice> meshes, DrumChoice drum) {
        return reaches.of(meshes, drum.flangeRadius());
    }

    private UpperHalf half(
            List<MeshChoice> meshes, double hours, PartSums sums, DrumChoice drum, double[] atDrumArbor) {
        return new UpperHalf(
                meshes,
                drum,
                sums.withMass(drum.mass()),
                durationAsked ? rules.rater.objectives().durationError(hours, drum.run()) : 0,
                lines.atLine(atDrumArbor, drum),
                rules.limits.teeth(),
                rules.distrusts(meshes, drum),
                reach(meshes, drum));
    }

    /** Whether each reeving's best drum, as quick and light and wide as any of them, would be replaced. */
    private boolean replacedAtBest(List<MeshChoice> meshes, double hours, PartSums sums, List<DrumChoice> fitting) {
        double[] least = lines.leastAtDrumArbor(meshes, mostFelt);
        for (Reeving reeving : Reeving.values()) {
            List<DrumChoice> same = fitting.stream()
                    .filter(drum -> drum.run().reeving() == reeving)
                    .toList();
            if (!same.isEmpty() && !bestReplaced(meshes, hours, sums, same, least)) {
                return false;
            }
        }
        return true;
    }

    private boolean bestReplaced(
            List<MeshChoice> meshes, double hours, PartSums sums, List<DrumChoice> same, double[] least) {
        double[] point = null;
        UpperReach best = null;
        for (DrumChoice drum : same) {
            UpperHalf half = half(meshes, hours, sums, drum, least);
            double[] one = point(half, false);
            point = point == null ? one : smaller(point, one);
            best = best == null ? half.reach : best.best(half.reach);
        }
        UpperReach reach = best;
        return UpperLines.leastOf(point) > rules.limits.heaviestLeastWeight() * (1 + 1e-9)
                || tree.covers(
                        point, (at, entry, asked) -> entry.reach.servesFor(reach) && UpperLines.surelyLess(at, asked));
    }

    private static double[] smaller(double[] first, double[] second) {
        double[] smaller = new double[first.length];
        for (int i = 0; i < first.length; i++) {
            smaller[i] = Math.min(first[i], second[i]);
        }
        return smaller;
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
        if (!lines.finite(half.lines)
                || lines.leastWeight(half.lines) > rules.limits.heaviestLeastWeight() * (1 + 1e-9)
                || !reaches.mayFit(half.reach)
                || (thin && replaced(half, true))) {
            return;
        }
        if (half.distrusted && thin && !distrusted.add(half)) {
            return;
        }
        if (thin && !half.distrusted) {
            tree.add(point(half, true), half);
        }
        kept.add(half);
    }

    private boolean replaced(UpperHalf half, boolean byItself) {
        return tree.covers(
                point(half, false),
                (point, entry, asked) -> entry.reach.servesFor(half.reach)
                        && (UpperLines.surelyLess(point, asked)
                                || entry.compareTo(half) < 0
                                || (byItself && entry.compareTo(half) == 0)));
    }

    private int attributes() {
        return UpperLines.attributes() + 3 + (durationAsked ? 1 : 0) + rules.objectiveAttributes();
    }

    /** The heaviest weight that its teeth, its ratchet and its line carry, kg. */
    private double carried(UpperHalf half) {
        return Math.min(
                rules.limits.teeth().weightFor(half.borne, half.centrePull),
                rules.limits.heaviestCarried(half.lineArm, half.reeving));
    }

    /**
     * A half that makes no more weight, carries no less weight and, if teeth below may break, pulls no
     * harder at the centre for each newton, stands wherever the other one does.
     */
    private double[] point(UpperHalf half, boolean offered) {
        double[] point = new double[attributes()];
        lines.write(half.lines, offered, point);
        int next = UpperLines.attributes();
        point[next++] = -rules.limits.clearance(half.lastMesh().mesh, HalfJoin.role(count - 1, count), 0);
        point[next++] = -Math.min(carried(half), heaviest);
        point[next++] = lowerMayBreak ? half.centrePull : 0;
        if (durationAsked) {
            point[next++] = half.durationError;
        }
        rules.writeObjectives(point, next, half.sums);
        return point;
    }
}
