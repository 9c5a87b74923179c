// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.halves;

import drumfall.solver.brief.MeshPlace;
import drumfall.solver.power.ArborRole;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.BooleanSupplier;
import java.util.stream.IntStream;

/**
 * The best that any upper half can be, found without listing them: groups of halves whose meshes are of one kind each, with
 * one drum, and the best of every group.
 */
final class UpperOutlook {
    /** So many steps of putting a mesh in front of a band of others take a fraction of a second. */
    private static final double MOST_STEPS = 4e7;

    /** Bands that rows of one mesh and of more meshes reach at most, roughly. */
    private static final double BANDS_OF_ONE = 150;

    private static final double BANDS_OF_MORE = 1000;

    /** So many groups of whole halves are few enough to try each with every drum. */
    private static final double MOST_ROWS = 4000;

    private final HalfRules rules;
    private final HalfTables tables;
    private final double longestMemory;
    private final BooleanSupplier cancelled;
    private final List<DrumChoice> drums;

    private record Row(TailBounds bounds, long modules) {}

    private UpperOutlook(HalfTables tables, double longestMemory, BooleanSupplier cancelled) {
        this.rules = tables.rules;
        this.tables = tables;
        this.longestMemory = longestMemory;
        this.cancelled = cancelled;
        this.drums = DrumChoice.all(rules);
    }

    /**
     * The best of all groups, less those that are nowhere better than another.
     *
     * @param tables of the brief
     * @param longestMemory a memory that no lower half exceeds, s
     * @param cancelled asked often; once true the list is cut short and good for nothing
     */
    static List<UpperBest> of(HalfTables tables, double longestMemory, BooleanSupplier cancelled) {
        UpperOutlook outlook = new UpperOutlook(tables, longestMemory, cancelled);
        List<UpperBest> all = new ArrayList<>();
        tables.rules.choices.meshesAboveLeft().forEach(count -> outlook.add(count, all));
        return leastOf(all, tables.rules.moduleCount, cancelled);
    }

    /** Those that no other one covers; of equals the first. */
    private static List<UpperBest> leastOf(List<UpperBest> all, int modules, BooleanSupplier cancelled) {
        List<UpperBest> kept = new ArrayList<>();
        DominanceTree<UpperBest> tree = new DominanceTree<>(UpperBest.attributes(modules));
        List<UpperBest> sorted = all.stream()
                // No one covers another that stands before it, unless their products are equal.
                .sorted(Comparator.comparingDouble(best -> best.line().runningSlope()
                        * (1.0 + best.sums().filament())
                        * best.sums().largestTip()))
                .toList();
        for (UpperBest best : sorted) {
            if (cancelled.getAsBoolean()) {
                break;
            }
            double[] point = best.point(modules);
            if (!tree.covers(point, (at, other, asked) -> true)) {
                tree.add(point, best);
                kept.add(best);
            }
        }
        return kept;
    }

    private void add(int count, List<UpperBest> all) {
        List<List<MeshChoice>> places = IntStream.rangeClosed(1, count)
                .mapToObj(number -> tables.choicesAt(MeshPlace.Side.ABOVE, number))
                .toList();
        if (places.stream().anyMatch(List::isEmpty)) {
            return;
        }
        List<Row> rows = List.of(new Row(TailBounds.none(0, 1, 0, 1), 0));
        for (int index = count - 1; index >= 0; index--) {
            rows = inFront(places.get(index), index, count, rows);
        }
        rows.parallelStream().map(row -> best(row, count)).toList().forEach(all::addAll);
    }

    private List<Row> inFront(List<MeshChoice> place, int index, int count, List<Row> rows) {
        ArborRole below = HalfJoin.role(index + 1, count);
        ArborRole above = HalfJoin.role(index, count);
        double bands = index == count - 1 ? BANDS_OF_ONE : BANDS_OF_MORE;
        double most = index == 0 ? MOST_ROWS : MOST_STEPS / place.size() / bands;
        List<List<MeshChoice>> groups = MeshGroups.of(place, rows.size(), most);
        return groups.parallelStream()
                .filter(group -> !cancelled.getAsBoolean())
                .flatMap(group -> rows.stream()
                        .map(row -> new Row(
                                row.bounds.withInFront(rules, group, below, above, this::mostFelt, cancelled),
                                row.modules | MeshGroups.modules(group))))
                .toList();
    }

    /** No arbor above the centre turns quicker than its own mesh makes it, with the centre pinion an hour a turn. */
    private double mostFelt(MeshChoice choice) {
        return choice.felt.felt(longestMemory * choice.leaves / 3600);
    }

    private List<UpperBest> best(Row row, int count) {
        List<UpperBest> best = new ArrayList<>();
        for (DrumChoice drum : drums) {
            TailBounds.Lines lines = row.bounds.linesBetween(drum.fewestHours(), drum.mostHours());
            if (lines.reached()) {
                best.add(best(lines, row.modules, drum, count));
            }
        }
        return best;
    }

    private UpperBest best(TailBounds.Lines lines, long modules, DrumChoice drum, int count) {
        DrumLine line = drum.line();
        PartSums sums = new PartSums((long) lines.filament(), lines.tip(), (long) lines.centres(), modules);
        return new UpperBest(
                count,
                new DrumLine(
                        line.running() + line.runningSlope() * lines.running(),
                        line.runningSlope() * lines.runningSlope(),
                        line.binding() + line.bindingSlope() * lines.binding(),
                        line.bindingSlope() * lines.bindingSlope()),
                drum.carried() / rules.rater.objectives().recommended(1) * (1 + 1e-9),
                sums.withMass(drum.mass()).withMass(rules.movement.parts().escapeWheelMass()));
    }
}
