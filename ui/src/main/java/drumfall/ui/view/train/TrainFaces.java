// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.view.train;

import drumfall.solver.brief.Brief;
import drumfall.solver.power.Movement;
import drumfall.solver.rating.TrainRater;
import drumfall.solver.train.Mesh;
import drumfall.solver.train.Train;
import java.util.List;

/**
 * Radii of all that is seen of a train from the dial, m.
 *
 * @param meshes the meshes from the drum
 * @param drum radius of the bare drum
 * @param flange radius of the drum's flanges
 * @param escape radius of the escape wheel to its tips
 * @param escapeTeeth teeth of the escape wheel
 */
record TrainFaces(List<MeshFace> meshes, double drum, double flange, double escape, int escapeTeeth) {
    /** Height of a flange above the drum in line diameters, as the solver's parts take it. */
    private static final double FLANGE_LINES = 3;

    TrainFaces {
        meshes = List.copyOf(meshes);
    }

    /**
     * A wheel and the pinion it drives, m.
     *
     * @param toothCount teeth of the wheel
     * @param leafCount leaves of the pinion
     * @param module the module
     * @param wheelTip tip radius of the wheel
     * @param pinionTip tip radius of the pinion
     */
    record MeshFace(int toothCount, int leafCount, double module, double wheelTip, double pinionTip) {
        double wheelPitch() {
            return module * toothCount / 2;
        }

        double pinionPitch() {
            return module * leafCount / 2;
        }

        double centreDistance() {
            return wheelPitch() + pinionPitch();
        }
    }

    /**
     * The faces of a train.
     *
     * @param train the train
     * @param brief gives tooth form, line and escape wheel
     */
    static TrainFaces of(Train train, Brief brief) {
        Movement movement = new TrainRater(brief).movement();
        double drum = train.drumDiameter().doubleValue() / 2;
        return new TrainFaces(
                train.meshes().stream().map(mesh -> face(mesh, movement)).toList(),
                drum,
                drum + FLANGE_LINES * brief.line().diameter().si(),
                brief.escapement().wheelRadius().si(),
                train.escapeTeeth());
    }

    private static MeshFace face(Mesh mesh, Movement movement) {
        double module = mesh.module().metres();
        return new MeshFace(
                mesh.toothCount(),
                mesh.leafCount(),
                module,
                movement.wheelTipRadius(mesh),
                movement.pinionTipRadius(mesh));
    }

    double largestTip() {
        return meshes.stream().mapToDouble(MeshFace::wheelTip).max().orElseThrow();
    }
}
