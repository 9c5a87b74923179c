// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.design;

import static org.assertj.core.api.Assertions.assertThat;

import drumfall.solver.brief.BundledBriefs;
import drumfall.ui.design.RecoveryFolder.LeftBehind;
import drumfall.ui.design.RecoveryFolder.Slot;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class RecoveryFolderTest {
    @TempDir
    Path folder;

    private final Unsaved work = new Unsaved(
            Design.of(BundledBriefs.demo()),
            Optional.of(Path.of("clock.drumfall").toAbsolutePath()));

    private RecoveryFolder recovery() {
        return new RecoveryFolder(folder.resolve("made/when/needed"));
    }

    @Test
    void kept_work_is_not_offered_while_its_program_runs() {
        Slot slot = recovery().slot();
        assertThat(slot.keep(work)).isEmpty();
        assertThat(recovery().leftBehind()).isEmpty();
        slot.leave();
        assertThat(recovery().leftBehind()).extracting(LeftBehind::unsaved).containsExactly(work);
    }

    @Test
    void a_program_that_ends_in_order_leaves_nothing() {
        Slot slot = recovery().slot();
        slot.keep(work);
        slot.close();
        assertThat(recovery().leftBehind()).isEmpty();
    }

    @Test
    void discarded_work_is_offered_no_more() {
        Slot slot = recovery().slot();
        slot.keep(work);
        slot.leave();
        recovery().leftBehind().forEach(recovery()::discard);
        assertThat(recovery().leftBehind()).isEmpty();
    }

    @Test
    void damaged_work_is_left_alone() throws IOException {
        Files.createDirectories(recovery().folder());
        Path damaged = Files.writeString(recovery().folder().resolve("x.drumfall"), "{\"design\":");
        assertThat(recovery().leftBehind()).isEmpty();
        assertThat(damaged).exists();
    }
}
