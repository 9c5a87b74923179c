package drumfall.solver.bench.peers;

import drumfall.solver.brief.Brief;
import drumfall.solver.brief.BriefChange;
import drumfall.solver.brief.BundledBriefs;
import drumfall.solver.halves.LowerHalf;
import drumfall.solver.halves.PairFront;
import drumfall.solver.halves.UpperHalf;
import drumfall.solver.halves.WantedPairs;
import drumfall.solver.rating.CellFront;
import drumfall.solver.rules.TrainRules;
import java.io.IOException;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.function.Supplier;

/**
 * Our join beside an enumeration of all pairs, CP-SAT and Gecode, on the same listed halves; prints seconds, how many times
 * ours they are, and whether the fronts are equal.
 *
 * <p>Run from the root: {@code mvn -q -Ppeers -pl solver test-compile exec:java}. Listing halves is ours in every line and
 * timed by itself. Ours, and the enumeration of pairs, begin with the halves and work out the weights of what they look at.
 * CP-SAT, Gecode and the enumeration of rows cannot, and are given the finished cells of every pair that meets the brief,
 * which is counted for none of them. The lines of Java are the quickest of a few runs, since a first one is compiled while it
 * runs.
 */
public final class PeerBench {
    private static final double LIMIT_SECONDS = 120;
    private static final int RUNS = 5;

    private PeerBench() {}

    /**
     * Runs all measurements.
     *
     * @param arguments none
     */
    public static void main(String[] arguments) throws Exception {
        boolean gecode = GecodePeer.installed();
        if (!gecode) {
            System.out.println("MiniZinc with Gecode is absent: its lines are left out.");
        }
        for (int most : new int[] {40, 50, 60, 70, 90}) {
            Brief brief = BriefChange.of(BundledBriefs.demo(), "/teeth/wheelTeeth/to", most)
                    .accepted()
                    .orElseThrow();
            for (int above : List.of(1, 2)) {
                measure("demo, wheels to " + most, brief, above, 3, gecode);
            }
        }
    }

    private static void measure(String name, Brief brief, int above, int below, boolean gecode) throws Exception {
        long start = System.nanoTime();
        PairTable table = PairTable.of(brief, above, below);
        if (table.rows().isEmpty()) {
            return;
        }
        System.out.printf(
                "%s, %d above: %d upper and %d lower halves, %d pairs meet the brief, tabulated in %.2f s%n",
                name,
                above,
                table.uppers().size(),
                table.lowers().size(),
                table.rows().size(),
                seconds(start));
        Set<List<Integer>> ours = ours(table);
        double our = quickest(() -> ours(table));
        line("ours", our, our, ours, Optional.of(ours));
        line("enumeration of pairs", quickest(table::enumeratedFromHalves), our, ours, Optional.of(table.enumeratedFromHalves()));
        line("enumeration of rows", quickest(table::enumerated), our, ours, Optional.of(table.enumerated()));
        timed("CP-SAT", our, ours, () -> CpSatPeer.front(table, LIMIT_SECONDS));
        if (gecode) {
            timed("Gecode", our, ours, () -> gecode(table));
        }
    }

    private static Optional<Set<List<Integer>>> gecode(PairTable table) throws IOException, InterruptedException {
        return GecodePeer.front(table, LIMIT_SECONDS);
    }

    private static void timed(
            String name, double our, Set<List<Integer>> ours, Callable<Optional<Set<List<Integer>>>> peer)
            throws Exception {
        long start = System.nanoTime();
        Optional<Set<List<Integer>>> front = peer.call();
        line(name, seconds(start), our, ours, front);
    }

    private static void line(
            String name, double seconds, double our, Set<List<Integer>> ours, Optional<Set<List<Integer>>> front) {
        String verdict = front.map(found -> found.equals(ours) ? "same front" : "ANOTHER FRONT " + found.size())
                .orElse("out of time");
        System.out.printf("  %-20s %9.3f s  x %8.1f  %d points, %s%n", name, seconds, seconds / our, ours.size(), verdict);
    }

    private static double quickest(Supplier<Set<List<Integer>>> front) {
        double quickest = Double.POSITIVE_INFINITY;
        for (int i = 0; i < RUNS; i++) {
            long start = System.nanoTime();
            front.get();
            quickest = Math.min(quickest, seconds(start));
        }
        return quickest;
    }

    /** What the search does with listed halves, without asking whether arbors have a place. */
    private static Set<List<Integer>> ours(PairTable table) {
        CellFront front = new CellFront(table.rater().objectives().asked());
        PairFront best = PairFront.of(table.rater(), table.uppers(), table.lowers(), front, () -> false);
        decide(table, best.uppers(), best.lowers(), front);
        WantedPairs wanted = WantedPairs.of(table.rater(), table.uppers(), table.lowers(), front, () -> false);
        decide(table, wanted.uppers(), wanted.lowers(), front);
        Set<List<Integer>> cells = new HashSet<>();
        front.ratings()
                .forEach(rating -> cells.add(rating.cell().numbers().stream()
                        .map(Math::toIntExact)
                        .toList()));
        return cells;
    }

    private static void decide(PairTable table, List<UpperHalf> uppers, List<LowerHalf> lowers, CellFront front) {
        if (!uppers.isEmpty() && !lowers.isEmpty()) {
            new TrainRules(table.rater(), uppers, lowers, front, train -> true)
                    .search(() -> false, rating -> {}, done -> {});
        }
    }

    private static double seconds(long start) {
        return (System.nanoTime() - start) / 1e9;
    }
}
