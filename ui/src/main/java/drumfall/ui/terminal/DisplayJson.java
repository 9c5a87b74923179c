// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.terminal;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import drumfall.solver.display.DisplayOption;
import drumfall.solver.display.DisplayOutcome;
import drumfall.solver.display.DisplayQuery;
import drumfall.solver.display.DisplayTrain;
import drumfall.solver.display.Resolution;
import drumfall.ui.wording.FigureWording;

/** Displays found, as JSON. */
final class DisplayJson {
    private DisplayJson() {}

    static ObjectNode of(DisplayQuery query, DisplayOutcome outcome, Resolution resolution) {
        ObjectNode document = JsonOutput.document("drumfall-displays");
        document.put("turn_s", FigureWording.exact(query.display().secondsPerTurn()));
        document.put("cycle_s", FigureWording.exact(query.display().cycleSeconds()));
        document.put("arborTurns", FigureWording.exact(query.arborTurns()));
        document.put("resolution_s", FigureWording.exact(resolution.seconds(query.display())));
        document.put("clockwise", query.clockwise());
        document.put("idlerForClockwise", !query.clockwise());
        document.put("proven", outcome.proven());
        ArrayNode displays = document.putArray("displays");
        outcome.options().forEach(option -> put(displays.addObject(), option, resolution));
        return document;
    }

    private static void put(ObjectNode group, DisplayOption option, Resolution resolution) {
        group.put("turnsExact", FigureWording.exact(option.turns()));
        group.put("turn_s", option.secondsPerTurn().doubleValue());
        group.put("gainPerDayExact_s", FigureWording.exact(option.error().secondsADay()));
        group.put("gainPerDay_s", option.error().secondsADay().doubleValue());
        group.put("gainPerCycle_s", option.error().secondsACycle().doubleValue());
        group.put(
                "shows_d",
                option.error()
                        .daysUntil(resolution)
                        .map(days -> (Double) days.doubleValue())
                        .orElse(null));
        group.put("allListed", option.allListed());
        ArrayNode trains = group.putArray("trains");
        option.trains().forEach(train -> put(trains.addObject(), train));
    }

    private static void put(ObjectNode group, DisplayTrain train) {
        train.driverCounts().forEach(group.putArray("drivers")::add);
        train.followerCounts().forEach(group.putArray("followers")::add);
        group.put("largest", train.largestCount());
    }
}
