// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.terminal;

import drumfall.solver.power.escape.Deadbeat;
import drumfall.solver.power.escape.DeadbeatBalance;
import drumfall.solver.power.pendulum.CompoundPendulum;
import drumfall.solver.power.pendulum.FiniteArc;
import drumfall.solver.quantity.Quantity;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Answers questions about a pendulum and the escapement that keeps it, without a train. */
@Command(name = "pendulum", mixinStandardHelpOptions = true, resourceBundle = Phrases.BUNDLE)
final class PendulumCommand implements Callable<Integer> {
    private final TerminalPlace place;

    @Option(names = "--beats", paramLabel = "NUMBER", converter = Given.Beats.class, descriptionKey = "option.beats")
    private Quantity beats;

    @Option(names = "--length", paramLabel = "LENGTH", converter = Given.Length.class, descriptionKey = "option.length")
    private Quantity length;

    @Option(
            names = "--arc",
            paramLabel = "ANGLE",
            converter = Given.Angle.class,
            descriptionKey = "option.pendulum.arc")
    private Quantity arc;

    @Mixin
    private PlaceChoice where;

    @Mixin
    private BobChoice bob;

    @Option(
            names = "--expansion",
            paramLabel = "MATERIAL",
            converter = ExpansionText.class,
            descriptionKey = "option.expansion")
    private Double expansion;

    @Mixin
    private QualityChoice quality;

    @Mixin
    private EscapementChoice escapement;

    @Mixin
    private UnitsChoice units;

    @Option(names = "--json", descriptionKey = "option.json")
    private boolean json;

    PendulumCommand(TerminalPlace place) {
        this.place = place;
    }

    @Override
    public Integer call() {
        PendulumAnswer answer = answer();
        Optional<Double> growth = Optional.ofNullable(expansion);
        if (json) {
            JsonOutput.print(PendulumJson.of(answer, growth), place.out());
        } else {
            new PendulumReport(answer, growth, units.system()).lines().forEach(place.out()::println);
        }
        return ExitCode.DONE.number();
    }

    private PendulumAnswer answer() {
        double gravity = where.gravity();
        double semiArc = semiArc();
        double[] pair = beatAndLength(gravity, FiniteArc.periodRatio(semiArc));
        Optional<PendulumAnswer.Bob> hung = bob.pendulum(pair[1])
                .map(found -> new PendulumAnswer.Bob(
                        found, bob.nutPitch(), bob.added(), bob.added().isPresent() ? bob.addedAt() : 0));
        Optional<PendulumAnswer.Quality> kept = quality.quality();
        return new PendulumAnswer(
                gravity, where.standard(), pair[0], semiArc, pair[1], hung, kept, escape(hung, kept, gravity));
    }

    private double semiArc() {
        if (arc != null && arc.in("°") > 179) {
            throw RefusedInput.of("arc", arc, "179°");
        }
        return arc == null ? 0 : arc.si();
    }

    /** Seconds a beat and the equivalent length, one of which is given. */
    private double[] beatAndLength(double gravity, double periodRatio) {
        if ((beats == null) == (length == null)) {
            throw RefusedInput.of(beats == null ? "no-beat" : "beat-and-length");
        }
        if (length != null) {
            return new double[] {Math.PI * periodRatio * Math.sqrt(length.si() / gravity), length.si()};
        }
        double seconds = 3600 / beats.si();
        double perRadian = seconds / (Math.PI * periodRatio);
        return new double[] {seconds, gravity * perRadian * perRadian};
    }

    private Optional<PendulumAnswer.Escape> escape(
            Optional<PendulumAnswer.Bob> hung, Optional<PendulumAnswer.Quality> kept, double gravity) {
        double moment =
                hung.map(found -> found.pendulum().massMoment() * gravity).orElse(0.0);
        double suspension = kept.flatMap(PendulumAnswer.Quality::fit)
                .filter(fit -> fit.coulombSeen())
                .map(fit -> fit.coulombTorque(moment))
                .orElse(0.0);
        Optional<Deadbeat> asked = escapement.escapement(suspension);
        return asked.map(pallets -> {
            BobChoice.needs("--escape-teeth", pallets, "--bob", hung.orElse(null));
            BobChoice.needs("--escape-teeth", pallets, "--quality", kept.orElse(null));
            return balance(pallets, hung.orElseThrow().pendulum(), kept.orElseThrow(), gravity);
        });
    }

    private PendulumAnswer.Escape balance(
            Deadbeat pallets, CompoundPendulum pendulum, PendulumAnswer.Quality kept, double gravity) {
        double moment = pendulum.massMoment() * gravity;
        DeadbeatBalance low = new DeadbeatBalance(pallets, moment, kept.low());
        if (!low.canRun()) {
            throw RefusedInput.of(
                    "saturated", PendulumTexts.above(low.leastArc()), PendulumTexts.below(low.greatestArc()));
        }
        if (arc != null && arc.si() < low.leastArc()) {
            throw RefusedInput.of("pendulum.arc.least", arc, PendulumTexts.above(low.leastArc()));
        }
        if (arc != null && arc.si() >= low.greatestArc()) {
            throw RefusedInput.of("arc.greatest", arc, PendulumTexts.below(low.greatestArc()));
        }
        return new PendulumAnswer.Escape(low, new DeadbeatBalance(pallets, moment, kept.high()), escapement.torque());
    }
}
