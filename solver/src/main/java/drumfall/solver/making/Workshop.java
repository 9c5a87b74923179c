// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.making;

import drumfall.solver.brief.Brief;
import drumfall.solver.brief.DrumSide;
import drumfall.solver.fitting.BriefFit;
import drumfall.solver.layout.size.Face;
import drumfall.solver.making.part.PrintSizes;
import drumfall.solver.making.solid.Solid;
import drumfall.solver.power.ArborRole;
import drumfall.solver.power.Movement;
import drumfall.solver.power.WeightWalk;
import drumfall.solver.rating.AxialSizes;
import drumfall.solver.rating.BriefParts;
import drumfall.solver.train.Mesh;
import drumfall.solver.train.Train;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.ToDoubleFunction;

/**
 * What all groups of parts are made from.
 *
 * @param brief the brief
 * @param train the train
 * @param movement the brief's movement
 * @param sizes what neither holds
 * @param places where the arbors stand, if that is known
 */
record Workshop(Brief brief, Train train, Movement movement, MakingSizes sizes, Optional<FramePlaces> places) {
    private static final double METRES = 1e-9;

    PrintSizes print() {
        return new PrintSizes(
                brief.printer().nozzle().si(), brief.printer().layer().si(), sizes.fit());
    }

    MovementPart part(String name, int count, Solid solid, List<MovementPart.Toothing> teeth, Mount mount) {
        return new MovementPart(
                name, count, brief.material().name(), brief.material().density().si(), teeth, solid, mount);
    }

    /** A part without teeth. */
    MovementPart part(String name, Solid solid, Mount mount) {
        return part(name, 1, solid, List.of(), mount);
    }

    /** What an arbor's rod, spacers and planes take. */
    AxialSizes axial() {
        return new AxialSizes(brief);
    }

    /**
     * Which way pinion or drum stand, seen from the wheel. The brief says it of the drum; pinions stand before their wheels
     * where no places say otherwise, as the list of parts tells.
     */
    Face toward(int arbor) {
        if (arbor == 0) {
            return brief.drum().side() == DrumSide.BEFORE ? Face.FRONT : Face.REAR;
        }
        return places.map(known -> known.levels().stands().get(arbor).toward()).orElse(Face.FRONT);
    }

    /** From the wheel to the far end of its pinion, or from the great wheel to the drum, m. */
    double between(int arbor) {
        long least = arbor == 0 ? axial().ratchetRoom() : axial().leaves();
        return places.map(known -> known.levels().stands().get(arbor).between()).orElse(METRES * least);
    }

    /**
     * How a part stands that lies with its bed side at a distance from its wheel's outer face.
     *
     * @param arbor its arbor
     * @param distance towards pinion or drum, m
     * @param up which way the side that lies up on the bed faces
     */
    Mount between(int arbor, double distance, Face up) {
        return mount(arbor, up, known -> known.levels().stands().get(arbor).along(distance));
    }

    /** How a part stands whose bed side is at a level that is known if places are. */
    Mount mount(int arbor, Face up, ToDoubleFunction<FramePlaces> bed) {
        return new Mount(OptionalInt.of(arbor), up, stances(arbor, bed));
    }

    /** Where a part stands on one of the placed axes, of which those beyond the train's are the pallets' and the minute stud. */
    List<Mount.Stance> stances(int axis, ToDoubleFunction<FramePlaces> bed) {
        return places.filter(known -> axis < known.arbors().size()).stream()
                .map(known -> new Mount.Stance(
                        known.arbors().get(axis).x(), known.arbors().get(axis).y(), bed.applyAsDouble(known)))
                .toList();
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
        return build(arbor).diameter().si();
    }

    /** The drawn bore of what stands on an arbor, m: drilled to run on a fixed rod, held by a turning one. */
    double bore(int arbor) {
        Brief.ArborBuild build = build(arbor);
        return build.kind() == Brief.ArborKind.FIXED
                ? METRES
                        * new BriefFit(brief)
                                .running(arbor(arbor), build.diameter())
                                .drawn()
                : rod(arbor) + sizes.boreAllowance();
    }

    /** How an arbor is built. */
    Brief.ArborBuild build(int arbor) {
        return build(WeightWalk.role(train, arbor));
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
        return BriefParts.thinning(brief);
    }

    double wheelThickness() {
        return brief.parts().wheelThickness().si();
    }
}
