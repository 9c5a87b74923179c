// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.power.books;

import drumfall.solver.power.ArborRole;
import drumfall.solver.power.books.LoadedTrain.ArborTorque;
import drumfall.solver.power.escape.BeatBooks;
import drumfall.solver.train.Reeving;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** Keeps the books of a clock under weights that run it. */
public final class BookKeeper {
    /** A least weight reckoned elsewhere in another order of operations must pass. */
    private static final double ROUNDING = 1e-12;

    private final LoadedClock clock;
    private final RegulatedPendulum pendulum;

    /**
     * The books of a clock.
     *
     * @param clock the clock
     */
    public BookKeeper(LoadedClock clock) {
        this.clock = clock;
        this.pendulum = new RegulatedPendulum(clock.movement(), clock.train());
    }

    /**
     * The arc that a weight keeps over many turns, each mesh at its work mean.
     *
     * @param weight kg
     * @return rad; empty if the pendulum does not reach the escape angle
     */
    public OptionalDouble arcUnder(double weight) {
        return pendulum.arcUnder(escapeTorque(torques(weight)));
    }

    private List<ArborTorque> torques(double weight) {
        double tension = clock.movement().tensionUnder(weight, clock.train().reeving());
        return clock.running().under(tension, mesh -> mesh.curve().mean());
    }

    private static double escapeTorque(List<ArborTorque> torques) {
        return torques.get(torques.size() - 1).out();
    }

    /**
     * The books under a weight.
     *
     * @param weight kg, at least the least running weight
     * @throws IllegalArgumentException if the weight is under the least running weight
     */
    public PowerBooks under(double weight) {
        double least = clock.leastWeight();
        if (!(weight >= least * (1 - ROUNDING))) {
            throw new IllegalArgumentException(
                    "The weight (%.4g kg) must be at least the least running weight (%.4g kg). Maybe hang %.4g kg."
                            .formatted(weight, least, least));
        }
        List<ArborTorque> torques = torques(weight);
        // The least weight keeps the escape angle; where it keeps no more, rounding must not lose the root.
        double arc = pendulum.arcUnder(escapeTorque(torques))
                .orElse(clock.movement().escapement().escapeAngle());
        List<BookEntry> entries = new ArrayList<>();
        double weightPower = weightPower(weight);
        pulley(weightPower, entries);
        arbors(torques, entries);
        escapement(escapeTorque(torques), arc, entries);
        return new PowerBooks(weight, weightPower, torques, handedOn(torques), arc, entries);
    }

    /** The weight falls at the line's speed over the falls. */
    private double weightPower(double weight) {
        LoadedArbor drum = clock.running().arbors().get(0);
        double speed = drum.speed() * drum.drivenArm() / clock.train().reeving().falls();
        return weight * clock.movement().pendulum().gravity() * speed;
    }

    /** Of two falls that carry 1 and η, the drum's has the η; both are paid out at the same speed. */
    private void pulley(double weightPower, List<BookEntry> entries) {
        if (clock.train().reeving() == Reeving.DOUBLE) {
            double efficiency = clock.movement().pulleyEfficiency();
            entries.add(new BookEntry(Place.PULLEY, 0, weightPower * (1 - efficiency) / (1 + efficiency)));
        }
    }

    private void arbors(List<ArborTorque> torques, List<BookEntry> entries) {
        for (int i = 0; i < torques.size(); i++) {
            LoadedArbor arbor = clock.running().arbors().get(i);
            ArborTorque torque = torques.get(i);
            double hands = arbor.role() == ArborRole.CENTRE ? clock.hands() : 0;
            double bores = arbor.taken(torque.given(), torque.out()) - hands;
            entries.add(new BookEntry(Place.BORES, i, bores * arbor.speed()));
            if (arbor.role() == ArborRole.CENTRE) {
                entries.add(new BookEntry(Place.HANDS, i, hands * arbor.speed()));
            }
            if (i < clock.running().meshes().size()) {
                double passed = clock.running().meshes().get(i).curve().mean();
                entries.add(new BookEntry(Place.MESH, i, torque.out() * arbor.speed() * (1 - passed)));
            }
        }
    }

    private void escapement(double torque, double arc, List<BookEntry> entries) {
        BeatBooks beat = pendulum.beat(torque, arc);
        double seconds = clock.train().secondsPerBeat();
        entries.add(new BookEntry(Place.DROP, 0, beat.drop() / seconds));
        entries.add(new BookEntry(Place.IMPULSE, 0, beat.impulseFriction() / seconds));
        entries.add(new BookEntry(Place.INERTIA, 0, beat.inertia() / seconds));
        entries.add(new BookEntry(Place.LOCKING, 0, beat.locking() / seconds));
        entries.add(new BookEntry(Place.PALLET_ARBOR, 0, beat.palletArbor() / seconds));
        entries.add(new BookEntry(Place.PENDULUM, 0, beat.pendulum() / seconds));
    }

    private List<Double> handedOn(List<ArborTorque> torques) {
        List<Double> powers = new ArrayList<>();
        for (int i = 0; i < torques.size(); i++) {
            powers.add(torques.get(i).out() * clock.running().arbors().get(i).speed());
        }
        return powers;
    }
}
