// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.brief;

import drumfall.solver.quantity.Dimension;
import drumfall.solver.quantity.Quantity;
import drumfall.solver.sheet.SheetProblem;
import java.util.List;
import java.util.function.IntFunction;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Objectives name each figure once, and measured figures say how finely they are told apart. */
final class ObjectiveRules {
    private ObjectiveRules() {}

    private static Stream<SheetProblem> each(Brief brief, IntFunction<Stream<SheetProblem>> rule) {
        return IntStream.range(0, brief.objectives().size()).mapToObj(rule).flatMap(problems -> problems);
    }

    static Stream<SheetProblem> figuresDiffer(Brief brief) {
        List<ObjectiveFigure> figures =
                brief.objectives().stream().map(Objective::figure).toList();
        return each(
                brief,
                index -> Clash.unless(
                        figures.indexOf(figures.get(index)) == index,
                        "/objectives/%d/figure".formatted(index),
                        '"' + figures.get(index).word() + '"',
                        "each figure may be an objective once",
                        "remove the repetition"));
    }

    static Stream<SheetProblem> measuredFiguresHaveAResolution(Brief brief) {
        return each(brief, index -> {
            Objective objective = brief.objectives().get(index);
            return Clash.unless(
                    objective.figure().counted() || objective.resolution().isPresent(),
                    place(index),
                    SheetProblem.NOTHING,
                    "the measured figure \"%s\" needs a resolution"
                            .formatted(objective.figure().word()),
                    "write %s or a share, such as \"1 %%\""
                            .formatted(dimension(objective).noun()));
        });
    }

    static Stream<SheetProblem> countedFiguresHaveNone(Brief brief) {
        return each(brief, index -> {
            Objective objective = brief.objectives().get(index);
            return objective.resolution().stream()
                    .flatMap(resolution -> Clash.unless(
                            !objective.figure().counted(),
                            place(index),
                            resolution,
                            "the figure \"%s\" is a whole count and has no resolution"
                                    .formatted(objective.figure().word()),
                            "leave the resolution out"));
        });
    }

    static Stream<SheetProblem> resolutionsMeasureTheirFigure(Brief brief) {
        return each(brief, index -> {
            Objective objective = brief.objectives().get(index);
            return objective.resolution().stream()
                    .flatMap(resolution -> Clash.unless(
                            objective.figure().counted() || measures(resolution, objective),
                            place(index),
                            resolution,
                            "the resolution of \"%s\" must be %s or a share"
                                    .formatted(
                                            objective.figure().word(),
                                            dimension(objective).noun()),
                            "write %s in %s, or a share, such as \"1 %%\""
                                    .formatted(
                                            dimension(objective).noun(),
                                            dimension(objective).siSymbol())));
        });
    }

    private static boolean measures(Quantity resolution, Objective objective) {
        return resolution.dimension() == Dimension.NUMBER || resolution.dimension() == dimension(objective);
    }

    private static Dimension dimension(Objective objective) {
        return objective.figure().dimension();
    }

    private static String place(int index) {
        return "/objectives/%d/resolution".formatted(index);
    }
}
