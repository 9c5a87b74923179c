// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.terminal;

import com.fasterxml.jackson.databind.node.ObjectNode;
import drumfall.solver.power.escape.BeatBooks;
import drumfall.solver.power.escape.Deadbeat;
import drumfall.solver.power.escape.PalletDrawing;
import drumfall.solver.power.pendulum.CompoundPendulum;
import drumfall.solver.power.pendulum.DailyRate;
import drumfall.solver.power.pendulum.FiniteArc;
import drumfall.solver.power.pendulum.RingDownFit;
import java.util.Optional;

/** A pendulum's answers as JSON. */
final class PendulumJson {
    private PendulumJson() {}

    static ObjectNode of(PendulumAnswer answer, Optional<Double> expansion) {
        ObjectNode document = JsonOutput.document("drumfall-pendulum");
        document.put("gravity_m_s2", answer.gravity());
        document.put("standardGravity", answer.standardGravity());
        document.put("beatsPerHour", answer.beatsPerHour());
        document.put("secondsPerBeat_s", answer.secondsPerBeat());
        document.put("semiArc_rad", answer.semiArc());
        document.put("periodRatio", FiniteArc.periodRatio(answer.semiArc()));
        document.put("circularError_s_d", DailyRate.circularError(answer.semiArc()));
        document.put("pendulumLength_m", answer.length());
        expansion.ifPresent(alpha -> document.put("lossPerKelvin_s_d", DailyRate.perKelvin(alpha)));
        answer.bob().ifPresent(bob -> put(document.putObject("bob"), answer, bob));
        answer.quality().ifPresent(quality -> put(document.putObject("quality"), answer, quality));
        answer.bob()
                .filter(bob -> answer.semiArc() > 0)
                .ifPresent(
                        bob -> answer.quality().ifPresent(q -> energy(document.putObject("energy"), answer, bob, q)));
        answer.escapement().ifPresent(escape -> put(document.putObject("escapement"), answer, escape));
        return document;
    }

    private static void put(ObjectNode group, PendulumAnswer answer, PendulumAnswer.Bob bob) {
        CompoundPendulum pendulum = bob.pendulum();
        group.put("distance_m", pendulum.bob().centre());
        group.put("mass_kg", pendulum.mass());
        group.put("centreOfMass_m", pendulum.centreOfMass());
        group.put("weightMoment_Nm", answer.weightMoment(bob));
        group.put("lengthPerBobTravel", pendulum.lengthPerBobTravel());
        bob.nutPitch().ifPresent(pitch -> group.put("gainPerNutTurn_s_d", DailyRate.perNutTurn(pendulum, pitch.si())));
        bob.added()
                .ifPresent(mass ->
                        group.put("gainOfAdded_s_d", DailyRate.ofAddedWeight(pendulum, mass.si(), bob.addedAt())));
    }

    private static void put(ObjectNode group, PendulumAnswer answer, PendulumAnswer.Quality quality) {
        group.put("low", quality.low());
        group.put("high", quality.high());
        quality.fit().ifPresent(fit -> put(group.putObject("ringDown"), answer, fit));
    }

    private static void put(ObjectNode group, PendulumAnswer answer, RingDownFit fit) {
        fit.qualityDeviation().ifPresent(deviation -> group.put("qualityDeviation", deviation));
        group.put("coulombDecay_rad", fit.coulombDecay());
        group.put("coulombDeviation_rad", fit.coulombDeviation());
        group.put("coulombSeen", fit.coulombSeen());
        group.put("scatter_rad", fit.scatter());
        answer.bob().ifPresent(bob -> group.put("coulombTorque_Nm", fit.coulombTorque(answer.weightMoment(bob))));
    }

    private static void energy(
            ObjectNode group, PendulumAnswer answer, PendulumAnswer.Bob bob, PendulumAnswer.Quality quality) {
        group.put("stored_J", answer.energy(bob, quality.high()).stored());
        group.put("lossPerBeatLow_J", answer.energy(bob, quality.high()).lossPerBeat());
        group.put("lossPerBeatHigh_J", answer.energy(bob, quality.low()).lossPerBeat());
        group.put("powerLow_W", answer.energy(bob, quality.high()).power(answer.secondsPerBeat()));
        group.put("powerHigh_W", answer.energy(bob, quality.low()).power(answer.secondsPerBeat()));
    }

    private static void put(ObjectNode group, PendulumAnswer answer, PendulumAnswer.Escape escape) {
        Deadbeat pallets = escape.low().escapement();
        PalletDrawing drawing = new PalletDrawing(pallets);
        group.put("spacesEmbraced", drawing.spacesEmbraced());
        group.put("palletRadius_m", pallets.palletRadius());
        group.put("centreDistance_m", drawing.centreDistance());
        group.put("impulseEfficiency", pallets.impulseEfficiency());
        group.put("leastArc_rad", escape.low().leastArc());
        JsonOutput.put(group, "saturationArc_rad", pallets.saturationArc());
        group.put("leastTorqueLow_Nm", escape.high().leastTorque(0));
        group.put("leastTorqueHigh_Nm", escape.low().leastTorque(0));
        if (answer.semiArc() > 0) {
            group.put("torqueLow_Nm", escape.high().torqueFor(answer.semiArc()));
            group.put("torqueHigh_Nm", escape.low().torqueFor(answer.semiArc()));
            group.put("reach_m", drawing.reach(answer.semiArc()));
            put(group.putObject("books"), escape.low().books(answer.semiArc()));
        }
        escape.torque().ifPresent(torque -> {
            JsonOutput.put(
                    group, "keptArcLow_rad", escape.low().arcFor(torque.si()).orElse(Double.NaN));
            JsonOutput.put(
                    group, "keptArcHigh_rad", escape.high().arcFor(torque.si()).orElse(Double.NaN));
        });
    }

    private static void put(ObjectNode group, BeatBooks books) {
        group.put("wheel_J", books.wheel());
        group.put("pendulum_J", books.pendulum());
        group.put("locking_J", books.locking());
        group.put("impulseFriction_J", books.impulseFriction());
        group.put("palletArbor_J", books.palletArbor());
        group.put("inertia_J", books.inertia());
        group.put("drop_J", books.drop());
    }
}
