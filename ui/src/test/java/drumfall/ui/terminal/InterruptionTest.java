// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.terminal;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;

class InterruptionTest {
    /** Windows ends a process without running its shutdown hooks when another process asks for it. */
    @Test
    @DisabledOnOs(OS.WINDOWS)
    void an_interrupted_process_says_its_last_words_and_ends_with_its_own_code() throws Exception {
        Process process = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-cp",
                        System.getProperty("java.class.path"),
                        Waiting.class.getName())
                .redirectErrorStream(true)
                .start();
        try (BufferedReader out =
                new BufferedReader(new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8))) {
            assertThat(out.readLine()).isEqualTo("waiting");
            process.toHandle().destroy();
            assertThat(out.readLine()).isEqualTo("last words");
            assertThat(process.waitFor()).isEqualTo(ExitCode.STOPPED.number());
        } finally {
            process.destroyForcibly();
        }
    }

    @Test
    void an_uninterrupted_command_is_not_asked_to_end() {
        try (Interruption interruption = Interruption.watched()) {
            assertThat(interruption.asked()).isFalse();
        }
    }

    /** A process that waits for its interrupt. */
    static final class Waiting {
        private Waiting() {}

        public static void main(String[] arguments) throws InterruptedException {
            try (Interruption interruption = Interruption.watched()) {
                System.out.println("waiting");
                while (!interruption.asked()) {
                    Thread.sleep(5);
                }
                System.out.println("last words");
                interruption.ended(ExitCode.STOPPED.number());
            }
        }
    }
}
