// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.terminal;

import drumfall.solver.quantity.Dimension;
import drumfall.solver.quantity.UnitSystem;
import drumfall.solver.rating.DemandFigure;
import drumfall.solver.rating.Rating;
import drumfall.solver.rating.TrainRater;
import drumfall.solver.rating.placing.WeightBesideBob;
import drumfall.solver.train.Train;
import drumfall.ui.wording.Cautions;
import drumfall.ui.wording.DemandWording;
import drumfall.ui.wording.FigureWording;
import drumfall.ui.wording.PlaceWording;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** Every figure of one train, for people. */
final class RatingReport {
    private final TrainRater rater;
    private final FigureWording figures;
    private final DemandWording demands;

    RatingReport(TrainRater rater, UnitSystem system) {
        this.rater = rater;
        this.figures = FigureWording.in(system);
        this.demands = new DemandWording(rater.brief(), system);
    }

    List<String> lines(String name, Rating rating, TrainPlaces places, OptionalDouble weight) {
        ArborTables arbors = new ArborTables(figures);
        List<String> lines = new ArrayList<>();
        lines.add(Phrases.phrase("rate.heading", name, rater.brief().name()));
        lines.add(FigureWording.train(rating.train()));
        lines.add(verdict(rating));
        if (places.code() == ExitCode.DEMAND_MISSED) {
            lines.add(Phrases.phrase("rate.noPlace"));
        }
        section(lines, "rate.demands", demandTable(rating).lines());
        section(lines, "rate.objectives", objectiveTable(rating).lines());
        section(lines, "rate.run", run(rating));
        section(lines, "rate.weight", weight(rating));
        section(lines, "rate.meshes", arbors.meshes(rating).lines());
        lines.add(Phrases.phrase("rate.teeth", rater.movement().teeth().label()));
        section(lines, "rate.arbors", arbors.turning(rating.train()).lines());
        section(lines, "rate.places", places(rating.train(), places, weight));
        section(lines, "rate.torques", arbors.torques(rating).lines());
        weight.ifPresent(hung -> power(lines, new PowerReport(rater, rating.train(), hung, figures)));
        lines.add("");
        lines.addAll(Paragraph.lines(Cautions.ofTheHangingWeight()));
        return lines;
    }

    /** Where the arbors stand, and what weight is enough there. */
    private List<String> places(Train train, TrainPlaces places, OptionalDouble weight) {
        List<String> lines = new ArrayList<>(new PlacesReport(figures, train).lines(places));
        places.leastWeight(rater, train)
                .ifPresent(least -> lines.add(Phrases.phrase("rate.weight.placed", figures.weight(least))));
        places.beside(rater, train, weight).ifPresent(beside -> lines.add(beside(beside)));
        return lines;
    }

    private String beside(WeightBesideBob beside) {
        return Phrases.phrase(
                "rate.bob." + beside.verdict().name(),
                figures.figure(Dimension.LENGTH, beside.gap()),
                figures.figure(Dimension.LENGTH, beside.furtherAside()),
                figures.figure(Dimension.LENGTH, beside.leastBehindPlate()));
    }

    private static void power(List<String> lines, PowerReport power) {
        section(lines, "rate.answers", power.answers());
        section(lines, "rate.books", power.books());
        section(lines, "rate.changes", power.changes());
    }

    private static void section(List<String> lines, String key, List<String> body) {
        lines.add("");
        lines.add(Phrases.phrase(key));
        body.forEach(line -> lines.add("  " + line));
    }

    private static String verdict(Rating rating) {
        long missed = rating.missed().count();
        return missed == 0
                ? Phrases.phrase("rate.met", rating.demands().size())
                : Phrases.phrase("rate.missed", missed, rating.demands().size());
    }

    private TextTable demandTable(Rating rating) {
        TextTable table = TextTable.of("rate.demands.columns");
        for (DemandFigure demand : rating.demands()) {
            table.row(
                    Phrases.phrase(demand.met() ? "demand.met" : "demand.missed"),
                    DemandWording.name(demand.demand()),
                    PlaceWording.of(demand.place()),
                    demands.figure(demand),
                    demands.limit(demand));
        }
        return table;
    }

    private TextTable objectiveTable(Rating rating) {
        TextTable table = TextTable.of("rate.objectives.columns");
        var asked = rater.brief().objectives();
        for (int i = 0; i < asked.size(); i++) {
            table.row(
                    FigureWording.name(asked.get(i).figure()),
                    figures.objective(asked.get(i), rating.objectiveValues().get(i)),
                    asked.get(i).resolution().map(Object::toString).orElse(""));
        }
        return table;
    }

    private List<String> run(Rating rating) {
        Train train = rating.train();
        var going = train.going();
        var drum = rater.limits().drumRun(train.drumDiameter(), train.reeving());
        var fall = rater.brief().fall();
        String seconds = going.secondsArbor().isPresent()
                ? Phrases.phrase("rate.run.seconds", going.secondsArbor().getAsInt() + 1)
                : Phrases.phrase("rate.run.noSeconds");
        double line = drum.lineLength(fall.topLead().si(), fall.tieOff().si());
        return List.of(
                Phrases.phrase("rate.run.duration", figures.duration(rating)),
                Phrases.phrase(
                        "rate.run.drum", figures.drum(train), train.reeving().falls()),
                Phrases.phrase(going.lineOnTheRight() ? "rate.run.right" : "rate.run.left"),
                Phrases.phrase("rate.run.line", figures.figure(Dimension.LENGTH, line)),
                Phrases.phrase(
                        "rate.run.beat",
                        FigureWording.exact(going.beatsPerHour()),
                        figures.beatsPerHour(rating),
                        FigureWording.exact(going.secondsPerBeat())),
                Phrases.phrase("rate.run.pendulum", figures.pendulumLength(rating)),
                seconds);
    }

    private List<String> weight(Rating rating) {
        var figure = rating.weight();
        return List.of(
                Phrases.phrase("rate.weight.least", figures.leastWeight(rating), figures.leastWeightBand(rating)),
                Phrases.phrase("rate.weight.deciding." + figure.deciding().name()),
                Phrases.phrase(
                        "rate.weight.recommended",
                        figures.recommendedWeight(rating),
                        rater.brief().weight().reserve().text()),
                Phrases.phrase(
                        "rate.weight.escape",
                        figures.figure(Dimension.TORQUE, figure.need().torque()),
                        figures.figure(Dimension.ANGLE, figure.need().semiArc()),
                        figures.figure(Dimension.TIME, figure.need().memory())),
                Phrases.phrase("rate.weight.filament", figures.filament(rating)));
    }
}
