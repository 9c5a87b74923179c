// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.plugin.sheet;

import drumfall.plugin.api.ExportSetting;
import drumfall.plugin.api.Handover;
import drumfall.plugin.sheet.pdf.Paper;
import java.util.List;
import java.util.stream.Stream;

/** The paper that documents are made for. */
final class PaperChoice {
    static final ExportSetting.Choice SETTING = new ExportSetting.Choice(
            "paper",
            "Paper",
            "The paper that the PDF documents are set for.",
            "both",
            List.of(
                    new ExportSetting.Choice.Value("both", "A4 and Letter"),
                    new ExportSetting.Choice.Value(Paper.A4.fileName(), "A4"),
                    new ExportSetting.Choice.Value(Paper.LETTER.fileName(), "Letter")));

    private PaperChoice() {}

    static List<Paper> of(Handover handover) {
        String chosen = handover.settings().of(SETTING);
        return Stream.of(Paper.values())
                .filter(paper -> chosen.equals(SETTING.usual()) || chosen.equals(paper.fileName()))
                .toList();
    }
}
