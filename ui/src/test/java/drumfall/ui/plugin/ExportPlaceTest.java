// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.plugin;

import static org.assertj.core.api.Assertions.assertThat;

import drumfall.plugin.api.ExportProgress;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** How an export takes the place of an earlier one. */
class ExportPlaceTest {
    /** Larger than any process number that Linux, macOS or Windows give out, so it is never a running one. */
    private static final String GONE = "99999999999";

    @TempDir
    Path folder;

    private HostBench bench;

    @BeforeEach
    void setUp() {
        bench = new HostBench(folder);
        bench.plugin()
                .exporter("Odd", "odd", "write(folder, \"sub/new.txt\", \"abc\");")
                .jar(bench.plugins.resolve("odd.jar"));
    }

    private ExportOutcome export(Path target) {
        try (PluginHost host = bench.load()) {
            return host.export("odd", HostBench.HANDOVER, target, ExportProgress.unwatched());
        }
    }

    /** The hash of "abc" is the worked example of FIPS 180-4 (its example SHA256.pdf, one block message). */
    @Test
    void a_new_export_replaces_the_earlier_one_as_a_whole() {
        bench.makeEarlierExport();
        String hash = "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad";
        assertThat(export(bench.target))
                .isEqualTo(new ExportOutcome.Written(
                        bench.target.resolve("odd"), List.of(new WrittenFile("sub/new.txt", 3, hash))));
        assertThat(HostBench.tree(bench.target))
                .containsOnlyKeys("odd/files.sha256", "odd/sub/new.txt")
                .containsEntry("odd/files.sha256", hash + "  sub/new.txt\n");
    }

    @Test
    void the_target_is_made_if_need_be_and_goes_again_if_nothing_comes_of_it() {
        Path deep = folder.resolve("a/b/c");
        assertThat(export(deep)).isInstanceOf(ExportOutcome.Written.class);
        bench.plugin().exporter("Odd", "odd", "").jar(bench.plugins.resolve("odd.jar"));
        assertThat(export(folder.resolve("x/y"))).isInstanceOf(ExportOutcome.Failed.class);
        assertThat(folder.resolve("x")).doesNotExist();
        assertThat(deep.resolve("odd/sub/new.txt")).exists();
    }

    @Test
    void a_file_that_no_export_wrote_is_not_replaced() throws IOException {
        bench.makeEarlierExport();
        Path notes = Files.writeString(bench.target.resolve("odd/notes.txt"), "mine");
        PluginFault fault = HostBench.fault(export(bench.target));
        assertThat(fault.kind()).isEqualTo(FaultKind.TARGET_IN_USE);
        assertThat(fault.sentence()).contains(notes.toString());
        Files.delete(notes);
        bench.assertEarlierExportWhole();
    }

    @Test
    void an_exported_file_that_was_changed_since_is_not_replaced() throws IOException {
        bench.makeEarlierExport();
        Files.writeString(bench.target.resolve("odd/earlier.txt"), "changed by hand");
        assertThat(HostBench.fault(export(bench.target)).kind()).isEqualTo(FaultKind.TARGET_IN_USE);
        assertThat(bench.target.resolve("odd/earlier.txt")).hasContent("changed by hand");
    }

    @Test
    void a_file_in_place_of_the_folder_is_not_replaced() throws IOException {
        Files.createDirectories(bench.target);
        Files.writeString(bench.target.resolve("odd"), "mine");
        assertThat(HostBench.fault(export(bench.target)).kind()).isEqualTo(FaultKind.TARGET_IN_USE);
        assertThat(bench.target.resolve("odd")).hasContent("mine");
    }

    @Test
    void a_target_that_is_a_file_is_named() throws IOException {
        Path file = Files.writeString(folder.resolve("file"), "");
        PluginFault fault = HostBench.fault(export(file));
        assertThat(fault.kind()).isEqualTo(FaultKind.TARGET_UNWRITABLE);
        assertThat(fault.sentence()).contains(file + ": a file is in the way");
    }

    /** A folder made read-only; for root, who may write anyway, one in Linux's process file system, where nobody may. */
    @Test
    void a_target_that_may_not_be_written_is_named() throws IOException {
        Files.createDirectories(bench.target);
        boolean readOnly = bench.target.toFile().setWritable(false) && !Files.isWritable(bench.target);
        Path target = readOnly ? bench.target : Path.of("/proc/drumfall-test");
        PluginFault fault = HostBench.fault(export(target));
        assertThat(bench.target.toFile().setWritable(true)).isTrue();
        assertThat(fault.kind()).isEqualTo(FaultKind.TARGET_UNWRITABLE);
        assertThat(fault.sentence()).contains(target.toString());
    }

    @Test
    void an_earlier_export_moved_aside_by_a_program_that_ended_is_moved_back() throws IOException {
        bench.makeEarlierExport();
        Files.move(bench.target.resolve("odd"), bench.target.resolve(".odd.earlier-" + GONE + "-1a"));
        Files.createDirectories(bench.target.resolve(".odd.exporting-" + GONE + "-1b/sub"));
        bench.plugin()
                .exporter("Odd", "odd", "throw new IllegalStateException();")
                .jar(bench.plugins.resolve("odd.jar"));
        assertThat(HostBench.fault(export(bench.target)).kind()).isEqualTo(FaultKind.THREW);
        bench.assertEarlierExportWhole();
        try (var entries = Files.list(bench.target)) {
            assertThat(entries).containsExactly(bench.target.resolve("odd"));
        }
    }

    @Test
    void hidden_folders_of_running_programs_and_of_others_stay() throws IOException {
        Path running = Files.createDirectories(
                bench.target.resolve(".odd.exporting-" + ProcessHandle.current().pid() + "-1c"));
        Path others = Files.createDirectories(bench.target.resolve(".even.earlier-" + GONE + "-1d"));
        assertThat(export(bench.target)).isInstanceOf(ExportOutcome.Written.class);
        assertThat(running).exists();
        assertThat(others).exists();
    }
}
