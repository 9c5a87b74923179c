// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package stranger.summary;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import drumfall.plugin.api.ExportProgress;
import drumfall.plugin.api.SettingValues;
import drumfall.plugin.api.trial.TrialFolder;
import drumfall.plugin.api.trial.TrialHandover;
import java.io.IOException;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;

class SummaryExporterTest {
    @Test
    void the_page_names_every_wheel_and_the_weight() throws IOException {
        TrialFolder folder = new TrialFolder();
        new SummaryExporter().export(TrialHandover.eightDays(), folder, ExportProgress.unwatched());
        assertEquals(List.of("summary.txt"), folder.names());
        String page = folder.text("summary.txt");
        assertTrue(page.contains("wheel 96, pinion 8, module 1.5 mm\n"), page);
        assertTrue(page.contains("escape wheel 30\n"), page);
        double weight = TrialHandover.eightDays().rating().recommendedWeight();
        assertTrue(page.contains(String.format(Locale.ROOT, "recommended weight %.1f kg\n", weight)), page);
        assertTrue(page.endsWith("every demand is met\n"), page);
    }

    @Test
    void a_remark_stands_at_the_end() throws IOException {
        TrialFolder folder = new TrialFolder();
        SettingValues settings = SettingValues.USUAL.with(SummaryExporter.REMARK, "For the workshop");
        new SummaryExporter()
                .export(TrialHandover.eightDays().with(settings), folder, ExportProgress.unwatched());
        assertTrue(folder.text("summary.txt").endsWith("\nFor the workshop\n"));
    }
}
