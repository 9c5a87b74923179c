// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.search;

import com.fasterxml.jackson.databind.node.ObjectNode;
import com.sun.management.OperatingSystemMXBean;
import drumfall.solver.brief.Brief;
import drumfall.solver.brief.BriefReader;
import drumfall.solver.brief.BriefWriter;
import drumfall.solver.brief.BundledBriefs;
import drumfall.solver.rating.Blame;
import drumfall.solver.rating.PlaneLimits;
import drumfall.solver.rating.TrainRater;
import drumfall.solver.rating.placing.TrainPlacing;
import drumfall.solver.train.Train;
import java.lang.management.ManagementFactory;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.BooleanSupplier;
import java.util.function.Function;

/**
 * Times the search in frames narrower or lower than the demonstration's; a main to run by hand, never asserted. Processor
 * time is printed beside elapsed time, since it does not depend on what else the machine does.
 *
 * <p>Run from the root: {@code mvn -q -Pbench -pl solver test-compile exec:java -Dbench=drumfall.solver.search.FrameBench}.
 */
public final class FrameBench {
    private static final long LIMIT_SECONDS = 300;
    private static final List<String> USUAL =
            List.of("width-5", "width-10", "width-15", "height-5", "height-10", "height-15");

    private FrameBench() {}

    /**
     * Runs all measurements.
     *
     * @param arguments fields of the frame with percents to narrow them by, for example {@code height-40}; width and height
     *     by 5, 10 and 15 percent if there are none
     */
    public static void main(String[] arguments) {
        System.out.println("frame              elapsed s  processor s  placing s    asked  refused  options  outcome");
        time("demo", BundledBriefs.demo());
        List<String> frames = arguments.length > 0 ? List.of(arguments) : USUAL;
        for (String frame : frames) {
            String[] narrower = frame.split("-", -1);
            time(frame + " %", narrowed(narrower[0], Integer.parseInt(narrower[1])));
        }
    }

    private static Brief narrowed(String field, int percent) {
        ObjectNode tree = BriefWriter.tree(BundledBriefs.demo());
        ObjectNode frame = (ObjectNode) tree.get("frame");
        double full = Double.parseDouble(frame.get(field).asText().replace(" mm", ""));
        frame.put(field, String.format(Locale.ROOT, "%.1f mm", full * (100 - percent) / 100));
        return BriefReader.read(tree).accepted().orElseThrow();
    }

    private static void time(String name, Brief brief) {
        long start = System.nanoTime();
        long processor = processorTime();
        BooleanSupplier late = () -> System.nanoTime() - start > LIMIT_SECONDS * 1_000_000_000L;
        Counted placeable = new Counted(new TrainPlacing(new TrainRater(brief)), late);
        TrainRater plain = new TrainRater(brief);
        SearchOutcome outcome = new TrainSearch(
                        plain.within(PlaneLimits.of(plain, late)),
                        SearchListener.SILENT,
                        late,
                        SearchSettings.USUAL,
                        placeable)
                .found();
        System.out.printf(
                Locale.ROOT,
                "%-18s %9.1f %12.1f %10.1f %8d %8d %8d  %s%n",
                name,
                (System.nanoTime() - start) / 1e9,
                (processorTime() - processor) / 1e9,
                placeable.nanoseconds.get() / 1e9,
                placeable.asked.get(),
                placeable.refused.get(),
                outcome.front().size(),
                outcome.heading());
    }

    private static long processorTime() {
        return ((OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean()).getProcessCpuTime();
    }

    /** Asks for places, and counts. */
    private record Counted(
            TrainPlacing placing,
            BooleanSupplier late,
            AtomicInteger asked,
            AtomicInteger refused,
            AtomicLong nanoseconds)
            implements Function<Train, Optional<Blame>> {
        Counted(TrainPlacing placing, BooleanSupplier late) {
            this(placing, late, new AtomicInteger(), new AtomicInteger(), new AtomicLong());
        }

        @Override
        public Optional<Blame> apply(Train train) {
            long start = System.nanoTime();
            Optional<Blame> blame = placing.blame(train, late);
            nanoseconds.addAndGet(System.nanoTime() - start);
            asked.incrementAndGet();
            if (blame.isPresent()) {
                refused.incrementAndGet();
            }
            return blame;
        }
    }
}
