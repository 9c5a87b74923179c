// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.terminal;

import drumfall.solver.brief.Brief;
import drumfall.solver.quantity.UnitSystem;
import drumfall.solver.rating.TrainRater;
import drumfall.solver.rating.placing.TrainPlacing;
import drumfall.solver.search.SearchOutcome;
import drumfall.solver.search.TrainSearch;
import java.util.List;
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
        Brief asked = holds.applyTo(brief.brief(), place);
        SearchOutcome outcome = search(asked, stop, place, units.system());
        List<TrainPlaces> places = places(asked, outcome);
        if (json) {
            JsonOutput.print(FrontJson.of(asked, outcome, places), place.out());
        } else {
            new FrontTable(asked, units.system()).lines(outcome, places).forEach(place.out()::println);
        }
        return code(outcome).number();
    }

    /** A limit is the search's; what it found is placed all the same, in moments. */
    private List<TrainPlaces> places(Brief asked, SearchOutcome outcome) {
        TrainRater rater = new TrainRater(asked);
        TrainPlacing placing = new TrainPlacing(rater);
        return outcome.front().parallelStream()
                .map(rating -> TrainPlaces.sought(rater, placing, rating.train(), place.interrupted()))
                .toList();
    }

    static SearchOutcome search(Brief brief, StopChoice stop, TerminalPlace place, UnitSystem units) {
        try (ProgressLine progress = ProgressLine.on(place, units)) {
            return TrainSearch.run(brief, progress, stop.from(place));
        }
    }

    static ExitCode code(SearchOutcome outcome) {
        return outcome.fold(proved -> ExitCode.DONE, stopped -> ExitCode.STOPPED, none -> ExitCode.NO_TRAIN);
    }
}
