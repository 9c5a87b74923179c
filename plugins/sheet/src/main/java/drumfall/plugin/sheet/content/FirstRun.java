// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.plugin.sheet.content;

import drumfall.solver.power.pendulum.BobPlace;
import drumfall.solver.power.pendulum.BodyShape;
import drumfall.solver.power.pendulum.CompoundPendulum;
import drumfall.solver.power.pendulum.DailyRate;
import drumfall.solver.power.pendulum.PendulumPart;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Setting the clock going and to time. */
final class FirstRun {
    /** Coarse pitches of metric threads (ISO 261), from memory; m. */
    private static final List<Screw> THREADS =
            List.of(new Screw("M4", 0.7e-3), new Screw("M5", 0.8e-3), new Screw("M6", 1e-3));

    private record Screw(String name, double pitch) {}

    private FirstRun() {}

    static Section section(Clock clock) {
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Listing(true, steps(clock)));
        pendulum(clock).ifPresent(pendulum -> blocks.add(nut(pendulum)));
        return new Section("Setting going and to time", blocks);
    }

    private static List<String> steps(Clock clock) {
        List<String> steps = new ArrayList<>();
        pendulum(clock)
                .ifPresent(pendulum -> steps.add("Hang the bob's middle "
                        + Words.millimetres(pendulum.bob().centre(), 1) + " below the axis of swing."));
        clock.answers()
                .ifPresent(answers -> steps.add("Hang "
                        + Words.kilograms(answers.books().weight())
                        + " and draw the pendulum aside to "
                        + Words.degrees(answers.books().semiArc())
                        + ". The arc settles there; below "
                        + Words.degrees(clock.loaded().movement().escapement().escapeAngle())
                        + " the clock stops."));
        steps.add("Set it in beat: tick and tock equally far apart, so that it escapes at the same arc to both sides.");
        double beats = clock.train().going().beatsPerHour().doubleValue();
        steps.add("Count beats against a good watch: " + Words.number(beats, 1) + " an hour, "
                + Words.number(beats / 60, 2) + " a minute. One beat too many in an hour gains "
                + Words.number(DailyRate.SECONDS_PER_DAY / beats, 1) + " s a day.");
        steps.add("Then turn the rating nut: up to gain, down to lose. Wait a day between turns.");
        return steps;
    }

    private static Block nut(CompoundPendulum pendulum) {
        List<List<String>> rows = THREADS.stream()
                .map(thread -> List.of(
                        thread.name(),
                        Words.millimetres(thread.pitch(), 2),
                        Words.number(DailyRate.perNutTurn(pendulum, thread.pitch()), 1) + " s a day"))
                .toList();
        return new Block.Table(
                "One turn of the rating nut",
                List.of(
                        new Block.Column("Thread", 2, false),
                        new Block.Column("Pitch", 2, true),
                        new Block.Column("Gains or loses", 3, true)),
                rows);
    }

    /** The brief's pendulum: a thin rod to the middle of a small bob. */
    static Optional<CompoundPendulum> pendulum(Clock clock) {
        double length = clock.rating().pendulumLength();
        double bob = clock.brief().pendulum().bobMass().si();
        double rod = clock.brief().pendulum().rodMass().si();
        return rod > 0
                ? BobPlace.onRodToTheBob(length, bob, new BodyShape.MassPoint(), rod)
                : Optional.of(
                        new CompoundPendulum(new PendulumPart(bob, new BodyShape.MassPoint(), length), List.of()));
    }
}
