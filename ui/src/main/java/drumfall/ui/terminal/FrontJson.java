// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.terminal;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import drumfall.solver.brief.Brief;
import drumfall.solver.brief.BriefWriter;
import drumfall.solver.quantity.Quantity;
import drumfall.solver.quantity.UnitSystem;
import drumfall.solver.rating.Demand;
import drumfall.solver.rating.Rating;
import drumfall.solver.search.Clash;
import drumfall.solver.search.HeldDemand;
import drumfall.solver.search.SearchOutcome;
import drumfall.ui.wording.DemandWording;
import drumfall.ui.wording.FigureWording;
import drumfall.ui.wording.RoomWording;
import java.util.List;

/** A front as JSON. */
final class FrontJson {
    private FrontJson() {}

    static ObjectNode of(Brief brief, SearchOutcome outcome, List<TrainPlaces> places) {
        ObjectNode document = JsonOutput.document("drumfall-front");
        document.put("brief", brief.name());
        document.put(
                "outcome", outcome.<String>fold(proved -> "proved-complete", stopped -> "stopped", none -> "no-train"));
        document.put("stepsTimes", outcome.stepsTimes());
        held(document, brief);
        var options = document.putArray("options");
        for (int i = 0; i < outcome.front().size(); i++) {
            ObjectNode option = options.addObject().put("option", i + 1);
            Rating rating = outcome.front().get(i);
            RoomWording.of(brief, FigureWording.in(UnitSystem.METRIC))
                    .ifPresent(room -> room(option.putObject("leastRoom"), room, rating));
            TrainFields.put(option, brief, brief.name(), rating, places.get(i));
        }
        if (outcome instanceof SearchOutcome.NoTrain none) {
            clash(document.putObject("clash"), brief, none.clash());
        }
        return document;
    }

    /** What was held in a search, whoever holds it, and the place of the dial if that was given. */
    static void held(ObjectNode document, Brief brief) {
        JsonNode tree = BriefWriter.tree(brief);
        DemandWording wording = new DemandWording(brief, UnitSystem.METRIC);
        ArrayNode list = document.putArray("held");
        HeldDemand.of(brief).stream()
                .filter(held -> held.demand() == Demand.LOCK)
                .forEach(held -> list.addObject()
                        .put("pointer", held.pointer())
                        .put("text", wording.clause(held))
                        .set("value", tree.at(held.pointer())));
        document.put(
                "dialFromLeft", brief.frame().dialFromLeft().map(Quantity::text).orElse(null));
        document.put(
                "dialFromBottom",
                brief.frame().dialFromBottom().map(Quantity::text).orElse(null));
    }

    private static void room(ObjectNode group, RoomWording room, Rating rating) {
        group.put("figure", room.least().figure().word());
        JsonOutput.put(group, "size_SI", room.size(rating).orElse(Double.POSITIVE_INFINITY));
        JsonOutput.put(group, "resolution_SI", room.least().resolution().si());
        JsonOutput.put(
                group, "enough_SI", room.least().enough().map(Quantity::si).orElse(Double.POSITIVE_INFINITY));
    }

    private static void clash(ObjectNode group, Brief brief, Clash clash) {
        group.put("smallest", clash.smallest());
        demands(group.putArray("demands"), brief, clash.demands());
    }

    static void demands(ArrayNode list, Brief brief, List<HeldDemand> demands) {
        DemandWording wording = new DemandWording(brief, UnitSystem.METRIC);
        for (HeldDemand held : demands) {
            list.addObject()
                    .put("demand", JsonOutput.word(held.demand()))
                    .put("pointer", held.pointer())
                    .put("text", wording.clause(held));
        }
    }
}
