// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.terminal;

import com.fasterxml.jackson.databind.node.ObjectNode;
import drumfall.solver.brief.Brief;
import drumfall.solver.explain.Cost;
import drumfall.solver.explain.DemandCosts;
import drumfall.solver.explain.Standing;
import drumfall.solver.explain.TrainNotation;
import drumfall.solver.explain.WhyNoTrain;
import drumfall.solver.rating.Rating;
import drumfall.solver.rating.TrainRater;
import drumfall.solver.rating.placing.LeastRooms;
import drumfall.solver.search.SearchOutcome;
import drumfall.solver.search.TrainSearch;
import drumfall.solver.train.Train;
import drumfall.ui.wording.FigureWording;
import drumfall.ui.wording.RoomWording;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.BooleanSupplier;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.regex.Pattern;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Says why a brief has no train, why a train is not on the front, or what each demand costs an option. */
@Command(name = "why", mixinStandardHelpOptions = true, resourceBundle = Phrases.BUNDLE)
final class WhyCommand implements Callable<Integer> {
    /** A line that stands for a train and no file: it has a bar, or a mesh with its module. */
    private static final Pattern LINE = Pattern.compile(".*(\\||\\d\\s*/\\s*\\d+\\s+m\\s?\\d).*");

    private final TerminalPlace place;

    @Mixin
    private BriefChoice briefChoice;

    @Option(names = "--train", paramLabel = "TRAIN", descriptionKey = "option.why.train")
    private String train;

    @Option(names = "--cost", descriptionKey = "option.why.cost")
    private boolean cost;

    @Option(names = "--option", paramLabel = "NUMBER", converter = WholeNumber.class, descriptionKey = "option.option")
    private Integer option;

    @Mixin
    private HoldChoice holds;

    @Mixin
    private StopChoice stop;

    @Mixin
    private UnitsChoice units;

    @Option(names = "--json", descriptionKey = "option.json")
    private boolean json;

    WhyCommand(TerminalPlace place) {
        this.place = place;
    }

    @Override
    public Integer call() {
        if (train != null && cost) {
            throw RefusedInput.of("train-and-cost");
        }
        if (option != null && !cost) {
            throw RefusedInput.of("option-without-cost", option);
        }
        Brief brief = holds.applyTo(briefChoice.brief(), place);
        BooleanSupplier until = stop.from(place);
        if (train != null) {
            return train(brief, typed(train), until).number();
        }
        return (cost ? costs(brief, until) : noTrain(brief, until)).number();
    }

    private ExitCode noTrain(Brief brief, BooleanSupplier until) {
        WhyNoTrain why = watched(progress -> WhyNoTrain.of(brief, found -> {}, progress, until));
        boolean stopped = until.getAsBoolean()
                || (why.clashes().list().isEmpty() && !why.clashes().complete());
        print(() -> WhyJson.of(brief, why), () -> new WhyReport(brief, units.system()).lines(why));
        ExitCode known = why.clashes().none() ? ExitCode.DONE : ExitCode.NO_TRAIN;
        return stopped ? ExitCode.STOPPED : known;
    }

    private ExitCode train(Brief brief, Train asked, BooleanSupplier until) {
        TrainRater rater = new TrainRater(brief);
        Rating rating = rater.rate(asked);
        Optional<SearchOutcome> outcome = rating.feasible() ? Optional.of(search(brief, until)) : Optional.empty();
        List<Rating> front = outcome.map(SearchOutcome::front).orElse(List.of());
        Optional<Rating> comparable = outcome.isPresent() ? roomed(rater, rating) : Optional.of(rating);
        if (comparable.isEmpty()) {
            return refused("why.noRoom", ExitCode.STOPPED);
        }
        Brief searched = outcome.map(ended -> ended.searched(brief)).orElse(brief);
        Standing found = Standing.of(comparable.get(), front, searched);
        Standing standing =
                outcome.filter(SearchOutcome.Stopped.class::isInstance).isPresent() ? found : found.proved();
        print(
                () -> WhyJson.of(brief, standing, front),
                () -> new WhyReport(brief, units.system()).lines(standing, front));
        return switch (standing.place()) {
            case MISSES, NO_PLACES -> ExitCode.DEMAND_MISSED;
            case NOT_BEATEN_SO_FAR -> ExitCode.STOPPED;
            default -> until.getAsBoolean() ? ExitCode.STOPPED : ExitCode.DONE;
        };
    }

    /**
     * The rating with the room that the train takes, where the brief wants that small and the train has places; empty if that
     * is not known. A limit is the search's; one train is placed in moments.
     */
    private Optional<Rating> roomed(TrainRater rater, Rating rating) {
        Rating roomed = LeastRooms.roomed(rater, rating, place.interrupted());
        boolean unknown = RoomWording.of(rater.brief(), FigureWording.in(units.system()))
                .filter(room -> !room.known(roomed))
                .isPresent();
        return unknown && place.interrupted().getAsBoolean() ? Optional.empty() : Optional.of(roomed);
    }

    private ExitCode costs(Brief brief, BooleanSupplier until) {
        return search(brief, until)
                .fold(
                        proved -> costs(brief, proved, until),
                        stopped -> refused("why.cost.stopped", ExitCode.STOPPED),
                        none -> refused("why.none", ExitCode.NO_TRAIN, brief.name()));
    }

    private ExitCode costs(Brief brief, SearchOutcome.Proved proved, BooleanSupplier until) {
        List<Rating> front = proved.front();
        int number = option == null ? 1 : option;
        if (number > front.size()) {
            throw RefusedInput.of("option", number, front.size());
        }
        Rating chosen = front.get(number - 1);
        List<Cost> costs = watched(
                progress -> DemandCosts.of(brief, proved.stepsTimes(), chosen.train(), told -> {}, progress, until));
        boolean complete = !until.getAsBoolean() && costs.stream().allMatch(Cost::proved);
        print(
                () -> WhyJson.of(brief, number, chosen, costs, complete),
                () -> new WhyReport(brief, units.system()).lines(number, chosen, costs, complete));
        return complete ? ExitCode.DONE : ExitCode.STOPPED;
    }

    private SearchOutcome search(Brief brief, BooleanSupplier until) {
        return watched(progress -> TrainSearch.run(brief, progress, until));
    }

    private <T> T watched(Function<ProgressLine, T> work) {
        try (ProgressLine progress = ProgressLine.on(place, units.system())) {
            return work.apply(progress);
        }
    }

    private void print(Supplier<ObjectNode> document, Supplier<List<String>> lines) {
        if (json) {
            JsonOutput.print(document.get(), place.out());
        } else {
            lines.get().forEach(place.out()::println);
        }
    }

    private ExitCode refused(String key, ExitCode code, Object... values) {
        place.err().println(Phrases.phrase(key, values));
        return code;
    }

    private static Train typed(String text) {
        return LINE.matcher(text).matches()
                ? SheetTexts.accepted("--train", TrainNotation.read(text)).train()
                : SheetTexts.train(text).train();
    }
}
