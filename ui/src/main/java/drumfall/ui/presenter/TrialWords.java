// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.presenter;

import drumfall.solver.brief.Brief;
import drumfall.solver.brief.Objective;
import drumfall.solver.explain.Standing;
import drumfall.solver.quantity.UnitSystem;
import drumfall.solver.rating.DemandFigure;
import drumfall.solver.rating.Rating;
import drumfall.ui.presenter.TrialStanding.Better;
import drumfall.ui.wording.FigureWording;
import drumfall.ui.wording.RoomWording;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Words for how a tried train stands to brief and front. */
final class TrialWords {
    private final Brief brief;
    private final UnitSystem units;
    private final FigureWording figures;
    private final Optional<RoomWording> room;

    TrialWords(Brief brief, UnitSystem units) {
        this.brief = brief;
        this.units = units;
        this.figures = FigureWording.in(units);
        this.room = RoomWording.of(brief, figures);
    }

    /**
     * How a train stands.
     *
     * @param tried the train, with the room that it takes where the brief wants that small and it has places
     * @param front the front of the same brief, if there is one yet
     * @param places whether its arbors have places; asked where nothing on a proved front beats it, or where room counts
     */
    TrialStanding of(Rating tried, Optional<Front> front, TriedTrain.Places places) {
        if (!tried.feasible()) {
            return missing(tried);
        }
        if (front.isEmpty()) {
            return TrialStanding.plain(Texts.of("tried.unknown"));
        }
        boolean placesCount = room.isPresent() && places != TriedTrain.Places.NONE;
        if (placesCount && !room.get().known(tried)) {
            return TrialStanding.plain(
                    Texts.of("tried.room." + places.name(), room.get().name()));
        }
        List<Rating> ratings = front.get().ratings();
        Standing standing = Standing.of(tried, ratings, front.get().searched());
        List<Rating> named = standing.options().stream()
                .map(number -> ratings.get(number - 1))
                .toList();
        return switch (standing.place()) {
            case LISTED -> TrialStanding.plain(Texts.of("tried.listed"));
            case STOOD_FOR -> stoodFor(tried, named.get(0));
            case BEATEN -> beaten(tried, named);
            default ->
                TrialStanding.plain(Texts.of(
                        front.get().standing() == Front.Standing.PROVED
                                ? "tried.places." + places.name()
                                : "tried.sofar"));
        };
    }

    private TrialStanding missing(Rating tried) {
        List<BriefLink> missed = tried.missed()
                .map(figure -> new BriefLink(DemandMarks.missed(figure, units), pointer(figure)))
                .toList();
        String sentence = missed.size() == 1 ? Texts.of("tried.misses.one") : Texts.of("tried.misses", missed.size());
        return new TrialStanding(Texts.of("tried.misses.first", missed.get(0).words()), sentence, missed, List.of());
    }

    private static String pointer(DemandFigure figure) {
        return figure.demand().pointer();
    }

    private TrialStanding stoodFor(Rating tried, Rating option) {
        String words = option.train().toString();
        Optional<String> alike = room.filter(wanted -> wanted.known(tried)).map(RoomWording::name);
        return new TrialStanding(
                alike.map(name -> Texts.of("tried.stood.by.room", words, name))
                        .orElseGet(() -> Texts.of("tried.stood.by", words)),
                alike.map(name -> Texts.of("tried.stood.room", name)).orElseGet(() -> Texts.of("tried.stood")),
                List.of(),
                List.of(new Better(option.train(), "")));
    }

    private TrialStanding beaten(Rating tried, List<Rating> options) {
        List<Better> better = options.stream()
                .map(option -> new Better(option.train(), differences(tried, option, "tried.figure")))
                .toList();
        Rating first = options.get(0);
        String shortly = Texts.of("tried.beaten.by", first.train(), differences(tried, first, "tried.less"));
        String sentence = better.size() == 1 ? Texts.of("tried.beaten.one") : Texts.of("tried.beaten", better.size());
        return new TrialStanding(shortly, sentence, List.of(), better);
    }

    /** The objectives in which an option stands in a lower cell, and the room where that counts and is less. */
    private String differences(Rating tried, Rating option, String key) {
        Stream<String> objectives = IntStream.range(0, brief.objectives().size())
                .filter(i ->
                        option.cell().numbers().get(i) < tried.cell().numbers().get(i))
                .mapToObj(i -> difference(brief.objectives().get(i), tried, option, i, key));
        Stream<String> less = room.filter(wanted -> wanted.less(option, tried)).stream()
                .map(wanted -> Texts.of("tried.room", wanted.name(), wanted.shown(option), wanted.shown(tried)));
        return Stream.concat(objectives, less).collect(Collectors.joining(", "));
    }

    private String difference(Objective objective, Rating tried, Rating option, int index, String key) {
        double was = tried.objectiveValues().get(index);
        double is = option.objectiveValues().get(index);
        return Texts.of(
                key,
                FigureWording.name(objective.figure()),
                figures.figure(objective.figure().dimension(), was - is),
                figures.objective(objective, is),
                figures.objective(objective, was));
    }
}
