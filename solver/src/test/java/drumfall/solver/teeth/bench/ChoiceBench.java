// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.teeth.bench;

import drumfall.solver.teeth.choice.ChosenMesh;
import drumfall.solver.teeth.choice.FormChooser;
import drumfall.solver.teeth.choice.MeshNeed;
import drumfall.solver.teeth.choice.ToothFamily;
import drumfall.solver.teeth.contact.ContactBand;
import drumfall.solver.teeth.contact.PathCache;
import java.util.Optional;

/** Measures how long a choice of form takes and what it gains; a main to run by hand, never asserted. */
public final class ChoiceBench {
    private static final int ROUNDS = 3;

    private ChoiceBench() {}

    /** Prints milliseconds a choice and the worst torque of what was chosen. */
    public static void main(String[] arguments) {
        int[][] pairs = {{60, 8}, {64, 8}, {96, 8}, {72, 10}, {60, 12}, {12, 36}};
        for (int round = 0; round < ROUNDS; round++) {
            for (int[] pair : pairs) {
                for (ToothFamily family : ToothFamily.values()) {
                    report(pair, family, round == ROUNDS - 1);
                }
            }
        }
    }

    private static void report(int[] pair, ToothFamily family, boolean print) {
        ContactBand.Errors band = new ContactBand.Errors(-0.05, 0.08, 0.08, 0.15);
        MeshNeed need = new MeshNeed(pair[0], pair[1], 0.3, band, 1.1, 0.21, 0.1);
        long start = System.nanoTime();
        Optional<ChosenMesh> chosen = FormChooser.free(new PathCache(64)).choose(need, family);
        double millis = (System.nanoTime() - start) / 1e6;
        if (print) {
            String result = chosen.map(c -> String.format("worst %.4f  %s", c.worstTorque(), c.pair()))
                    .orElse("none");
            System.out.printf("%3d/%-3d %-10s %7.1f ms  %s%n", pair[0], pair[1], family, millis, result);
        }
    }
}
