// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.plugin.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import drumfall.plugin.api.ExportProgress;
import drumfall.plugin.api.Handover;
import drumfall.plugin.api.trial.TrialFolder;
import drumfall.plugin.api.trial.TrialHandover;
import drumfall.plugin.sheet.content.Lengths;
import drumfall.plugin.sheet.content.Sheet;
import drumfall.plugin.sheet.html.SheetPage;
import drumfall.solver.train.Mesh;
import drumfall.solver.train.Reeving;
import drumfall.solver.train.ToothModule;
import drumfall.solver.train.Train;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;

class HardCasesTest {
    /** Teeth of module 0.3 are finer than a 0.4 mm nozzle lays, so that the mesh has none and passes nothing. */
    @Test
    void a_train_that_no_weight_drives_gets_a_sheet_that_says_so() throws IOException {
        Handover handover = TrialHandover.of(new Train(
                List.of(
                        Mesh.of(96, 8, ToothModule.ofMillimetres("0.3")),
                        Mesh.of(64, 8, ToothModule.ofMillimetres("1")),
                        Mesh.of(60, 8, ToothModule.ofMillimetres("1"))),
                1,
                BigFraction.of(52, 1000),
                Reeving.DOUBLE,
                30));
        assertThat(handover.rating().recommendedWeight()).isInfinite();
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        SheetPage.write(Sheet.of(handover, Lengths.MILLIMETRES), out);
        assertThat(HtmlTest.text(out.toString(StandardCharsets.UTF_8)))
                .contains("No weight drives this train")
                .contains("The parts cannot be drawn.")
                .contains("A hanging weight can fall")
                .doesNotContain("Infinity")
                .doesNotContain("NaN");
    }

    @Test
    void an_export_that_nobody_wants_any_more_stops() throws IOException {
        TrialFolder folder = new TrialFolder();
        ExportProgress unwanted = new ExportProgress() {
            @Override
            public void at(double share, String doing) {}

            @Override
            public boolean cancelled() {
                return true;
            }
        };
        new SheetExporter().export(Trials.eightDays(), folder, unwanted);
        new TemplatesExporter().export(Trials.eightDays(), folder, unwanted);
        assertThat(folder.names()).isEmpty();
    }
}
