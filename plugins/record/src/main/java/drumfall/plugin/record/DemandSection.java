// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.plugin.record;

import drumfall.plugin.api.Handover;
import drumfall.solver.quantity.Dimension;
import drumfall.solver.rating.DemandFigure;
import java.io.IOException;
import java.util.List;
import java.util.OptionalDouble;

/** The section {@code demands} of the record, in the rating's order. */
final class DemandSection {
    private final JsonFields fields;
    private final List<DemandFigure> demands;

    DemandSection(JsonFields fields, Handover handover) {
        this.fields = fields;
        this.demands = handover.rating().demands();
    }

    void write() throws IOException {
        fields.json().writeArrayFieldStart("demands");
        for (DemandFigure demand : demands) {
            fields.json().writeStartObject();
            fields.word("demand", demand.demand());
            fields.text("pointer", demand.demand().pointer());
            if (!demand.place().isEmpty()) {
                fields.text("place", demand.place());
            }
            Dimension dimension = demand.dimension();
            fields.figure("figure", dimension, demand.figure());
            limit("from", dimension, demand.from());
            limit("to", dimension, demand.to());
            fields.flag("met", demand.met());
            fields.json().writeEndObject();
        }
        fields.json().writeEndArray();
    }

    private void limit(String name, Dimension dimension, OptionalDouble value) throws IOException {
        if (value.isPresent()) {
            fields.figure(name, dimension, value.getAsDouble());
        }
    }
}
