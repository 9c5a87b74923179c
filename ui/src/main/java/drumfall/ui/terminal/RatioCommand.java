// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.terminal;

import drumfall.solver.ratio.CountRange;
import drumfall.solver.ratio.RatioException;
import drumfall.solver.ratio.RatioOutcome;
import drumfall.solver.ratio.RatioQuery;
import drumfall.solver.ratio.RatioSearch;
import java.util.List;
import java.util.concurrent.Callable;
import org.apache.commons.numbers.fraction.BigFraction;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Finds the trains nearest to a ratio. */
@Command(name = "ratio", mixinStandardHelpOptions = true, resourceBundle = Phrases.BUNDLE)
final class RatioCommand implements Callable<Integer> {
    private final TerminalPlace place;

    @Parameters(index = "0", paramLabel = "TARGET", converter = RatioTarget.class, descriptionKey = "option.target")
    private BigFraction target;

    @Option(
            names = "--meshes",
            paramLabel = "COUNT",
            defaultValue = "2",
            converter = WholeNumber.class,
            descriptionKey = "option.meshes")
    private int meshes;

    @Option(
            names = "--wheels",
            paramLabel = "FROM-TO",
            defaultValue = "24-96",
            converter = CountSpan.class,
            descriptionKey = "option.wheels")
    private CountRange wheels;

    @Option(
            names = "--leaves",
            paramLabel = "FROM-TO",
            defaultValue = "8-12",
            converter = CountSpan.class,
            descriptionKey = "option.leaves")
    private CountRange leaves;

    @Option(
            names = "--show",
            paramLabel = "COUNT",
            defaultValue = "10",
            converter = WholeNumber.class,
            descriptionKey = "option.show")
    private int shown;

    @Option(
            names = "--trains",
            paramLabel = "COUNT",
            defaultValue = "3",
            converter = WholeNumber.class,
            descriptionKey = "option.trains")
    private int trains;

    @Mixin
    private StopChoice stop;

    @Option(names = "--json", descriptionKey = "option.json")
    private boolean json;

    RatioCommand(TerminalPlace place) {
        this.place = place;
    }

    @Override
    public Integer call() {
        RatioQuery query = query();
        RatioOutcome outcome = RatioSearch.search(query, stop.from(place));
        if (json) {
            JsonOutput.print(RatioJson.of(query, outcome), place.out());
        } else {
            RatioTable.lines(query, outcome).forEach(place.out()::println);
        }
        return (outcome.proven() ? ExitCode.DONE : ExitCode.STOPPED).number();
    }

    private RatioQuery query() {
        try {
            return new RatioQuery(target, meshes, wheels, leaves, shown, trains);
        } catch (RatioException refused) {
            throw new RefusedInput(List.of(refused.getMessage()));
        }
    }
}
