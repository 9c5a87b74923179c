// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.terminal;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import drumfall.solver.brief.Brief;
import drumfall.solver.quantity.UnitSystem;
import drumfall.solver.search.Clash;
import drumfall.solver.search.HeldDemand;
import drumfall.solver.search.SearchOutcome;
import drumfall.ui.wording.DemandWording;
import java.util.List;

/** A front as JSON. */
final class FrontJson {
    private FrontJson() {}

    static ObjectNode of(Brief brief, SearchOutcome outcome, List<TrainPlaces> places) {
        ObjectNode document = JsonOutput.document("drumfall-front");
        document.put("brief", brief.name());
        document.put(
                "outcome", outcome.<String>fold(proved -> "proved-complete", stopped -> "stopped", none -> "no-train"));
        var options = document.putArray("options");
        for (int i = 0; i < outcome.front().size(); i++) {
            ObjectNode option = options.addObject().put("option", i + 1);
            TrainFields.put(option, brief, brief.name(), outcome.front().get(i), places.get(i));
        }
        if (outcome instanceof SearchOutcome.NoTrain none) {
            clash(document.putObject("clash"), brief, none.clash());
        }
        return document;
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
