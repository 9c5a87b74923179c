// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.terminal;

import static org.assertj.core.api.Assertions.assertThat;

import drumfall.solver.brief.RoomFigure;
import drumfall.solver.quantity.UnitSystem;
import drumfall.solver.search.SearchProgress;
import drumfall.solver.search.SearchProgress.Stage;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ProgressLineTest {
    private final StringWriter err = new StringWriter();

    private ProgressLine line(boolean watched) {
        return line(watched, UnitSystem.METRIC);
    }

    private ProgressLine line(boolean watched, UnitSystem units) {
        return ProgressLine.on(
                new TerminalPlace(
                        new PrintWriter(new StringWriter()),
                        new PrintWriter(err),
                        watched,
                        () -> false,
                        List.of(),
                        Path.of(".")),
                units);
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

    @ParameterizedTest
    @CsvSource({
        "MOVEMENT_HEIGHT, METRIC, ; movement height at most 254 mm; in steps 4 times as large",
        "MOVEMENT_HEIGHT, IMPERIAL, ; movement height at most 10 in; in steps 4 times as large"
    })
    void the_room_and_the_steps_that_are_searched_are_told(RoomFigure figure, UnitSystem units, String told)
            throws InterruptedException {
        try (ProgressLine line = line(true, units)) {
            Thread.sleep(250);
            line.progressed(new SearchProgress(
                    Stage.JOINING, 1, 2, 0.5, 4, Optional.of(new SearchProgress.Room(figure, 0.254))));
        }
        assertThat(err.toString()).contains("trains so far: 0" + told);
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
