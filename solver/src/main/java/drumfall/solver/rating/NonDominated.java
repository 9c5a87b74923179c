// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.rating;

import drumfall.solver.brief.Objective;
import drumfall.solver.brief.ObjectiveFigure;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/**
 * Non-dominated cells, each with what stands for it: the least by exact values, then by recommended weight, then by an order
 * that is given.
 *
 * <p>Not safe for use by several threads at once.
 *
 * @param <T> what stands for a cell
 */
public class NonDominated<T> {
    private final Comparator<T> order;
    private final Objective[] objectives;
    private final List<Entry<T>> entries = new ArrayList<>();

    /** Where the recommended weight stands among the objectives; negative if it is none. */
    private final int weightAt;

    private static final class Entry<T> {
        final long[] cell;
        final double[] values;
        final double weight;
        final T item;

        /** A weight that no lighter cell exceeds, kg; negative infinity if weight is no objective. */
        final double lighterCell;

        /** A weight that this cell does not exceed, kg. */
        final double heavierCell;

        Entry(long[] cell, double[] values, double weight, T item, double lighterCell, double heavierCell) {
            this.cell = cell;
            this.values = values;
            this.weight = weight;
            this.item = item;
            this.lighterCell = lighterCell;
            this.heavierCell = heavierCell;
        }
    }

    /**
     * An empty front.
     *
     * @param objectives in the brief's order
     * @param order decides between those with the same values and weight
     */
    public NonDominated(List<Objective> objectives, Comparator<T> order) {
        this.objectives = objectives.toArray(Objective[]::new);
        this.order = order;
        this.weightAt = objectives.stream().map(Objective::figure).toList().indexOf(ObjectiveFigure.RECOMMENDED_WEIGHT);
    }

    /**
     * Takes something in unless another one is better or stands for its cell.
     *
     * @param values objective values in the brief's order, SI units
     * @param recommendedWeight kg
     * @param item what has these values
     * @return whether the front changed
     */
    public boolean add(double[] values, double recommendedWeight, T item) {
        Entry<T> added = entry(values, recommendedWeight, item);
        for (Entry<T> entry : entries) {
            if (nowhereWorse(entry.cell, added.cell) && !(same(entry.cell, added.cell) && before(added, entry))) {
                return false;
            }
        }
        entries.removeIf(entry -> nowhereWorse(added.cell, entry.cell));
        entries.add(added);
        return true;
    }

    private Entry<T> entry(double[] values, double weight, T item) {
        long[] cell = cell(values);
        double lighter =
                weightAt < 0 ? Double.NEGATIVE_INFINITY : Cell.upperEdge(objectives[weightAt], cell[weightAt] - 1);
        double heavier = weightAt < 0 ? Double.POSITIVE_INFINITY : Cell.upperEdge(objectives[weightAt], cell[weightAt]);
        return new Entry<>(cell, values.clone(), weight, item, lighter, heavier);
    }

    private boolean before(Entry<T> first, Entry<T> second) {
        int byValues = Arrays.compare(first.values, second.values);
        int byWeight = byValues != 0 ? byValues : Double.compare(first.weight, second.weight);
        return byWeight != 0 ? byWeight < 0 : order.compare(first.item, second.item) < 0;
    }

    /**
     * Whether a train whose values are nowhere less than these could still change the front.
     *
     * @param values objective values in the brief's order, SI units
     * @param recommendedWeight kg, a bound from below
     */
    public boolean mayImprove(double[] values, double recommendedWeight) {
        long[] cell = cell(values);
        for (int i = 0; i < entries.size(); i++) {
            Entry<T> entry = entries.get(i);
            if (nowhereWorse(entry.cell, cell)
                    && !(same(entry.cell, cell) && mayComeBefore(values, recommendedWeight, entry))) {
                moveForward(i);
                return false;
            }
        }
        return true;
    }

    /**
     * The heaviest weight that a train may have and still change the front, if its other values are nowhere less than
     * these: infinite if any weight will do, negative infinity if none. Reads only, so several threads may ask.
     *
     * @param values objective values in the brief's order, SI units; that of the recommended weight is not looked at
     * @return kg
     */
    public double heaviest(double[] values) {
        double heaviest = Double.POSITIVE_INFINITY;
        long[] cell = cell(values);
        for (Entry<T> entry : entries) {
            heaviest = Math.min(heaviest, heaviestBeside(entry, cell, values));
        }
        return heaviest;
    }

    private double heaviestBeside(Entry<T> entry, long[] cell, double[] values) {
        boolean same = true;
        for (int i = 0; i < cell.length; i++) {
            if (i != weightAt && entry.cell[i] != cell[i]) {
                if (entry.cell[i] > cell[i]) {
                    return Double.POSITIVE_INFINITY;
                }
                same = false;
            }
        }
        return same ? heaviestInCell(entry, values) : entry.lighterCell;
    }

    /** The heaviest weight of a train that stands for a cell in place of another, or falls into a lighter one. */
    private double heaviestInCell(Entry<T> entry, double[] values) {
        for (int i = 0; i < values.length; i++) {
            if (i == weightAt) {
                return Math.max(entry.lighterCell, entry.values[i]);
            }
            if (values[i] < entry.values[i]) {
                return weightAt < 0 ? Double.POSITIVE_INFINITY : entry.heavierCell;
            }
            if (values[i] > entry.values[i]) {
                return entry.lighterCell;
            }
        }
        return entry.weight;
    }

    /** What stands for the cells, first objective first. */
    public List<T> items() {
        return entries.stream()
                .sorted(Comparator.comparing((Entry<T> entry) -> entry.cell, Arrays::compare))
                .map(entry -> entry.item)
                .toList();
    }

    /** Number of cells. */
    public int size() {
        return entries.size();
    }

    private long[] cell(double[] values) {
        long[] cell = new long[values.length];
        for (int i = 0; i < values.length; i++) {
            cell[i] = Cell.number(objectives[i], values[i]);
        }
        return cell;
    }

    /** An entry that answers once tends to answer again. */
    private void moveForward(int index) {
        if (index > 0) {
            Entry<T> entry = entries.get(index);
            entries.set(index, entries.get(index / 2));
            entries.set(index / 2, entry);
        }
    }

    private static <T> boolean mayComeBefore(double[] values, double weight, Entry<T> entry) {
        for (int i = 0; i < values.length; i++) {
            if (values[i] != entry.values[i]) {
                return values[i] < entry.values[i];
            }
        }
        return weight <= entry.weight;
    }

    private static boolean nowhereWorse(long[] cell, long[] other) {
        for (int i = 0; i < cell.length; i++) {
            if (cell[i] > other[i]) {
                return false;
            }
        }
        return true;
    }

    private static boolean same(long[] cell, long[] other) {
        return Arrays.equals(cell, other);
    }
}
