// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.terminal;

import drumfall.solver.brief.Brief;
import drumfall.solver.search.SearchOutcome;
import drumfall.solver.search.TrainSearch;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Searches the trains of a brief and prints the front. */
@Command(name = "solve", mixinStandardHelpOptions = true, resourceBundle = Phrases.BUNDLE)
final class SolveCommand implements Callable<Integer> {
    private final TerminalPlace place;

    @Mixin
    private BriefChoice brief;

    @Mixin
    private HoldChoice holds;

    @Mixin
    private StopChoice stop;

    @Mixin
    private UnitsChoice units;

    @Option(names = "--json", descriptionKey = "option.json")
    private boolean json;

    SolveCommand(TerminalPlace place) {
        this.place = place;
    }

    @Override
    public Integer call() {
        Brief asked = holds.applyTo(brief.brief());
        SearchOutcome outcome = search(asked, stop, place);
        if (json) {
            JsonOutput.print(FrontJson.of(asked, outcome), place.out());
        } else {
            new FrontTable(asked, units.system()).lines(outcome).forEach(place.out()::println);
        }
        return code(outcome).number();
    }

    static SearchOutcome search(Brief brief, StopChoice stop, TerminalPlace place) {
        try (ProgressLine progress = ProgressLine.on(place)) {
            return TrainSearch.run(brief, progress, stop.from(place));
        }
    }

    static ExitCode code(SearchOutcome outcome) {
        return outcome.fold(proved -> ExitCode.DONE, stopped -> ExitCode.STOPPED, none -> ExitCode.NO_TRAIN);
    }
}
