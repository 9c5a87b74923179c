// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.halves;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.BooleanSupplier;
import java.util.function.Predicate;

/** The upper halves that no other one replaces so far. */
final class UpperFront {
    private final HalfRules rules;
    private final UpperLines lines;
    private final UpperProspects prospects;
    private final boolean durationAsked;
    private final boolean lowerMayBreak;
    private final double heaviest;
    private final double heaviestLeast;
    private final DominanceTree<UpperHalf> tree;
    private final List<UpperHalf> kept = new ArrayList<>();
    /** They replace none, so they are not in the tree and would be taken in twice. */
    private final Set<UpperHalf> distrusted = new HashSet<>();

    /**
     * An empty front.
     *
     * @param rules what both halves share
     * @param lines of the lower halves to be joined
     * @param prospects what trains can still bring
     * @param durationAsked whether the error of the duration is an objective
     * @param lowerMayBreak whether teeth of some lower half bear less than a weight may bring
     */
    UpperFront(
            HalfRules rules, UpperLines lines, UpperProspects prospects, boolean durationAsked, boolean lowerMayBreak) {
        this.rules = rules;
        this.lines = lines;
        this.prospects = prospects;
        this.durationAsked = durationAsked;
        this.lowerMayBreak = lowerMayBreak;
        this.heaviest = rules.limits.heaviestRecommendedWeight();
        this.heaviestLeast = rules.limits.heaviestLeastWeight() * (1 + 1e-9);
        this.tree = new DominanceTree<>(lines.attributes() + 3 + (durationAsked ? 1 : 0) + rules.objectiveAttributes());
    }

    /**
     * Whether a half with figures no better than these is surely too heavy, or replaced.
     *
     * @param figures of the half, or better
     * @param serves whether the reach of a half that might replace it serves for its own
     */
    boolean replaced(UpperFigures figures, Predicate<UpperReach> serves) {
        double[] point = point(figures, false);
        return UpperLines.leastOf(point) > heaviestLeast
                || tree.covers(point, (at, entry, asked) -> lines.surelyLess(at, asked) && serves.test(entry.reach));
    }

    /**
     * Whether a half is surely without prospects.
     *
     * @param line weight by the torque at the centre, or less
     * @param sums what the parts add up to, or less
     */
    boolean hopeless(DrumLine line, PartSums sums) {
        return prospects.hopeless(line, sums);
    }

    /** Whether a half is too heavy beside every lower half. */
    boolean tooHeavy(UpperHalf half) {
        return lines.leastWeight(half.lines) > heaviestLeast;
    }

    /** Takes a half in unless another one replaces it or it is in already; a distrusted half replaces none. */
    void offer(UpperHalf half) {
        if (prospects.hopeless(figures(half)) || replaced(half, true) || (half.distrusted && !distrusted.add(half))) {
            return;
        }
        if (!half.distrusted) {
            tree.add(point(figures(half), true), half);
        }
        kept.add(half);
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
    List<UpperHalf> keptSince(int first) {
        return List.copyOf(kept.subList(first, kept.size()));
    }

    /**
     * The halves that are left when each has been held against all others and against the trains found.
     *
     * @param cancelled asked often; once true the list is cut short
     */
    List<UpperHalf> culled(BooleanSupplier cancelled) {
        return new ArrayList<>(kept.stream()
                .takeWhile(half -> !cancelled.getAsBoolean())
                .filter(half -> !prospects.hopeless(figures(half)) && !replaced(half, false))
                .toList());
    }

    private boolean replaced(UpperHalf half, boolean byItself) {
        return tree.covers(
                point(figures(half), false),
                (point, entry, asked) -> entry.reach.servesFor(half.reach)
                        && (lines.surelyLess(point, asked)
                                || entry.compareTo(half) < 0
                                || (byItself && entry.compareTo(half) == 0)));
    }

    private UpperFigures figures(UpperHalf half) {
        return new UpperFigures(
                half.lines,
                clearance(half.lastMesh(), half.meshes.size()),
                half.borne,
                half.centrePull,
                rules.limits.heaviestCarried(half.lineArm, half.reeving),
                half.durationError,
                half.sums);
    }

    /** Room beside the arbor before the centre, m. */
    double clearance(MeshChoice last, int count) {
        return rules.limits.clearance(last.mesh, HalfJoin.role(count - 1, count), 0);
    }

    /** The heaviest weight that teeth, ratchet and line carry, kg. */
    private double carried(UpperFigures figures) {
        return Math.min(rules.limits.teeth().weightFor(figures.borne, figures.centrePull), figures.carried);
    }

    /**
     * A half that makes no more weight, carries no less weight and, if teeth below may break, pulls no harder at the centre for each newton, stands wherever the other one does.
     */
    private double[] point(UpperFigures figures, boolean offered) {
        int next = lines.attributes();
        double[] point = new double[next + 3 + (durationAsked ? 1 : 0) + rules.objectiveAttributes()];
        lines.write(figures.lines, offered, point);
        point[next++] = -figures.clearance;
        point[next++] = -Math.min(carried(figures), heaviest);
        point[next++] = lowerMayBreak ? figures.centrePull : 0;
        if (durationAsked) {
            point[next++] = figures.durationError;
        }
        rules.writeObjectives(point, next, figures.sums);
        return point;
    }
}
