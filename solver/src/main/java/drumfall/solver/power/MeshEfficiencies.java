// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.power;

import drumfall.solver.teeth.EfficiencyCurve;
import drumfall.solver.train.Mesh;

/** The efficiency curves of a movement's meshes; the teeth keep what was once computed. */
public final class MeshEfficiencies {
    private static final EfficiencyCurve NOTHING = EfficiencyCurve.of(0);

    private final Movement movement;

    /**
     * The curves of a movement.
     *
     * @param movement gives teeth and friction
     */
    public MeshEfficiencies(Movement movement) {
        this.movement = movement;
    }

    /**
     * The curve of a mesh; without teeth it passes nothing.
     *
     * @param criterion which friction
     * @param mesh the mesh
     */
    public EfficiencyCurve curve(Criterion criterion, Mesh mesh) {
        double friction = movement.regime(criterion).toothFriction();
        return movement.teeth(mesh).map(teeth -> teeth.curve(friction)).orElse(NOTHING);
    }

    /**
     * What the criterion lets through of a mesh.
     *
     * @param criterion felt through the pendulum's memory when running, the worst phase when binding
     * @param mesh the mesh
     * @param pitchesRemembered pendulum's memory over the time of one pitch
     */
    public double passed(Criterion criterion, Mesh mesh, double pitchesRemembered) {
        EfficiencyCurve curve = curve(criterion, mesh);
        return criterion == Criterion.RUNNING ? curve.felt(pitchesRemembered) : curve.worst();
    }
}
