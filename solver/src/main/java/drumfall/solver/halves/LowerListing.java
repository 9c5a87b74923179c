// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.halves;

import drumfall.solver.power.ArborRole;
import drumfall.solver.power.Criterion;
import drumfall.solver.power.WeightWalk;
import drumfall.solver.power.escape.EscapeNeed;
import drumfall.solver.rating.TrainLimits;
import drumfall.solver.rating.Trust;
import java.util.ArrayList;
import java.util.List;
import java.util.function.BooleanSupplier;

/** Goes through the lower halves of one escape wheel that begin with one part of the choices. */
final class LowerListing {
    /** Bounds are computed by other operations than figures; this is far above their rounding and far below any cell. */
    private static final double ROUNDING = 1e-12;

    /** Parts into which the first mesh's choices are dealt out in turn, so that each part is alike. */
    static final int PARTS = 4;

    private final HalfRules rules;
    private final List<List<MeshChoice>> choices;
    private final int count;
    private final EscapeSide escape;
    private final LowerReaches reaches;
    private final int part;
    private final boolean thin;
    private final boolean secondsAsked;
    private final LowerFront front;
    private final BooleanSupplier cancelled;
    private final List<LowerHalf> all = new ArrayList<>();

    /** What each mesh put so far lets through at most when running. */
    private final double[] mostFelt;

    /** What the longest memory of this escape wheel is worth. */
    private final double mostCredit;

    /**
     * Prepares the listing.
     *
     * @param rules what both halves share
     * @param choices what may stand at each place below the centre
     * @param escape the escape wheel
     * @param reaches what halves bring to overlaps
     * @param part which of the {@link #PARTS} parts of the first mesh's choices to go through, from 0
     * @param thin whether to leave out what the front replaces
     * @param front halves known, added to while thinning
     * @param cancelled asked often; once true the listing ends early
     */
    LowerListing(
            HalfRules rules,
            List<List<MeshChoice>> choices,
            EscapeSide escape,
            LowerReaches reaches,
            int part,
            boolean thin,
            LowerFront front,
            BooleanSupplier cancelled) {
        this.rules = rules;
        this.choices = choices;
        this.count = choices.size();
        this.escape = escape;
        this.reaches = reaches;
        this.part = part;
        this.thin = thin;
        this.secondsAsked = rules.limits.asksSecondsHand();
        this.front = front;
        this.cancelled = cancelled;
        this.mostFelt = new double[count];
        this.mostCredit = front.credit(escape.longestMemory);
    }

    /** The halves; with thinning those that were not known before. */
    List<LowerHalf> list() {
        int known = front.size();
        List<MeshChoice> meshes = new ArrayList<>();
        if (count > 1) {
            List<MeshChoice> first = choices.get(0);
            for (int i = part; i < first.size() && !cancelled.getAsBoolean(); i += PARTS) {
                put(first.get(i), meshes, 1, PartSums.NONE, escape.kinds());
            }
        } else if (part == 0) {
            extend(escape.kinds(), meshes, 1, PartSums.NONE);
        }
        return thin ? front.keptSince(known) : all;
    }

    /** Goes through the halves that begin with some meshes and another one, and end with a tail of some kind. */
    private void put(MeshChoice choice, List<MeshChoice> meshes, double ratio, PartSums sums, List<TailKind> kinds) {
        if (!clearsArborBefore(meshes, choice)) {
            return;
        }
        mostFelt[meshes.size()] = choice.felt.felt(escape.longestMemory * choice.teeth * ratio / 3600);
        meshes.add(choice);
        if (mayServeSeconds(meshes)) {
            extend(kinds, meshes, ratio * choice.ratio, sums.with(choice));
        }
        meshes.remove(meshes.size() - 1);
    }

    /** Goes through the halves that begin with some meshes and end with a tail of some kind. */
    private void extend(List<TailKind> kinds, List<MeshChoice> meshes, double ratio, PartSums sums) {
        int band = TailOutlook.band(ratio);
        if (meshes.size() == 1) {
            TailBounds.Least any = escape.anyTail(band);
            if (!mayMatter(meshes, any, sums)) {
                return;
            }
        }
        List<MeshChoice> next = null;
        List<TailKind> left = new ArrayList<>();
        for (TailKind kind : kinds) {
            if (kind.first() != next) {
                extendWith(next, left, meshes, ratio, sums);
                next = kind.first();
                left.clear();
            }
            if (mayMatter(meshes, escape.tail(kind, band), sums)) {
                left.add(kind);
            }
        }
        extendWith(next, left, meshes, ratio, sums);
    }

    /** Goes through the halves whose next mesh is of one group, with the kinds of tails that are left behind it. */
    private void extendWith(
            List<MeshChoice> next, List<TailKind> kinds, List<MeshChoice> meshes, double ratio, PartSums sums) {
        if (kinds.isEmpty()) {
            return;
        }
        boolean last = kinds.get(0).rest() == null;
        List<TailKind> rests =
                last ? List.of() : kinds.stream().map(TailKind::rest).toList();
        int from = kinds.stream()
                .mapToInt(kind -> kind.firstReaching(escape.fewestTurns / ratio))
                .min()
                .orElseThrow();
        for (int i = from; i < next.size(); i++) {
            MeshChoice choice = next.get(i);
            if (ratio * choice.ratio > escape.mostTurns || cancelled.getAsBoolean()) {
                return;
            }
            if (!last) {
                put(choice, meshes, ratio, sums, rests);
            } else if (clearsArborBefore(meshes, choice)) {
                mostFelt[meshes.size()] = choice.bestFelt;
                meshes.add(choice);
                finish(meshes, sums.with(choice));
                meshes.remove(meshes.size() - 1);
            }
        }
    }

    /** A seconds hand needs a product of 60 behind an even number of meshes; is one there or still to come? */
    private boolean mayServeSeconds(List<MeshChoice> meshes) {
        boolean toCome = meshes.size() / 2 < count / 2;
        return toCome || secondsServed(meshes);
    }

    private boolean secondsServed(List<MeshChoice> meshes) {
        if (!secondsAsked) {
            return true;
        }
        long leaves = 1;
        long teeth = 1;
        for (int i = 0; i < meshes.size(); i++) {
            leaves *= meshes.get(i).leaves;
            teeth *= meshes.get(i).teeth;
            if (i % 2 == 1 && TrainLimits.turnsOnceAMinute(teeth, leaves)) {
                return true;
            }
        }
        return false;
    }

    private boolean clearsArborBefore(List<MeshChoice> meshes, MeshChoice choice) {
        int before = meshes.size() - 1;
        return meshes.isEmpty() || rules.limits.clears(meshes.get(before).mesh, role(before), choice.tipRadius);
    }

    /** Role of the arbor that carries the wheel of a mesh of the half. */
    private static ArborRole role(int index) {
        return index == 0 ? ArborRole.CENTRE : ArborRole.INTERMEDIATE;
    }

    /**
     * Whether meshes and the best tail behind them might be a half that none so far replaces.
     *
     * @param sums of the meshes
     */
    private boolean mayMatter(List<MeshChoice> meshes, TailBounds.Least tail, PartSums sums) {
        if (Double.isInfinite(tail.running())) {
            return false;
        }
        if (!thin || meshes.isEmpty()) {
            return true;
        }
        return !unwanted(
                meshes, ArborRole.INTERMEDIATE, tail.running(), tail.binding(), mostCredit, sums.with(tail.sums()));
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
        if (thin && unwantedAtBest(meshes, need, sums)) {
            return;
        }
        if (secondsServed(meshes)) {
            add(meshes, need, sums, leaves, teeth);
        }
    }

    private boolean unwantedAtBest(List<MeshChoice> meshes, EscapeNeed need, PartSums sums) {
        return unwanted(
                meshes,
                ArborRole.ESCAPE,
                escape.load(Criterion.RUNNING, need.torque()),
                escape.load(Criterion.BINDING, need.torque()),
                front.credit(need.memory()),
                sums);
    }

    /** Whether meshes with such loads behind them surely need not be listed. */
    private boolean unwanted(
            List<MeshChoice> meshes,
            ArborRole below,
            double runningBehind,
            double bindingBehind,
            double credit,
            PartSums sums) {
        double running = atBest(meshes, Criterion.RUNNING, below, runningBehind);
        double binding = atBest(meshes, Criterion.BINDING, below, bindingBehind);
        return front.hopeless(running, binding, sums)
                || front.replaced(
                        running,
                        binding,
                        credit,
                        meshes.get(0).tipRadius,
                        borne(meshes),
                        sums,
                        () -> reaches.of(meshes));
    }

    private void add(List<MeshChoice> meshes, EscapeNeed need, PartSums sums, long leaves, long teeth) {
        double running = load(meshes, Criterion.RUNNING, need, leaves, teeth);
        double binding = load(meshes, Criterion.BINDING, need, leaves, teeth);
        if (Double.isInfinite(running) || Double.isInfinite(binding)) {
            return;
        }
        LowerReach reach = reaches.of(meshes);
        Trust trust = rules.trust(meshes, escape.teeth);
        if (trust == Trust.HOPELESS || !reaches.mayFit(reach)) {
            return;
        }
        LowerHalf half = new LowerHalf(
                meshes, escape.teeth, need, running, binding, borne(meshes), sums, trust == Trust.DISTRUSTED, reach);
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

    /** Torque on the centre arbor that the meshes so far bear; more of them never bear more. */
    private static double borne(List<MeshChoice> meshes) {
        double least = Double.POSITIVE_INFINITY;
        long leaves = 1;
        long teeth = 1;
        for (MeshChoice choice : meshes) {
            least = Math.min(least, choice.borne / ((double) leaves / teeth));
            leaves *= choice.leaves;
            teeth *= choice.teeth;
        }
        return least;
    }
}
