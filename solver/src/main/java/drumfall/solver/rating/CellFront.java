// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.rating;

import drumfall.solver.brief.Objective;
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

    private static final class Entry {
        final long[] cell;
        final double[] values;
        final Rating rating;

        Entry(long[] cell, Rating rating) {
            this.cell = cell;
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
