// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.teeth.bench;

import drumfall.solver.brief.Brief;
import drumfall.solver.brief.BundledBriefs;
import drumfall.solver.brief.MeshPlace;
import drumfall.solver.halves.MeshChoices;
import drumfall.solver.rating.TrainRater;
import drumfall.solver.samples.Briefs;
import java.util.Locale;

/**
 * Measures how long all pairs of a brief take to be chosen and traced; a main to run by hand, never asserted.
 *
 * <p>Each round asks with a friction of its own, so that nothing is known beforehand; the last column asks again. Any
 * argument adds the slower forms.
 */
public final class TableBench {
    private static final int ROUNDS = 5;

    private TableBench() {}

    /** Prints seconds for each brief, the program cold first. */
    public static void main(String[] arguments) {
        for (int round = 0; round < ROUNDS; round++) {
            report("demo", BundledBriefs.demo(), round);
        }
        report("demo, angle chosen", Briefs.demoWith("/teeth/pressureAngle = remove"), 0);
        if (arguments.length > 0) {
            String form = "/teeth/pressureAngle = remove & /teeth/form = ";
            report("demo, lantern", Briefs.demoWith(form + "\"lantern\""), 0);
            report("demo, cycloidal", Briefs.demoWith(form + "\"cycloidal\""), 0);
        }
    }

    private static void report(String name, Brief brief, int round) {
        Brief fresh = Briefs.with(brief, "/friction/teeth/low = \"0.%d\"".formatted(150 + round));
        double first = seconds(fresh);
        double again = seconds(fresh);
        System.out.printf(Locale.ROOT, "%-20s %7.3f s  again %7.4f s%n", name, first, again);
    }

    private static double seconds(Brief brief) {
        long start = System.nanoTime();
        int choices = new MeshChoices(new TrainRater(brief))
                .at(new MeshPlace(MeshPlace.Side.BELOW, 1))
                .size();
        if (choices == 0) {
            System.out.println("no pair");
        }
        return (System.nanoTime() - start) / 1e9;
    }
}
