// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.terminal;

import drumfall.solver.power.escape.BeatBooks;
import drumfall.solver.power.escape.Deadbeat;
import drumfall.solver.power.escape.PalletDrawing;
import drumfall.solver.power.pendulum.CompoundPendulum;
import drumfall.solver.power.pendulum.DailyRate;
import drumfall.solver.power.pendulum.RingDownFit;
import drumfall.solver.power.pendulum.SwingEnergy;
import drumfall.solver.quantity.Dimension;
import drumfall.solver.quantity.Quantity;
import drumfall.solver.quantity.UnitSystem;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/** A pendulum's answers, for people. */
final class PendulumReport {
    private final PendulumAnswer answer;
    private final Optional<Double> expansion;
    private final PendulumTexts texts;
    private final List<String> lines = new ArrayList<>();

    PendulumReport(PendulumAnswer answer, Optional<Double> expansion, UnitSystem system) {
        this.answer = answer;
        this.expansion = expansion;
        this.texts = new PendulumTexts(system);
    }

    List<String> lines() {
        swing();
        answer.bob().ifPresent(this::bob);
        answer.quality().ifPresent(this::quality);
        answer.escapement().ifPresent(this::escapement);
        return lines;
    }

    private void say(String key, Object... values) {
        lines.add(Phrases.phrase("pendulum." + key, values));
    }

    private void swing() {
        say(
                answer.standardGravity() ? "gravity.standard" : "gravity.place",
                String.format(Locale.ROOT, "%.5f", answer.gravity()));
        say(
                "beat",
                texts.figure(Dimension.NUMBER, answer.beatsPerHour()),
                texts.figure(Dimension.TIME, answer.secondsPerBeat()));
        say("length", texts.figure(Dimension.LENGTH, answer.length()));
        if (answer.semiArc() > 0) {
            say(
                    "arc",
                    texts.figure(Dimension.ANGLE, answer.semiArc()),
                    PendulumTexts.plain(DailyRate.circularError(answer.semiArc())),
                    PendulumTexts.plain(DailyRate.circularErrorSlope(answer.semiArc()) * Math.toRadians(0.1)));
        } else {
            say("arc.none");
        }
        expansion.ifPresent(alpha -> say("warmth", PendulumTexts.plain(DailyRate.perKelvin(alpha))));
    }

    private void bob(PendulumAnswer.Bob bob) {
        CompoundPendulum pendulum = bob.pendulum();
        say(
                "bob",
                texts.figure(Dimension.LENGTH, pendulum.bob().centre()),
                texts.figure(Dimension.LENGTH, pendulum.centreOfMass()),
                texts.figure(Dimension.MASS, pendulum.mass()));
        bob.nutPitch()
                .ifPresent(pitch ->
                        say("nut", PendulumTexts.daily(DailyRate.perNutTurn(pendulum, pitch.si())), pitch.text()));
        bob.added()
                .ifPresent(mass -> say(
                        "added",
                        mass.text(),
                        texts.figure(Dimension.LENGTH, bob.addedAt()),
                        PendulumTexts.daily(DailyRate.ofAddedWeight(pendulum, mass.si(), bob.addedAt()))));
    }

    private void quality(PendulumAnswer.Quality quality) {
        String span = PendulumTexts.span(PendulumTexts.plain(quality.low()), PendulumTexts.plain(quality.high()));
        quality.fit().ifPresentOrElse(this::fit, () -> say("quality", span));
        if (answer.bob().isPresent() && answer.semiArc() > 0) {
            SwingEnergy best = answer.energy(answer.bob().get(), quality.high());
            SwingEnergy worst = answer.energy(answer.bob().get(), quality.low());
            say(
                    "energy",
                    PendulumTexts.micro(best.stored()),
                    PendulumTexts.span(
                            PendulumTexts.micro(best.lossPerBeat()), PendulumTexts.micro(worst.lossPerBeat())),
                    PendulumTexts.span(
                            PendulumTexts.micro(best.power(answer.secondsPerBeat())),
                            PendulumTexts.micro(worst.power(answer.secondsPerBeat()))));
        }
    }

    private void fit(RingDownFit fit) {
        say(
                "quality.fitted",
                PendulumTexts.plain(fit.quality().orElseThrow()),
                PendulumTexts.plain(fit.qualityDeviation().orElseThrow()));
        if (!fit.coulombSeen()) {
            say("coulomb.unseen");
        } else if (answer.bob().isPresent()) {
            double moment = answer.weightMoment(answer.bob().get());
            say(
                    "coulomb",
                    texts.figure(Dimension.TORQUE, fit.coulombTorque(moment)),
                    texts.figure(Dimension.TORQUE, fit.coulombTorqueDeviation(moment)));
        } else {
            say("coulomb.arc", texts.figure(Dimension.ANGLE, fit.coulombDecay()));
        }
    }

    private void escapement(PendulumAnswer.Escape escape) {
        Deadbeat pallets = escape.low().escapement();
        PalletDrawing drawing = new PalletDrawing(pallets);
        say(
                "pallets",
                drawing.spacesEmbraced(),
                texts.figure(Dimension.LENGTH, pallets.palletRadius()),
                texts.figure(Dimension.LENGTH, drawing.centreDistance()),
                PendulumTexts.percent(pallets.impulseEfficiency()));
        say(
                "arcs",
                texts.figure(Dimension.ANGLE, escape.low().leastArc()),
                texts.figure(Dimension.ANGLE, escape.low().greatestArc()));
        say(
                "torque.least",
                texts.span(
                        Dimension.TORQUE,
                        escape.high().leastTorque(0),
                        escape.low().leastTorque(0)));
        if (answer.semiArc() > 0) {
            say(
                    "torque",
                    texts.span(
                            Dimension.TORQUE,
                            escape.high().torqueFor(answer.semiArc()),
                            escape.low().torqueFor(answer.semiArc())),
                    texts.figure(Dimension.LENGTH, drawing.reach(answer.semiArc())));
            books(escape.low().books(answer.semiArc()));
        }
        escape.torque().ifPresent(torque -> kept(escape, torque));
    }

    private void books(BeatBooks books) {
        say(
                "books",
                PendulumTexts.micro(books.wheel()),
                PendulumTexts.percent(books.efficiency()),
                PendulumTexts.percent(books.locking() / books.wheel()),
                PendulumTexts.percent(books.impulseFriction() / books.wheel()),
                PendulumTexts.percent(books.palletArbor() / books.wheel()),
                PendulumTexts.percent(books.inertia() / books.wheel()),
                PendulumTexts.percent(books.drop() / books.wheel()));
    }

    private void kept(PendulumAnswer.Escape escape, Quantity torque) {
        OptionalDouble low = escape.low().arcFor(torque.si());
        OptionalDouble high = escape.high().arcFor(torque.si());
        if (high.isEmpty()) {
            say("stands", torque.text());
        } else {
            String least = low.isPresent()
                    ? texts.figure(Dimension.ANGLE, low.getAsDouble())
                    : Phrases.phrase("pendulum.standstill");
            say("kept", torque.text(), PendulumTexts.span(least, texts.figure(Dimension.ANGLE, high.getAsDouble())));
        }
    }
}
