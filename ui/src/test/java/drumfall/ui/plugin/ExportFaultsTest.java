// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.plugin;

import static org.assertj.core.api.Assertions.assertThat;

import drumfall.plugin.api.ExportProgress;
import java.io.FilterOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Whatever goes wrong in an export is named, and the earlier export stays whole. */
class ExportFaultsTest {
    private static final String HALF = "write(folder, \"half.txt\", \"half\"); ";

    @TempDir
    Path folder;

    private HostBench bench;

    @BeforeEach
    void setUp() {
        bench = new HostBench(folder);
    }

    @AfterEach
    void the_earlier_export_is_whole() {
        bench.assertEarlierExportWhole();
    }

    private PluginFault faultOf(String body) {
        PluginFault fault = HostBench.fault(bench.exportOver(body, HostBench.LONG));
        assertThat(fault.plugin()).isEqualTo("odd.jar (odd)");
        assertThat(fault.sentence()).contains("odd.jar (odd)");
        return fault;
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            throw new IllegalStateException("by design");      | by design
            throw new java.io.IOException("by design");        | by design
            throw new Error("by design");                      | by design
            throw new IllegalStateException("A sentence.");    | IllegalStateException, A sentence. The earlier
            throw new ThreadDeath();                           | ThreadDeath
            deeper(0);                                         | StackOverflowError
            long[] all = new long[Integer.MAX_VALUE]; all[0]++; long[] more = new long[Integer.MAX_VALUE]; more[0]++; | OutOfMemoryError
            """)
    void an_exporter_that_throws(String body, String named) {
        bench.makeEarlierExport();
        bench.plugin()
                .exporter(
                        "Odd",
                        "static int deeper(int n) { return deeper(n + 1) + 1; }",
                        "return \"odd\";",
                        "return \"odd\";",
                        HALF + body)
                .jar(bench.plugins.resolve("odd.jar"));
        try (PluginHost host = bench.load()) {
            PluginFault fault = HostBench.fault(bench.export(host, "odd"));
            assertThat(fault.kind()).isEqualTo(FaultKind.THREW);
            assertThat(fault.sentence()).contains(named);
            assertThat(fault.detail()).contains("stranger.Odd.");
        }
    }

    @Test
    void an_exporter_that_uses_what_plugins_do_not_see() {
        bench.makeEarlierExport();
        bench.plugin()
                .source("stranger.Gone", "package stranger; class Gone { static void call() {} }")
                .exporter("Odd", "odd", HALF + "Gone.call();")
                .without("stranger.Gone")
                .jar(bench.plugins.resolve("odd.jar"));
        try (PluginHost host = bench.load()) {
            assertThat(HostBench.fault(bench.export(host, "odd")).kind()).isEqualTo(FaultKind.LINKAGE);
        }
    }

    @Test
    void an_exporter_that_hangs_is_left_behind_and_not_called_again_while_it_runs() {
        bench.makeEarlierExport();
        String property = "drumfall.test.release." + folder.getFileName();
        bench.plugin()
                .exporter(
                        "Odd",
                        "odd",
                        HALF + "while (!Boolean.getBoolean(\"" + property + "\")) { Thread.onSpinWait(); }")
                .jar(bench.plugins.resolve("odd.jar"));
        try (PluginHost host = bench.load(HostBench.SHORT)) {
            PluginFault fault = HostBench.fault(bench.export(host, "odd"));
            assertThat(fault.kind()).isEqualTo(FaultKind.HUNG);
            assertThat(fault.sentence()).contains("1.5 s");
            assertThat(HostBench.fault(bench.export(host, "odd")).kind()).isEqualTo(FaultKind.STILL_HANGING);
        } finally {
            System.setProperty(property, "true");
        }
    }

    @Test
    void a_thread_left_behind_can_write_no_further_byte() throws InterruptedException {
        bench.makeEarlierExport();
        String property = "drumfall.test.late." + folder.getFileName();
        bench.plugin().exporter("Odd", "odd", """
                        java.io.OutputStream out = folder.create("late.txt");
                        while (!Boolean.getBoolean("%1$s")) { Thread.onSpinWait(); }
                        String said = "";
                        try { out.write(1); said += "wrote "; } catch (java.io.IOException e) { said += e.getMessage(); }
                        try { folder.create("later.txt"); said += " made"; } catch (java.io.IOException e) { said += ", " + e.getMessage(); }
                        System.setProperty("%1$s.said", said);
                        """.formatted(property)).jar(bench.plugins.resolve("odd.jar"));
        try (PluginHost host = bench.load(HostBench.SHORT)) {
            assertThat(HostBench.fault(bench.export(host, "odd")).kind()).isEqualTo(FaultKind.HUNG);
            System.setProperty(property, "true");
            while (System.getProperty(property + ".said") == null) {
                Thread.sleep(5);
            }
            assertThat(System.getProperty(property + ".said"))
                    .isEqualTo("the export has been given up, the export has been given up");
        }
    }

    @Test
    void cancelling_leaves_everything_as_it_was() {
        bench.makeEarlierExport();
        bench.plugin()
                .exporter("Odd", "odd", HALF + "while (!progress.cancelled()) { Thread.onSpinWait(); }")
                .jar(bench.plugins.resolve("odd.jar"));
        try (PluginHost host = bench.load()) {
            ExportProgress cancelled = HostBench.cancelledWhen(() -> true);
            assertThat(host.export("odd", HostBench.HANDOVER, bench.target, cancelled))
                    .isEqualTo(new ExportOutcome.Cancelled());
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "../escaped.txt",
                "/tmp/escaped.txt",
                "a/../../escaped.txt",
                "C:\\\\escaped.txt",
                "..\\\\escaped.txt",
                "c:x"
            })
    void a_name_that_leaves_the_folder_ends_the_export_even_if_the_exporter_hides_it(String name) {
        PluginFault fault =
                faultOf(HALF + "try { write(folder, \"" + name + "\", \"x\"); } catch (RuntimeException hidden) { }");
        assertThat(fault.kind()).isEqualTo(FaultKind.NAME_LEAVES_FOLDER);
        assertThat(fault.sentence()).contains(name.replace("\\\\", "\\"));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            "half.txt"     | it is used already
            "HALF.txt"     | it is used already
            "half.txt/a"   | it is used already
            "NUL.txt"      | name of a device
            "files.sha256" | kept for the list
            "ab:c"         | a control character
            ""             | 1 to 100 characters
            null           | it is absent
            """)
    void a_name_that_breaks_a_rule_ends_the_export(String name, String rule) {
        PluginFault fault = faultOf(HALF + "write(folder, " + name + ", \"x\");");
        assertThat(fault.kind()).isEqualTo(FaultKind.BAD_FILE_NAME);
        assertThat(fault.sentence()).contains(rule);
    }

    @Test
    void a_file_written_beside_the_folder_is_noticed() throws IOException {
        Path beside = bench.target.resolve("beside.txt");
        PluginFault fault =
                faultOf(HALF + "java.nio.file.Files.writeString(java.nio.file.Path.of(\"" + beside + "\"), \"x\");");
        assertThat(fault.kind()).isEqualTo(FaultKind.WROTE_OUTSIDE);
        assertThat(fault.sentence()).contains(beside.toString());
        Files.delete(beside);
    }

    @Test
    void a_change_to_the_earlier_export_itself_is_noticed() {
        Path inside = bench.target.resolve("odd").resolve("added.txt");
        String write = "java.nio.file.Files.writeString(java.nio.file.Path.of(\"" + inside + "\"), \"x\");";
        assertThat(faultOf(HALF + write).kind()).isEqualTo(FaultKind.WROTE_OUTSIDE);
        try (PluginHost host = bench.load()) {
            assertThat(HostBench.fault(bench.export(host, "odd")).kind()).isEqualTo(FaultKind.TARGET_IN_USE);
        }
        assertThat(inside.toFile().delete()).isTrue();
    }

    @Test
    void a_file_written_by_a_relative_path_is_noticed() throws IOException {
        Path relative = Path.of("written-by-a-plugin-of-a-test.txt");
        try {
            PluginFault fault = faultOf(
                    HALF + "java.nio.file.Files.writeString(java.nio.file.Path.of(\"" + relative + "\"), \"x\");");
            assertThat(fault.kind()).isEqualTo(FaultKind.WROTE_OUTSIDE);
            assertThat(fault.sentence()).contains(relative.toAbsolutePath().toString());
        } finally {
            Files.deleteIfExists(relative);
        }
    }

    @Test
    void a_file_put_into_the_staging_folder_past_the_host_is_noticed() {
        String body = HALF + """
                try (java.util.stream.Stream<java.nio.file.Path> all = java.nio.file.Files.list(java.nio.file.Path.of("%s"))) {
                    for (java.nio.file.Path p : all.toList()) {
                        if (p.toString().contains("exporting")) { java.nio.file.Files.writeString(p.resolve("smuggled"), "x"); }
                    }
                }
                """.formatted(bench.target);
        PluginFault fault = faultOf(body);
        assertThat(fault.kind()).isEqualTo(FaultKind.WROTE_OUTSIDE);
        assertThat(fault.sentence()).contains("smuggled");
    }

    @Test
    void a_file_left_open_is_not_published() {
        PluginFault fault = faultOf(HALF + "folder.create(\"open.txt\").write(1);");
        assertThat(fault.kind()).isEqualTo(FaultKind.LEFT_OPEN);
        assertThat(fault.sentence()).contains("\"open.txt\"");
    }

    @Test
    void an_export_without_files_is_none() {
        assertThat(faultOf("").kind()).isEqualTo(FaultKind.NOTHING_WRITTEN);
    }

    @ParameterizedTest
    @ValueSource(booleans = {true, false})
    void a_full_disk_is_named_as_such_whether_or_not_the_exporter_hides_it(boolean hides) {
        bench.makeEarlierExport();
        String hiding = "try { write(folder, \"a.txt\", \"twelve bytes\"); } catch (java.io.IOException hidden) { }";
        bench.plugin()
                .exporter("Odd", "odd", hides ? hiding : "write(folder, \"a.txt\", \"twelve bytes\");")
                .jar(bench.plugins.resolve("odd.jar"));
        try (PluginHost host = bench.load()) {
            PluginFault fault = HostBench.fault(host.export(
                    "odd",
                    HostBench.HANDOVER,
                    SettingTexts.NONE,
                    bench.target,
                    HostBench.LONG.exporting(),
                    ExportProgress.unwatched(),
                    file -> new FullDisk(Files.newOutputStream(file))));
            assertThat(fault.kind()).isEqualTo(FaultKind.TARGET_UNWRITABLE);
            assertThat(fault.sentence()).contains("No space left on device", bench.target.toString());
        }
    }

    /** Takes five bytes and then fails as Linux does. */
    private static final class FullDisk extends FilterOutputStream {
        private int room = 5;

        FullDisk(OutputStream out) {
            super(out);
        }

        @Override
        public void write(byte[] bytes, int offset, int length) throws IOException {
            int fits = Math.min(room, length);
            out.write(bytes, offset, fits);
            room -= fits;
            if (fits < length) {
                throw new IOException("No space left on device");
            }
        }
    }
}
