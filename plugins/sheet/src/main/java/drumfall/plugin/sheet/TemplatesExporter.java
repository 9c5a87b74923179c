// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.plugin.sheet;

import drumfall.plugin.api.ExportFolder;
import drumfall.plugin.api.ExportProgress;
import drumfall.plugin.api.Exporter;
import drumfall.plugin.api.Handover;
import drumfall.plugin.sheet.draw.Drawing;
import drumfall.plugin.sheet.draw.PartList;
import drumfall.plugin.sheet.pdf.Paper;
import drumfall.plugin.sheet.pdf.TemplatePages;
import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.util.List;

/** Writes paper templates at their true size: every wheel, and plates where they are known. */
public final class TemplatesExporter implements Exporter {
    /** Called by the service loader. */
    public TemplatesExporter() {}

    @Override
    public String id() {
        return "templates";
    }

    @Override
    public String title() {
        return "Paper templates, true size (PDF)";
    }

    @Override
    public void export(Handover handover, ExportFolder folder, ExportProgress progress) throws IOException {
        progress.at(0, "templates-a4.pdf");
        List<Drawing> drawings = PartList.of(handover).stream()
                .filter(part -> !part.teeth().isEmpty() || PartList.large(part))
                .map(Drawing::of)
                .toList();
        for (Paper paper : Paper.values()) {
            if (progress.cancelled()) {
                return;
            }
            String name = "templates-" + paper.fileName() + ".pdf";
            progress.at(paper == Paper.A4 ? 0.3 : 0.7, name);
            try (OutputStream out = new BufferedOutputStream(folder.create(name))) {
                TemplatePages.write(handover.brief().name(), handover.programVersion(), drawings, paper, out);
            }
        }
    }
}
