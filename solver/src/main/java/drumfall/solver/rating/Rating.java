// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.rating;

import drumfall.solver.brief.Objective;
import drumfall.solver.power.WeightFigure;
import drumfall.solver.train.Train;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * A train held against a brief.
 *
 * @param train the train
 * @param demands every demand, met or missed, in the order of {@link Demand}
 * @param objectiveValues values of the brief's objectives in its order, SI units
 * @param cell the cell of the objectives, and of the room that the train takes where that is known and asked for
 * @param durationRoundedDown hours of a full fall, rounded down
 * @param weight the walk to the weight in the middle of all bands
 * @param recommendedWeight least running weight with its reserve, kg; infinite if no weight drives it
 * @param leastSmoothest least running weight with the least friction and highest quality to expect, kg
 * @param leastRoughest least running weight with the most friction and lowest quality to expect, kg; infinite if none does
 * @param pendulumLength length of the simple pendulum that keeps the beat at the least arc, m
 * @param filamentMass of wheels, pinions, escape wheel, and what stands on the drum's arbor, kg
 */
public record Rating(
        Train train,
        List<DemandFigure> demands,
        List<Double> objectiveValues,
        Cell cell,
        BigFraction durationRoundedDown,
        WeightFigure weight,
        double recommendedWeight,
        double leastSmoothest,
        double leastRoughest,
        double pendulumLength,
        double filamentMass) {
    /** Copies the lists. */
    public Rating {
        demands = List.copyOf(demands);
        objectiveValues = List.copyOf(objectiveValues);
    }

    /** Whether every demand is met. */
    public boolean feasible() {
        return demands.stream().allMatch(DemandFigure::met);
    }

    /** The demands that are missed. */
    public Stream<DemandFigure> missed() {
        return demands.stream().filter(demand -> !demand.met());
    }

    /**
     * The same rating with its objectives told apart in other steps; room behind them stays.
     *
     * @param objectives the same figures in the same order
     */
    public Rating toldApart(List<Objective> objectives) {
        List<Long> numbers = new ArrayList<>(Cell.of(
                        objectives,
                        objectiveValues.stream().mapToDouble(value -> value).toArray())
                .numbers());
        numbers.addAll(cell.numbers().subList(numbers.size(), cell.numbers().size()));
        return withCell(new Cell(numbers));
    }

    /**
     * The same rating with the room that the train takes behind the objectives in its cell.
     *
     * @param steps the room, in whole steps
     */
    public Rating withRoom(long steps) {
        return withCell(cell.and(steps));
    }

    private Rating withCell(Cell other) {
        return new Rating(
                train,
                demands,
                objectiveValues,
                other,
                durationRoundedDown,
                weight,
                recommendedWeight,
                leastSmoothest,
                leastRoughest,
                pendulumLength,
                filamentMass);
    }
}
