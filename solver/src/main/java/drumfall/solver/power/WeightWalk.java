// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.power;

import drumfall.solver.power.escape.EscapeNeed;
import drumfall.solver.train.Mesh;
import drumfall.solver.train.Train;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** The walk from the escape wheel up to the weight: what each arbor needs, and the weight that gives it. */
public final class WeightWalk {
    private static final double SECONDS_PER_HOUR = 3600;

    private final Movement movement;
    private final MeshEfficiencies efficiencies;

    /**
     * A walk through trains of one movement.
     *
     * @param movement what all of them share
     */
    public WeightWalk(Movement movement) {
        this.movement = movement;
        this.efficiencies = new MeshEfficiencies(movement);
    }

    /** The movement walked through. */
    public Movement movement() {
        return movement;
    }

    /** The efficiency curves, shared with whoever walks partial trains. */
    public MeshEfficiencies efficiencies() {
        return efficiencies;
    }

    /**
     * Weighs a train.
     *
     * @param train the train
     */
    public WeightFigure weigh(Train train) {
        EscapeNeed need = movement.heldArc(train.escapeTeeth()).need(train.secondsPerBeat());
        return new WeightFigure(need, path(train, need, Criterion.RUNNING), path(train, need, Criterion.BINDING));
    }

    /**
     * Pitches of a mesh within the pendulum's memory.
     *
     * @param need gives the memory
     * @param hoursPerTurn of the wheel's arbor
     * @param toothCount teeth of the wheel
     */
    public static double pitchesRemembered(EscapeNeed need, double hoursPerTurn, int toothCount) {
        return need.memory() * toothCount / (SECONDS_PER_HOUR * hoursPerTurn);
    }

    private PowerPath path(Train train, EscapeNeed need, Criterion criterion) {
        Regime regime = movement.regime(criterion);
        List<ArborNeed> arbors = new ArrayList<>();
        double load = regime.arbor(ArborRole.ESCAPE)
                .load(
                        movement.torqueAsked(criterion, need.torque()),
                        movement.parts().escapeWheelRadius(),
                        movement.parts().escapeWheelMass());
        arbors.add(new ArborNeed(movement.torqueAsked(criterion, need.torque()), load, 1));
        for (int i = train.meshes().size() - 1; i >= 0; i--) {
            Mesh mesh = train.meshes().get(i);
            double passed = passed(train, need, criterion, i);
            double given =
                    regime.arbor(role(train, i + 1)).drive(load, movement.pinionArm(mesh), movement.pinionMass(mesh));
            double out = given * mesh.toothCount() / (mesh.leafCount() * passed);
            load = regime.arbor(role(train, i)).load(out, movement.wheelArm(mesh), movement.wheelMass(mesh));
            arbors.add(new ArborNeed(out, load, passed));
        }
        Collections.reverse(arbors);
        return new PowerPath(criterion, arbors, tension(train, regime, load), weight(train, regime, load));
    }

    private double passed(Train train, EscapeNeed need, Criterion criterion, int index) {
        Mesh mesh = train.meshes().get(index);
        return efficiencies.passed(
                criterion, mesh, pitchesRemembered(need, train.hoursPerTurn(index), mesh.toothCount()));
    }

    private double tension(Train train, Regime regime, double load) {
        double diameter = train.drumDiameter().doubleValue();
        return regime.arbor(role(train, 0))
                .tension(load, movement.lineArm(diameter), movement.parts().drumMass(diameter));
    }

    private double weight(Train train, Regime regime, double load) {
        return movement.weightFor(tension(train, regime, load), train.reeving());
    }

    /**
     * The role of an arbor in a train.
     *
     * @param train the train
     * @param arbor number of the arbor from the drum
     */
    public static ArborRole role(Train train, int arbor) {
        if (arbor == 0) {
            return ArborRole.DRUM;
        }
        if (arbor == train.meshes().size()) {
            return ArborRole.ESCAPE;
        }
        return arbor == train.meshesAbove() ? ArborRole.CENTRE : ArborRole.INTERMEDIATE;
    }
}
