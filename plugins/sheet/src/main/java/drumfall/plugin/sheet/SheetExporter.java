// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.plugin.sheet;

import drumfall.plugin.api.ExportFolder;
import drumfall.plugin.api.ExportProgress;
import drumfall.plugin.api.ExportSetting;
import drumfall.plugin.api.Exporter;
import drumfall.plugin.api.Handover;
import drumfall.plugin.sheet.content.Lengths;
import drumfall.plugin.sheet.content.Sheet;
import drumfall.plugin.sheet.html.SheetPage;
import drumfall.plugin.sheet.pdf.Paper;
import drumfall.plugin.sheet.pdf.SheetPages;
import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.util.List;

/** Writes the builder's sheet for A4, for Letter, and as a web page. */
public final class SheetExporter implements Exporter {
    private static final double WORKED_OUT = 0.4;

    /** What lengths are shown in. */
    static final ExportSetting.Choice UNITS = new ExportSetting.Choice(
            "units",
            "Lengths in",
            "What lengths are shown in; modules and drills keep the sizes that they are sold by.",
            "mm",
            List.of(
                    new ExportSetting.Choice.Value("mm", "Millimetres"),
                    new ExportSetting.Choice.Value("inch", "Inches")));

    /** Called by the service loader. */
    public SheetExporter() {}

    @Override
    public String id() {
        return "sheet";
    }

    @Override
    public String title() {
        return "Builder's sheet (PDF and HTML)";
    }

    @Override
    public List<ExportSetting<?>> settings() {
        return List.of(PaperChoice.SETTING, UNITS);
    }

    @Override
    public void export(Handover handover, ExportFolder folder, ExportProgress progress) throws IOException {
        progress.at(0, "figures");
        Sheet sheet =
                Sheet.of(handover, handover.settings().of(UNITS).equals("inch") ? Lengths.INCHES : Lengths.MILLIMETRES);
        if (progress.cancelled()) {
            return;
        }
        progress.at(WORKED_OUT, "builders-sheet.html");
        try (OutputStream out = new BufferedOutputStream(folder.create("builders-sheet.html"))) {
            SheetPage.write(sheet, out);
        }
        for (Paper paper : PaperChoice.of(handover)) {
            if (progress.cancelled()) {
                return;
            }
            String name = "builders-sheet-" + paper.fileName() + ".pdf";
            progress.at(paper == Paper.A4 ? 0.6 : 0.8, name);
            try (OutputStream out = new BufferedOutputStream(folder.create(name))) {
                SheetPages.write(sheet, paper, out);
            }
        }
    }
}
