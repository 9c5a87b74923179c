// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.terminal;

import com.fasterxml.jackson.databind.node.ObjectNode;
import drumfall.solver.brief.Brief;
import drumfall.solver.brief.Objective;
import drumfall.solver.brief.ObjectiveFigure;
import drumfall.solver.brief.TrainReader;
import drumfall.solver.brief.TrainSheet;
import drumfall.solver.rating.Rating;
import java.util.List;

/** The figures of a rated train as JSON fields, the same for {@code solve} and {@code rate}. */
final class TrainFields {
    private TrainFields() {}

    static void put(ObjectNode group, Brief brief, String name, Rating rating, TrainPlaces places) {
        group.put("text", rating.train().toString());
        group.set("train", TrainReader.FORMAT.tree(TrainSheet.of(name, rating.train())));
        group.put("duration_h", JsonOutput.hours(rating.durationRoundedDown()));
        group.put("beatsPerHour", rating.train().going().beatsPerHour().doubleValue());
        JsonOutput.put(group, "pendulumLength_m", rating.pendulumLength());
        JsonOutput.put(group, "leastWeight_kg", rating.weight().leastWeight());
        JsonOutput.put(group, "leastWeightSmoothest_kg", rating.leastSmoothest());
        JsonOutput.put(group, "leastWeightRoughest_kg", rating.leastRoughest());
        JsonOutput.put(group, "recommendedWeight_kg", rating.recommendedWeight());
        JsonOutput.put(group, "filamentMass_kg", rating.filamentMass());
        objectives(group.putObject("objectives"), brief.objectives(), rating);
        PlacesJson.put(group, rating.train(), places);
    }

    private static void objectives(ObjectNode group, List<Objective> objectives, Rating rating) {
        for (int i = 0; i < objectives.size(); i++) {
            JsonOutput.put(
                    group,
                    field(objectives.get(i).figure()),
                    rating.objectiveValues().get(i));
        }
    }

    private static String field(ObjectiveFigure figure) {
        return switch (figure) {
            case RECOMMENDED_WEIGHT -> "recommendedWeight_kg";
            case FILAMENT_MASS -> "filamentMass_kg";
            case LARGEST_WHEEL -> "largestWheel_m";
            case CENTRE_DISTANCES -> "centreDistances_m";
            case MESHES -> "meshes";
            case MODULES -> "modules";
            case DURATION_ERROR -> "durationError_s";
        };
    }
}
