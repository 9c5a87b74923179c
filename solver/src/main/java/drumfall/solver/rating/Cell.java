// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.rating;

import drumfall.solver.brief.Objective;
import drumfall.solver.quantity.Dimension;
import java.util.ArrayList;
import java.util.List;

/**
 * The cell of the objectives a train falls into, one whole number for each objective in the brief's order.
 *
 * @param numbers smaller is better
 */
public record Cell(List<Long> numbers) {
    /** Edges are computed by other operations than numbers, from logarithms of up to a few thousand cells. */
    private static final double EDGE_ROUNDING = 1 + 1e-9;

    /** Copies the list. */
    public Cell {
        numbers = List.copyOf(numbers);
    }

    /**
     * The cell of objective values.
     *
     * @param objectives in the brief's order
     * @param values in SI units, in the same order
     */
    public static Cell of(List<Objective> objectives, double[] values) {
        List<Long> numbers = new ArrayList<>();
        for (int i = 0; i < values.length; i++) {
            numbers.add(number(objectives.get(i), values[i]));
        }
        return new Cell(numbers);
    }

    /**
     * The same cell with one more number behind the others.
     *
     * @param number smaller is better
     */
    Cell and(long number) {
        List<Long> more = new ArrayList<>(numbers);
        more.add(number);
        return new Cell(more);
    }

    /**
     * The same cell without what stands behind its first numbers.
     *
     * @param count how many are kept, at most as many as there are
     */
    public Cell first(int count) {
        return new Cell(numbers.subList(0, count));
    }

    /**
     * The cell number of one value: {@code floor(value / resolution)}, or for a resolution that is a share {@code r} of
     * the figure {@code floor(ln value / ln(1 + r))}. It never falls while the value rises.
     *
     * @param objective gives the resolution
     * @param value in SI units, at least 0
     * @return the number; the largest there is for an infinite value
     */
    public static long number(Objective objective, double value) {
        if (objective.figure().counted()) {
            return (long) value;
        }
        double resolution = objective.resolution().orElseThrow().si();
        boolean share = objective.resolution().orElseThrow().dimension() == Dimension.NUMBER;
        return (long) Math.floor(share ? Math.log(value) / Math.log1p(resolution) : value / resolution);
    }

    /**
     * A value that no value with this number or a smaller one exceeds; above the true edge by rounding only.
     *
     * @param objective gives the resolution; no counted figure
     * @param number of the cell
     * @return SI units
     */
    public static double upperEdge(Objective objective, long number) {
        double resolution = objective.resolution().orElseThrow().si();
        boolean share = objective.resolution().orElseThrow().dimension() == Dimension.NUMBER;
        double edge = share ? Math.exp((number + 1.0) * Math.log1p(resolution)) : (number + 1.0) * resolution;
        return edge * EDGE_ROUNDING;
    }

    /**
     * Whether this cell is at least as good in every objective and better in one.
     *
     * @param other a cell of the same objectives
     */
    public boolean dominates(Cell other) {
        return !numbers.equals(other.numbers) && isNowhereWorseThan(other);
    }

    /**
     * Whether this cell is at least as good in every objective.
     *
     * @param other a cell of the same objectives
     */
    public boolean isNowhereWorseThan(Cell other) {
        for (int i = 0; i < numbers.size(); i++) {
            if (numbers.get(i) > other.numbers.get(i)) {
                return false;
            }
        }
        return true;
    }
}
