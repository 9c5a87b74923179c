// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.plugin.sheet.content;

import drumfall.solver.kit.Hanging;
import drumfall.solver.kit.Kit;
import drumfall.solver.making.Bob;
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
        clock.kit().flatMap(Kit::hanging).ifPresent(hanging -> blocks.add(room(hanging, clock.lengths())));
        return new Section("Setting going and to time", blocks);
    }

    private static List<String> steps(Clock clock) {
        List<String> steps = new ArrayList<>();
        clock.kit().map(Kit::bob).ifPresent(bob -> steps.add(fill(clock, bob)));
        pendulum(clock)
                .ifPresent(pendulum -> steps.add("Hang the bob's middle "
                        + clock.lengths().of(pendulum.bob().centre(), 1) + " below the axis of swing."));
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

    private static String fill(Clock clock, Bob bob) {
        return "Fill the bob: " + Words.number(1e3 * bob.shot(), 0) + " g of steel shot, "
                + Words.number(1e6 * bob.shotVolume(), 0) + " cm³, half of it into each chamber, make with "
                + Words.number(1e3 * bob.printed(), 0) + " g of printed shell the brief's "
                + clock.brief().pendulum().bobMass() + ". Weigh it, then join the halves.";
    }

    /** No brief says where the floor is; the maker compares. */
    private static Block room(Hanging hanging, Lengths lengths) {
        List<List<String>> rows = new ArrayList<>();
        rows.add(row("Line above the wound weight", hanging.lead(), lengths));
        rows.add(row("Fall", hanging.fall(), lengths));
        if (hanging.pulley() > 0) {
            rows.add(row("Pulley over its rims", hanging.pulley(), lengths));
        }
        rows.add(row("Shell of the weight with its lid", hanging.shell(), lengths));
        rows.add(row(
                "All of these below the drum's arbor, and your hook; keep the floor further down",
                hanging.lowest(),
                lengths));
        return new Block.Table(
                "Room below the clock",
                List.of(new Block.Column("What hangs", 4, false), new Block.Column("Takes", 2, true)),
                rows);
    }

    private static List<String> row(String what, double metres, Lengths lengths) {
        return List.of(what, lengths.of(metres, 0));
    }

    private static Block nut(CompoundPendulum pendulum) {
        List<List<String>> rows = THREADS.stream()
                .map(thread -> List.of(
                        thread.name(),
                        Lengths.MILLIMETRES.of(thread.pitch(), 2),
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
