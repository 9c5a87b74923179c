// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.terminal;

import static org.assertj.core.api.Assertions.assertThat;

import drumfall.solver.search.SearchProgress;
import drumfall.solver.search.SearchProgress.Stage;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

class ProgressLineTest {
    private final StringWriter err = new StringWriter();

    private ProgressLine line(boolean watched) {
        return ProgressLine.on(new TerminalPlace(
                new PrintWriter(new StringWriter()),
                new PrintWriter(err),
                watched,
                () -> false,
                List.of(),
                Path.of(".")));
    }

    @Test
    void a_watched_line_is_wiped_at_the_end() throws InterruptedException {
        try (ProgressLine line = line(true)) {
            Thread.sleep(250);
            line.progressed(new SearchProgress(Stage.JOINING, 1, 2, 0.5));
        }
        assertThat(err.toString())
                .contains("1 above and 2 below the centre, 50 %")
                .endsWith(" \r");
    }

    @Test
    void nobody_watching_means_no_progress() throws InterruptedException {
        try (ProgressLine line = line(false)) {
            Thread.sleep(250);
            line.progressed(new SearchProgress(Stage.JOINING, 1, 2, 0.5));
        }
        assertThat(err.toString()).isEmpty();
    }
}
