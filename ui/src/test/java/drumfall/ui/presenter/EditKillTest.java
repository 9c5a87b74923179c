// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.presenter;

import static org.assertj.core.api.Assertions.assertThat;

import drumfall.ui.design.Design;
import drumfall.ui.design.DesignFile;
import drumfall.ui.design.RecoveryFolder;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A program killed at any moment of editing and saving leaves designs that open, and loses ten seconds of edits at most. */
class EditKillTest {
    private static final boolean FULL = "full".equals(System.getProperty("drumfall.samples"));

    /** Moments while edits and saves follow each other as fast as they go. */
    private static final int BUSY_MOMENTS = FULL ? 190 : 5;

    /** Moments late enough that edits were made more than ten seconds before, none of them saved. */
    private static final int LATE_MOMENTS = FULL ? 10 : 1;

    private static final int BUSY_MILLIS = 400;
    private static final int LATE_MILLIS = 14_000;
    private static final long MAY_BE_LOST_MILLIS = 10_000;

    @TempDir
    Path folder;

    @Test
    void whenever_the_program_is_killed_every_design_opens_and_little_is_lost() throws Exception {
        List<Killed> late = new ArrayList<>();
        for (int i = 0; i < LATE_MOMENTS; i++) {
            late.add(started(i, 60));
        }
        long begun = System.nanoTime();
        Random random = new Random(20_261_125);
        for (int i = 0; i < BUSY_MOMENTS; i++) {
            Killed killed = started(100 + i, 4);
            TimeUnit.MILLISECONDS.sleep(random.nextInt(BUSY_MILLIS));
            killed.end();
        }
        long spent = TimeUnit.NANOSECONDS.toMillis(System.nanoTime() - begun);
        TimeUnit.MILLISECONDS.sleep(Math.max(0, LATE_MILLIS - spent));
        for (Killed killed : late) {
            killed.end();
        }
    }

    private Killed started(int seed, int rest) throws IOException, InterruptedException {
        Path own = Files.createDirectory(folder.resolve("run-" + seed));
        Process process = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-XX:TieredStopAtLevel=1",
                        "-cp",
                        System.getProperty("java.class.path"),
                        EditForever.class.getName(),
                        own.toString(),
                        Integer.toString(seed),
                        Integer.toString(rest))
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .redirectOutput(own.resolve("edits.txt").toFile())
                .start();
        while (Files.size(own.resolve("edits.txt")) == 0 && process.isAlive()) {
            TimeUnit.MILLISECONDS.sleep(5);
        }
        return new Killed(own, process);
    }

    /** A program that is killed while it edits. */
    private record Killed(Path folder, Process process) {
        void end() throws Exception {
            process.destroyForcibly().waitFor();
            List<String> edits = Files.readAllLines(folder.resolve("edits.txt")).stream()
                    .filter(line -> line.matches("\\d+ \\d{13}"))
                    .toList();
            assertThat(edits).isNotEmpty();
            long last = time(edits.get(edits.size() - 1));
            int kept = newestKept();
            edits.stream()
                    .filter(edit -> number(edit) > kept)
                    .findFirst()
                    .ifPresent(firstLost -> assertThat(last - time(firstLost))
                            .as("%s kept %d", folder, kept)
                            .isLessThanOrEqualTo(MAY_BE_LOST_MILLIS));
        }

        private static long time(String edit) {
            return Long.parseLong(edit.substring(edit.indexOf(' ') + 1));
        }

        private static int number(String edit) {
            return Integer.parseInt(edit.substring(0, edit.indexOf(' ')));
        }

        private int newestKept() throws IOException {
            Path file = folder.resolve("clock" + DesignFile.ENDING);
            Design saved = DesignFile.open(file).accepted().orElseThrow();
            List<Design> left = new RecoveryFolder(folder.resolve("recovery"))
                    .leftBehind().stream().map(work -> work.unsaved().design()).toList();
            try (Stream<Path> kept = Files.list(folder.resolve("recovery"))) {
                assertThat(kept.filter(path -> path.toString().endsWith(DesignFile.ENDING)))
                        .as("every file kept opens")
                        .hasSameSizeAs(left);
            }
            return Stream.concat(Stream.of(saved), left.stream())
                    .mapToInt(Killed::number)
                    .max()
                    .orElseThrow();
        }

        private static int number(Design design) {
            String digits = design.name().replaceAll("\\D", "");
            return digits.isEmpty() ? 0 : Integer.parseInt(digits);
        }
    }
}
