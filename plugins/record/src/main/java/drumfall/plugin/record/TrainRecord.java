// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.plugin.record;

import com.fasterxml.jackson.core.JsonEncoding;
import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.StreamWriteFeature;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.core.util.Separators;
import drumfall.plugin.api.Handover;
import drumfall.solver.brief.Arrangement;
import drumfall.solver.brief.BriefWriter;
import drumfall.solver.layout.Layout;
import drumfall.solver.layout.written.LayoutReader;
import drumfall.solver.rating.Rating;
import java.io.IOException;
import java.io.OutputStream;
import java.util.List;

/** The train record as JSON; the package tells its fields. */
final class TrainRecord {
    static final String FORMAT = "drumfall-train-record";
    static final int VERSION = 1;

    private static final JsonFactory FACTORY =
            JsonFactory.builder().disable(StreamWriteFeature.AUTO_CLOSE_TARGET).build();

    private final Handover handover;
    private final List<Part> parts;
    private final JsonFields fields;

    private TrainRecord(Handover handover, List<Part> parts, JsonGenerator json) {
        this.handover = handover;
        this.parts = parts;
        this.fields = new JsonFields(json);
    }

    static void write(Handover handover, List<Part> parts, OutputStream out) throws IOException {
        try (JsonGenerator json = FACTORY.createGenerator(out, JsonEncoding.UTF8)) {
            json.setPrettyPrinter(printer());
            new TrainRecord(handover, parts, json).write();
            json.writeRaw('\n');
        }
    }

    private static DefaultPrettyPrinter printer() {
        DefaultIndenter lines = new DefaultIndenter("  ", "\n");
        DefaultPrettyPrinter printer = new DefaultPrettyPrinter(
                Separators.createDefaultInstance().withObjectFieldValueSpacing(Separators.Spacing.AFTER));
        printer.indentObjectsWith(lines);
        printer.indentArraysWith(lines);
        return printer;
    }

    private void write() throws IOException {
        Rating rating = handover.rating();
        fields.json().writeStartObject();
        fields.text("format", FORMAT);
        fields.count("version", VERSION);
        program();
        fields.text("name", handover.brief().name());
        fields.flag("feasible", rating.feasible());
        fields.text("placement", placement());
        new TrainSection(fields, rating.train(), handover.layout()).write();
        new FigureSection(fields, handover).write();
        new DemandSection(fields, handover).write();
        writeParts();
        writeBrief();
        if (handover.layout().isPresent()) {
            writeLayout(handover.layout().get());
        }
        fields.json().writeEndObject();
    }

    private String placement() {
        if (handover.layout().isPresent()) {
            return "placed";
        }
        return handover.brief().frame().arrangement() == Arrangement.UNPLACED ? "left-unplaced" : "no-place";
    }

    private void program() throws IOException {
        fields.json().writeObjectFieldStart("program");
        fields.text("name", "Drumfall");
        fields.text("version", handover.programVersion());
        fields.json().writeEndObject();
    }

    /** The brief is a file within the file: the program's own reader opens it once it is cut out. */
    private void writeBrief() throws IOException {
        copy("brief", BriefWriter.write(handover.brief()));
    }

    /** So is the layout, which holds every nanometre. */
    private void writeLayout(Layout layout) throws IOException {
        copy("layout", LayoutReader.write(handover.brief().name(), layout));
    }

    private void copy(String name, String file) throws IOException {
        fields.json().writeFieldName(name);
        try (JsonParser text = FACTORY.createParser(file)) {
            text.nextToken();
            fields.json().copyCurrentStructure(text);
        }
    }

    private void writeParts() throws IOException {
        fields.json().writeArrayFieldStart("parts");
        for (Part part : parts) {
            part(part);
        }
        fields.json().writeEndArray();
    }

    private void part(Part part) throws IOException {
        fields.json().writeStartObject();
        fields.text("part", part.name());
        fields.count("count", part.count());
        fields.count("arbor", part.arbor());
        if (part.teeth().isPresent()) {
            fields.count("teeth", part.teeth().getAsInt());
        }
        if (part.module().isPresent() && part.pitchDiameter().isPresent()) {
            fields.decimal("module_mm", part.module().get());
            fields.decimal("pitchDiameter_mm", part.pitchDiameter().get());
        }
        fields.decimal("tipDiameter_mm", part.tipDiameter());
        fields.decimal("bore_mm", part.bore());
        fields.decimal("width_mm", part.width());
        fields.decimal("mass_g", part.mass());
        fields.json().writeEndObject();
    }
}
