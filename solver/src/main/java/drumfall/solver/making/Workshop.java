// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.making;

import drumfall.solver.brief.Brief;
import drumfall.solver.fitting.BriefFit;
import drumfall.solver.making.part.PrintSizes;
import drumfall.solver.making.solid.Solid;
import drumfall.solver.power.ArborRole;
import drumfall.solver.power.Movement;
import drumfall.solver.power.WeightWalk;
import drumfall.solver.train.Mesh;
import drumfall.solver.train.Train;
import java.util.List;

/**
 * What all groups of parts are made from.
 *
 * @param brief the brief
 * @param train the train
 * @param movement the brief's movement
 * @param sizes what neither holds
 */
record Workshop(Brief brief, Train train, Movement movement, MakingSizes sizes) {
    private static final double METRES = 1e-9;

    PrintSizes print() {
        return new PrintSizes(
                brief.printer().nozzle().si(), brief.printer().layer().si(), sizes.fit());
    }

    MovementPart part(String name, int count, Solid solid, List<MovementPart.Toothing> teeth) {
        return new MovementPart(
                name, count, brief.material().name(), brief.material().density().si(), teeth, solid);
    }

    MovementPart part(String name, Solid solid) {
        return part(name, 1, solid, List.of());
    }

    static String arbor(int index) {
        return "arbor-" + (index + 1);
    }

    int arbors() {
        return train.meshes().size() + 1;
    }

    /** The mesh whose wheel stands on an arbor. */
    Mesh wheelMesh(int arbor) {
        return train.meshes().get(arbor);
    }

    /** The mesh whose pinion stands on an arbor. */
    Mesh pinionMesh(int arbor) {
        return train.meshes().get(arbor - 1);
    }

    /** Diameter of an arbor's rod, m. */
    double rod(int arbor) {
        return build(WeightWalk.role(train, arbor)).diameter().si();
    }

    /** The drawn bore of what stands on an arbor, m: drilled to run on a fixed rod, held by a turning one. */
    double bore(int arbor) {
        Brief.ArborBuild build = build(WeightWalk.role(train, arbor));
        return build.kind() == Brief.ArborKind.FIXED
                ? METRES
                        * new BriefFit(brief)
                                .running(arbor(arbor), build.diameter())
                                .drawn()
                : rod(arbor) + sizes.boreAllowance();
    }

    private Brief.ArborBuild build(ArborRole role) {
        return switch (role) {
            case DRUM -> brief.arbors().drum();
            case CENTRE -> brief.arbors().centre();
            case INTERMEDIATE -> brief.arbors().intermediate();
            case ESCAPE -> brief.arbors().escape();
        };
    }

    /** Teeth are drawn with the middle of the brief's band of thinning, m. */
    double thinning() {
        return (brief.teeth().thinning().low().si()
                        + brief.teeth().thinning().high().si())
                / 2;
    }

    double wheelThickness() {
        return brief.parts().wheelThickness().si();
    }

    double pinionLength() {
        return brief.parts().pinionLength().si();
    }
}
