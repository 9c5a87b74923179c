// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.plugin.sheet.content;

import drumfall.solver.brief.Brief;
import drumfall.solver.fitting.FittedArbor;
import drumfall.solver.kit.Kit;
import drumfall.solver.making.BeforePlate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** Which part goes in when. */
final class AssemblyOrder {
    private AssemblyOrder() {}

    static Section section(Clock clock) {
        List<String> steps = new ArrayList<>();
        steps.add("Drill every bore and deburr it. Try each rod in its bores by itself: it must drop through by its own"
                + " weight.");
        if (bearings(clock)) {
            steps.add(
                    "Press each bearing into its seat by its outer ring, square, until it lies level; a rod must slide"
                            + " through it.");
        }
        steps.add("Lay the back plate down, dial side up, and stand the pillars on it.");
        steps.addAll(fromTheBack(clock));
        steps.add(
                "Lay the front plate on, lead each arbor into its bore, and tighten the pillars crosswise. Every arbor"
                        + " must still turn and shift.");
        steps.add("Before the pallets go in, turn the drum gently by hand: the escape wheel must run down freely and"
                + " stop without a jerk.");
        clock.kit()
                .flatMap(Kit::beforePlate)
                .filter(stack -> !stack.levels().isEmpty())
                .ifPresent(stack -> steps.add(before(stack, clock.lengths())));
        steps.add("Put in the pallets and the crutch, hang the pendulum, and only then the weight.");
        return new Section("Order of assembly", List.of(new Block.Listing(true, steps)));
    }

    /** What stands nearest to the back plate goes in first; from the drum where places are not known. */
    private static List<String> fromTheBack(Clock clock) {
        return IntStream.range(0, clock.arbors())
                .boxed()
                .sorted(Comparator.comparingLong(arbor -> clock.standing(arbor)
                        .map(FittedArbor.Standing::backSpacer)
                        .orElse((long) arbor)))
                .map(arbor -> place(clock, arbor) + spacers(clock, arbor))
                .toList();
    }

    private static boolean bearings(Clock clock) {
        return IntStream.range(0, clock.arbors())
                .mapToObj(clock::build)
                .anyMatch(build -> build.bearings() != Brief.BearingPlaces.NONE);
    }

    /** What begins nearest to the front plate goes on first. */
    private static String before(BeforePlate stack, Lengths lengths) {
        String order = stack.levels().stream()
                .map(level -> level.part().replace('-', ' ') + " at " + lengths.ofNanometres(1e9 * level.from()))
                .collect(Collectors.joining(", "));
        String hands = stack.dial().isPresent()
                ? " A dial goes on before the hour hand. Turn the minute hand round once: both hands must pass before the"
                        + " winding square and clear of each other."
                : "";
        return "On the front plate, each so far from its front face, put on in this order: " + order + "." + hands;
    }

    private static String spacers(Clock clock, int arbor) {
        return clock.standing(arbor)
                .map(standing -> " Spacers: " + spacer(clock, standing.backSpacer()) + " behind, "
                        + spacer(clock, standing.frontSpacer()) + " before.")
                .orElse("");
    }

    private static String spacer(Clock clock, long height) {
        return height == 0 ? "none" : clock.lengths().ofNanometres(height);
    }

    private static String place(Clock clock, int arbor) {
        String step = clock.name(arbor) + ": set it into the back plate";
        if (arbor == 0) {
            return step + " with the drum, its line tied on, and the great wheel; check that the click holds.";
        }
        int teeth = clock.train().meshes().get(arbor - 1).toothCount();
        String hub = clock.build(arbor).kind() == Brief.ArborKind.FIXED
                ? "its hub turns on its rod"
                : "it turns with its rod";
        return step + "; " + hub + ". Its pinion meshes with the wheel of " + teeth + ".";
    }
}
