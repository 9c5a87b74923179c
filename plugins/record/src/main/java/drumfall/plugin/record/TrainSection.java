// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.plugin.record;

import drumfall.solver.brief.MeshPlace;
import drumfall.solver.layout.Layout;
import drumfall.solver.quantity.Dimension;
import drumfall.solver.train.GoingTrain;
import drumfall.solver.train.Mesh;
import drumfall.solver.train.Train;
import java.io.IOException;
import java.math.BigDecimal;
import java.util.Optional;

/** The section {@code train} of the record: drum, reeving, meshes, escape wheel. */
final class TrainSection {
    private final JsonFields fields;
    private final Train train;
    private final GoingTrain going;
    private final Optional<Layout> layout;

    TrainSection(JsonFields fields, Train train, Optional<Layout> layout) {
        this.fields = fields;
        this.train = train;
        this.going = train.going();
        this.layout = layout;
    }

    void write() throws IOException {
        fields.json().writeObjectFieldStart("train");
        fields.text("line", train.toString());
        fields.count("meshesAbove", train.meshesAbove());
        fields.count("meshesBelow", train.below().size());
        fields.figure("drumDiameter", Dimension.LENGTH, train.drumDiameter().doubleValue());
        fields.count("falls", train.reeving().falls());
        fields.count("escapeTeeth", train.escapeTeeth());
        fields.json().writeArrayFieldStart("meshes");
        for (int i = 0; i < train.meshes().size(); i++) {
            mesh(i, train.meshes().get(i));
        }
        fields.json().writeEndArray();
        fields.json().writeEndObject();
    }

    /** Exact: {@code m (z + p) / 2} in decimals. */
    private static BigDecimal centreDistance(Mesh mesh) {
        return Decimals.plain(new BigDecimal(mesh.module().toString())
                .multiply(BigDecimal.valueOf(mesh.toothCount() + mesh.leafCount()))
                .divide(BigDecimal.valueOf(2)));
    }

    private void mesh(int index, Mesh mesh) throws IOException {
        fields.json().writeStartObject();
        fields.text("place", MeshPlace.of(index, train.meshesAbove()).toString());
        fields.count("wheelArbor", index + 1);
        fields.count("pinionArbor", index + 2);
        fields.count("toothCount", mesh.toothCount());
        fields.count("leafCount", mesh.leafCount());
        fields.decimal("module_mm", new BigDecimal(mesh.module().toString()));
        fields.decimal("centreDistance_mm", centreDistance(mesh));
        fields.fraction("wheelTurn_h", going.hoursPerTurn(index));
        fields.fraction("pinionTurn_h", going.hoursPerTurn(index + 1));
        fields.flag("hunts", mesh.counts().hunts());
        if (layout.isPresent()) {
            fields.figure("direction", Dimension.ANGLE, layout.get().direction(index));
        }
        fields.json().writeEndObject();
    }
}
