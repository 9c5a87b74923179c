// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.terminal;

import drumfall.solver.brief.Arrangement;
import drumfall.solver.brief.Brief;
import drumfall.solver.brief.Objective;
import drumfall.solver.brief.ObjectiveFigure;
import drumfall.solver.brief.RoomFigure;
import drumfall.solver.quantity.Dimension;
import drumfall.solver.quantity.UnitSystem;
import drumfall.solver.rating.Demand;
import drumfall.solver.rating.Rating;
import drumfall.solver.rating.placing.TrainPlacing;
import drumfall.solver.search.Clash;
import drumfall.solver.search.SearchOutcome;
import drumfall.solver.search.SearchSettings;
import drumfall.ui.wording.Cautions;
import drumfall.ui.wording.DemandWording;
import drumfall.ui.wording.FigureWording;
import drumfall.ui.wording.LockWording;
import drumfall.ui.wording.RoomWording;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;

/** A front as a table for people. */
final class FrontTable {
    /** Objectives that have a column of their own in every table. */
    private static final Set<ObjectiveFigure> ALWAYS_SHOWN =
            EnumSet.of(ObjectiveFigure.RECOMMENDED_WEIGHT, ObjectiveFigure.FILAMENT_MASS);

    private final Brief brief;
    private final UnitSystem system;
    private final FigureWording figures;
    private final Optional<RoomWording> room;

    FrontTable(Brief brief, UnitSystem system) {
        this.brief = brief;
        this.system = system;
        this.figures = FigureWording.in(system);
        this.room = RoomWording.of(brief, figures);
    }

    List<String> lines(SearchOutcome outcome, List<TrainPlaces> places) {
        List<String> lines = new ArrayList<>();
        lines.add(outcome.fold(
                proved -> heading("proved", proved.front()),
                stopped -> heading("stopped", stopped.front()),
                noTrain -> Phrases.phrase("front.none", brief.name()) + grid(noTrain.clash())));
        if (outcome.stepsTimes() > 1) {
            lines.add(Phrases.phrase("front.steps", SearchSettings.MOST_TRAINS, outcome.stepsTimes()));
        }
        LockWording.clauses(brief.locks()).forEach(clause -> lines.add(Phrases.phrase("front.held", clause)));
        lines.addAll(outcome.fold(
                proved -> body(proved.front(), places),
                stopped -> body(stopped.front(), places),
                noTrain -> new DemandWording(brief, system).lines(noTrain.clash())));
        return lines;
    }

    private String heading(String key, List<Rating> front) {
        String heading = front.size() == 1
                ? Phrases.phrase("front." + key + ".one", brief.name())
                : Phrases.phrase("front." + key, brief.name(), front.size());
        return heading + grid();
    }

    private String grid() {
        return placed() ? Phrases.phrase("front.grid", PlacesReport.step(TrainPlacing.GRID)) : "";
    }

    /** That no train exists rests on the directions tried only where places are part of why. */
    private String grid(Clash clash) {
        boolean placesClash = clash.demands().stream().anyMatch(held -> held.demand() == Demand.CLEARANCE);
        return placesClash ? grid() : "";
    }

    private boolean placed() {
        return brief.frame().arrangement() != Arrangement.UNPLACED;
    }

    private List<String> body(List<Rating> front, List<TrainPlaces> places) {
        if (front.isEmpty()) {
            return List.of();
        }
        List<String> lines = new ArrayList<>();
        lines.add("");
        lines.addAll(table(front, places).lines());
        lines.add("");
        lines.addAll(Paragraph.lines(List.of(Phrases.phrase("front.notes"), sizes())));
        lines.addAll(Paragraph.lines(Cautions.ofTheHangingWeight()));
        return lines;
    }

    private String sizes() {
        return room.map(FrontTable::sizes)
                .orElseGet(() -> Phrases.phrase(placed() ? "front.placed" : "front.unplaced"));
    }

    private static String sizes(RoomWording room) {
        return room.enough()
                .map(enough -> Phrases.phrase("front.room.enough", room.name(), room.resolution(), enough))
                .orElseGet(() -> Phrases.phrase("front.room", room.name(), room.resolution()));
    }

    /** The plate is no part of the size in words, so it stands by itself where trains are told apart by it. */
    private boolean plateCounts() {
        return room.filter(wanted -> wanted.least().figure() == RoomFigure.PLATE_AREA)
                .isPresent();
    }

    private TextTable table(List<Rating> front, List<TrainPlaces> places) {
        List<String> headings =
                new ArrayList<>(Arrays.asList(Phrases.phrase("front.columns").split("\\|", -1)));
        shownObjectives()
                .forEach(i -> headings.add(">" + FigureWording.name(objective(i).figure())));
        if (placed()) {
            headings.add(Phrases.phrase("front.size"));
        }
        if (plateCounts()) {
            headings.add(Phrases.phrase("front.plate"));
        }
        TextTable table = new TextTable(headings);
        for (int option = 1; option <= front.size(); option++) {
            table.row(cells(option, front.get(option - 1), places.get(option - 1)));
        }
        return table;
    }

    private List<String> cells(int option, Rating rating, TrainPlaces places) {
        List<String> cells = new ArrayList<>(List.of(
                String.valueOf(option),
                FigureWording.train(rating.train()),
                figures.drum(rating.train()),
                String.valueOf(rating.train().reeving().falls()),
                figures.duration(rating),
                figures.beatsPerHour(rating),
                figures.pendulumLength(rating),
                figures.leastWeight(rating),
                figures.leastWeightBand(rating),
                figures.recommendedWeight(rating),
                figures.filament(rating)));
        shownObjectives()
                .forEach(i -> cells.add(
                        figures.objective(objective(i), rating.objectiveValues().get(i))));
        if (placed()) {
            cells.add(places.layout()
                    .map(new PlacesWording(figures)::size)
                    .orElseGet(() ->
                            Phrases.phrase("front.size." + places.standing().name())));
        }
        if (plateCounts()) {
            cells.add(places.layout()
                    .map(layout -> figures.figure(Dimension.AREA, layout.size().plateArea()))
                    .orElse(""));
        }
        return cells;
    }

    private IntStream shownObjectives() {
        return IntStream.range(0, brief.objectives().size())
                .filter(i -> !ALWAYS_SHOWN.contains(objective(i).figure()));
    }

    private Objective objective(int index) {
        return brief.objectives().get(index);
    }
}
