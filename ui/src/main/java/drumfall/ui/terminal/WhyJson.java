// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.terminal;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import drumfall.solver.brief.Brief;
import drumfall.solver.explain.Clashes;
import drumfall.solver.explain.Cost;
import drumfall.solver.explain.Easing;
import drumfall.solver.explain.MinimalClash;
import drumfall.solver.explain.Nearest;
import drumfall.solver.explain.Standing;
import drumfall.solver.explain.WhyNoTrain;
import drumfall.solver.quantity.UnitSystem;
import drumfall.solver.rating.Rating;
import drumfall.ui.wording.DemandWording;
import drumfall.ui.wording.FigureWording;
import drumfall.ui.wording.RoomWording;
import java.util.List;

/** Answers to why, as JSON. */
final class WhyJson {
    private WhyJson() {}

    private static ObjectNode document(Brief brief, String outcome) {
        ObjectNode document =
                JsonOutput.document("drumfall-why").put("brief", brief.name()).put("outcome", outcome);
        FrontJson.held(document, brief);
        return document;
    }

    static ObjectNode of(Brief brief, WhyNoTrain why) {
        Clashes clashes = why.clashes();
        String known = clashes.none() ? "trains-exist" : "no-train";
        boolean stopped = clashes.list().isEmpty() && !clashes.complete();
        ObjectNode document = document(brief, stopped ? "stopped" : known);
        document.put("complete", clashes.complete());
        ArrayNode sets = document.putArray("clashes");
        clashes.list().forEach(clash -> clash(sets.addObject(), brief, clash));
        ArrayNode nearest = document.putArray("nearest");
        why.nearest().forEach(found -> nearest(nearest.addObject(), found));
        return document;
    }

    private static void clash(ObjectNode group, Brief brief, MinimalClash clash) {
        group.put("minimal", clash.minimal());
        FrontJson.demands(group.putArray("demands"), brief, clash.demands());
    }

    private static void nearest(ObjectNode group, Nearest found) {
        easing(group, found.easing());
        group.put("verdict", JsonOutput.word(found.verdict()));
        group.put("typed", found.typed());
        group.put("value", found.value());
        group.put("enough", found.enough().orElse(null));
        group.put("standing", found.standing().isPresent() ? found.standing().getAsInt() + 1 : null);
        group.put(
                "train", found.train().map(rating -> rating.train().toString()).orElse(null));
    }

    private static void easing(ObjectNode group, Easing easing) {
        group.put("pointer", easing.pointer());
        group.put("way", JsonOutput.word(easing.way()));
    }

    static ObjectNode of(Brief brief, Standing standing, List<Rating> front) {
        Rating rating = standing.rating();
        ObjectNode document = document(brief, JsonOutput.word(standing.place()));
        document.put("text", rating.train().toString());
        DemandWording wording = new DemandWording(brief, UnitSystem.METRIC);
        ArrayNode missed = document.putArray("missed");
        rating.missed()
                .forEach(figure -> missed.addObject()
                        .put("demand", JsonOutput.word(figure.demand()))
                        .put("pointer", figure.demand().pointer())
                        .put("place", figure.place())
                        .put("figure", wording.figure(figure))
                        .put("limit", wording.limit(figure)));
        ArrayNode options = document.putArray("options");
        standing.options().forEach(number -> option(options.addObject(), brief, number, rating, front.get(number - 1)));
        return document;
    }

    private static void option(ObjectNode group, Brief brief, int number, Rating own, Rating option) {
        group.put("option", number).put("text", option.train().toString());
        ArrayNode differences = group.putArray("differences");
        WhyReport.better(own, option).forEach(i -> {
            ObjectNode difference = differences.addObject();
            difference.put("figure", brief.objectives().get(i).figure().word());
            JsonOutput.put(difference, "own_SI", own.objectiveValues().get(i));
            JsonOutput.put(difference, "option_SI", option.objectiveValues().get(i));
        });
        RoomWording.of(brief, FigureWording.in(UnitSystem.METRIC))
                .filter(room -> room.less(option, own))
                .ifPresent(room -> {
                    ObjectNode difference = differences.addObject();
                    difference.put("figure", room.least().figure().word());
                    JsonOutput.put(difference, "own_SI", room.size(own).orElseThrow());
                    JsonOutput.put(difference, "option_SI", room.size(option).orElseThrow());
                });
    }

    static ObjectNode of(Brief brief, int number, Rating chosen, List<Cost> costs, boolean complete) {
        ObjectNode document = document(brief, complete ? "proved-complete" : "stopped");
        document.put("complete", complete);
        document.put("option", number).put("text", chosen.train().toString());
        JsonOutput.put(document, "recommendedWeight_kg", chosen.recommendedWeight());
        ArrayNode list = document.putArray("costs");
        costs.forEach(cost -> cost(list.addObject(), cost));
        return document;
    }

    private static void cost(ObjectNode group, Cost cost) {
        easing(group, cost.step().easing());
        group.put("typed", cost.step().typed());
        group.put("value", cost.step().value());
        JsonOutput.put(group, "gain_kg", cost.gain());
        group.put(
                "recommendedWeight_kg",
                cost.best().map(Rating::recommendedWeight).orElse(null));
        group.put("train", cost.best().map(rating -> rating.train().toString()).orElse(null));
        group.put("proved", cost.proved());
    }
}
