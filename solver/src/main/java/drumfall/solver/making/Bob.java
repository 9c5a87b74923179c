// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.making;

import drumfall.solver.brief.Brief;
import drumfall.solver.making.part.BobShell;
import drumfall.solver.making.part.PrintSizes;
import java.util.Locale;

/**
 * A bob of a brief's mass: a printed shell, as small as holds enough shot, and the shot that makes up the mass.
 *
 * @param shell its two halves
 * @param printed mass of both halves, kg
 * @param shot mass of the shot, kg, not negative
 * @param shotDensity bulk density of the shot, kg/m&sup3;
 */
public record Bob(BobShell shell, double printed, double shot, double shotDensity) {
    /** Diameters are tried half a millimetre apart. */
    private static final double STEP = 5e-4;

    /** Volume of the shot, cubic metres. */
    public double shotVolume() {
        return shot / shotDensity;
    }

    /** Mass of the whole, kg. */
    public double mass() {
        return printed + shot;
    }

    /**
     * The bob of a brief.
     *
     * @param brief the brief
     * @param sizes what it does not hold
     * @throws IllegalArgumentException if the smallest shell weighs more than the brief's bob, or one as wide as the
     *     printer's bed holds less
     */
    public static Bob of(Brief brief, MakingSizes sizes) {
        return new Sizing(brief, sizes).bob();
    }

    private record Sizing(Brief brief, MakingSizes sizes) {
        private double asked() {
            return brief.pendulum().bobMass().si();
        }

        private PrintSizes print() {
            return new PrintSizes(
                    brief.printer().nozzle().si(), brief.printer().layer().si(), sizes.fit());
        }

        /** The shell of a diameter, in proportion and whole layers thick. */
        private BobShell shell(double diameter) {
            MakingSizes.Pendulum pendulum = sizes.pendulum();
            double thickness = Math.max(
                    pendulum.bobProportion() * diameter / 2,
                    BobShell.leastThickness(pendulum.rod(), pendulum.bobWall(), print()));
            double layers = Math.ceil(thickness / print().layer() - 1e-9);
            return new BobShell(diameter, layers * print().layer(), pendulum.rod(), pendulum.bobWall(), print());
        }

        private Bob bob(double diameter) {
            return filled(shell(diameter));
        }

        private Bob filled(BobShell shell) {
            double printed = 2 * shell.solid().mass(brief.material().density().si());
            return new Bob(
                    shell, printed, asked() - printed, sizes.weight().can().shotDensity());
        }

        private static double most(Bob bob) {
            return bob.printed() + bob.shell().shotVolume() * bob.shotDensity();
        }

        Bob bob() {
            return brief.pendulum().bob().map(this::stated).orElseGet(this::smallest);
        }

        private Bob stated(drumfall.solver.brief.BobShell size) {
            MakingSizes.Pendulum pendulum = sizes.pendulum();
            BobShell shell = new BobShell(
                    size.diameter().si(), size.thickness().si() / 2, pendulum.rod(), pendulum.bobWall(), print());
            Bob bob = filled(shell);
            if (bob.shot() < 0) {
                throw refused("at least", bob.printed(), "what the shell of the brief weighs empty");
            }
            if (most(bob) < asked()) {
                throw refused("at most", most(bob), "what the shell of the brief holds");
            }
            return bob;
        }

        private Bob smallest() {
            MakingSizes.Pendulum pendulum = sizes.pendulum();
            double least = BobShell.leastDiameter(pendulum.rod(), pendulum.bobWall(), print());
            double bed = Math.min(
                    brief.printer().bedWidth().si(), brief.printer().bedDepth().si());
            long low = (long) Math.ceil(least / STEP);
            long high = (long) Math.floor(bed / STEP);
            if (high < low || most(bob(high * STEP)) < asked()) {
                throw refused(
                        "at most", high < low ? 0 : most(bob(high * STEP)), "what a shell as wide as the bed holds");
            }
            while (low < high) {
                long middle = (low + high) / 2;
                if (most(bob(middle * STEP)) >= asked()) {
                    high = middle;
                } else {
                    low = middle + 1;
                }
            }
            Bob bob = bob(high * STEP);
            if (bob.shot() < 0) {
                throw refused("at least", bob.printed(), "what the smallest shell around the rod weighs");
            }
            return bob;
        }

        private IllegalArgumentException refused(String rule, double limit, String reason) {
            double grams = rule.equals("at least") ? Math.ceil(1e3 * limit) : Math.floor(1e3 * limit);
            return new IllegalArgumentException(String.format(
                    Locale.ROOT,
                    "The bobMass (%s) of the pendulum must be %s %.0f g, %s. Maybe take %3$.0f g.",
                    brief.pendulum().bobMass(),
                    rule,
                    grams,
                    reason));
        }
    }
}
