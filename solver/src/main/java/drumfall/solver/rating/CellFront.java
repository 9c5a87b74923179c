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
 * The non-dominated cells found so far, each with the train that stands for it by {@link TrainOrder}.
 *
 * <p>Not safe for use by several threads at once.
 */
public final class CellFront {
    private static final TrainOrder ORDER = new TrainOrder();

    private final Objective[] objectives;
    private final List<Entry> entries = new ArrayList<>();

    /** Where the recommended weight stands among the objectives; negative if it is none. */
    private final int weightAt;

    private final class Entry {
        final long[] cell;
        final double[] values;
        final Rating rating;

        /** A weight that no lighter cell exceeds, kg; negative infinity if weight is no objective. */
        final double lighterCell;

        /** A weight that this cell does not exceed, kg. */
        final double heavierCell;

        Entry(long[] cell, Rating rating) {
            this.cell = cell;
            this.lighterCell =
                    weightAt < 0 ? Double.NEGATIVE_INFINITY : Cell.upperEdge(objectives[weightAt], cell[weightAt] - 1);
            this.heavierCell =
                    weightAt < 0 ? Double.POSITIVE_INFINITY : Cell.upperEdge(objectives[weightAt], cell[weightAt]);
            this.values = rating.objectiveValues().stream()
                    .mapToDouble(value -> value)
                    .toArray();
            this.rating = rating;
        }
    }

    /**
     * An empty front.
     *
     * @param objectives in the brief's order
     */
    public CellFront(List<Objective> objectives) {
        this.objectives = objectives.toArray(Objective[]::new);
        this.weightAt = objectives.stream().map(Objective::figure).toList().indexOf(ObjectiveFigure.RECOMMENDED_WEIGHT);
    }

    /**
     * Takes in a train unless another one is better or stands for its cell.
     *
     * @param rating of a train that meets every demand
     * @return whether the front changed
     */
    public boolean add(Rating rating) {
        long[] cell =
                rating.cell().numbers().stream().mapToLong(number -> number).toArray();
        for (Entry entry : entries) {
            if (nowhereWorse(entry.cell, cell)
                    && !(same(entry.cell, cell) && ORDER.compare(rating, entry.rating) < 0)) {
                return false;
            }
        }
        entries.removeIf(entry -> nowhereWorse(cell, entry.cell));
        entries.add(new Entry(cell, rating));
        return true;
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
            Entry entry = entries.get(i);
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
        for (Entry entry : entries) {
            heaviest = Math.min(heaviest, heaviestBeside(entry, cell, values));
        }
        return heaviest;
    }

    private double heaviestBeside(Entry entry, long[] cell, double[] values) {
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
    private double heaviestInCell(Entry entry, double[] values) {
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
        return entry.rating.recommendedWeight();
    }

    /** The trains of the front, first objective first. */
    public List<Rating> ratings() {
        return entries.stream()
                .sorted(Comparator.comparing((Entry entry) -> entry.cell, Arrays::compare))
                .map(entry -> entry.rating)
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
            Entry entry = entries.get(index);
            entries.set(index, entries.get(index / 2));
            entries.set(index / 2, entry);
        }
    }

    private static boolean mayComeBefore(double[] values, double weight, Entry entry) {
        for (int i = 0; i < values.length; i++) {
            if (values[i] != entry.values[i]) {
                return values[i] < entry.values[i];
            }
        }
        return weight <= entry.rating.recommendedWeight();
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
