// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.terminal;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import drumfall.solver.layout.Disc;
import drumfall.solver.layout.Layout;
import drumfall.solver.layout.MovementSize;
import drumfall.solver.layout.Shortfall;
import drumfall.solver.layout.size.MovementParts;
import drumfall.solver.power.WeightWalk;
import drumfall.solver.train.Train;
import java.math.BigDecimal;

/** Where the arbors of one train stand, as JSON; every nanometre is kept. */
final class PlacesJson {
    private static final int NANOMETRE_DECIMALS = 6;
    private static final double FULL_TURN = 360;

    private PlacesJson() {}

    static void put(ObjectNode group, Train train, TrainPlaces places) {
        group.put("placement", JsonOutput.word(places.standing()));
        places.layout().ifPresent(layout -> put(group.putObject("places"), train, places, layout));
    }

    private static void put(ObjectNode group, Train train, TrainPlaces places, Layout layout) {
        places.merit().ifPresent(merit -> {
            group.put("gridStep_deg", FULL_TURN / layout.need().grid().steps());
            group.put("merit", JsonOutput.word(merit));
        });
        length(group, "width_mm", layout.extent().width());
        length(group, "height_mm", layout.extent().height());
        length(group, "depth_mm", layout.depth());
        MovementSize size = layout.size();
        length(group, "plateWidth_mm", size.plate().width());
        length(group, "plateHeight_mm", size.plate().height());
        JsonOutput.put(group, "plateArea_m2", size.plateArea());
        length(group, "frontPlate_mm", layout.planes().innerDepth());
        length(group, "frameLeft_mm", layout.frame().left());
        length(group, "frameBottom_mm", layout.frame().bottom());
        length(group, "frameWidth_mm", layout.frame().width());
        length(group, "frameHeight_mm", layout.frame().height());
        ArrayNode arbors = group.putArray("arbors");
        for (int arbor = 0; arbor < layout.places().size(); arbor++) {
            arbor(arbors.addObject(), train, layout, arbor);
        }
    }

    private static void arbor(ObjectNode group, Train train, Layout layout, int arbor) {
        group.put("arbor", arbor + 1);
        group.put("role", role(train, layout.need().parts(), arbor));
        length(group, "x_mm", layout.place(arbor).x());
        length(group, "y_mm", layout.place(arbor).y());
        ArrayNode planes = group.putArray("planes");
        for (Disc disc : PlacesWording.onArbor(layout, arbor)) {
            ObjectNode plane =
                    planes.addObject().put("part", JsonOutput.word(disc.part().kind()));
            length(plane, "from_mm", disc.span().from());
            length(plane, "to_mm", disc.span().to());
        }
    }

    private static String role(Train train, MovementParts parts, int arbor) {
        if (arbor > parts.escapeArbor()) {
            return arbor == parts.palletArbor() ? "pallets" : "minute";
        }
        return JsonOutput.word(WeightWalk.role(train, arbor));
    }

    /** What stands in conflict: of places that were read, everything; of a train without places, the nearest to fitting. */
    static void conflicts(ArrayNode list, TrainPlaces places) {
        places.conflicts().forEach(fault -> conflict(list.addObject(), fault));
    }

    private static void conflict(ObjectNode group, Shortfall fault) {
        group.put("rule", JsonOutput.word(fault.rule()));
        group.put("first", PlacesWording.part(fault.first()));
        group.put("second", fault.second().map(PlacesWording::part).orElse(null));
        length(group, "asked_mm", fault.asked());
        length(group, "found_mm", fault.found());
    }

    private static void length(ObjectNode group, String field, long nanometres) {
        BigDecimal shortest = BigDecimal.valueOf(nanometres, NANOMETRE_DECIMALS).stripTrailingZeros();
        group.put(field, shortest.setScale(Math.max(0, shortest.scale())));
    }
}
