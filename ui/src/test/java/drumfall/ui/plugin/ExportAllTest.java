// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.plugin;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import drumfall.plugin.api.ExportProgress;
import drumfall.ui.plugin.PluginFolder.Origin;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** All exporters together, into a folder or a zip file: all of it or nothing, and the same bytes for the same design. */
class ExportAllTest {
    /** What the second exporter of the jar does besides writing its file. */
    private static final String ODDITY = "drumfall.test.oddity";

    /** The file that it does it to. */
    private static final String VICTIM = "drumfall.test.victim";

    /** Worked example of FIPS 180-4 (its example SHA256.pdf, one block message): the hash of "abc". */
    private static final String ABC = "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad";

    @TempDir
    static Path work;

    @TempDir
    Path folder;

    private static PluginHost host;

    @BeforeAll
    static void load() {
        PluginJars.in(work)
                .exporter("One", "one", """
                        progress.at(0.5, "a.txt");
                        write(folder, "a.txt", "abc");
                        """)
                .exporter("Two", "two", """
                        progress.at(0.5, "b.txt");
                        write(folder, "sub/b.txt", System.getProperty("drumfall.test.words", "abc"));
                        java.nio.file.Path victim = java.nio.file.Path.of(System.getProperty("drumfall.test.victim", ""));
                        switch (System.getProperty("drumfall.test.oddity", "")) {
                            case "throws" -> throw new IllegalStateException("by design");
                            case "hangs" -> { while (!Thread.interrupted()) { Thread.onSpinWait(); } }
                            case "leaves" -> write(folder, "../escaped.txt", "x");
                            case "outside" -> java.nio.file.Files.writeString(victim, "x");
                            case "meddles" -> {
                                try (var all = java.nio.file.Files.walk(victim)) {
                                    for (java.nio.file.Path p : all.filter(p -> p.endsWith("one/a.txt")).toList()) {
                                        if (p.toString().contains("exporting")) { java.nio.file.Files.writeString(p, "abcd"); }
                                    }
                                }
                            }
                            default -> { }
                        }
                        """)
                .jar(work.resolve("plugins/odd.jar"));
        PluginLimits limits = new PluginLimits(Duration.ofMinutes(2), Duration.ofMillis(1500));
        host = PluginHost.load(List.of(new PluginFolder(Origin.USER, work.resolve("plugins"))), limits);
    }

    @AfterAll
    static void unload() {
        host.close();
    }

    @BeforeEach
    @AfterEach
    void no_oddity() {
        System.clearProperty(ODDITY);
        System.clearProperty(VICTIM);
        System.clearProperty("drumfall.test.words");
    }

    private static ExportOutcome export(Path target) {
        return host.exportAll(HostBench.HANDOVER, target, ExportProgress.unwatched());
    }

    private static Map<String, String> zipped(Path file) throws IOException {
        Map<String, String> files = new TreeMap<>();
        try (ZipFile zip = new ZipFile(file.toFile())) {
            for (ZipEntry entry : zip.stream().toList()) {
                try (InputStream in = zip.getInputStream(entry)) {
                    files.put(entry.getName(), new String(in.readAllBytes(), StandardCharsets.UTF_8));
                }
            }
        }
        return files;
    }

    @Test
    void each_exporter_has_a_folder_and_one_list_has_all_hashes() {
        ExportOutcome outcome = export(folder);
        assertThat(outcome)
                .isEqualTo(new ExportOutcome.Written(
                        folder.resolve("all_exports"),
                        List.of(new WrittenFile("one/a.txt", 3, ABC), new WrittenFile("two/sub/b.txt", 3, ABC))));
        assertThat(HostBench.tree(folder))
                .containsOnlyKeys("all_exports/files.sha256", "all_exports/one/a.txt", "all_exports/two/sub/b.txt")
                .containsEntry("all_exports/files.sha256", ABC + "  one/a.txt\n" + ABC + "  two/sub/b.txt\n");
    }

    /** The list is one that {@code sha256sum} reads (GNU coreutils). */
    @Test
    void sha256sum_finds_every_file_as_the_list_has_it() throws IOException, InterruptedException {
        assumeThat(Path.of("/usr/bin/sha256sum")).as("sha256sum is installed").exists();
        export(folder);
        Process process = new ProcessBuilder("/usr/bin/sha256sum", "--check", "--strict", "files.sha256")
                .directory(folder.resolve("all_exports").toFile())
                .redirectErrorStream(true)
                .start();
        String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertThat(process.waitFor()).as(said).isZero();
        assertThat(said).contains("one/a.txt: OK", "two/sub/b.txt: OK");
    }

    @ParameterizedTest
    @ValueSource(strings = {"clock.zip", "CLOCK.ZIP"})
    void a_zip_file_holds_what_the_folder_holds(String name) throws IOException {
        export(folder);
        Path zip = folder.resolve(name);
        assertThat(((ExportOutcome.Written) export(zip)).folder()).isEqualTo(zip);
        assertThat(zipped(zip)).isEqualTo(HostBench.tree(folder.resolve("all_exports")));
    }

    @Test
    void the_same_design_gives_the_same_bytes() throws IOException {
        Path first = folder.resolve("first.zip");
        Path second = folder.resolve("second.zip");
        export(first);
        export(second);
        assertThat(second).hasSameBinaryContentAs(first);
        try (ZipFile zip = new ZipFile(first.toFile())) {
            assertThat(zip.stream().map(ZipEntry::getName))
                    .containsExactly("files.sha256", "one/a.txt", "two/sub/b.txt");
            assertThat(zip.stream().map(ZipEntry::getTimeLocal).distinct()).hasSize(1);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "clock.zip"})
    void a_later_export_replaces_the_earlier_one_as_a_whole(String name) throws IOException {
        Path target = folder.resolve(name);
        export(target);
        System.setProperty("drumfall.test.words", "later");
        assertThat(export(target)).isInstanceOf(ExportOutcome.Written.class);
        Map<String, String> files = name.isEmpty() ? HostBench.tree(folder.resolve("all_exports")) : zipped(target);
        assertThat(files).hasSize(3).containsEntry("two/sub/b.txt", "later");
    }

    @ParameterizedTest
    @CsvSource({
        "throws, THREW, ''",
        "throws, THREW, clock.zip",
        "leaves, NAME_LEAVES_FOLDER, ''",
        "outside, WROTE_OUTSIDE, ''",
        "meddles, WROTE_OUTSIDE, ''",
        "hangs, HUNG, clock.zip"
    })
    void one_exporter_that_fails_is_named_and_leaves_the_earlier_export_whole(
            String oddity, FaultKind kind, String name) throws IOException {
        Path target = folder.resolve(name);
        export(target);
        Map<String, String> earlier = fingerprint();
        System.setProperty(ODDITY, oddity);
        Path victim = oddity.equals("outside") ? folder.resolve("beside.txt") : folder;
        System.setProperty(VICTIM, victim.toString());
        System.setProperty("drumfall.test.words", "later");
        PluginFault fault = HostBench.fault(export(target));
        assertThat(fault.kind()).isEqualTo(kind);
        assertThat(fault.plugin()).isEqualTo("odd.jar (two)");
        Files.deleteIfExists(folder.resolve("beside.txt"));
        assertThat(fingerprint()).isEqualTo(earlier);
    }

    /** Every file with its bytes, hidden ones too. */
    private Map<String, String> fingerprint() throws IOException {
        Map<String, String> files = new TreeMap<>();
        try (var all = Files.walk(folder)) {
            for (Path file : all.filter(Files::isRegularFile).toList()) {
                files.put(file.toString(), new String(Files.readAllBytes(file), StandardCharsets.ISO_8859_1));
            }
        }
        return files;
    }

    @Test
    void cancelling_leaves_nothing_behind() {
        Path target = folder.resolve("new/deep");
        ExportProgress progress = HostBench.cancelledWhen(() -> true);
        assertThat(host.exportAll(HostBench.HANDOVER, target, progress)).isEqualTo(new ExportOutcome.Cancelled());
        assertThat(folder.resolve("new")).doesNotExist();
    }

    @Test
    void progress_goes_through_all_exporters() {
        List<String> said = new ArrayList<>();
        host.exportAll(HostBench.HANDOVER, folder, new ExportProgress() {
            @Override
            public void at(double share, String doing) {
                said.add(share + " " + doing);
            }

            @Override
            public boolean cancelled() {
                return false;
            }
        });
        assertThat(said).containsExactly("0.25 one: a.txt", "0.75 two: b.txt");
    }

    /** A folder made read-only; for root, who may write anyway, one in Linux's process file system, where nobody may. */
    @Test
    void a_folder_that_may_not_be_written_is_named() {
        boolean readOnly = folder.toFile().setWritable(false) && !Files.isWritable(folder);
        Path target = readOnly ? folder : Path.of("/proc/drumfall-test");
        PluginFault fault = HostBench.fault(export(target));
        PluginFault zipped = HostBench.fault(export(target.resolve("clock.zip")));
        assertThat(folder.toFile().setWritable(true)).isTrue();
        assertThat(fault.kind()).isEqualTo(FaultKind.TARGET_UNWRITABLE);
        assertThat(fault.sentence()).contains("all exporters", target.toString());
        assertThat(zipped.kind()).isEqualTo(FaultKind.TARGET_UNWRITABLE);
    }

    @Test
    void a_file_that_no_export_wrote_is_not_replaced() throws IOException {
        Path zip = Files.writeString(folder.resolve("mine.zip"), "mine");
        assertThat(HostBench.fault(export(zip)).kind()).isEqualTo(FaultKind.TARGET_IN_USE);
        assertThat(zip).hasContent("mine");
        export(folder);
        Path notes = Files.writeString(folder.resolve("all_exports/one/notes.txt"), "mine");
        PluginFault fault = HostBench.fault(export(folder));
        assertThat(fault.kind()).isEqualTo(FaultKind.TARGET_IN_USE);
        assertThat(fault.sentence()).contains(notes.toString());
    }

    @Test
    void what_a_program_that_ended_too_early_left_is_tidied_up() throws IOException {
        Path left = Files.writeString(folder.resolve(".clock.zip.exporting-99999999999-1a"), "half");
        Path other = Files.writeString(folder.resolve(".other.zip.exporting-99999999999-1a"), "half");
        export(folder.resolve("clock.zip"));
        assertThat(left).doesNotExist();
        assertThat(other).exists();
    }

    @Test
    void without_exporters_there_is_nothing_to_export_with() {
        try (PluginHost none = PluginHost.load(List.of())) {
            PluginFault fault = HostBench.fault(none.exportAll(HostBench.HANDOVER, folder, ExportProgress.unwatched()));
            assertThat(fault.kind()).isEqualTo(FaultKind.NONE_LOADED);
        }
    }
}
