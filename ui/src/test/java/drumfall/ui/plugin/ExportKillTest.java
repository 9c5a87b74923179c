// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.plugin;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A program killed at any moment of an export leaves a whole export behind: the earlier one or the new one. */
class ExportKillTest {
    private static final int MOMENTS = "full".equals(System.getProperty("drumfall.samples")) ? 200 : 6;

    /** About as long as two or three exports of this size take. */
    private static final int LONGEST_WAIT_MILLIS = 60;

    private static final int FILES = 12;

    @TempDir
    Path folder;

    @Test
    void whenever_the_program_is_killed_the_export_is_whole() throws IOException, InterruptedException {
        HostBench bench = new HostBench(folder);
        bench.plugin().exporter("Odd", "odd", """
                        String generation = String.valueOf(System.nanoTime());
                        for (int i = 0; i < %d; i++) { write(folder, "file-" + i + ".txt", generation.repeat(500)); }
                        """.formatted(FILES)).jar(bench.plugins.resolve("odd.jar"));
        Random random = new Random(20_261_125);
        for (int i = 0; i < MOMENTS; i++) {
            killAfter(random.nextInt(LONGEST_WAIT_MILLIS), bench);
            new FolderPlace(bench.target, "odd").recover();
            assertWhole(bench);
        }
    }

    private static void killAfter(int millis, HostBench bench) throws IOException, InterruptedException {
        Process process = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-XX:TieredStopAtLevel=1",
                        "-cp",
                        System.getProperty("java.class.path"),
                        ExportForever.class.getName(),
                        bench.plugins.toString(),
                        bench.target.toString())
                .redirectErrorStream(true)
                .directory(bench.work.toFile())
                .start();
        try (BufferedReader said = process.inputReader(StandardCharsets.UTF_8)) {
            assertThat(said.readLine()).startsWith("Written");
            TimeUnit.MILLISECONDS.sleep(millis);
        } finally {
            process.destroyForcibly().waitFor();
        }
    }

    private static void assertWhole(HostBench bench) throws IOException {
        Map<String, String> files = HostBench.tree(bench.target.resolve("odd"));
        assertThat(files).hasSize(FILES + 1);
        assertThat(FileList.firstForeign(bench.target.resolve("odd"))).isEmpty();
        files.remove(FileNames.LIST);
        assertThat(files.values().stream().collect(Collectors.toSet()))
                .as("all files are of one export")
                .hasSize(1);
        try (var entries = Files.list(bench.target)) {
            assertThat(entries).containsExactly(bench.target.resolve("odd"));
        }
    }
}
