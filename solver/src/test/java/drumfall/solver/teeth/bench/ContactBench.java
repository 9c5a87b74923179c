// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.teeth.bench;

import drumfall.solver.teeth.contact.ContactPath;
import drumfall.solver.teeth.contact.MeshConditions;
import drumfall.solver.teeth.contact.MeshTracer;
import drumfall.solver.teeth.contact.Sampling;
import drumfall.solver.teeth.form.BasicRack;
import drumfall.solver.teeth.form.CycloidalPair;
import drumfall.solver.teeth.form.InvolutePair;
import drumfall.solver.teeth.form.LanternPair;
import drumfall.solver.teeth.form.MeshPair;
import java.util.LinkedHashMap;
import java.util.Map;

/** Measures how long one mesh takes; a main to run by hand, never asserted. */
public final class ContactBench {
    private static final int WARM_UP = 400;
    private static final int RUNS = 400;

    private ContactBench() {}

    /** Prints microseconds a pair for both samplings and each form. */
    public static void main(String[] arguments) {
        Map<String, MeshPair> pairs = new LinkedHashMap<>();
        pairs.put(
                "involute 60/8",
                InvolutePair.of(BasicRack.ISO_53_A, 60, 8, -0.53, 0.53).mesh());
        pairs.put(
                "involute 120/8",
                InvolutePair.of(BasicRack.ISO_53_A, 120, 8, -0.53, 0.53).mesh());
        pairs.put("cycloidal 60/8", CycloidalPair.customary(60, 8).wheelDriving());
        pairs.put("cycloidal 8/60", CycloidalPair.customary(60, 8).pinionDriving());
        pairs.put("lantern 60/8", LanternPair.of(60, 8, 1.2, 1.05, 0.1).mesh());
        pairs.forEach((name, pair) -> {
            for (Sampling sampling : new Sampling[] {Sampling.SWIFT, Sampling.EXACT}) {
                run(pair, sampling, WARM_UP);
                double micros = run(pair, sampling, RUNS);
                String kind = sampling.equals(Sampling.SWIFT) ? "swift" : "exact";
                System.out.printf("%-16s %s %8.0f microseconds%n", name, kind, micros);
            }
            friction(pair, WARM_UP);
            System.out.printf("%-16s friction alone %8.0f microseconds%n", name, friction(pair, RUNS));
        });
    }

    /** What a friction slider costs: the path is kept, only the forces turn. */
    private static double friction(MeshPair pair, int runs) {
        ContactPath path = MeshTracer.trace(pair, MeshConditions.NOMINAL, Sampling.EXACT);
        long start = System.nanoTime();
        double sum = 0;
        for (int i = 0; i < runs; i++) {
            sum += path.withFriction(i * 1e-4).mean();
        }
        if (Double.isNaN(sum)) {
            throw new IllegalStateException("The sum (" + sum + ") must be a number. Maybe look at the path.");
        }
        return (System.nanoTime() - start) / 1e3 / runs;
    }

    private static double run(MeshPair pair, Sampling sampling, int runs) {
        long start = System.nanoTime();
        double sum = 0;
        for (int i = 0; i < runs; i++) {
            // A different centre error each time, so that nothing can be kept.
            sum += MeshTracer.trace(pair, MeshConditions.centreOff(i * 1e-5), sampling)
                    .withFriction(0.2)
                    .worst();
        }
        if (Double.isNaN(sum)) {
            throw new IllegalStateException("The sum (" + sum + ") must be a number. Maybe look at the tracer.");
        }
        return (System.nanoTime() - start) / 1e3 / runs;
    }
}
