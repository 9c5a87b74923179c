// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.plugin.solids;

import drumfall.plugin.api.ExportProgress;
import drumfall.plugin.api.Handover;
import drumfall.plugin.api.trial.TrialFolder;
import drumfall.plugin.api.trial.TrialHandover;
import drumfall.solver.making.MovementPart;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.List;

/** Times the export of a whole movement, parts and teeth included, in a fresh program and once it is warm. */
final class ExportBench {
    private static final int RUNS = 5;

    private ExportBench() {}

    /**
     * Prints a line for each run.
     *
     * @param arguments none
     */
    public static void main(String[] arguments) throws IOException {
        Handover handover = TrialHandover.eightDays();
        ThreadMXBean threads = ManagementFactory.getThreadMXBean();
        for (int run = 0; run < RUNS; run++) {
            long busy = threads.getCurrentThreadCpuTime();
            long start = System.nanoTime();
            List<MovementPart> parts = Movements.eightDays();
            long made = System.nanoTime();
            TrialFolder folder = new TrialFolder();
            new SolidsExporter().write(handover, parts, folder, ExportProgress.unwatched());
            long written = System.nanoTime();
            int facets = folder.names().stream()
                    .filter(name -> name.endsWith(".stl"))
                    .mapToInt(name -> (folder.bytes(name).length - 84) / 50)
                    .sum();
            System.out.printf(
                    "%d parts, %d facets: made in %d ms, written in %d ms, %d ms of processor, 3MF %d KiB, heap in use %d MiB%n",
                    parts.size(),
                    facets,
                    (made - start) / 1_000_000,
                    (written - made) / 1_000_000,
                    (threads.getCurrentThreadCpuTime() - busy) / 1_000_000,
                    folder.bytes("movement.3mf").length / 1024,
                    (Runtime.getRuntime().totalMemory() - Runtime.getRuntime().freeMemory()) >> 20);
        }
    }
}
