// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.rating;

import drumfall.solver.brief.Brief;
import drumfall.solver.brief.Objective;
import drumfall.solver.brief.ObjectiveFigure;
import drumfall.solver.power.Movement;
import drumfall.solver.train.DrumRun;
import drumfall.solver.train.Mesh;
import drumfall.solver.train.Train;
import java.util.List;

/** The figures that a brief may want small, of any train. */
public final class Objectives {
    private static final double KILOGRAMS_PER_MICROGRAM = 1e-9;
    private static final double METRES_PER_HALF_NANOMETRE = 0.5e-9;
    private static final double SECONDS_PER_HOUR = 3600;

    private final Brief brief;
    private final Movement movement;
    private final TrainLimits limits;

    /**
     * The objectives of a brief.
     *
     * @param brief gives the objectives and the wanted duration
     * @param movement gives the parts
     * @param limits gives drum and tip sizes
     */
    public Objectives(Brief brief, Movement movement, TrainLimits limits) {
        this.brief = brief;
        this.movement = movement;
        this.limits = limits;
    }

    /** The objectives in the brief's order. */
    public List<Objective> asked() {
        return brief.objectives();
    }

    /**
     * Values of the asked objectives in the brief's order, SI units.
     *
     * @param train the train
     * @param recommendedWeight kg
     */
    public double[] values(Train train, double recommendedWeight) {
        return brief.objectives().stream()
                .mapToDouble(objective -> value(objective.figure(), train, recommendedWeight))
                .toArray();
    }

    /**
     * Value of one figure, SI units.
     *
     * @param figure the figure
     * @param train the train
     * @param recommendedWeight kg
     */
    public double value(ObjectiveFigure figure, Train train, double recommendedWeight) {
        return switch (figure) {
            case RECOMMENDED_WEIGHT -> recommendedWeight;
            case FILAMENT_MASS -> kilograms(movement.filamentMass(train));
            case LARGEST_WHEEL -> largestWheel(train);
            case CENTRE_DISTANCES -> metres(centreDistances(train));
            case MESHES -> train.meshes().size();
            case MODULES -> train.meshes().stream().map(Mesh::module).distinct().count();
            case DURATION_ERROR ->
                durationError(
                        train.going().hoursPerTurn(0).doubleValue(),
                        limits.drumRun(train.drumDiameter(), train.reeving()));
        };
    }

    /**
     * Recommended weight: {@code least (1 + reserve)}.
     *
     * @param leastWeight kg
     * @return kg
     */
    public double recommended(double leastWeight) {
        return leastWeight * (1 + brief.weight().reserve().si());
    }

    /**
     * Difference between the duration and the wanted one.
     *
     * @param hoursPerDrumTurn hours for a turn of the drum
     * @param drum the drum
     * @return s, at least 0
     */
    public double durationError(double hoursPerDrumTurn, DrumRun drum) {
        return durationError(hoursPerDrumTurn, drum.turns());
    }

    /**
     * Distance of the duration from the one wanted, s.
     *
     * @param hoursPerDrumTurn hours for a turn of the drum
     * @param drumTurns turns of the drum in a full fall
     */
    public double durationError(double hoursPerDrumTurn, double drumTurns) {
        return Math.abs(hoursPerDrumTurn * drumTurns * SECONDS_PER_HOUR
                - brief.run().wanted().si());
    }

    /**
     * A mass of parts.
     *
     * @param micrograms exact
     * @return kg
     */
    public static double kilograms(long micrograms) {
        return micrograms * KILOGRAMS_PER_MICROGRAM;
    }

    /**
     * A sum of centre distances.
     *
     * @param halfNanometres exact
     * @return m
     */
    public static double metres(long halfNanometres) {
        return halfNanometres * METRES_PER_HALF_NANOMETRE;
    }

    /**
     * Centre distance of a mesh in half nanometres, a whole number: {@code m (z + p)}.
     *
     * @param mesh the mesh
     */
    public static long centreDistance(Mesh mesh) {
        return (long) mesh.module().nanometres() * (mesh.toothCount() + mesh.leafCount());
    }

    private static long centreDistances(Train train) {
        return train.meshes().stream().mapToLong(Objectives::centreDistance).sum();
    }

    private double largestWheel(Train train) {
        return train.meshes().stream()
                .mapToDouble(limits::wheelTipDiameter)
                .max()
                .orElseThrow();
    }
}
