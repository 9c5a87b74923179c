// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.presenter;

import drumfall.solver.brief.Brief;
import drumfall.solver.brief.ObjectiveFigure;
import drumfall.solver.layout.MovementSize;
import drumfall.solver.quantity.Dimension;
import drumfall.solver.quantity.UnitSystem;
import drumfall.solver.rating.Rating;
import drumfall.solver.rating.TrainRater;
import drumfall.ui.presenter.ShownFigure.Rounding;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/** A column of the front's table; those with figures can also be an axis of the scatter. */
public enum FrontColumn {
    /** Least running weight with its reserve. */
    RECOMMENDED_WEIGHT(Dimension.MASS, Rounding.UP, Rating::recommendedWeight),
    /** Material in the printed parts. */
    FILAMENT(Dimension.MASS, Rounding.NEAREST, Rating::filamentMass),
    /** Tip diameter of the largest wheel. */
    LARGEST_WHEEL(Dimension.LENGTH, Rounding.NEAREST, ObjectiveFigure.LARGEST_WHEEL),
    /** Sum of all centre distances. */
    CENTRE_DISTANCES(Dimension.LENGTH, Rounding.NEAREST, ObjectiveFigure.CENTRE_DISTANCES),
    /** How long a winding lasts. */
    DURATION(
            Dimension.TIME,
            Rounding.DOWN,
            rating -> rating.durationRoundedDown().doubleValue() * 3600),
    /** Difference between the duration and the one wanted. */
    DURATION_ERROR(Dimension.TIME, Rounding.NEAREST, ObjectiveFigure.DURATION_ERROR),
    /** Beats an hour. */
    BEATS_PER_HOUR(
            Dimension.NUMBER,
            Rounding.NEAREST,
            rating -> rating.train().going().beatsPerHour().doubleValue()),
    /** Length of the simple pendulum. */
    PENDULUM_LENGTH(Dimension.LENGTH, Rounding.NEAREST, Rating::pendulumLength),
    /** Least running weight. */
    LEAST_WEIGHT(Dimension.MASS, Rounding.UP, rating -> rating.weight().leastWeight()),
    /** Number of meshes. */
    MESHES(Dimension.NUMBER, Rounding.NEAREST, rating -> rating.train().meshes().size()),
    /** Number of different modules. */
    MODULES(Dimension.NUMBER, Rounding.NEAREST, ObjectiveFigure.MODULES),
    /** Diameter of the drum. */
    DRUM(
            Dimension.LENGTH,
            Rounding.NEAREST,
            rating -> rating.train().drumDiameter().doubleValue()),
    /** Falls of line. */
    FALLS(Dimension.NUMBER, Rounding.NEAREST, rating -> rating.train().reeving().falls()),
    /** Teeth of the escape wheel. */
    ESCAPE_TEETH(Dimension.NUMBER, Rounding.NEAREST, rating -> rating.train().escapeTeeth()),
    /** Height of the parts where they stand. */
    MOVEMENT_HEIGHT(PlacedSize.Figure.HEIGHT),
    /** Width of the parts where they stand. */
    MOVEMENT_WIDTH(PlacedSize.Figure.WIDTH),
    /** Depth over plates and motion work. */
    MOVEMENT_DEPTH(PlacedSize.Figure.DEPTH),
    /** Area of the smallest upright plate. */
    PLATE_AREA(PlacedSize.Figure.PLATE);

    private final Dimension dimension;
    private final Rounding rounding;

    @SuppressWarnings("ImmutableEnumChecker") // a pure function
    private final Figure figure;

    private final boolean placed;

    private interface Figure {
        double of(Rating rating, TrainRater rater, Optional<MovementSize> size);
    }

    FrontColumn(Dimension dimension, Rounding rounding, ToDoubleFunction<Rating> figure) {
        this.dimension = dimension;
        this.rounding = rounding;
        this.figure = (rating, rater, size) -> figure.applyAsDouble(rating);
        this.placed = false;
    }

    FrontColumn(Dimension dimension, Rounding rounding, ObjectiveFigure objective) {
        this.dimension = dimension;
        this.rounding = rounding;
        this.figure = (rating, rater, size) ->
                rater.objectives().value(objective, rating.train(), rating.recommendedWeight());
        this.placed = false;
    }

    FrontColumn(PlacedSize.Figure size) {
        this.dimension = size.dimension();
        this.rounding = Rounding.NEAREST;
        this.figure = (rating, rater, placed) -> placed.map(size::of).orElse(Double.NaN);
        this.placed = true;
    }

    /** Whether its figures are known of placed trains alone. */
    public boolean isOfPlaces() {
        return placed;
    }

    /** What it is called. */
    public String title() {
        return Texts.of("column." + name());
    }

    /** What its figures measure. */
    public Dimension dimension() {
        return dimension;
    }

    /**
     * Its figure of a train, SI units; not a number while it is not known.
     *
     * @param rating the train, rated
     * @param rater what rated it
     * @param size the room that the train takes where its arbors stand, if it is known
     */
    public double value(Rating rating, TrainRater rater, Optional<MovementSize> size) {
        return figure.of(rating, rater, size);
    }

    /** A figure of this column as it is shown. */
    public ShownFigure shown(double value, UnitSystem units) {
        return ShownFigure.of(dimension, value, units, rounding);
    }

    /** The columns shown at first: the objectives, the room if it is wanted small, and the duration. */
    public static List<FrontColumn> usual(Brief brief) {
        List<FrontColumn> columns = new ArrayList<>(brief.objectives().stream()
                .map(objective -> of(objective.figure()))
                .toList());
        room(brief).ifPresent(columns::add);
        if (!columns.contains(DURATION)) {
            columns.add(DURATION);
        }
        return columns;
    }

    /** The column of the room that a brief wants small; empty if it does not. */
    public static Optional<FrontColumn> room(Brief brief) {
        return brief.frame().least().map(least -> valueOf(least.figure().name()));
    }

    /** The column of an objective. */
    public static FrontColumn of(ObjectiveFigure objective) {
        return objective == ObjectiveFigure.FILAMENT_MASS ? FILAMENT : valueOf(objective.name());
    }
}
