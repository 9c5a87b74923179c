// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.halves;

import drumfall.solver.power.Criterion;
import drumfall.solver.ratio.WheelAndPinion;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BooleanSupplier;

/**
 * What a longer memory of the pendulum can gain in any upper half, as a logarithm of torque at the centre.
 *
 * <p>A longer memory lets more through of the meshes above the centre. On a fine geometric grid of memories the largest
 * factor by which each mesh can gain from one grid line to the next is found among all meshes allowed there; the sum of
 * their logarithms is the credit {@code φ(τ)}. A half with torque {@code X1} and memory {@code τ1} never makes a heavier
 * weight than one with {@code X2} and {@code τ2} if {@code X1 <= X2} and {@code X1 exp(-φ(τ1)) <= X2 exp(-φ(τ2))}, the
 * credit taken at the grid line below for the first and above for the second.
 *
 * <p>Constant losses above the centre dilute a factor. A step {@code X -> (X + w) g + s} with {@code w, s <= θ X} asks for
 * {@code 1 + e (1 + θ)²} below to have {@code 1 + e} above, and {@code ln(1 + e (1 + θ)) <= (1 + θ) ln(1 + e)}; so the
 * credit is multiplied by {@code (1 + θ)²} for each mesh.
 */
final class MemoryCredit {
    private static final int STEPS = 64;
    private static final double SECONDS_PER_HOUR = 3600;

    /** Keeps the search over slow meshes short when all memories are alike; a longer stride only adds credit. */
    private static final double LEAST_STRIDE = 1e-3;

    private final double shortest;
    private final double step;
    private final double[] credit = new double[STEPS + 2];
    private final BooleanSupplier cancelled;

    /**
     * The credit over a range of memories.
     *
     * @param places what may stand at each place above the centre, from the drum, for every number of meshes allowed
     * @param constantShare {@code θ}
     * @param shortest a memory that no half undercuts, s
     * @param longest a memory that no half exceeds, s
     * @param cancelled asked often; once true the credit is cut short and good for nothing
     */
    MemoryCredit(
            List<List<MeshChoice>> places,
            double constantShare,
            double shortest,
            double longest,
            BooleanSupplier cancelled) {
        this.cancelled = cancelled;
        this.shortest = shortest;
        this.step = Math.max(1e-12, Math.log(longest / shortest) / STEPS);
        double dilution = Math.pow(1 + constantShare, 2 * places.size());
        double slow = places.size() > 1 ? slowGain(places, longest) * (places.size() - 1) : 0;
        double[] quick = quickGains(places);
        for (int i = 1; i < credit.length; i++) {
            credit[i] = credit[i - 1] + (quick[i] + slow) * dilution;
        }
    }

    /** Credit at the grid line below. */
    double below(double memory) {
        return credit[line(memory)];
    }

    /** Credit at the grid line above. */
    double above(double memory) {
        return credit[Math.min(credit.length - 1, line(memory) + 1)];
    }

    private int line(double memory) {
        int line = (int) Math.floor(Math.log(memory / shortest) / step);
        return Math.max(0, Math.min(credit.length - 1, line));
    }

    /** Largest gains of the mesh on the centre pinion, whose pitch lasts an hour over its leaves, up to each grid line. */
    private double[] quickGains(List<List<MeshChoice>> places) {
        double[] gains = new double[credit.length];
        for (MeshChoice choice : countsOf(places.stream().flatMap(List::stream).toList())) {
            double before = 0;
            for (int i = 0; i < gains.length && !cancelled.getAsBoolean(); i++) {
                double memory = shortest * Math.exp(step * i);
                double passed = choice.passed(Criterion.RUNNING, memory * choice.leaves / SECONDS_PER_HOUR);
                gains[i] = Math.max(gains[i], gain(before, passed));
                before = passed;
            }
        }
        return gains;
    }

    /**
     * Largest gain of a mesh further up, slower by any ratio that may stand below it. The pitches remembered lie anywhere in
     * a range; two grid steps cover every single step that begins between two lines.
     */
    private double slowGain(List<List<MeshChoice>> places, double longest) {
        double largestRatio = places.stream()
                .flatMap(List::stream)
                .mapToDouble(choice -> choice.ratio)
                .max()
                .orElse(1);
        double slowest = Math.pow(largestRatio, places.size() - 1.0);
        double stride = Math.exp(Math.max(step, LEAST_STRIDE));
        return countsOf(places.get(0)).parallelStream()
                .mapToDouble(choice -> slowGain(
                        choice,
                        shortest * choice.leaves / SECONDS_PER_HOUR / slowest,
                        longest * choice.leaves / SECONDS_PER_HOUR * stride,
                        stride))
                .max()
                .orElse(0);
    }

    private double slowGain(MeshChoice choice, double slowest, double quickest, double stride) {
        double gain = 0;
        double from = slowest;
        double before = 0;
        double middle = choice.passed(Criterion.RUNNING, from);
        while (from < quickest && !cancelled.getAsBoolean()) {
            from *= stride;
            double passed = choice.passed(Criterion.RUNNING, from);
            gain = Math.max(gain, gain(before, passed));
            before = middle;
            middle = passed;
        }
        return gain;
    }

    /** One choice for each pair of counts: the module scales out of efficiency. */
    private static Collection<MeshChoice> countsOf(List<MeshChoice> place) {
        Map<WheelAndPinion, MeshChoice> byCounts = new LinkedHashMap<>();
        place.forEach(choice -> byCounts.putIfAbsent(choice.mesh.counts(), choice));
        return byCounts.values();
    }

    private static double gain(double before, double passed) {
        return before > 0 ? Math.log(passed / before) : 0;
    }
}
