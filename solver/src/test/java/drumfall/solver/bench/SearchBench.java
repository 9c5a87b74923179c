// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.bench;

import com.fasterxml.jackson.databind.node.ObjectNode;
import drumfall.solver.brief.Brief;
import drumfall.solver.brief.BriefReader;
import drumfall.solver.brief.BriefWriter;
import drumfall.solver.brief.BundledBriefs;
import drumfall.solver.rating.Rating;
import drumfall.solver.search.SearchListener;
import drumfall.solver.search.SearchOutcome;
import drumfall.solver.search.TrainSearch;
import drumfall.solver.train.Mesh;
import java.util.List;
import java.util.function.BooleanSupplier;

/**
 * Times the search on the bundled briefs and on growing ones. Prints a line a run: first option, proof, options found.
 *
 * <p>Run from the root: {@code mvn -q -Pbench -pl solver test-compile exec:java}.
 */
public final class SearchBench {
    private static final long LIMIT_SECONDS = 180;
    private static final int WARMING = 6;

    private SearchBench() {}

    /**
     * Runs all measurements.
     *
     * @param arguments none
     */
    public static void main(String[] arguments) {
        System.out.println("brief                                first s   proved s  options  outcome");
        Brief demo = BundledBriefs.demo();
        time("demo, cold program", demo);
        time("demo", demo);
        time("demo, two locks", locked(demo));
        time("desk clock", BundledBriefs.load(BundledBriefs.DESK_CLOCK).orElseThrow());
        for (int most : new int[] {60, 75, 90, 105, 120}) {
            time("demo, wheels to " + most, edited(demo, "/teeth/wheelTeeth", "to", most));
        }
        modules(demo, List.of("1 mm"));
        modules(demo, List.of("1 mm", "1.25 mm", "1.5 mm", "1.75 mm", "2 mm"));
        time("demo, one mesh above", edited(demo, "/train/above", "to", 1));
        time("demo, two meshes below", edited(demo, "/train/below", "to", 2));
        time("month-runner", BundledBriefs.load(BundledBriefs.MONTH_RUNNER).orElseThrow());
        again(demo);
    }

    /** The demo once everything is compiled, as after an hour at the window: one search of a few is printed each. */
    private static void again(Brief demo) {
        Brief locked = locked(demo);
        for (int i = 0; i < WARMING; i++) {
            TrainSearch.run(demo, SearchListener.SILENT, () -> false);
            TrainSearch.run(locked, SearchListener.SILENT, () -> false);
        }
        time("demo, warm", demo);
        time("demo, warm, two locks", locked);
    }

    /** Two figures of the first option held fast. */
    private static Brief locked(Brief demo) {
        Rating first = TrainSearch.run(demo, SearchListener.SILENT, () -> false)
                .front()
                .get(0);
        ObjectNode tree = BriefWriter.tree(demo);
        var meshes = ((ObjectNode) tree.get("locks")).putArray("meshes");
        Mesh great = first.train().above().get(0);
        Mesh centre = first.train().below().get(0);
        meshes.addObject()
                .put("wheel", great.toothCount())
                .putObject("place")
                .put("side", "above")
                .put("number", 1);
        meshes.addObject()
                .put("wheel", centre.toothCount())
                .putObject("place")
                .put("side", "below")
                .put("number", 1);
        return read(tree);
    }

    private static Brief edited(Brief brief, String pointer, String field, int value) {
        ObjectNode tree = BriefWriter.tree(brief);
        ((ObjectNode) tree.at(pointer)).put(field, value);
        return read(tree);
    }

    private static void modules(Brief brief, List<String> modules) {
        ObjectNode tree = BriefWriter.tree(brief);
        var list = ((ObjectNode) tree.get("teeth")).putArray("modules");
        modules.forEach(list::add);
        time("demo, modules " + modules.size(), read(tree));
    }

    private static Brief read(ObjectNode tree) {
        return BriefReader.read(tree).accepted().orElseThrow();
    }

    private static void time(String name, Brief brief) {
        long start = System.nanoTime();
        BooleanSupplier late = () -> seconds(start) > LIMIT_SECONDS;
        double[] first = {Double.NaN};
        SearchOutcome outcome = TrainSearch.run(
                brief,
                new SearchListener() {
                    @Override
                    public void frontChanged(List<Rating> front) {
                        first[0] = Double.isNaN(first[0]) ? seconds(start) : first[0];
                    }
                },
                late);
        System.out.printf(
                "%-36s %7.2f %10.2f %8d  %s%n",
                name, first[0], seconds(start), outcome.front().size(), outcome.heading());
    }

    private static double seconds(long start) {
        return (System.nanoTime() - start) / 1e9;
    }
}
