// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.presenter;

import drumfall.solver.brief.Brief;
import drumfall.solver.power.PowerPath;
import drumfall.solver.power.pendulum.FiniteArc;
import drumfall.solver.power.pendulum.Pendulum;
import drumfall.solver.quantity.Dimension;
import drumfall.solver.quantity.Quantity;
import drumfall.solver.quantity.UnitSystem;
import drumfall.solver.rating.Rating;
import drumfall.solver.rating.TrainRater;
import drumfall.solver.train.DrumRun;
import drumfall.solver.train.Mesh;
import drumfall.solver.train.Reeving;
import drumfall.ui.presenter.ShownFigure.Rounding;
import drumfall.ui.presenter.WhereCard.Input;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** Says of each figure of a rated train what it is and where it comes from. */
public final class WhereFrom {
    private static final double SECONDS_PER_HOUR = 3600;

    private final Rating rating;
    private final Brief brief;
    private final UnitSystem units;
    private final DrumRun drum;

    /**
     * The figures of a train.
     *
     * @param rating the train, rated
     * @param brief the brief it is rated against
     * @param units which units are read
     */
    public WhereFrom(Rating rating, Brief brief, UnitSystem units) {
        this.rating = rating;
        this.brief = brief;
        this.units = units;
        this.drum = new TrainRater(brief)
                .limits()
                .drumRun(rating.train().drumDiameter(), rating.train().reeving());
    }

    /** A figure's value as it is shown. */
    public ShownFigure value(Figure figure) {
        return switch (figure) {
            case DURATION -> ShownFigure.of(Dimension.TIME, hours() * SECONDS_PER_HOUR, units, Rounding.DOWN);
            case HOURS_PER_DRUM_TURN -> time(rating.train().hoursPerTurn(0) * SECONDS_PER_HOUR);
            case DRUM_TURNS -> ShownFigure.of(Dimension.NUMBER, drum.turns(), units);
            case BEATS_PER_HOUR -> ShownFigure.of(Dimension.NUMBER, beatsPerHour(), units);
            case BEAT -> time(rating.train().secondsPerBeat());
            case PENDULUM_LENGTH -> length(rating.pendulumLength());
            case RECOMMENDED_WEIGHT -> mass(rating.recommendedWeight());
            case LEAST_WEIGHT -> mass(rating.weight().leastWeight());
            case LINE_TENSION -> ShownFigure.of(Dimension.FORCE, deciding().tension(), units, Rounding.UP);
            case ESCAPE_TORQUE ->
                ShownFigure.of(Dimension.TORQUE, rating.weight().need().torque(), units, Rounding.UP);
            case LINE_LENGTH -> length(lineLength());
            case FILAMENT -> ShownFigure.of(Dimension.MASS, rating.filamentMass(), units);
        };
    }

    private double hours() {
        return rating.durationRoundedDown().doubleValue();
    }

    private double beatsPerHour() {
        return rating.train().going().beatsPerHour().doubleValue();
    }

    private double lineLength() {
        return drum.lineLength(
                brief.fall().topLead().si(), brief.fall().tieOff().si());
    }

    private PowerPath deciding() {
        return rating.weight().running().criterion() == rating.weight().deciding()
                ? rating.weight().running()
                : rating.weight().binding();
    }

    private ShownFigure time(double seconds) {
        return ShownFigure.of(Dimension.TIME, seconds, units);
    }

    private ShownFigure length(double metres) {
        return ShownFigure.of(Dimension.LENGTH, metres, units);
    }

    private ShownFigure mass(double kilograms) {
        return ShownFigure.of(Dimension.MASS, kilograms, units, Rounding.UP);
    }

    /** The card of a figure. */
    public WhereCard card(Figure figure) {
        String variant = variant(figure);
        return new WhereCard(
                figure.title(),
                value(figure),
                Texts.of("formula." + variant),
                inputs(figure),
                Texts.of("source." + figure.name()));
    }

    /** The formula of a weight depends on the reeving. */
    private String variant(Figure figure) {
        boolean pulley = figure == Figure.LEAST_WEIGHT && rating.train().reeving() == Reeving.DOUBLE;
        return pulley ? figure.name() + ".pulley" : figure.name();
    }

    private List<Input> inputs(Figure figure) {
        return switch (figure) {
            case DURATION -> List.of(chained("R", Figure.HOURS_PER_DRUM_TURN), chained("n_d", Figure.DRUM_TURNS));
            case HOURS_PER_DRUM_TURN -> counts(rating.train().above());
            case DRUM_TURNS ->
                List.of(falls(), typed("F", "/fall/height", brief.fall().height()), drumSize(), lineSize());
            case BEATS_PER_HOUR -> beats();
            case BEAT -> List.of(chained("B", Figure.BEATS_PER_HOUR));
            case PENDULUM_LENGTH -> pendulum();
            case RECOMMENDED_WEIGHT ->
                List.of(
                        chained("W", Figure.LEAST_WEIGHT),
                        typed("s", "/weight/reserve", brief.weight().reserve()));
            case LEAST_WEIGHT -> weight();
            case LINE_TENSION -> tension();
            case ESCAPE_TORQUE -> escape();
            case LINE_LENGTH -> line();
            case FILAMENT -> filament();
        };
    }

    private List<Input> beats() {
        List<Input> inputs = new ArrayList<>(counts(rating.train().below()));
        inputs.add(plain("N", "input.escape", Integer.toString(rating.train().escapeTeeth())));
        return inputs;
    }

    private List<Input> counts(List<Mesh> meshes) {
        String product = meshes.stream().map(mesh -> mesh.counts().toString()).collect(Collectors.joining(" · "));
        return List.of(plain("∏ z/p", "input.counts", product));
    }

    private List<Input> pendulum() {
        double arc = rating.weight().need().semiArc();
        return List.of(
                chained("t", Figure.BEAT),
                gravity(),
                plain(
                        "A",
                        "input.arc",
                        ShownFigure.of(Dimension.ANGLE, arc, units).text()),
                plain("C(A)", "input.period", "%.6f".formatted(FiniteArc.periodRatio(arc))));
    }

    private List<Input> weight() {
        List<Input> inputs = new ArrayList<>(List.of(chained("S", Figure.LINE_TENSION), gravity()));
        if (rating.train().reeving() == Reeving.DOUBLE) {
            inputs.add(typed("η", "/line/pulleyEfficiency", brief.line().pulleyEfficiency()));
        }
        inputs.add(plain(
                "", "input.criterion", Texts.of("criterion." + rating.weight().deciding())));
        inputs.add(plain(
                "",
                "input.band",
                mass(rating.leastSmoothest()).text() + " – "
                        + mass(rating.leastRoughest()).text()));
        return inputs;
    }

    private List<Input> tension() {
        PowerPath path = deciding();
        double load = path.arbors().get(0).load();
        return List.of(
                chained("M_e", Figure.ESCAPE_TORQUE),
                plain(
                        "M_0",
                        "input.load",
                        ShownFigure.of(Dimension.TORQUE, load, units).text()),
                drumSize(),
                lineSize(),
                typed(
                        "µ",
                        "/friction/bores/low",
                        brief.friction().bores().low(),
                        brief.friction().bores().high()),
                typed(
                        "µ_t",
                        "/friction/teeth/low",
                        brief.friction().teeth().low(),
                        brief.friction().teeth().high()));
    }

    private List<Input> escape() {
        double loss = rating.weight().need().pendulumLoss();
        return List.of(
                plain("E π/Q", "input.loss", "%.3g µJ".formatted(loss * 1e6)),
                typed(
                        "Q",
                        "/pendulum/quality/low",
                        brief.pendulum().quality().low(),
                        brief.pendulum().quality().high()),
                typed("λ", "/escapement/lift", brief.escapement().lift()),
                typed("ℓ", "/escapement/lock", brief.escapement().lock()),
                typed("d", "/escapement/drop", brief.escapement().drop()),
                plain("N", "input.escape", Integer.toString(rating.train().escapeTeeth())));
    }

    private List<Input> line() {
        return List.of(
                falls(),
                typed("F", "/fall/height", brief.fall().height()),
                typed("l_t", "/fall/topLead", brief.fall().topLead()),
                drumSize(),
                lineSize(),
                typed("l_k", "/fall/tieOff", brief.fall().tieOff()));
    }

    private List<Input> filament() {
        return List.of(
                typed("ρ", "/material/density", brief.material().density()),
                typed("t", "/parts/wheelThickness", brief.parts().wheelThickness()),
                typed("s", "/parts/solidShare", brief.parts().solidShare()),
                typed("l", "/parts/pinionLength", brief.parts().pinionLength()));
    }

    private Input chained(String symbol, Figure figure) {
        return new Input(symbol, figure.title(), value(figure).text(), Optional.of(figure), Optional.empty());
    }

    private Input falls() {
        return plain(
                "k", "input.falls", Integer.toString(rating.train().reeving().falls()));
    }

    private Input drumSize() {
        return plain(
                "D",
                "input.drum",
                length(rating.train().drumDiameter().doubleValue()).text());
    }

    private Input lineSize() {
        return typed("u", "/line/diameter", brief.line().diameter());
    }

    private static Input gravity() {
        return plain("g", "input.gravity", Pendulum.STANDARD_GRAVITY + " m/s²");
    }

    private static Input plain(String symbol, String key, String value) {
        return new Input(symbol, Texts.of(key), value, Optional.empty(), Optional.empty());
    }

    /** What was typed, both ends of a band. */
    private static Input typed(String symbol, String pointer, Quantity... values) {
        String meaning = BriefSheet.rowOf(pointer).map(SheetRow::label).orElse(pointer);
        String text = java.util.Arrays.stream(values).map(Quantity::text).collect(Collectors.joining(" – "));
        return new Input(symbol, meaning, text, Optional.empty(), Optional.of(pointer));
    }
}
