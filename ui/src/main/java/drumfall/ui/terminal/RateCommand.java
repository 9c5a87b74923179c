// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.terminal;

import drumfall.solver.brief.Brief;
import drumfall.solver.brief.TrainSheet;
import drumfall.solver.rating.Rating;
import drumfall.solver.rating.TrainRater;
import drumfall.ui.wording.FigureWording;
import java.util.List;
import java.util.OptionalDouble;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Holds a train against a brief and prints every figure. */
@Command(name = "rate", mixinStandardHelpOptions = true, resourceBundle = Phrases.BUNDLE)
final class RateCommand implements Callable<Integer> {
    private final TerminalPlace place;

    @Parameters(index = "0", paramLabel = "BRIEF.json", descriptionKey = "option.rate.brief")
    private String briefFile;

    @Parameters(index = "1", paramLabel = "TRAIN.json", descriptionKey = "option.train")
    private String trainFile;

    @Mixin
    private UnitsChoice units;

    @Mixin
    private HangChoice hang;

    @Mixin
    private LayoutChoice layout;

    @Option(names = "--json", descriptionKey = "option.json")
    private boolean json;

    @Option(names = "--why", paramLabel = "FIGURE", arity = "0..1", fallbackValue = "", descriptionKey = "option.why")
    private String why;

    RateCommand(TerminalPlace place) {
        this.place = place;
    }

    @Override
    public Integer call() {
        Brief brief = SheetTexts.brief(briefFile);
        TrainSheet sheet = SheetTexts.train(trainFile);
        TrainRater rater = new TrainRater(brief);
        Rating rating = rater.rate(sheet.train());
        FigureWording figures = FigureWording.in(units.system());
        OptionalDouble weight = hang.weight(rater, rating, figures);
        TrainPlaces places = layout.places(rater, sheet.train(), place);
        layout.write(sheet.name(), places, place);
        if (json) {
            JsonOutput.print(RatingJson.of(rater, sheet.name(), rating, places, weight), place.out());
        } else {
            report(rater, sheet.name(), rating, places, weight).forEach(place.out()::println);
        }
        return (rating.feasible() ? places.code() : ExitCode.DEMAND_MISSED).number();
    }

    private List<String> report(
            TrainRater rater, String name, Rating rating, TrainPlaces places, OptionalDouble weight) {
        if (why == null) {
            return new RatingReport(rater, units.system()).lines(name, rating, places, weight);
        }
        CardReport cards = new CardReport(
                new AllCards(rater, rating, places.book(rater, rating), weight), FigureWording.in(units.system()));
        return why.isEmpty() ? cards.contents() : cards.chain(why);
    }
}
