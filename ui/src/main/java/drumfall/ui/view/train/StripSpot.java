// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.view.train;

import drumfall.ui.presenter.StripFigure;
import drumfall.ui.presenter.StripFigure.Kind;
import java.awt.geom.Rectangle2D;
import java.util.Optional;

/**
 * One figure in its place on the strip.
 *
 * @param figure the figure, if it can be set
 * @param reading the reading, if it follows from the others; exactly one of the two is present
 * @param box where it stands, px
 * @param size font size, px
 * @param shown the chosen train's value
 * @param tried the tried train's value, if it differs
 * @param held whether the maker holds it
 * @param missed whether a demand on it is missed
 * @param name what a screen reader says
 */
public record StripSpot(
        Optional<StripFigure> figure,
        Optional<StripReading> reading,
        Rectangle2D box,
        double size,
        Figure shown,
        Optional<Figure> tried,
        boolean held,
        boolean missed,
        String name) {
    /** Room between a box and its text, in font sizes. */
    private static final double PAD = 0.26;

    /** Size of the old value over that of the tried one. */
    private static final double OLD = 0.82;

    private static final double GAP = 0.22;
    private static final double LINE = 1.32;

    /**
     * Checks that the spot stands for one thing.
     *
     * @throws IllegalArgumentException unless exactly one of figure and reading is present
     */
    public StripSpot {
        if (figure.isPresent() == reading.isPresent()) {
            throw new IllegalArgumentException(
                    "The spot (%s) must stand for a figure or a reading, not both.".formatted(name));
        }
        box = (Rectangle2D) box.clone();
    }

    /** Where it stands, px. */
    @Override
    public Rectangle2D box() {
        return (Rectangle2D) box.clone();
    }

    /** The arbor a reading speaks of. */
    Optional<Integer> arbor() {
        return reading.filter(read -> read.kind() == StripReading.Kind.TORQUE || read.kind() == StripReading.Kind.POWER)
                .map(StripReading::arbor);
    }

    /** Whether a sign or letter stands right before it. */
    boolean lettered() {
        return figure.filter(found ->
                        found.kind() == Kind.DRUM || found.kind() == Kind.MODULE || found.kind() == Kind.DISTANCE)
                .isPresent();
    }

    /**
     * Where across the middle of the mark of a missed demand stands: at the left, or at the right of figures with a letter
     * before them and of readings that begin close to the edge of the strip.
     *
     * @param unit drawing unit, px
     */
    double missedMark(double unit) {
        return lettered() || atTheEdge()
                ? box.getMaxX() + (held ? 12 : 5) * unit
                : box.getMinX() - (held ? 8 : 5) * unit;
    }

    private boolean atTheEdge() {
        return reading.filter(
                        found -> found.kind() == StripReading.Kind.RUN || found.kind() == StripReading.Kind.WEIGHT)
                .isPresent();
    }

    /** One value or two with an arrow between, laid out from the left edge of the box. */
    Parts parts(TabularText text) {
        return new Parts(this, text);
    }

    /** Where the parts of a spot's text start. */
    record Parts(StripSpot spot, TabularText text) {
        double old() {
            return spot.box.getX() + PAD * spot.size;
        }

        double oldSize() {
            return spot.size * OLD;
        }

        double arrow(Figure before) {
            return old() + figureWidth(text, before, oldSize()) + GAP * spot.size;
        }

        double arrowWidth() {
            return spot.size * 0.6;
        }

        double current(Figure before) {
            return arrow(before) + arrowWidth() + GAP * spot.size;
        }

        double baseline() {
            return spot.box.getCenterY() + spot.size * 0.36;
        }
    }

    static double unitSize(double size) {
        return Math.min(size, Math.max(size * 0.72, 10));
    }

    static double unitGap(double size) {
        return size * 0.22;
    }

    static double figureWidth(TabularText text, Figure figure, double size) {
        double unit = figure.unit().isEmpty() ? 0 : unitGap(size) + text.width(figure.unit(), unitSize(size));
        return text.width(figure.number(), size) + unit;
    }

    static double width(TabularText text, Figure shown, Optional<Figure> tried, double size) {
        double pads = 2 * PAD * size;
        return tried.map(now -> pads
                        + figureWidth(text, withoutSharedUnit(shown, now), size * OLD)
                        + (0.6 + 2 * GAP) * size
                        + figureWidth(text, now, size))
                .orElseGet(() -> pads + figureWidth(text, shown, size));
    }

    /** The unit is written once if both values share it. */
    static Figure withoutSharedUnit(Figure shown, Figure tried) {
        return shown.unit().equals(tried.unit()) ? new Figure(shown.number(), "") : shown;
    }

    static double height(double size) {
        return LINE * size;
    }
}
