// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.plugin.solids;

import static org.assertj.core.api.Assertions.assertThat;

import drumfall.plugin.api.ExportProgress;
import drumfall.plugin.api.Handover;
import drumfall.plugin.api.SettingValues;
import drumfall.plugin.api.trial.TrialFolder;
import drumfall.plugin.api.trial.TrialHandover;
import drumfall.solver.making.MovementPart;
import drumfall.solver.making.solid.Box;
import drumfall.solver.quantity.Quantity;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class ExporterTest {
    private static final Handover COARSE = TrialHandover.eightDays()
            .with(SettingValues.USUAL.with(SolidsExporter.CHORD_ERROR, Quantity.ofMillimetres(0.1)));

    private static final class Watcher implements ExportProgress {
        private final List<Double> shares = new ArrayList<>();
        private final int patience;

        Watcher(int patience) {
            this.patience = patience;
        }

        @Override
        public void at(double share, String doing) {
            shares.add(share);
        }

        @Override
        public boolean cancelled() {
            return shares.size() >= patience;
        }
    }

    @Test
    void the_trial_clock_becomes_a_file_for_each_part_and_a_package() throws IOException {
        TrialFolder folder = new TrialFolder();
        Watcher watcher = new Watcher(Integer.MAX_VALUE);
        new SolidsExporter().export(COARSE, folder, watcher);
        assertThat(folder.names())
                .contains(
                        "arbor-1-drum.stl",
                        "arbor-2-wheel-and-pinion.stl",
                        "arbor-4-escape-wheel-and-pinion.stl",
                        "pallets.stl",
                        "movement.3mf",
                        "parts.csv");
        assertThat(watcher.shares).isSorted().allMatch(share -> share >= 0 && share <= 1);
    }

    @Test
    void an_export_that_nobody_wants_any_more_stops_at_the_next_part() throws IOException {
        TrialFolder folder = new TrialFolder();
        new SolidsExporter().export(COARSE, folder, new Watcher(3));
        assertThat(folder.names()).hasSize(3).allMatch(name -> name.endsWith(".stl"));
    }

    @Test
    void places_in_rows_keep_parts_apart_and_above_nought() {
        List<Box> boxes = List.of(
                new Box(-10, -10, 10, 10), new Box(0, 0, 150, 30), new Box(-5, -40, 5, 40), new Box(0, 0, 300, 3));
        List<BedRows.Place> places = BedRows.of(boxes, 200);
        List<Box> placed = new ArrayList<>();
        for (int i = 0; i < boxes.size(); i++) {
            Box box = boxes.get(i);
            double x = places.get(i).x();
            double y = places.get(i).y();
            placed.add(new Box(box.left() + x, box.bottom() + y, box.right() + x, box.top() + y));
        }
        assertThat(placed).allMatch(box -> box.left() >= 0 && box.bottom() >= 0);
        for (Box one : placed) {
            assertThat(placed)
                    .filteredOn(other -> !other.equals(one))
                    .noneMatch(other -> one.left() < other.right()
                            && other.left() < one.right()
                            && one.bottom() < other.top()
                            && other.bottom() < one.top());
        }
    }

    @Test
    void only_the_kind_of_file_that_is_asked_for_is_written() throws IOException {
        List<MovementPart> parts = Movements.eightDays();
        assertThat(names("stl", parts)).contains("pallets.stl", "parts.csv").doesNotContain("movement.3mf");
        assertThat(names("3mf", parts)).containsExactlyInAnyOrder("movement.3mf", "parts.csv");
    }

    private static List<String> names(String files, List<MovementPart> parts) throws IOException {
        TrialFolder folder = new TrialFolder();
        Handover handover = COARSE.with(COARSE.settings().with(SolidsExporter.FILES, files));
        new SolidsExporter().write(handover, parts, folder, ExportProgress.unwatched());
        return folder.names();
    }

    /** A chord over an arc of the same error spans an angle that grows with the root of the error. */
    @Test
    void a_larger_chord_error_gives_smaller_files() throws IOException {
        TrialFolder fine = new TrialFolder();
        TrialFolder coarse = new TrialFolder();
        List<MovementPart> parts = Movements.eightDays();
        new SolidsExporter().write(TrialHandover.eightDays(), parts, fine, ExportProgress.unwatched());
        new SolidsExporter().write(COARSE, parts, coarse, ExportProgress.unwatched());
        assertThat(coarse.names()).isEqualTo(fine.names());
        assertThat(coarse.bytes("pallets.stl").length).isLessThan(fine.bytes("pallets.stl").length);
    }
}
