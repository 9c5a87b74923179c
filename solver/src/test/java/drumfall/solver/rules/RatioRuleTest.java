// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.rules;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigInteger;
import java.util.Arrays;
import java.util.HashSet;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import org.chocosolver.solver.Model;
import org.chocosolver.solver.Solver;
import org.chocosolver.solver.constraints.Constraint;
import org.chocosolver.solver.search.strategy.Search;
import org.chocosolver.solver.variables.IntVar;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RatioRuleTest {
    private static final int ROUNDS = "full".equals(System.getProperty("drumfall.samples")) ? 5_000 : 300;

    // Every assignment of small domains, the ratio compared in whole numbers. The bounds are no ratio of the counts: a
    // tenth
    // of a thousandth beside one, far wider than the rule's margin.
    @Test
    void the_rule_keeps_exactly_the_ratios_between_its_bounds() {
        Random random = new Random(1);
        int some = 0;
        for (int round = 0; round < ROUNDS; round++) {
            int overs = 1 + random.nextInt(2);
            int unders = 1 + random.nextInt(2);
            int[][] ranges = new int[overs + unders][];
            for (int i = 0; i < ranges.length; i++) {
                int from = 1 + random.nextInt(60);
                ranges[i] = new int[] {from, from + random.nextInt(5)};
            }
            double from = ratio(ranges, overs, random) * 1.0001;
            double to = from * (1 + random.nextDouble());
            Set<String> expected = bruteForce(ranges, overs, from, to);

            assertThat(solve(ranges, overs, from, to)).isEqualTo(expected);
            some += expected.isEmpty() ? 0 : 1;
        }
        assertThat(some).isGreaterThan(ROUNDS / 2);
    }

    // Choco's integers end at 21,474,836 (IntVar.MAX_INT_BOUND). Three wheels of 300 make 27 million, an escape wheel
    // of 240
    // more makes 6.5 thousand million; and the linear form of Sandgren's gear train, 60 · 60 · 6931, lies past it too
    // (E. Sandgren, Journal of Mechanical Design 112, 1990, pp. 223-229).
    @ParameterizedTest
    @CsvSource({"300, 300, 300, 240, 6480000000", "60, 60, 6931, 1, 24951600", "276, 278, 280, 1, 21483840"})
    void products_past_the_bound_of_chocos_integers_are_kept_and_told_apart(int a, int b, int c, int d, long product) {
        assertThat(product).isGreaterThan(IntVar.MAX_INT_BOUND);
        int[][] ranges = {{a - 1, a}, {b - 1, b}, {c - 1, c}, {Math.max(1, d - 1), d}, {1, 2}};

        assertThat(solve(ranges, 4, product * (1 - 1e-9), product * (1 + 1e-9)))
                .containsExactly("[%d, %d, %d, %d, 1]".formatted(a, b, c, d));
        assertThat(solve(ranges, 4, product * (1 + 1e-9), Double.POSITIVE_INFINITY))
                .isEmpty();
    }

    // A bound that is exactly a ratio of the counts: the rule must not remove it, whatever rounding does to the
    // products.
    @Test
    void a_ratio_on_the_bound_itself_is_kept() {
        Random random = new Random(2);
        for (int round = 0; round < ROUNDS; round++) {
            int[][] ranges = new int[5][];
            for (int i = 0; i < ranges.length; i++) {
                int count = 5 + random.nextInt(296);
                ranges[i] = new int[] {count, count};
            }
            double ratio = (double) ranges[0][0] * ranges[1][0] * ranges[2][0] / ((double) ranges[3][0] * ranges[4][0]);

            assertThat(solve(ranges, 3, ratio, ratio)).hasSize(1);
        }
    }

    @Test
    void an_open_side_bounds_nothing() {
        int[][] ranges = {{1, 3}, {1, 3}};

        assertThat(solve(ranges, 1, 0, Double.POSITIVE_INFINITY)).hasSize(9);
    }

    private static Set<String> solve(int[][] ranges, int overs, double from, double to) {
        Model model = new Model();
        IntVar[] vars = new IntVar[ranges.length];
        for (int i = 0; i < vars.length; i++) {
            vars[i] = model.intVar("v" + i, ranges[i][0], ranges[i][1], false);
        }
        IntVar[] over = Arrays.copyOfRange(vars, 0, overs);
        IntVar[] under = Arrays.copyOfRange(vars, overs, vars.length);
        new Constraint("ratio", new RatioRule(over, under, from, to)).post();
        Solver solver = model.getSolver();
        solver.setSearch(Search.inputOrderLBSearch(vars));
        Set<String> found = new HashSet<>();
        while (solver.solve()) {
            found.add(Arrays.toString(
                    Arrays.stream(vars).mapToInt(IntVar::getValue).toArray()));
        }
        return found;
    }

    private static Set<String> bruteForce(int[][] ranges, int overs, double from, double to) {
        Set<String> found = new TreeSet<>();
        extend(ranges, overs, from, to, new int[ranges.length], 0, found);
        return found;
    }

    private static void extend(
            int[][] ranges, int overs, double from, double to, int[] values, int next, Set<String> found) {
        if (next == values.length) {
            BigInteger over = BigInteger.ONE;
            BigInteger under = BigInteger.ONE;
            for (int i = 0; i < values.length; i++) {
                BigInteger value = BigInteger.valueOf(values[i]);
                over = i < overs ? over.multiply(value) : over;
                under = i < overs ? under : under.multiply(value);
            }
            // Whole numbers below 2^53, divided once.
            double ratio = over.doubleValue() / under.doubleValue();
            if (ratio >= from && ratio <= to) {
                found.add(Arrays.toString(values));
            }
            return;
        }
        for (int value = ranges[next][0]; value <= ranges[next][1]; value++) {
            values[next] = value;
            extend(ranges, overs, from, to, values, next + 1, found);
        }
    }

    private static double ratio(int[][] ranges, int overs, Random random) {
        double ratio = 1;
        for (int i = 0; i < ranges.length; i++) {
            int value = ranges[i][0] + random.nextInt(ranges[i][1] - ranges[i][0] + 1);
            ratio = i < overs ? ratio * value : ratio / value;
        }
        return ratio;
    }
}
