// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.terminal;

import drumfall.solver.brief.Brief;
import drumfall.solver.brief.Objective;
import drumfall.solver.explain.Clashes;
import drumfall.solver.explain.Cost;
import drumfall.solver.explain.MinimalClash;
import drumfall.solver.explain.Nearest;
import drumfall.solver.explain.Standing;
import drumfall.solver.explain.WhyNoTrain;
import drumfall.solver.quantity.UnitSystem;
import drumfall.solver.rating.DemandFigure;
import drumfall.solver.rating.Rating;
import drumfall.ui.wording.DemandWording;
import drumfall.ui.wording.EasingWording;
import drumfall.ui.wording.FigureWording;
import drumfall.ui.wording.LockWording;
import drumfall.ui.wording.PlaceWording;
import drumfall.ui.wording.RoomWording;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** Answers to why, for people. */
final class WhyReport {
    /** Options that beat a train are told in full up to so many. */
    private static final int OPTIONS_IN_FULL = 5;

    private final Brief brief;
    private final FigureWording figures;
    private final DemandWording demands;
    private final EasingWording easings;
    private final Optional<RoomWording> room;

    WhyReport(Brief brief, UnitSystem system) {
        this.brief = brief;
        this.figures = FigureWording.in(system);
        this.demands = new DemandWording(brief, system);
        this.easings = new EasingWording(system);
        this.room = RoomWording.of(brief, figures);
    }

    List<String> lines(WhyNoTrain why) {
        List<String> lines = new ArrayList<>();
        Clashes clashes = why.clashes();
        if (clashes.none()) {
            lines.add(Phrases.phrase("why.trains", brief.name()));
            return lines;
        }
        lines.add(Phrases.phrase(clashes.list().isEmpty() ? "why.unknown" : "why.none", brief.name()));
        LockWording.clauses(brief.locks()).forEach(clause -> lines.add(Phrases.phrase("front.held", clause)));
        if (clashes.list().isEmpty()) {
            return lines;
        }
        lines.addAll(demands.lines(clashes));
        for (int i = 0; i < clashes.list().size(); i++) {
            clash(i, clashes.list().get(i), lines);
        }
        nearest(why.nearest(), lines);
        return lines;
    }

    private void clash(int index, MinimalClash clash, List<String> lines) {
        if (!clash.demands().isEmpty()) {
            lines.add(demands.heading(index + 1, clash));
            clash.demands().forEach(held -> lines.add("  " + demands.line(held)));
        }
    }

    private static void nearest(List<Nearest> nearest, List<String> lines) {
        Map<Boolean, List<String>> parts = nearest.stream()
                .filter(found -> found.standing().isEmpty())
                .collect(Collectors.partitioningBy(
                        found -> found.verdict() == Nearest.Verdict.NEAREST,
                        Collectors.mapping(WhyReport::line, Collectors.toList())));
        section("why.nearest", parts.get(true), lines);
        section("why.others", parts.get(false), lines);
        standing(nearest).forEach((clash, names) -> {
            lines.add("");
            lines.addAll(Paragraph.lines(List.of(Phrases.phrase("why.standing", clash + 1, String.join("; ", names)))));
        });
    }

    private static Map<Integer, List<String>> standing(List<Nearest> nearest) {
        return nearest.stream()
                .filter(found -> found.standing().isPresent())
                .collect(Collectors.groupingBy(
                        found -> found.standing().getAsInt(),
                        TreeMap::new,
                        Collectors.mapping(found -> EasingWording.name(found.easing()), Collectors.toList())));
    }

    private static String line(Nearest nearest) {
        String train = nearest.train()
                .map(rating -> "  (" + FigureWording.train(rating.train()) + ")")
                .orElse("");
        return EasingWording.line(nearest) + train;
    }

    private static void section(String key, List<String> body, List<String> lines) {
        if (!body.isEmpty()) {
            lines.add("");
            lines.add(Phrases.phrase(key));
            body.forEach(line -> lines.add("  " + line));
        }
    }

    List<String> lines(Standing standing, List<Rating> front) {
        Rating rating = standing.rating();
        List<String> lines = new ArrayList<>();
        lines.add(Phrases.phrase("rate.heading", FigureWording.train(rating.train()), brief.name()));
        switch (standing.place()) {
            case MISSES -> missed(rating, lines);
            case LISTED ->
                lines.add(Phrases.phrase("why.listed", standing.options().get(0)));
            case STOOD_FOR -> lines.add(stoodFor(rating, standing.options().get(0), front));
            case BEATEN -> beaten(standing, front, lines);
            case NOT_BEATEN_SO_FAR -> lines.add(Phrases.phrase("why.notBeaten"));
            case NO_PLACES -> lines.add(Phrases.phrase("why.noPlaces"));
        }
        return lines;
    }

    private String stoodFor(Rating own, int number, List<Rating> front) {
        String train = FigureWording.train(front.get(number - 1).train());
        return room.filter(wanted -> wanted.known(own))
                .map(wanted -> Phrases.phrase("why.stoodFor.room", number, train, wanted.name()))
                .orElseGet(() -> Phrases.phrase("why.stoodFor", number, train));
    }

    private void missed(Rating rating, List<String> lines) {
        lines.add(Phrases.phrase(
                "why.missed", rating.missed().count(), rating.demands().size()));
        TextTable table = TextTable.of("why.missed.columns");
        for (DemandFigure demand : rating.missed().toList()) {
            table.row(
                    DemandWording.name(demand.demand()),
                    PlaceWording.of(demand.place()),
                    demands.figure(demand),
                    demands.limit(demand));
        }
        table.lines().forEach(line -> lines.add("  " + line));
    }

    private void beaten(Standing standing, List<Rating> front, List<String> lines) {
        List<Integer> options = standing.options();
        lines.add(Phrases.phrase("why.beaten", options.size()));
        for (int number : options.subList(0, Math.min(OPTIONS_IN_FULL, options.size()))) {
            Rating option = front.get(number - 1);
            lines.add(Phrases.phrase("why.beaten.option", number, FigureWording.train(option.train())));
            better(standing.rating(), option).forEach(i -> lines.add("  " + difference(i, standing.rating(), option)));
            room.filter(wanted -> wanted.less(option, standing.rating()))
                    .ifPresent(wanted -> lines.add("  " + difference(wanted, standing.rating(), option)));
        }
        if (options.size() > OPTIONS_IN_FULL) {
            lines.add(Phrases.phrase(
                    "why.beaten.more",
                    options.subList(OPTIONS_IN_FULL, options.size()).stream()
                            .map(String::valueOf)
                            .collect(Collectors.joining(", "))));
        }
    }

    /** Indices of the objectives in which an option is in a lower cell. */
    static IntStream better(Rating own, Rating option) {
        return IntStream.range(0, own.objectiveValues().size())
                .filter(i ->
                        option.cell().numbers().get(i) < own.cell().numbers().get(i));
    }

    private String difference(int index, Rating own, Rating option) {
        Objective objective = brief.objectives().get(index);
        double was = own.objectiveValues().get(index);
        double is = option.objectiveValues().get(index);
        return Phrases.phrase(
                "why.beaten.figure",
                FigureWording.name(objective.figure()),
                figures.objective(objective, is),
                figures.objective(objective, was),
                figures.figure(objective.figure().dimension(), was - is));
    }

    private static String difference(RoomWording room, Rating own, Rating option) {
        return Phrases.phrase("why.beaten.room", room.name(), room.shown(option), room.shown(own), room.resolution());
    }

    List<String> lines(int number, Rating chosen, List<Cost> costs, boolean complete) {
        List<String> lines = new ArrayList<>();
        lines.add(Phrases.phrase("why.cost", brief.name(), number));
        lines.add(Phrases.phrase(
                "why.cost.option", number, FigureWording.train(chosen.train()), figures.recommendedWeight(chosen)));
        costs.forEach(cost -> lines.add("  " + easings.line(cost)));
        room.ifPresent(wanted -> lines.add(Phrases.phrase("why.cost.room", wanted.name())));
        if (!complete) {
            lines.add(Phrases.phrase("why.cost.ended"));
        }
        return lines;
    }
}
