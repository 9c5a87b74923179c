// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.halves;

import static drumfall.solver.halves.UpperLines.BINDING;
import static drumfall.solver.halves.UpperLines.RUNNING;

import drumfall.solver.rating.CellFront;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.atomic.AtomicReferenceArray;

/**
 * Whether an upper half can bring anything to the front: beside one of the lower halves its train must be light enough for
 * its other figures. May be shared between threads, which may both work out a field.
 */
final class UpperProspects {
    private final FrontGrid grid;
    private final int count;
    private final int countBelow;
    private final List<LowerBest> lowers;
    private final AtomicReferenceArray<Partner[]> partners;

    /** The best of some lower halves of one field, each figure on its own. */
    private record LowerBest(double running, double binding, PartSums sums) {
        static LowerBest of(LowerHalf half) {
            return new LowerBest(half.runningLoad, half.bindingLoad, half.sums);
        }

        LowerBest best(LowerBest other) {
            return new LowerBest(
                    Math.min(running, other.running), Math.min(binding, other.binding), sums.least(other.sums));
        }
    }

    /**
     * A lower half beside upper halves of one field.
     *
     * @param running torque on the centre arbor when running, N m
     * @param binding the same at the worst of every mesh
     * @param heaviest least running weight with which the train may still change the front, kg
     */
    private record Partner(double running, double binding, double heaviest) {
        boolean covers(Partner other) {
            return running <= other.running && binding <= other.binding && heaviest >= other.heaviest;
        }
    }

    /**
     * The prospects beside a front.
     *
     * @param rules what both halves share
     * @param front what has been found; must not change meanwhile
     * @param count meshes from the drum to the centre
     * @param lowers the lower halves to be joined, at least one
     */
    UpperProspects(HalfRules rules, CellFront front, int count, List<LowerHalf> lowers) {
        this.grid = new FrontGrid(rules, front);
        this.count = count;
        this.countBelow = lowers.get(0).meshes.size();
        Map<Integer, LowerBest> best = new TreeMap<>();
        for (LowerHalf half : lowers) {
            best.merge(grid.field(half.sums), LowerBest.of(half), LowerBest::best);
        }
        this.lowers = best.values().stream()
                .sorted(Comparator.comparingDouble(LowerBest::running))
                .toList();
        this.partners = new AtomicReferenceArray<>(grid.fields());
    }

    /**
     * Whether no train can change the front whose upper half makes at least such a weight.
     *
     * @param figures of the half, or better
     */
    boolean hopeless(UpperFigures figures) {
        double[] lines = figures.lines;
        return hopeless(
                new DrumLine(lines[RUNNING], lines[RUNNING + 1], lines[BINDING], lines[BINDING + 1]), figures.sums);
    }

    /**
     * Whether no train can change the front whose upper half makes at least such a weight.
     *
     * @param line weight by the torque at the centre, or less
     * @param sums what the parts add up to, or less
     */
    boolean hopeless(DrumLine line, PartSums sums) {
        for (Partner partner : partners(grid.field(sums))) {
            if (line.running() + line.runningSlope() * partner.running <= partner.heaviest
                    && line.binding() + line.bindingSlope() * partner.binding <= partner.heaviest) {
                return false;
            }
        }
        return true;
    }

    private Partner[] partners(int field) {
        Partner[] known = partners.get(field);
        if (known == null) {
            known = partners(grid.least(field));
            partners.set(field, known);
        }
        return known;
    }

    private Partner[] partners(PartSums sums) {
        List<Partner> kept = new ArrayList<>();
        for (LowerBest best : lowers) {
            Partner partner = new Partner(
                    best.running, best.binding, grid.heaviestLeast(sums.with(best.sums), count + countBelow));
            if (kept.stream().noneMatch(other -> other.covers(partner))) {
                kept.removeIf(partner::covers);
                kept.add(partner);
            }
        }
        return kept.toArray(Partner[]::new);
    }
}
