// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.brief;

import drumfall.solver.quantity.Quantity;
import drumfall.solver.sheet.SheetProblem;
import java.math.BigInteger;
import java.util.stream.Stream;

/** Ranges run from the smaller to the larger end, and steps lead from one to the other. */
final class RangeRules {
    private RangeRules() {}

    static Stream<SheetProblem> durationsInOrder(Brief brief) {
        Brief.Run run = brief.run();
        return Stream.concat(
                Clash.ends("/run", "atLeast", run.atLeast(), "wanted", run.wanted()),
                Clash.ends("/run", "wanted", run.wanted(), "atMost", run.atMost()));
    }

    static Stream<SheetProblem> drumDiametersInOrder(Brief brief) {
        Brief.Steps steps = brief.drum().diameter();
        return Clash.ends("/drum/diameter", "from", steps.from(), "to", steps.to());
    }

    static Stream<SheetProblem> drumStepFits(Brief brief) {
        Brief.Steps steps = brief.drum().diameter();
        return Clash.unless(
                steps.from().compareTo(steps.to()) > 0 || onSteps(steps, steps.to()),
                "/drum/diameter/step",
                steps.step(),
                "a whole number of steps must lead from \"%s\" to \"%s\"".formatted(steps.from(), steps.to()),
                "choose a step that divides the range, or move one of its ends");
    }

    /** Whether a diameter is reached from the smallest by whole steps, the ends disregarded. */
    static boolean onSteps(Brief.Steps steps, Quantity diameter) {
        BigInteger remainder = diameter.exact()
                .subtract(steps.from().exact())
                .divide(steps.step().exact())
                .getDenominator()
                .abs();
        return remainder.equals(BigInteger.ONE);
    }

    static Stream<SheetProblem> pendulumLengthsInOrder(Brief brief) {
        return brief.beat().pendulumLength().stream()
                .flatMap(range -> Clash.ends("/beat/pendulumLength", "from", range.from(), "to", range.to()));
    }

    static Stream<SheetProblem> beatsInOrder(Brief brief) {
        return brief.beat().beatsPerHour().stream()
                .flatMap(range -> Clash.ends("/beat/beatsPerHour", "from", range.from(), "to", range.to()));
    }

    static Stream<SheetProblem> endShakeInOrder(Brief brief) {
        Fit.ShakeBand band = brief.fit().endShake();
        return Clash.ends("/fit/endShake", "low", band.low(), "high", band.high());
    }

    static Stream<SheetProblem> qualitiesInOrder(Brief brief) {
        Brief.QualityBand band = brief.pendulum().quality();
        return Clash.ends("/pendulum/quality", "low", band.low(), "high", band.high());
    }

    static Stream<SheetProblem> escapeTeethInOrder(Brief brief) {
        Brief.CountSteps teeth = brief.escapement().teeth();
        return Clash.ends("/escapement/teeth", teeth.from(), teeth.to());
    }

    static Stream<SheetProblem> escapeTeethStepFits(Brief brief) {
        Brief.CountSteps teeth = brief.escapement().teeth();
        return Clash.unless(
                teeth.from() > teeth.to() || onSteps(teeth, teeth.to()),
                "/escapement/teeth/step",
                String.valueOf(teeth.step()),
                "a whole number of steps must lead from %d to %d".formatted(teeth.from(), teeth.to()),
                "choose a step that divides the range, or move one of its ends");
    }

    /** Whether a count is reached from the fewest by whole steps, the ends disregarded. */
    static boolean onSteps(Brief.CountSteps steps, int count) {
        return (count - steps.from()) % steps.step() == 0;
    }

    static Stream<SheetProblem> wheelTeethInOrder(Brief brief) {
        Brief.WheelRange range = brief.teeth().wheelTeeth();
        return Clash.ends("/teeth/wheelTeeth", range.from(), range.to());
    }

    static Stream<SheetProblem> leavesInOrder(Brief brief) {
        Brief.LeafRange range = brief.teeth().leaves();
        return Clash.ends("/teeth/leaves", range.from(), range.to());
    }

    static Stream<SheetProblem> meshesInOrder(Brief brief) {
        Brief.Meshes train = brief.train();
        return Stream.concat(
                Clash.ends("/train/above", train.above().from(), train.above().to()),
                Clash.ends("/train/below", train.below().from(), train.below().to()));
    }

    static Stream<SheetProblem> frictionInOrder(Brief brief) {
        Brief.Friction friction = brief.friction();
        return Stream.of(
                        band("teeth", friction.teeth()),
                        band("bores", friction.bores()),
                        band("pallets", friction.pallets()))
                .flatMap(problems -> problems);
    }

    static Stream<SheetProblem> thinningInOrder(Brief brief) {
        Brief.ThinningBand band = brief.teeth().thinning();
        return Clash.ends("/teeth/thinning", "low", band.low(), "high", band.high());
    }

    private static Stream<SheetProblem> band(String where, Brief.FrictionBand band) {
        return Clash.ends("/friction/" + where, "low", band.low(), "high", band.high());
    }
}
