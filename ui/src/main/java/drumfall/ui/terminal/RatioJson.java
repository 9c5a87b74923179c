// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.terminal;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import drumfall.solver.ratio.RatioEntry;
import drumfall.solver.ratio.RatioOutcome;
import drumfall.solver.ratio.RatioQuery;
import drumfall.solver.ratio.RatioTrain;
import drumfall.ui.wording.FigureWording;

/** Ratios found, as JSON. */
final class RatioJson {
    private RatioJson() {}

    static ObjectNode of(RatioQuery query, RatioOutcome outcome) {
        ObjectNode document = JsonOutput.document("drumfall-ratios");
        document.put("target", FigureWording.exact(query.target()));
        document.put("proven", outcome.proven());
        ArrayNode ratios = document.putArray("ratios");
        outcome.entries().forEach(entry -> put(ratios.addObject(), query, entry));
        return document;
    }

    private static void put(ObjectNode group, RatioQuery query, RatioEntry entry) {
        group.put("ratio", FigureWording.exact(entry.ratio()));
        group.put("value", entry.ratio().doubleValue());
        group.put("error", FigureWording.exact(entry.error()));
        group.put("relativeError", entry.error().divide(query.target()).doubleValue());
        group.put("allListed", entry.allListed());
        ArrayNode trains = group.putArray("trains");
        entry.trains().forEach(train -> put(trains.addObject(), train));
    }

    private static void put(ObjectNode group, RatioTrain train) {
        train.toothCounts().forEach(group.putArray("wheels")::add);
        train.leafCounts().forEach(group.putArray("pinions")::add);
    }
}
