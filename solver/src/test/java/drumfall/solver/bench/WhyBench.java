// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.bench;

import com.fasterxml.jackson.databind.node.ObjectNode;
import drumfall.solver.brief.Brief;
import drumfall.solver.brief.BriefReader;
import drumfall.solver.brief.BriefWriter;
import drumfall.solver.brief.BundledBriefs;
import drumfall.solver.explain.DemandCosts;
import drumfall.solver.explain.WhyNoTrain;
import drumfall.solver.rating.Rating;
import drumfall.solver.search.SearchListener;
import drumfall.solver.search.TrainSearch;

/**
 * Times explanations of the bundled brief: with a weight limit that no train keeps, and what each demand costs its first
 * option. Prints a line for each figure: the seconds since the one before it, and the answer.
 *
 * <p>Run from the root: {@code mvn -q -Pbench -Dbench=drumfall.solver.bench.WhyBench -pl solver test-compile exec:java}.
 */
public final class WhyBench {
    private WhyBench() {}

    /**
     * Runs all measurements.
     *
     * @param arguments none
     */
    public static void main(String[] arguments) {
        Brief demo = BundledBriefs.demo();
        ObjectNode tree = BriefWriter.tree(demo);
        ((ObjectNode) tree.get("weight")).put("limit", "3.5 kg");
        why(BriefReader.read(tree).accepted().orElseThrow());
        cost(demo);
    }

    private static void why(Brief brief) {
        long start = System.nanoTime();
        Lap lap = new Lap();
        WhyNoTrain why = WhyNoTrain.of(
                brief,
                found -> System.out.printf(
                        "%8.2f  %-28s %-4s %-8s %s%n",
                        lap.seconds(), found.easing().pointer(), found.easing().way(), found.verdict(), found.value()),
                SearchListener.SILENT,
                () -> false);
        System.out.printf(
                "why: %.2f s, clashes %s complete %s%n",
                seconds(start),
                why.clashes().list().stream()
                        .map(clash -> clash.demands().size())
                        .toList(),
                why.clashes().complete());
    }

    private static void cost(Brief brief) {
        Rating first = TrainSearch.run(brief, SearchListener.SILENT, () -> false)
                .front()
                .get(0);
        long start = System.nanoTime();
        Lap lap = new Lap();
        DemandCosts.of(
                brief,
                first.train(),
                cost -> System.out.printf(
                        "%8.2f  %-28s %-4s %.6f kg %s%n",
                        lap.seconds(),
                        cost.step().easing().pointer(),
                        cost.step().easing().way(),
                        cost.gain(),
                        cost.proved() ? "" : "unproved"),
                SearchListener.SILENT,
                () -> false);
        System.out.printf("cost: %.2f s%n", seconds(start));
    }

    /** Seconds since it was last asked. */
    private static final class Lap {
        private long last = System.nanoTime();

        double seconds() {
            long now = System.nanoTime();
            double seconds = (now - last) / 1e9;
            last = now;
            return seconds;
        }
    }

    private static double seconds(long start) {
        return (System.nanoTime() - start) / 1e9;
    }
}
