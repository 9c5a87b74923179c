package drumfall.solver.bench.peers;

import drumfall.solver.brief.Brief;
import drumfall.solver.halves.HalfJoin;
import drumfall.solver.halves.HalfTables;
import drumfall.solver.halves.LowerHalf;
import drumfall.solver.halves.LowerHalves;
import drumfall.solver.halves.UpperHalf;
import drumfall.solver.halves.UpperHalves;
import drumfall.solver.rating.Cell;
import drumfall.solver.rating.CellFront;
import drumfall.solver.rating.TrainRater;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * The listed halves of one shape of train, and every pair of them that meets the brief with the cells of its objectives.
 *
 * <p>A weight is a walk through curves and no constraint that a general solver could state; all get the finished cells.
 *
 * @param uppers the upper halves
 * @param lowers the lower halves
 * @param rows index of the upper half, of the lower half, then the cells
 */
record PairTable(TrainRater rater, List<UpperHalf> uppers, List<LowerHalf> lowers, List<int[]> rows) {
    /** Columns before the cells. */
    static final int CELLS = 2;

    /**
     * Lists halves and pairs.
     *
     * @param brief the brief
     * @param above meshes above the centre
     * @param below meshes below it
     */
    static PairTable of(Brief brief, int above, int below) {
        TrainRater rater = new TrainRater(brief);
        HalfTables tables = new HalfTables(rater);
        CellFront nothing = new CellFront(rater.objectives().asked());
        List<LowerHalf> sample = LowerHalves.sample(tables, below, 7, nothing, () -> false);
        List<LowerHalf> lowers = LowerHalves.thinned(tables, below, sample, nothing, () -> false);
        List<UpperHalf> uppers =
                lowers.isEmpty() ? List.of() : UpperHalves.thinned(tables, above, lowers, nothing, () -> false);
        return new PairTable(rater, uppers, lowers, rows(rater, uppers, lowers));
    }

    /** Every pair of halves that meets the brief, with the cells of its objectives. */
    private static List<int[]> rows(TrainRater rater, List<UpperHalf> uppers, List<LowerHalf> lowers) {
        List<int[]> rows = new ArrayList<>();
        HalfJoin join = new HalfJoin(rater);
        for (int i = 0; i < uppers.size(); i++) {
            for (int j = 0; j < lowers.size(); j++) {
                int[] row = row(rater, join, uppers.get(i), lowers.get(j));
                if (row.length > 0) {
                    row[0] = i;
                    row[1] = j;
                    rows.add(row);
                }
            }
        }
        return rows;
    }

    private static int[] row(TrainRater rater, HalfJoin join, UpperHalf upper, LowerHalf lower) {
        double weight = join.recommendedWeight(upper, lower);
        if (!join.clears(upper, lower) || !join.weightKept(upper, weight) || !join.teethBear(upper, lower, weight)) {
            return new int[0];
        }
        double[] values = new double[rater.objectives().asked().size()];
        join.values(upper, lower, weight, values);
        List<Long> cell = Cell.of(rater.objectives().asked(), values).numbers();
        int[] row = new int[CELLS + cell.size()];
        for (int k = 0; k < cell.size(); k++) {
            row[CELLS + k] = Math.toIntExact(cell.get(k));
        }
        return row;
    }

    /** Number of objectives. */
    int objectives() {
        return rater.objectives().asked().size();
    }

    /** The front by working out every pair of halves and going through them. */
    Set<List<Integer>> enumeratedFromHalves() {
        return new PairTable(rater, uppers, lowers, rows(rater, uppers, lowers)).enumerated();
    }

    /** The front by going through every finished row. */
    Set<List<Integer>> enumerated() {
        List<int[]> front = new ArrayList<>();
        for (int[] row : rows) {
            if (front.stream().noneMatch(other -> nowhereWorse(other, row))) {
                front.removeIf(other -> nowhereWorse(row, other));
                front.add(row);
            }
        }
        Set<List<Integer>> cells = new HashSet<>();
        front.forEach(row -> cells.add(cells(row)));
        return cells;
    }

    static List<Integer> cells(int[] row) {
        List<Integer> cells = new ArrayList<>();
        for (int k = CELLS; k < row.length; k++) {
            cells.add(row[k]);
        }
        return cells;
    }

    private static boolean nowhereWorse(int[] first, int[] second) {
        for (int k = CELLS; k < first.length; k++) {
            if (first[k] > second[k]) {
                return false;
            }
        }
        return true;
    }
}
