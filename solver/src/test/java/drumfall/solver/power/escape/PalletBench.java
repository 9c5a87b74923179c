// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.power.escape;

import java.util.Locale;

/**
 * Prints how far drawn pallets and a wheel with inertia are from the wedge of the balance.
 *
 * <p>{@code mvn -q -Pbench -pl solver test-compile exec:java -Dbench=drumfall.solver.power.escape.PalletBench}
 */
public final class PalletBench {
    private static final double QUALITY = 400;
    private static final double WEIGHT_MOMENT = 0.4;
    private static final double LENGTH = 0.25;

    private PalletBench() {}

    /** Runs the bench. */
    public static void main(String[] arguments) {
        for (int teeth : new int[] {15, 24, 30}) {
            Deadbeat escapement = new DeadbeatForm(
                            0.026,
                            Math.toRadians(95),
                            Math.toRadians(4),
                            Math.toRadians(1),
                            Math.toRadians(1.5),
                            0.2,
                            2e-6,
                            0)
                    .with(teeth);
            PalletDrawing drawing = new PalletDrawing(escapement);
            System.out.printf(
                    Locale.ROOT,
                    "%d teeth: share passed on, wedge %.4f, drawn entry %.4f, exit %.4f%n",
                    teeth,
                    escapement.impulseEfficiency(),
                    new ImpulseTrace(drawing.entry()).efficiency(0.2),
                    new ImpulseTrace(drawing.exit()).efficiency(0.2));
            for (double wheelInertia : new double[] {1e-10, 1e-8, 1e-7, 3e-7}) {
                arcs(escapement, wheelInertia);
            }
        }
    }

    private static void arcs(Deadbeat escapement, double wheelInertia) {
        DeadbeatBalance balance = new DeadbeatBalance(escapement, WEIGHT_MOMENT, QUALITY);
        double arc = balance.leastArc() + 0.02;
        double torque = balance.torqueFor(arc);
        double drawn =
                new DrawnSwing(escapement, WEIGHT_MOMENT, LENGTH, QUALITY, torque, wheelInertia).settled(arc, 600);
        System.out.printf(
                Locale.ROOT,
                "  wheel %.0e kg m²: arc by the balance without inertia %.3f°, stepped on drawn pallets %.3f° (%+.2f %%)%n",
                wheelInertia,
                Math.toDegrees(arc),
                Math.toDegrees(drawn),
                100 * (drawn / arc - 1));
    }
}
