// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.plugin.sheet;

import drumfall.plugin.api.ExportFolder;
import drumfall.plugin.api.ExportProgress;
import drumfall.plugin.api.ExportSetting;
import drumfall.plugin.api.Exporter;
import drumfall.plugin.api.Handover;
import drumfall.plugin.api.RefusedExportException;
import drumfall.plugin.sheet.draw.Drawing;
import drumfall.plugin.sheet.draw.PartList;
import drumfall.plugin.sheet.pdf.Paper;
import drumfall.plugin.sheet.pdf.TemplatePages;
import drumfall.solver.fit.FitException;
import drumfall.solver.making.solid.SizeLimitException;
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
    public List<ExportSetting<?>> settings() {
        return List.of(PaperChoice.SETTING);
    }

    @Override
    public void export(Handover handover, ExportFolder folder, ExportProgress progress) throws IOException {
        progress.at(0, "parts");
        List<Drawing> drawings = drawings(handover);
        for (Paper paper : PaperChoice.of(handover)) {
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

    private static List<Drawing> drawings(Handover handover) {
        try {
            return PartList.of(handover).stream()
                    .filter(part -> !part.teeth().isEmpty() || PartList.large(part))
                    .map(Drawing::of)
                    .toList();
        } catch (FitException | SizeLimitException refused) {
            throw new RefusedExportException(refused.getMessage());
        }
    }
}
