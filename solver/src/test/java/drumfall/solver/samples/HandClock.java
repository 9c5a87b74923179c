// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.samples;

import drumfall.solver.parts.Crossing;
import drumfall.solver.parts.DrumForm;
import drumfall.solver.parts.EscapeToothSize;
import drumfall.solver.parts.PartStock;
import drumfall.solver.parts.RatchetSize;
import drumfall.solver.parts.SquareSize;
import drumfall.solver.power.ArborFriction;
import drumfall.solver.power.ArborRole;
import drumfall.solver.power.Movement;
import drumfall.solver.power.Regime;
import drumfall.solver.power.escape.DeadbeatForm;
import drumfall.solver.power.pendulum.Pendulum;
import drumfall.solver.teeth.InvoluteClosedForm;
import drumfall.solver.train.Train;
import java.util.Map;
import java.util.Optional;

/** An eight-day clock with figures simple enough to be worked by hand. */
public final class HandClock {
    /** Torque of motion work and hands, N m. */
    public static final double HANDS = 1e-3;

    private HandClock() {}

    /** Great wheel in 12 h, one-second beat, drum of 40 mm, single line of 2 mm. */
    public static Train train() {
        return train(1);
    }

    /** The same with so many falls of line. */
    public static Train train(int falls) {
        return Trains.of("96/8 m1.25 | 64/8 m1 · 60/8 m1 · E30", "40", falls);
    }

    /**
     * Wheels of 5 mm, leaves of 8 mm, not thinned, 1250 kg/m³; hubs of 5 mm and arms of 4.8 mm, for a thickest rod of 4 mm and
     * walls of 0.8 mm; an escape wheel of 30 mm; a drum of 40 mm with walls and line of 2 mm.
     */
    public static PartStock parts() {
        DrumForm drum = new DrumForm(
                0.040, 0.002, 0.002, 0.004, RatchetSize.CUSTOMARY, 0.006, 0.001, SquareSize.CUSTOMARY, 0.0008);
        return new PartStock(
                0.005,
                0.008,
                0,
                Crossing.of(0.0008, 0.004, 0.003),
                Optional.empty(),
                1250,
                EscapeToothSize.CUSTOMARY,
                0.030,
                drum);
    }

    /** Coefficient 0.2 everywhere, static 1.3 times; rods of 1.5, 2 and 3 mm; the drum on two bearings of 4 mm. */
    public static Movement movement() {
        return new Movement(
                parts(),
                new InvoluteClosedForm(Math.toRadians(20)),
                new Pendulum(1, 0.1, 1000, Pendulum.STANDARD_GRAVITY),
                new DeadbeatForm(
                        0.030,
                        Math.toRadians(95),
                        Math.toRadians(4),
                        Math.toRadians(1),
                        Math.toRadians(1.5),
                        0.2,
                        2e-6,
                        0.03),
                Math.toRadians(1),
                regime(1),
                regime(1.3),
                0.25,
                0.9);
    }

    private static Regime regime(double factor) {
        double mu = 0.2 * factor;
        double bearing = 0.0015 * factor * 0.002;
        return new Regime(
                mu,
                Map.of(
                        ArborRole.ESCAPE, friction(mu * 0.00075, 0),
                        ArborRole.INTERMEDIATE, friction(mu * 0.001, 0),
                        ArborRole.CENTRE, friction(mu * 0.0015, HANDS),
                        ArborRole.DRUM, friction(bearing, 4e-5 * factor)));
    }

    private static ArborFriction friction(double slope, double standing) {
        return new ArborFriction(slope, slope, standing, Pendulum.STANDARD_GRAVITY);
    }
}
