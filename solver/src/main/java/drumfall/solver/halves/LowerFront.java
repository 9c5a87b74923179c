// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.halves;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.BooleanSupplier;
import java.util.function.Supplier;

/** The lower halves that no other one replaces so far. */
final class LowerFront {
    /**
     * Running torque, the same with its memory's credit, deciding binding torque, centre wheel's tip, torque borne, as far
     * as any weight allowed brings so much; objectives follow. A half that bears no less and makes no more weight stands
     * wherever the other one does: beside the same upper half the torque to be borne rises with the weight alone.
     */
    private static final int FIXED_ATTRIBUTES = 5;

    private final HalfRules rules;
    private final CentreOutlook outlook;
    private final LowerProspects prospects;
    private final DominanceTree<LowerHalf> tree;
    private final List<LowerHalf> kept = new ArrayList<>();
    private final Set<LowerHalf> in = new TreeSet<>((a, b) -> a.compareTo(b));

    /**
     * An empty front.
     *
     * @param rules what both halves share
     * @param outlook what upper halves make of torque and memory
     * @param prospects what trains can still bring
     */
    LowerFront(HalfRules rules, CentreOutlook outlook, LowerProspects prospects) {
        this.rules = rules;
        this.outlook = outlook;
        this.prospects = prospects;
        this.tree = new DominanceTree<>(FIXED_ATTRIBUTES + rules.objectiveAttributes());
    }

    /**
     * Whether a half that needs at least so much surely brings nothing: too much for any weight, or without prospects.
     *
     * @param sums what its parts add, or less
     */
    boolean hopeless(double runningLoad, double bindingLoad, PartSums sums) {
        return runningLoad > outlook.mostTorque() || prospects.hopeless(runningLoad, bindingLoad, sums);
    }

    /**
     * Whether a half that needs at least so much and remembers at most so long is surely replaced. The reach, which few
     * entries ask for, must serve for that of the half.
     *
     * @param credit of the memory, see {@link #credit}
     */
    boolean replaced(
            double runningLoad,
            double bindingLoad,
            double credit,
            double tip,
            double borne,
            PartSums sums,
            Supplier<LowerReach> reach) {
        return tree.covers(
                asked(runningLoad, bindingLoad, credit, tip, borne, sums),
                (at, entry, asked) ->
                        surelyLess(at, asked) && (entry.reach.servesForAll() || entry.reach.servesFor(reach.get())));
    }

    /** Share of a running torque that a memory makes of it for a half that may be replaced. */
    double credit(double memory) {
        return outlook.asked(1, memory);
    }

    /** Takes a half in unless another one replaces it or it is in already; a distrusted half replaces none. */
    void offer(LowerHalf half) {
        if (!replaced(half) && in.add(half)) {
            if (!half.distrusted) {
                double[] point = asked(half);
                point[1] = outlook.offered(half.runningLoad, half.need.memory());
                tree.add(point, half);
            }
            kept.add(half);
        }
    }

    /** Number of halves taken in. */
    int size() {
        return kept.size();
    }

    /**
     * The halves taken in, in order, less so many first ones.
     *
     * @param first from 0 to {@link #size}
     */
    List<LowerHalf> keptSince(int first) {
        return List.copyOf(kept.subList(first, kept.size()));
    }

    /**
     * The halves that are left when each has been held against all others and against the trains found.
     *
     * @param cancelled asked often; once true the list is cut short
     */
    List<LowerHalf> culled(BooleanSupplier cancelled) {
        return new ArrayList<>(kept.stream()
                .takeWhile(half -> !cancelled.getAsBoolean())
                .filter(half -> !replaced(half) && !prospects.hopeless(half.runningLoad, half.bindingLoad, half.sums))
                .toList());
    }

    private boolean replaced(LowerHalf half) {
        double[] point = asked(half);
        return tree.covers(
                point,
                (at, entry, asked) ->
                        entry.reach.servesFor(half.reach) && (surelyLess(at, asked) || entry.compareTo(half) < 0));
    }

    private double[] asked(LowerHalf half) {
        return asked(
                half.runningLoad,
                half.bindingLoad,
                credit(half.need.memory()),
                half.centreWheelTip(),
                half.borne,
                half.sums);
    }

    private double[] asked(
            double runningLoad, double bindingLoad, double credit, double tip, double borne, PartSums sums) {
        double[] point = new double[FIXED_ATTRIBUTES + rules.objectiveAttributes()];
        point[0] = runningLoad;
        point[1] = runningLoad * credit;
        point[2] = outlook.deciding(runningLoad, bindingLoad);
        point[3] = tip;
        point[4] = -Math.min(borne, rules.mostCentreTorque);
        rules.writeObjectives(point, FIXED_ATTRIBUTES, sums);
        return point;
    }

    private static boolean surelyLess(double[] point, double[] asked) {
        return HalfRules.surelyLess(point[0], asked[0])
                && HalfRules.surelyLess(point[1], asked[1])
                && HalfRules.surelyLess(point[2], asked[2]);
    }
}
