// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.view.train;

import drumfall.solver.rating.Rating;
import drumfall.solver.train.Train;
import drumfall.ui.presenter.StripFigure;
import drumfall.ui.presenter.TrainStripContent;
import java.awt.geom.Rectangle2D;
import java.util.Map;
import java.util.Optional;

/** Turns content into figures with names, old and tried, held and missed. */
final class StripTerms {
    private final TrainStripContent content;
    private final Rating chosen;
    private final Rating shown;
    private final Figures figures;
    private final MissedDemands missed;
    private final Map<StripFigure, Figure> before;
    private final Map<StripFigure, Figure> now;
    private final TabularText text;

    /**
     * The terms of a content.
     *
     * @param content with a chosen train
     * @param chosen the chosen train
     * @param text measures
     */
    StripTerms(TrainStripContent content, Rating chosen, TabularText text) {
        this.content = content;
        this.chosen = chosen;
        this.shown = content.trial().orElse(chosen);
        this.figures = new Figures(content.units());
        this.missed = new MissedDemands(shown, figures);
        this.before = StripValues.of(chosen.train(), content.brief().locks(), figures);
        this.now = StripValues.of(shown.train(), content.brief().locks(), figures);
        this.text = text;
    }

    /** The rating the drawing follows: the tried one while something is tried. */
    Rating shown() {
        return shown;
    }

    Rating chosen() {
        return chosen;
    }

    Train train() {
        return shown.train();
    }

    TrainStripContent content() {
        return content;
    }

    Figures figures() {
        return figures;
    }

    MissedDemands missed() {
        return missed;
    }

    TabularText text() {
        return text;
    }

    /** The figures to be shown, in reading order. */
    Map<StripFigure, Figure> values() {
        return now;
    }

    /**
     * A figure in a place.
     *
     * @param figure the figure
     * @param size font size, px
     * @param x where the box is anchored, px
     * @param middle middle of its height, px
     * @param share of the box left of {@code x}: 0 starts there, 0.5 is centred, 1 ends there
     */
    StripSpot spot(StripFigure figure, double size, double x, double middle, double share) {
        Figure value = now.get(figure);
        Figure old = before.getOrDefault(figure, value);
        boolean isHeld = StripValues.held(content.brief().locks(), figure);
        boolean isMissed = missed.on(figure);
        Optional<Figure> tried = Optional.of(value).filter(other -> !other.equals(old));
        String name = named(TrainText.of("name." + figure.kind(), number(figure)), old, tried, isHeld, isMissed);
        Rectangle2D box = box(old, tried, size, x, middle, share);
        return new StripSpot(Optional.of(figure), Optional.empty(), box, size, old, tried, isHeld, isMissed, name);
    }

    /**
     * A reading in a place.
     *
     * @param reading the reading
     * @param old the chosen train's value
     * @param now the shown train's value
     * @param size font size, px
     * @param x where the box is anchored, px
     * @param middle middle of its height, px
     * @param share of the box left of {@code x}
     */
    StripSpot spot(StripReading reading, Figure old, Figure now, double size, double x, double middle, double share) {
        boolean isMissed = missed.on(reading);
        Optional<Figure> tried = Optional.of(now).filter(value -> !value.equals(old));
        String name = named(TrainText.of("name." + reading.kind(), reading.arbor() + 1), old, tried, false, isMissed);
        Rectangle2D box = box(old, tried, size, x, middle, share);
        return new StripSpot(Optional.empty(), Optional.of(reading), box, size, old, tried, false, isMissed, name);
    }

    private Rectangle2D box(Figure old, Optional<Figure> tried, double size, double x, double middle, double share) {
        double width = StripSpot.width(text, old, tried, size);
        double height = StripSpot.height(size);
        return new Rectangle2D.Double(x - share * width, middle - height / 2, width, height);
    }

    private int number(StripFigure figure) {
        return figure.place()
                .map(place -> StripValues.number(place, shown.train().meshesAbove()))
                .orElse(0);
    }

    private static String named(String what, Figure old, Optional<Figure> tried, boolean held, boolean missed) {
        String valued = tried.map(now -> TrainText.of("value.tried", what, old.text(), now.text()))
                .orElseGet(() -> TrainText.of("value", what, old.text()));
        String withHold = held ? TrainText.of("value.held", valued) : valued;
        return missed ? TrainText.of("value.missed", withHold) : withHold;
    }
}
