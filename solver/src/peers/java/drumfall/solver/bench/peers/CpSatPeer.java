package drumfall.solver.bench.peers;

import com.google.ortools.Loader;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.CpSolverStatus;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.Literal;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** CP-SAT, point by point: the least sum of cells, then one that beats every point so far somewhere, until none is left. */
final class CpSatPeer {
    private CpSatPeer() {}

    /**
     * The front, unless the time is over.
     *
     * @param table the pairs
     * @param seconds the time, s
     */
    static Optional<Set<List<Integer>>> front(PairTable table, double seconds) {
        Loader.loadNativeLibraries();
        long start = System.nanoTime();
        CpModel model = new CpModel();
        IntVar[] cells = variables(table, model);
        model.minimize(LinearExpr.sum(cells));
        Set<List<Integer>> front = new HashSet<>();
        while (true) {
            CpSolver solver = new CpSolver();
            solver.getParameters().setNumWorkers(2);
            solver.getParameters().setMaxTimeInSeconds(Math.max(0.01, seconds - (System.nanoTime() - start) / 1e9));
            CpSolverStatus status = solver.solve(model);
            if (status == CpSolverStatus.INFEASIBLE) {
                return Optional.of(front);
            }
            if (status != CpSolverStatus.OPTIMAL) {
                return Optional.empty();
            }
            List<Integer> point = new ArrayList<>();
            for (IntVar cell : cells) {
                point.add(Math.toIntExact(solver.value(cell)));
            }
            front.add(point);
            beatSomewhere(model, cells, point);
        }
    }

    private static IntVar[] variables(PairTable table, CpModel model) {
        List<IntVar> columns = new ArrayList<>();
        columns.add(model.newIntVar(0, table.uppers().size() - 1L, "upper"));
        columns.add(model.newIntVar(0, table.lowers().size() - 1L, "lower"));
        for (int k = 0; k < table.objectives(); k++) {
            columns.add(model.newIntVar(0, Integer.MAX_VALUE / 8, "cell" + k));
        }
        model.addAllowedAssignments(columns.toArray(IntVar[]::new))
                .addTuples(table.rows().toArray(int[][]::new));
        return columns.subList(PairTable.CELLS, columns.size()).toArray(IntVar[]::new);
    }

    private static void beatSomewhere(CpModel model, IntVar[] cells, List<Integer> point) {
        Literal[] better = new Literal[cells.length];
        for (int k = 0; k < cells.length; k++) {
            better[k] = model.newBoolVar("better");
            model.addLessOrEqual(cells[k], point.get(k) - 1L).onlyEnforceIf(better[k]);
        }
        model.addBoolOr(better);
    }
}
