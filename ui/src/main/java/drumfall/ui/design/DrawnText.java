// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.design;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import drumfall.solver.brief.TrainReader;
import drumfall.solver.brief.TrainSheet;
import drumfall.solver.layout.DirectionLock;
import drumfall.solver.train.Train;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** Turns drawn arbors into a part of a design's text and back. */
final class DrawnText {
    private static final String TRAIN = "train";
    private static final String DIRECTIONS = "directions";
    private static final String MESH = "mesh";
    private static final String RADIANS = "radians";

    private DrawnText() {}

    static ObjectNode tree(String name, DrawnArbors drawn) {
        ObjectNode tree = DesignText.object();
        tree.set(TRAIN, TrainReader.FORMAT.tree(TrainSheet.of(name, drawn.train())));
        ArrayNode directions = tree.putArray(DIRECTIONS);
        drawn.directions()
                .forEach(lock -> directions.addObject().put(MESH, lock.mesh()).put(RADIANS, lock.direction()));
        return tree;
    }

    /** What was read, or one sentence on what is wrong. */
    record Reading(Optional<DrawnArbors> drawn, String problem) {
        private static Reading refused(String pointer, JsonNode value, String rule) {
            return new Reading(
                    Optional.empty(),
                    "At /drawn%s, %s: %s.".formatted(pointer, DesignText.shortened(value.toString()), rule));
        }
    }

    static Reading read(JsonNode tree) {
        if (!tree.isObject()
                || !names(tree).equals(Set.of(TRAIN, DIRECTIONS))
                || !tree.get(DIRECTIONS).isArray()) {
            return Reading.refused(
                    "", tree, "drawn arbors are a train and a list of directions; remove them to place anew");
        }
        return TrainReader.read(tree.get(TRAIN))
                .fold(
                        accepted -> directions(accepted.train(), tree.get(DIRECTIONS)),
                        problems -> new Reading(
                                Optional.empty(),
                                "In /drawn/train: " + problems.get(0).sentence()));
    }

    private static Reading directions(Train train, JsonNode list) {
        List<DirectionLock> locks = new ArrayList<>();
        for (int i = 0; i < list.size(); i++) {
            JsonNode one = list.get(i);
            String pointer = "/" + DIRECTIONS + "/" + i;
            if (!one.isObject() || !names(one).equals(Set.of(MESH, RADIANS))) {
                return Reading.refused(pointer, one, "a direction is a mesh and its radians");
            }
            JsonNode mesh = one.get(MESH);
            int most = train.meshes().size();
            if (!mesh.canConvertToExactIntegral() || mesh.asInt(-1) < 0 || mesh.asInt() > most) {
                return Reading.refused(pointer + "/" + MESH, mesh, "a mesh is a number from 0 at the drum to " + most);
            }
            if (locks.stream().anyMatch(lock -> lock.mesh() == mesh.asInt())) {
                return Reading.refused(pointer + "/" + MESH, mesh, "each mesh is drawn once; remove the repetition");
            }
            JsonNode radians = one.get(RADIANS);
            if (!radians.isNumber() || !Double.isFinite(radians.doubleValue())) {
                return Reading.refused(pointer + "/" + RADIANS, radians, "a direction is a finite number of radians");
            }
            locks.add(new DirectionLock(mesh.asInt(), radians.doubleValue()));
        }
        return new Reading(Optional.of(new DrawnArbors(train, locks)), "");
    }

    private static Set<String> names(JsonNode tree) {
        return tree.properties().stream().map(field -> field.getKey()).collect(Collectors.toSet());
    }
}
