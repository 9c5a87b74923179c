// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.halves;

import drumfall.solver.power.Criterion;
import drumfall.solver.power.Movement;
import drumfall.solver.power.WeightWalk;
import drumfall.solver.rating.Objectives;
import drumfall.solver.rating.TrainRater;
import drumfall.solver.teeth.EfficiencyCurve;
import drumfall.solver.train.Mesh;

/** One wheel, pinion and module that may stand at a place, with every figure that does not depend on the rest. */
public final class MeshChoice {
    final Mesh mesh;
    final int teeth;
    final int leaves;
    final double ratio;
    final double wheelArm;
    final double pinionArm;
    final long wheelMass;
    final long pinionMass;

    /** Printed for wheel and pinion, µg. */
    final long filament;

    final double tipRadius;
    final double pinionTip;
    final long centreDistance;
    final int moduleNumber;
    final EfficiencyCurve felt;
    final double bestFelt;
    final double binding;

    /** Torque on the wheel's arbor that the teeth bear, N m. */
    final double borne;

    MeshChoice(Mesh mesh, int moduleNumber, TrainRater rater) {
        WeightWalk walk = rater.walk();
        Movement movement = walk.movement();
        this.mesh = mesh;
        this.moduleNumber = moduleNumber;
        this.teeth = mesh.toothCount();
        this.leaves = mesh.leafCount();
        this.ratio = (double) teeth / leaves;
        this.wheelArm = movement.wheelArm(mesh);
        this.pinionArm = movement.pinionArm(mesh);
        this.wheelMass = movement.wheelMass(mesh);
        this.pinionMass = movement.pinionMass(mesh);
        this.filament = movement.gearMass(mesh);
        this.tipRadius = movement.wheelTipRadius(mesh);
        this.pinionTip = movement.pinionTipRadius(mesh);
        this.centreDistance = Objectives.centreDistance(mesh);
        this.borne = rater.limits().teeth().borne(mesh, 1);
        this.felt = walk.efficiencies().curve(Criterion.RUNNING, mesh);
        this.bestFelt = felt.mean();
        this.binding = walk.efficiencies().curve(Criterion.BINDING, mesh).worst();
    }

    /** The mesh. */
    public Mesh mesh() {
        return mesh;
    }

    /** Number of its module in the brief's list, smallest first, from 0. */
    public int moduleNumber() {
        return moduleNumber;
    }

    /** What the mesh lets through when the pendulum remembers so many of its pitches. */
    double passed(Criterion criterion, double pitchesRemembered) {
        return criterion == Criterion.RUNNING ? felt.felt(pitchesRemembered) : binding;
    }

    /** The most the mesh can let through, whatever the pendulum remembers. */
    double passedAtBest(Criterion criterion) {
        return criterion == Criterion.RUNNING ? bestFelt : binding;
    }
}
