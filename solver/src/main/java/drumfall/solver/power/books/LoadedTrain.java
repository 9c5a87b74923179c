// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.power.books;

import drumfall.solver.parts.PartStock;
import drumfall.solver.power.Criterion;
import drumfall.solver.power.MeshEfficiencies;
import drumfall.solver.power.Movement;
import drumfall.solver.power.WeightWalk;
import drumfall.solver.train.Mesh;
import drumfall.solver.train.Train;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;

/**
 * A train arbor by arbor and mesh by mesh, each with its own friction, so that one of them can be changed alone.
 *
 * @param arbors from the drum to the escape wheel
 * @param meshes from the drum, one fewer than arbors
 */
public record LoadedTrain(List<LoadedArbor> arbors, List<LoadedMesh> meshes) {
    private static final double SECONDS_PER_HOUR = 3600;

    /**
     * Copies the lists.
     *
     * @throws IllegalArgumentException if there is not one mesh between each arbor and the next
     */
    public LoadedTrain {
        arbors = List.copyOf(arbors);
        meshes = List.copyOf(meshes);
        if (arbors.size() != meshes.size() + 1) {
            throw new IllegalArgumentException("The arbors (%d) of a train must be one more than its meshes (%d)."
                    .formatted(arbors.size(), meshes.size()));
        }
    }

    /**
     * A train of a movement under one criterion.
     *
     * @param movement gives teeth, parts and friction
     * @param train the train
     * @param criterion which friction
     */
    public static LoadedTrain of(Movement movement, Train train, Criterion criterion) {
        MeshEfficiencies efficiencies = new MeshEfficiencies(movement);
        List<LoadedMesh> meshes = IntStream.range(0, train.meshes().size())
                .mapToObj(i -> mesh(efficiencies, train, criterion, i))
                .toList();
        List<LoadedArbor> arbors = IntStream.rangeClosed(0, train.meshes().size())
                .mapToObj(i -> arbor(movement, train, criterion, i))
                .toList();
        return new LoadedTrain(arbors, meshes);
    }

    private static LoadedMesh mesh(MeshEfficiencies efficiencies, Train train, Criterion criterion, int i) {
        Mesh mesh = train.meshes().get(i);
        double pitchSeconds = SECONDS_PER_HOUR * train.hoursPerTurn(i) / mesh.toothCount();
        return new LoadedMesh(mesh.toothCount(), mesh.leafCount(), efficiencies.curve(criterion, mesh), pitchSeconds);
    }

    private static LoadedArbor arbor(Movement movement, Train train, Criterion criterion, int i) {
        PartStock parts = movement.parts();
        boolean drum = i == 0;
        boolean escape = i == train.meshes().size();
        double drumDiameter = train.drumDiameter().doubleValue();
        return new LoadedArbor(
                WeightWalk.role(train, i),
                movement.regime(criterion).arbor(WeightWalk.role(train, i)),
                escape
                        ? parts.escapeWheelRadius()
                        : movement.wheelArm(train.meshes().get(i)),
                escape
                        ? parts.escapeWheelMass()
                        : movement.wheelMass(train.meshes().get(i)),
                drum
                        ? movement.lineArm(drumDiameter)
                        : movement.pinionArm(train.meshes().get(i - 1)),
                drum
                        ? parts.drumMass(drumDiameter)
                        : movement.pinionMass(train.meshes().get(i - 1)),
                2 * Math.PI / (SECONDS_PER_HOUR * train.hoursPerTurn(i)));
    }

    /** The escape arbor. */
    public LoadedArbor escapeArbor() {
        return arbors.get(arbors.size() - 1);
    }

    /**
     * Tension that the line needs at the drum.
     *
     * @param escapeTorque torque the escape wheel is to hand on, N m
     * @param passed what a mesh lets through
     * @return N, or infinity if no tension does
     */
    public double tensionFor(double escapeTorque, ToDoubleFunction<LoadedMesh> passed) {
        double given = escapeArbor().given(escapeTorque);
        for (int i = meshes.size() - 1; i >= 0; i--) {
            LoadedMesh mesh = meshes.get(i);
            given = arbors.get(i).given(mesh.out(given, passed.applyAsDouble(mesh)));
        }
        return given / arbors.get(0).drivenArm();
    }

    /**
     * Torques from the drum to the escape wheel.
     *
     * @param tension of the line at the drum, N
     * @param passed what a mesh lets through
     */
    public List<ArborTorque> under(double tension, ToDoubleFunction<LoadedMesh> passed) {
        List<ArborTorque> torques = new ArrayList<>();
        double given = tension * arbors.get(0).drivenArm();
        for (int i = 0; i < arbors.size(); i++) {
            double out = arbors.get(i).handedOn(given);
            torques.add(new ArborTorque(given, out));
            if (i < meshes.size()) {
                given = meshes.get(i).given(out, passed.applyAsDouble(meshes.get(i)));
            }
        }
        return torques;
    }

    /**
     * The same train with one arbor changed.
     *
     * @param index number of the arbor from the drum
     * @param other the arbor instead
     */
    public LoadedTrain withArbor(int index, LoadedArbor other) {
        List<LoadedArbor> changed = new ArrayList<>(arbors);
        changed.set(index, other);
        return new LoadedTrain(changed, meshes);
    }

    /**
     * What one arbor is given and what it hands on.
     *
     * @param given by its pinion or the line, N m
     * @param out by its wheel, N m
     */
    public record ArborTorque(double given, double out) {}
}
