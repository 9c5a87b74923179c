// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.plugin.outlines;

import drumfall.plugin.api.ExportFolder;
import drumfall.plugin.api.ExportProgress;
import drumfall.plugin.api.ExportSetting;
import drumfall.plugin.api.Exporter;
import drumfall.plugin.api.Handover;
import drumfall.plugin.api.RefusedExportException;
import drumfall.plugin.outlines.draw.Drawing;
import drumfall.plugin.outlines.draw.DxfWriter;
import drumfall.plugin.outlines.draw.SvgWriter;
import drumfall.solver.fit.FitException;
import drumfall.solver.making.solid.SizeLimitException;
import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.function.Supplier;
import javax.xml.stream.XMLStreamException;

/** Writes an SVG and a DXF file, or either, for every printed part, for the elevation and for the holes of each plate. */
public final class OutlinesExporter implements Exporter {
    private static final String SVG = "svg";
    private static final String DXF = "dxf";

    /** Which kinds of drawing. */
    static final ExportSetting.Choice FILES = new ExportSetting.Choice(
            "files",
            "Drawings",
            "Which files every drawing is written as; the tables of holes are written in any case.",
            "both",
            List.of(
                    new ExportSetting.Choice.Value("both", "SVG and DXF"),
                    new ExportSetting.Choice.Value(SVG, "SVG"),
                    new ExportSetting.Choice.Value(DXF, "DXF")));

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
    public List<ExportSetting<?>> settings() {
        return List.of(FILES);
    }

    @Override
    public void export(Handover handover, ExportFolder folder, ExportProgress progress) throws IOException {
        try {
            write(MovementDrawings.of(handover), handover.settings().of(FILES), folder, progress);
        } catch (FitException | SizeLimitException refused) {
            throw new RefusedExportException(refused.getMessage());
        }
    }

    private static void write(MovementDrawings drawings, String files, ExportFolder folder, ExportProgress progress)
            throws IOException {
        write(folder, "read-me.txt", drawings.readMe());
        for (PlateHoles plate : drawings.plates()) {
            write(folder, PlateDrawing.name(plate) + ".csv", plate.csv());
        }
        List<Supplier<Drawing>> sheets = drawings.sheets();
        for (int i = 0; i < sheets.size() && !progress.cancelled(); i++) {
            Drawing drawing = sheets.get(i).get();
            progress.at((double) i / sheets.size(), drawing.name());
            write(drawing, files, folder);
        }
    }

    private static void write(ExportFolder folder, String name, String text) throws IOException {
        try (OutputStream out = folder.create(name)) {
            out.write(text.getBytes(StandardCharsets.UTF_8));
        }
    }

    private static void write(Drawing drawing, String files, ExportFolder folder) throws IOException {
        if (!files.equals(DXF)) {
            writeSvg(drawing, folder);
        }
        if (!files.equals(SVG)) {
            try (OutputStream out = folder.create(drawing.name() + ".dxf")) {
                out.write(DxfWriter.bytes(drawing));
            }
        }
    }

    private static void writeSvg(Drawing drawing, ExportFolder folder) throws IOException {
        try (OutputStream out = new BufferedOutputStream(folder.create(drawing.name() + ".svg"))) {
            SvgWriter.write(drawing, out);
        } catch (XMLStreamException broken) {
            throw new IOException("The drawing (%s) could not be written as SVG.".formatted(drawing.name()), broken);
        }
    }
}
