// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.halves;

import drumfall.solver.power.ArborRole;
import drumfall.solver.power.Criterion;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * What may stand last above the centre with one module and one pinion, lowest ratio first, and the best of any stretch of
 * it. Choices of several modules or pinions together would have a best that belongs to no mesh.
 */
final class LastMeshes {
    /** Few enough neighbours that their best lies near each of them, so many that asking for it pays. */
    private static final int STRETCH = 8;

    final List<MeshChoice> choices;
    private final Best[] stretches;
    private final double[] mostFelt;
    private final double[] constant;
    private final double[] slope;
    private final double[] clearance;

    /**
     * The best of some choices, each figure on its own.
     *
     * @param constant torque on the arbor before if the centre needed none, N m
     * @param slope torque on the arbor before for each unit at the centre
     * @param leastRatio smallest ratio
     * @param mostRatio largest ratio
     * @param clearance room beside the arbor before the centre, m
     * @param borne torque on the centre arbor that the teeth bear, N m
     * @param sums what the parts add at least
     */
    record Best(
            double constant,
            double slope,
            double leastRatio,
            double mostRatio,
            double clearance,
            double borne,
            PartSums sums) {}

    private LastMeshes(List<MeshChoice> choices, HalfRules rules, UpperLines lines, int count) {
        this.choices = choices;
        this.stretches = new Best[(choices.size() + STRETCH - 1) / STRETCH];
        this.mostFelt = choices.stream().mapToDouble(lines::mostFelt).toArray();
        this.constant = new double[mostFelt.length];
        this.slope = new double[mostFelt.length];
        this.clearance = new double[mostFelt.length];
        ArborRole below = HalfJoin.role(count, count);
        ArborRole above = HalfJoin.role(count - 1, count);
        for (int i = 0; i < mostFelt.length; i++) {
            MeshChoice choice = choices.get(i);
            constant[i] = rules.step(Criterion.RUNNING, 0, below, choice, mostFelt[i], above);
            slope[i] = rules.step(Criterion.RUNNING, 1, below, choice, mostFelt[i], above) - constant[i];
            clearance[i] = rules.limits.clearance(choice.mesh, above, 0);
        }
        for (int i = 0; i < choices.size(); i += STRETCH) {
            stretches[i / STRETCH] = between(i, endOfStretch(i));
        }
    }

    /**
     * The groups of a place.
     *
     * @param place what may stand there, lowest ratio first
     * @param rules what both halves share
     * @param lines tells what meshes let through at most
     * @param count meshes above the centre
     */
    static List<LastMeshes> of(List<MeshChoice> place, HalfRules rules, UpperLines lines, int count) {
        Map<Integer, Map<Integer, List<MeshChoice>>> groups = new TreeMap<>();
        place.forEach(choice -> groups.computeIfAbsent(choice.moduleNumber, module -> new TreeMap<>())
                .computeIfAbsent(choice.leaves, leaves -> new ArrayList<>())
                .add(choice));
        return groups.values().stream()
                .flatMap(ofModule -> ofModule.values().stream())
                .map(choices -> new LastMeshes(choices, rules, lines, count))
                .toList();
    }

    /** What a choice lets through at most when running. */
    double mostFelt(int index) {
        return mostFelt[index];
    }

    /** The first choice whose ratio is at least so much; their number if there is none. */
    int firstAtLeast(double ratio) {
        return MeshGroups.firstAtLeast(choices, ratio);
    }

    /** The first choice behind the stretch that another one is in. */
    int endOfStretch(int index) {
        return Math.min(choices.size(), (index / STRETCH + 1) * STRETCH);
    }

    /** The best of the stretch that a choice is in. */
    Best stretch(int index) {
        return stretches[index / STRETCH];
    }

    private Best between(int from, int to) {
        double leastConstant = Double.POSITIVE_INFINITY;
        double leastSlope = Double.POSITIVE_INFINITY;
        double most = Double.NEGATIVE_INFINITY;
        double borne = 0;
        PartSums sums = PartSums.NONE.with(choices.get(from));
        for (int i = from; i < to; i++) {
            MeshChoice choice = choices.get(i);
            leastConstant = Math.min(leastConstant, constant[i]);
            leastSlope = Math.min(leastSlope, slope[i]);
            most = Math.max(most, clearance[i]);
            borne = Math.max(borne, choice.borne / choice.ratio);
            sums = sums.least(PartSums.NONE.with(choice));
        }
        return new Best(
                leastConstant, leastSlope, choices.get(from).ratio, choices.get(to - 1).ratio, most, borne, sums);
    }
}
