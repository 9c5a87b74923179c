// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.halves;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class DominanceTreeTest {
    private static final int ROUNDS = "full".equals(System.getProperty("drumfall.samples")) ? 2_000 : 100;

    // Against a scan of everything added. Few different coordinates make many ties; some are infinite.
    @Test
    void the_tree_covers_what_a_plain_scan_covers() {
        Random random = new Random(1);
        int covered = 0;
        int asked = 0;
        for (int round = 0; round < ROUNDS; round++) {
            int dimensions = 1 + random.nextInt(7);
            int grades = 2 + random.nextInt(12);
            DominanceTree<Integer> tree = new DominanceTree<>(dimensions);
            List<double[]> scan = new ArrayList<>();
            for (int i = 0; i < 150; i++) {
                double[] point = point(random, dimensions, grades);
                int limit = random.nextInt(160);
                boolean byTree = tree.covers(point, (at, number, wanted) -> number < limit);
                boolean byScan = scan.stream().limit(limit).anyMatch(entry -> nowhereLarger(entry, point));
                assertThat(byTree).isEqualTo(byScan);
                covered += byTree ? 1 : 0;
                asked++;
                tree.add(point, i);
                scan.add(point);
                assertThat(tree.size()).isEqualTo(scan.size());
            }
        }
        assertThat(covered).isBetween(asked / 20, asked * 19 / 20);
    }

    @Test
    void an_empty_tree_covers_nothing() {
        assertThat(new DominanceTree<String>(2).covers(new double[] {9, 9}, (at, entry, asked) -> true))
                .isFalse();
    }

    private static boolean nowhereLarger(double[] entry, double[] asked) {
        for (int i = 0; i < asked.length; i++) {
            if (entry[i] > asked[i]) {
                return false;
            }
        }
        return true;
    }

    private static double[] point(Random random, int dimensions, int grades) {
        double[] point = new double[dimensions];
        for (int i = 0; i < dimensions; i++) {
            int grade = random.nextInt(grades);
            point[i] = grade == 11 ? Double.POSITIVE_INFINITY : grade;
        }
        return point;
    }
}
