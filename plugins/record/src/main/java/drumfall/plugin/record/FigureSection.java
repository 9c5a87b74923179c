// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.plugin.record;

import drumfall.plugin.api.Handover;
import drumfall.solver.brief.Objective;
import drumfall.solver.layout.Layout;
import drumfall.solver.layout.MovementSize;
import drumfall.solver.layout.size.Nanometres;
import drumfall.solver.quantity.Dimension;
import drumfall.solver.rating.Rating;
import drumfall.solver.train.GoingTrain;
import java.io.IOException;
import java.util.List;
import java.util.Optional;

/** The sections {@code figures} and {@code objectives} of the record. */
final class FigureSection {
    private static final double SECONDS_PER_HOUR = 3600;

    private final JsonFields fields;
    private final Rating rating;
    private final List<Objective> objectives;
    private final Optional<MovementSize> size;

    FigureSection(JsonFields fields, Handover handover) {
        this.fields = fields;
        this.rating = handover.rating();
        this.objectives = handover.brief().objectives();
        this.size = handover.layout().map(Layout::size);
    }

    void write() throws IOException {
        fields.json().writeObjectFieldStart("figures");
        GoingTrain going = rating.train().going();
        fields.figure("duration", Dimension.TIME, rating.durationRoundedDown().doubleValue() * SECONDS_PER_HOUR);
        fields.fraction("beatsPerHour", going.beatsPerHour());
        fields.figure("beat", Dimension.TIME, going.secondsPerBeat().doubleValue());
        fields.figure("pendulumLength", Dimension.LENGTH, rating.pendulumLength());
        fields.figure("leastWeight", Dimension.MASS, rating.weight().leastWeight());
        fields.figure("recommendedWeight", Dimension.MASS, rating.recommendedWeight());
        fields.figure("leastWeightSmoothest", Dimension.MASS, rating.leastSmoothest());
        fields.figure("leastWeightRoughest", Dimension.MASS, rating.leastRoughest());
        fields.word("weightDecidedBy", rating.weight().deciding());
        fields.figure("escapeTorque", Dimension.TORQUE, rating.weight().need().torque());
        fields.figure("semiArc", Dimension.ANGLE, rating.weight().need().semiArc());
        fields.figure("filamentMass", Dimension.MASS, rating.filamentMass());
        if (size.isPresent()) {
            writeSize(size.get());
        }
        fields.json().writeEndObject();
        writeObjectives();
    }

    private void writeSize(MovementSize placed) throws IOException {
        fields.figure("movementWidth", Dimension.LENGTH, Nanometres.toMetres(placed.width()));
        fields.figure("movementHeight", Dimension.LENGTH, Nanometres.toMetres(placed.height()));
        fields.figure("movementDepth", Dimension.LENGTH, Nanometres.toMetres(placed.depth()));
        fields.figure("plateArea", Dimension.AREA, placed.plateArea());
    }

    private void writeObjectives() throws IOException {
        fields.json().writeArrayFieldStart("objectives");
        for (int i = 0; i < objectives.size(); i++) {
            Objective objective = objectives.get(i);
            fields.json().writeStartObject();
            fields.word("figure", objective.figure());
            fields.figure(
                    "value",
                    objective.figure().dimension(),
                    rating.objectiveValues().get(i));
            if (objective.resolution().isPresent()) {
                fields.text("resolution", objective.resolution().get().text());
            }
            fields.count("cell", rating.cell().numbers().get(i));
            fields.json().writeEndObject();
        }
        fields.json().writeEndArray();
    }
}
