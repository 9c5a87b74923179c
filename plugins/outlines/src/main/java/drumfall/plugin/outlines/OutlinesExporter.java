// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.plugin.outlines;

import drumfall.plugin.api.ExportFolder;
import drumfall.plugin.api.ExportProgress;
import drumfall.plugin.api.Exporter;
import drumfall.plugin.api.Handover;
import drumfall.plugin.outlines.draw.Drawing;
import drumfall.plugin.outlines.draw.DxfWriter;
import drumfall.plugin.outlines.draw.SvgWriter;
import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.function.Supplier;
import javax.xml.stream.XMLStreamException;

/** Writes an SVG and a DXF file for every printed part, for the elevation and for the holes of each plate. */
public final class OutlinesExporter implements Exporter {
    /** Called by the service loader. */
    public OutlinesExporter() {}

    @Override
    public String id() {
        return "outlines";
    }

    @Override
    public String title() {
        return "Outlines (SVG and DXF)";
    }

    @Override
    public void export(Handover handover, ExportFolder folder, ExportProgress progress) throws IOException {
        MovementDrawings drawings = MovementDrawings.of(handover);
        write(folder, "read-me.txt", drawings.readMe());
        for (PlateHoles plate : drawings.plates()) {
            write(folder, PlateDrawing.name(plate) + ".csv", plate.csv());
        }
        List<Supplier<Drawing>> sheets = drawings.sheets();
        for (int i = 0; i < sheets.size() && !progress.cancelled(); i++) {
            Drawing drawing = sheets.get(i).get();
            progress.at((double) i / sheets.size(), drawing.name());
            write(drawing, folder);
        }
    }

    private static void write(ExportFolder folder, String name, String text) throws IOException {
        try (OutputStream out = folder.create(name)) {
            out.write(text.getBytes(StandardCharsets.UTF_8));
        }
    }

    private static void write(Drawing drawing, ExportFolder folder) throws IOException {
        try (OutputStream out = new BufferedOutputStream(folder.create(drawing.name() + ".svg"))) {
            SvgWriter.write(drawing, out);
        } catch (XMLStreamException broken) {
            throw new IOException("The drawing (%s) could not be written as SVG.".formatted(drawing.name()), broken);
        }
        try (OutputStream out = folder.create(drawing.name() + ".dxf")) {
            out.write(DxfWriter.bytes(drawing));
        }
    }
}
