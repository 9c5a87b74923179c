// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.brief;

import drumfall.solver.quantity.Dimension;
import drumfall.solver.quantity.Quantity;
import drumfall.solver.sheet.SheetProblem;
import java.util.Optional;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;

/** Pillars, dial centre and drum stand in the frame. */
final class FrameRules {
    private FrameRules() {}

    /** On the drum's arbor stand the drum with two flanges, click and great wheel, with gaps and end shake. */
    static Stream<SheetProblem> drumFitsBetweenThePlates(Brief brief) {
        Brief.Drum drum = brief.drum();
        BigFraction needed = drum.length()
                .exact()
                .add(drum.wall().exact().multiply(2))
                .add(drum.clickSpace().exact())
                .add(brief.parts().wheelThickness().exact())
                .add(brief.parts().axialGap().exact().multiply(2))
                .add(brief.fit().endShake().high().exact());
        return Clash.unless(
                needed.compareTo(brief.frame().depth().exact()) <= 0,
                "/frame/depth",
                brief.frame().depth(),
                "the drum with two flanges, click, a wheel, two gaps and end shake takes %.1f mm between the plates"
                        .formatted(needed.doubleValue() * 1000),
                "make the frame deeper or the drum shorter");
    }

    static Stream<SheetProblem> pillarsStandInTheFrame(Brief brief) {
        return brief.frame().pillars().stream()
                .flatMap(pillars -> Stream.of(
                                edge(pillars, "sideInset", pillars.sideInset()),
                                edge(pillars, "endInset", pillars.endInset()),
                                apart(
                                        pillars,
                                        "sideInset",
                                        pillars.sideInset(),
                                        brief.frame().width()),
                                apart(
                                        pillars,
                                        "endInset",
                                        pillars.endInset(),
                                        brief.frame().height()))
                        .flatMap(problems -> problems));
    }

    private static Stream<SheetProblem> edge(FramePillars pillars, String field, Quantity inset) {
        return Clash.unless(
                inset.exact().multiply(2).compareTo(pillars.diameter().exact()) >= 0,
                "/frame/pillars/" + field,
                inset,
                "a pillar (\"%s\" thick) must not stand out of the frame".formatted(pillars.diameter()),
                "set it further in or make it thinner");
    }

    private static Stream<SheetProblem> apart(FramePillars pillars, String field, Quantity inset, Quantity side) {
        BigFraction needed = inset.exact().multiply(2).add(pillars.diameter().exact());
        return Clash.unless(
                needed.compareTo(side.exact()) <= 0,
                "/frame/pillars/" + field,
                inset,
                "two pillars must find room beside each other in \"%s\"".formatted(side),
                "set them nearer to the edge or make the frame larger");
    }

    static Stream<SheetProblem> bobSwingsBehindThePlate(Brief brief) {
        return brief.pendulum().bob().stream()
                .flatMap(bob -> Clash.unless(
                        bob.behindPlate()
                                        .exact()
                                        .multiply(2)
                                        .compareTo(bob.thickness().exact())
                                > 0,
                        "/pendulum/bob/behindPlate",
                        bob.behindPlate(),
                        "a bob (\"%s\" thick) must swing clear of the back plate".formatted(bob.thickness()),
                        "hang it further back or make it thinner"));
    }

    static Stream<SheetProblem> dialCentreIsInTheFrame(Brief brief) {
        Brief.Frame frame = brief.frame();
        return Stream.concat(
                within("/frame/dialFromLeft", frame.dialFromLeft(), frame.width()),
                within("/frame/dialFromBottom", frame.dialFromBottom(), frame.height()));
    }

    static Stream<SheetProblem> leastRoomIsMeasuredAsItsFigureIs(Brief brief) {
        return brief.frame().least().stream()
                .flatMap(least -> Stream.concat(
                        measured(least, "resolution", least.resolution()),
                        least.enough().stream().flatMap(enough -> measured(least, "enough", enough))));
    }

    private static Stream<SheetProblem> measured(LeastRoom least, String field, Quantity typed) {
        return Clash.unless(
                typed.dimension() == least.figure().dimension(),
                "/frame/least/" + field,
                typed,
                "\"%s\" is told apart in steps of %s"
                        .formatted(
                                least.figure().word(),
                                least.figure().dimension().noun()),
                "write it in %s".formatted(least.figure().dimension() == Dimension.AREA ? "cm²" : "mm"));
    }

    /** Without places a movement takes no room that could be told. */
    static Stream<SheetProblem> leastRoomNeedsPlaces(Brief brief) {
        return brief.frame().least().stream()
                .flatMap(least -> Clash.unless(
                        brief.frame().arrangement() != Arrangement.UNPLACED,
                        "/frame/least/figure",
                        '"' + least.figure().word() + '"',
                        "arbors that are left unplaced take no room that could be made small",
                        "write another /frame/arrangement, such as \"upright\""));
    }

    /** The smallest plate covers the pillars, which stand where the frame has them. */
    static Stream<SheetProblem> pillarsSettleThePlate(Brief brief) {
        return brief.frame().least().stream()
                .filter(least -> least.figure() == RoomFigure.PLATE_AREA)
                .flatMap(least -> Clash.unless(
                        brief.frame().pillars().isEmpty(),
                        "/frame/least/figure",
                        '"' + least.figure().word() + '"',
                        "a plate covers the pillars, and these stand where the frame has them",
                        "make the height or the width small instead, or leave the pillars out"));
    }

    private static Stream<SheetProblem> within(String pointer, Optional<Quantity> length, Quantity side) {
        return length.stream()
                .flatMap(asked -> Clash.unless(
                        asked.compareTo(side) <= 0,
                        pointer,
                        asked,
                        "the dial centre must lie in the frame, which measures \"%s\"".formatted(side),
                        "move it in or make the frame larger"));
    }
}
