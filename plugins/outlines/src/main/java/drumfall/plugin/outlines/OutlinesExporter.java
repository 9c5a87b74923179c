// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.plugin.outlines;

import drumfall.plugin.api.ExportFolder;
import drumfall.plugin.api.ExportProgress;
import drumfall.plugin.api.Exporter;
import drumfall.plugin.api.Handover;
import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.util.List;
import javax.xml.stream.XMLStreamException;

/** Writes an SVG and a DXF file for every wheel and pinion, and for the overview. */
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
        List<Drawing> drawings = new TrainDrawings(handover).all();
        for (int i = 0; i < drawings.size() && !progress.cancelled(); i++) {
            progress.at((double) i / drawings.size(), drawings.get(i).name());
            write(drawings.get(i), folder);
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
