// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.app;

import drumfall.ui.terminal.Terminal;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * Times the export of a whole movement by every exporter beside the program, cold and warm: wall and processor time, and the
 * heap in use. Prints a line a round; run it after {@code mvn package} with a brief's and a train's file.
 */
public final class ExportBench {
    private static final int ROUNDS = 4;

    private ExportBench() {}

    /**
     * Runs the measurements.
     *
     * @param arguments the files of a brief and of a train
     * @throws IOException if no folder can be made
     */
    public static void main(String[] arguments) throws IOException {
        Path folder = Files.createTempDirectory("export");
        for (int round = 1; round <= ROUNDS; round++) {
            StringWriter said = new StringWriter();
            PrintWriter to = new PrintWriter(said);
            long busy = processorTime();
            long start = System.nanoTime();
            String[] command = {
                "export", "--all", "--to", folder.resolve("round-" + round).toString(), arguments[0], arguments[1]
            };
            int code = Terminal.run(command, to, to);
            System.out.printf(
                    "round %d: exit code %d, %d ms, %d ms of processor, heap in use %d MiB of %d MiB%n",
                    round,
                    code,
                    (System.nanoTime() - start) / 1_000_000,
                    (processorTime() - busy) / 1_000_000,
                    (Runtime.getRuntime().totalMemory() - Runtime.getRuntime().freeMemory()) >> 20,
                    Runtime.getRuntime().maxMemory() >> 20);
            if (code != 0) {
                System.out.println(said);
            }
        }
    }

    private static long processorTime() {
        return ((com.sun.management.OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean())
                .getProcessCpuTime();
    }
}
