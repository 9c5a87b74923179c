// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.power.answers;

import drumfall.solver.parts.PartInertia;
import drumfall.solver.power.Movement;
import drumfall.solver.teeth.MeshTeeth;
import drumfall.solver.teeth.form.LanternPinion;
import drumfall.solver.teeth.form.ToothForm;
import drumfall.solver.teeth.outline.ToothArea;
import drumfall.solver.train.Mesh;
import drumfall.solver.train.Train;
import java.util.function.Function;

/**
 * How the parts on each arbor of a train resist being turned, kg m², by the shapes that are made; arbors count from 0 at the drum.
 *
 * @param movement the movement
 * @param train the train
 */
public record ArborInertia(Movement movement, Train train) {
    private PartInertia parts() {
        return new PartInertia(movement.parts());
    }

    private double drum() {
        return train.drumDiameter().doubleValue();
    }

    /**
     * The wheel of an arbor, or the escape wheel.
     *
     * @param arbor number of the arbor
     */
    public double wheel(int arbor) {
        if (arbor == train.meshes().size()) {
            return parts().escapeWheel(train.escapeTeeth(), foot(arbor));
        }
        Mesh mesh = train.meshes().get(arbor);
        return parts().wheel(
                        movement.wheel(mesh), wheelPolar(mesh), mesh.module().metres(), foot(arbor));
    }

    /**
     * What drives an arbor: its pinion, or the drum with all that stands beside the great wheel.
     *
     * @param arbor number of the arbor
     */
    public double driven(int arbor) {
        if (arbor == 0) {
            return parts().drum(drum());
        }
        Mesh mesh = train.meshes().get(arbor - 1);
        return parts().pinion(
                        mesh.leafCount(),
                        movement.pinion(mesh),
                        pinionPolar(mesh),
                        mesh.module().metres());
    }

    /** Radius of the ground in an arbor's wheel that its pinion or the click's pivot fills, m. */
    private double foot(int arbor) {
        if (arbor == 0) {
            return movement.parts().drum().clickGround(drum());
        }
        Mesh mesh = train.meshes().get(arbor - 1);
        return parts().foot(movement.pinion(mesh), mesh.module().metres());
    }

    /**
     * Second moment of a wheel's disc with its teeth before they are thinned, modules to the fourth; of its pitch circle if it has
     * no teeth.
     *
     * @param mesh the mesh
     */
    public double wheelPolar(Mesh mesh) {
        return polar(mesh, mesh.toothCount(), teeth -> teeth.pair().driver());
    }

    /**
     * The same of a pinion; 0 of a lantern, whose pins are no teeth.
     *
     * @param mesh the mesh
     */
    public double pinionPolar(Mesh mesh) {
        return polar(mesh, mesh.leafCount(), teeth -> teeth.pair().follower());
    }

    private double polar(Mesh mesh, int count, Function<MeshTeeth, ToothForm> gear) {
        double pitch = count / 2.0;
        return movement.teeth(mesh)
                .map(gear)
                .map(form -> form instanceof LanternPinion ? 0 : ToothArea.polar(form))
                .orElse(Math.PI / 2 * pitch * pitch * pitch * pitch);
    }
}
