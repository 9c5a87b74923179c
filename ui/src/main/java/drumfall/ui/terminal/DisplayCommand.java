// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.terminal;

import drumfall.solver.display.Display;
import drumfall.solver.display.DisplayOutcome;
import drumfall.solver.display.DisplayQuery;
import drumfall.solver.display.DisplaySearch;
import drumfall.solver.display.DrivingArbor;
import drumfall.solver.display.Resolution;
import drumfall.solver.ratio.CountRange;
import drumfall.solver.ratio.RatioException;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.function.BooleanSupplier;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Finds the trains that drive a display with the least error. */
@Command(name = "display", mixinStandardHelpOptions = true, resourceBundle = Phrases.BUNDLE)
final class DisplayCommand implements Callable<Integer> {
    private final TerminalPlace place;

    @Parameters(
            index = "0",
            paramLabel = "CYCLE",
            converter = DisplayCycle.Reader.class,
            descriptionKey = "option.cycle")
    private DisplayCycle cycle;

    @Option(
            names = "--cycles",
            paramLabel = "COUNT",
            defaultValue = "1",
            converter = WholeNumber.class,
            descriptionKey = "option.cycles")
    private int cycles;

    @Mixin
    private ArborChoice arbor;

    @Option(
            names = "--meshes",
            paramLabel = "COUNT",
            defaultValue = "3",
            converter = WholeNumber.class,
            descriptionKey = "option.display.meshes")
    private int meshes;

    @Option(
            names = "--drivers",
            paramLabel = "FROM-TO",
            defaultValue = "8-12",
            converter = CountSpan.class,
            descriptionKey = "option.drivers")
    private CountRange drivers;

    @Option(
            names = "--followers",
            paramLabel = "FROM-TO",
            defaultValue = "24-96",
            converter = CountSpan.class,
            descriptionKey = "option.followers")
    private CountRange followers;

    @Option(
            names = "--resolution",
            paramLabel = "ERROR",
            defaultValue = "1 deg",
            converter = ResolutionReader.class,
            descriptionKey = "option.resolution")
    private Resolution resolution;

    @Option(
            names = "--show",
            paramLabel = "COUNT",
            defaultValue = "10",
            converter = WholeNumber.class,
            descriptionKey = "option.display.show")
    private int shown;

    @Option(
            names = "--trains",
            paramLabel = "COUNT",
            defaultValue = "3",
            converter = WholeNumber.class,
            descriptionKey = "option.display.trains")
    private int trains;

    @Option(names = "--by-size", descriptionKey = "option.by-size")
    private boolean bySize;

    @Mixin
    private StopChoice stop;

    @Option(names = "--json", descriptionKey = "option.json")
    private boolean json;

    DisplayCommand(TerminalPlace place) {
        this.place = place;
    }

    @Override
    public Integer call() {
        DisplayQuery query = query();
        BooleanSupplier cancelled = stop.from(place);
        DisplayOutcome outcome =
                bySize ? DisplaySearch.front(query, cancelled) : DisplaySearch.nearest(query, cancelled);
        if (json) {
            JsonOutput.print(DisplayJson.of(query, outcome, resolution), place.out());
        } else {
            new DisplayTable(query, resolution, bySize).lines(outcome).forEach(place.out()::println);
        }
        return (outcome.proven() ? ExitCode.DONE : ExitCode.STOPPED).number();
    }

    private DisplayQuery query() {
        try {
            DrivingArbor driving = arbor.arbor();
            Display display = new Display(cycle.seconds().apply(driving), cycles);
            return new DisplayQuery(display, driving, meshes, drivers, followers, shown, trains);
        } catch (RatioException refused) {
            throw new RefusedInput(List.of(refused.getMessage()));
        }
    }
}
