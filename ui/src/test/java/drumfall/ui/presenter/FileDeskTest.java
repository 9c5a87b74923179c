// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.presenter;

import static org.assertj.core.api.Assertions.assertThat;

import drumfall.solver.brief.Brief;
import drumfall.solver.brief.BriefWriter;
import drumfall.solver.brief.BundledBriefs;
import drumfall.solver.search.SearchOutcome;
import drumfall.ui.design.Design;
import drumfall.ui.design.DesignFile;
import drumfall.ui.design.FileHold;
import drumfall.ui.design.RecoveryFolder;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class FileDeskTest {
    private static final StripFigure WHEEL = StripFigure.of(StripFigure.Kind.MESHES_BELOW);

    @TempDir
    Path folder;

    private Workspace workspace;
    private FileDesk files;

    @BeforeEach
    void open() {
        workspace = new Turns()
                .workspace(BundledBriefs.demo(), (brief, listener, cancelled) -> new SearchOutcome.Stopped(List.of()));
        files = desk(workspace);
    }

    private FileDesk desk(Workspace of) {
        return new FileDesk(
                of,
                Runnable::run,
                Runnable::run,
                new Settings(folder.resolve("settings")),
                new RecoveryFolder(folder.resolve("recovery")));
    }

    @AfterEach
    void close() {
        files.close();
    }

    private void edit() {
        workspace.tryCount(WHEEL, workspace.draft().locks().meshesBelow().equals(Optional.of(2)) ? "3" : "2");
    }

    @Test
    void saving_reopening_and_editing_tell_whether_there_is_unsaved_work() {
        Path file = folder.resolve("clock");
        assertThat(files.changed()).isFalse();
        edit();
        assertThat(files.changed()).isTrue();
        files.saveAs(file);
        assertThat(files.changed()).isFalse();
        assertThat(files.file()).contains(folder.resolve("clock.drumfall"));
        Design saved = workspace.design();
        edit();
        files.open(folder.resolve("clock.drumfall"));
        assertThat(workspace.design()).isEqualTo(saved);
        assertThat(files.recent()).containsExactly(folder.resolve("clock.drumfall"));
    }

    @Test
    void undoing_to_the_saved_design_leaves_nothing_unsaved() {
        files.saveAs(folder.resolve("clock"));
        edit();
        workspace.undo();
        assertThat(files.changed()).isFalse();
    }

    @Test
    void a_file_open_elsewhere_is_named_and_nothing_changes() {
        Path file = folder.resolve("clock.drumfall");
        DesignFile.save(file, Design.of(BundledBriefs.demo()));
        Design before = workspace.design();
        try (FileHold elsewhere = FileHold.on(file).orElseThrow()) {
            files.open(file);
            assertThat(elsewhere).isNotNull();
        }
        assertThat(workspace.news().text())
                .isEqualTo("clock.drumfall is open in another window or program; close it there first.");
        assertThat(workspace.design()).isEqualTo(before);
        assertThat(files.file()).isEmpty();
    }

    @Test
    void a_brief_begins_a_new_design_that_is_saved_elsewhere() throws IOException {
        Brief brief = BundledBriefs.load(BundledBriefs.DESK_CLOCK).orElseThrow();
        Path file = Files.writeString(folder.resolve("desk.json"), BriefWriter.write(brief));
        files.open(file);
        assertThat(workspace.brief()).isEqualTo(brief);
        assertThat(files.file()).isEmpty();
        assertThat(files.changed()).isFalse();
        assertThat(files.recent()).isEmpty();
        assertThat(workspace.news())
                .isEqualTo(News.told("A new design with the brief of desk.json; that file stays as it is."));
        edit();
        files.save();
        assertThat(file).hasContent(BriefWriter.write(brief));
    }

    @Test
    void work_not_saved_is_set_aside_when_a_brief_is_opened() throws IOException {
        Path file = Files.writeString(folder.resolve("desk.json"), BriefWriter.write(BundledBriefs.demo()));
        edit();
        Design before = workspace.design();
        files.open(file);
        assertThat(workspace.design()).isNotEqualTo(before);
        assertThat(files.leftBehind()).hasSize(1);
        files.bringBack(files.leftBehind().get(0));
        assertThat(workspace.design()).isEqualTo(before);
    }

    @Test
    void a_refused_file_is_told_in_one_sentence_and_nothing_changes() throws IOException {
        Path file =
                Files.writeString(folder.resolve("newer.drumfall"), "{\"format\":\"drumfall-design\",\"version\":7}");
        Design before = workspace.design();
        files.open(file);
        assertThat(workspace.news())
                .isEqualTo(
                        News.trouble(
                                "newer.drumfall was saved by a newer Drumfall (version 7 of the file, this one knows 1); open it there."));
        assertThat(workspace.design()).isEqualTo(before);
    }

    @Test
    void a_folder_that_is_not_there_is_told_and_the_work_stays_unsaved() {
        edit();
        files.saveAs(folder.resolve("no/clock"));
        assertThat(workspace.news().trouble()).isTrue();
        assertThat(files.changed()).isTrue();
        assertThat(files.file()).isEmpty();
    }

    @Test
    void unsaved_work_is_set_aside_when_another_design_takes_its_place() {
        edit();
        Design work = workspace.design();
        files.begin(BundledBriefs.load(BundledBriefs.DESK_CLOCK).orElseThrow());
        assertThat(files.leftBehind()).hasSize(1);
        files.bringBack(files.leftBehind().get(0));
        assertThat(workspace.design()).isEqualTo(work);
        assertThat(files.changed()).isTrue();
    }

    @Test
    void unsaved_work_waits_for_the_next_day_when_the_program_is_quit() {
        edit();
        Design work = workspace.design();
        files.close();
        Workspace next = new Turns()
                .workspace(BundledBriefs.demo(), (brief, listener, cancelled) -> new SearchOutcome.Stopped(List.of()));
        files = desk(next);
        files.bringBack(files.leftBehind().get(0));
        assertThat(next.design()).isEqualTo(work);
        assertThat(files.leftBehind()).isEmpty();
    }

    @Test
    void saved_work_leaves_nothing_behind() {
        edit();
        files.saveAs(folder.resolve("clock"));
        files.close();
        assertThat(new RecoveryFolder(folder.resolve("recovery")).leftBehind()).isEmpty();
    }

    @Test
    void damaged_settings_are_passed_over() throws IOException {
        Path damaged = Files.write(folder.resolve("damaged"), new byte[] {'\\', 'u', '0', 'x', 0, 1, 2});
        Settings settings = new Settings(damaged);
        assertThat(settings.get("width")).isEmpty();
        settings.put("width", 1440);
        assertThat(new Settings(damaged).number("width")).contains(1440);
    }
}
