// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.presenter;

import drumfall.solver.layout.Layout;
import drumfall.solver.layout.MovementSize;
import drumfall.solver.quantity.Dimension;
import drumfall.solver.quantity.UnitSystem;
import drumfall.solver.rating.why.WhereFromBook;
import java.util.function.ToDoubleFunction;

/** The room that the chosen train's movement takes where its arbors stand. */
public final class PlacedSize {
    private static final double METRES = 1e-9;

    private final WhereFromBook book;
    private final Layout layout;

    /** A figure of the size. */
    public enum Figure {
        /** Width of the parts. */
        WIDTH(Dimension.LENGTH, "movement-width", size -> size.width() * METRES),
        /** Height of the parts. */
        HEIGHT(Dimension.LENGTH, "movement-height", size -> size.height() * METRES),
        /** Depth over plates and motion work. */
        DEPTH(Dimension.LENGTH, "movement-depth", size -> size.depth() * METRES),
        /** Area of the smallest upright plate. */
        PLATE(Dimension.AREA, "plate-area", MovementSize::plateArea);

        private final Dimension dimension;
        private final String card;

        @SuppressWarnings("ImmutableEnumChecker") // a pure function
        private final ToDoubleFunction<MovementSize> value;

        Figure(Dimension dimension, String card, ToDoubleFunction<MovementSize> value) {
            this.dimension = dimension;
            this.card = card;
            this.value = value;
        }

        /** What it measures. */
        Dimension dimension() {
            return dimension;
        }

        /** The figure of a size, SI units. */
        double of(MovementSize size) {
            return value.applyAsDouble(size);
        }

        /** What it is called. */
        public String title() {
            return Texts.of("placed.size." + name());
        }
    }

    PlacedSize(WhereFromBook book, Layout layout) {
        this.book = book;
        this.layout = layout;
    }

    /**
     * A figure as shown.
     *
     * @param figure which
     * @param units which units are read
     */
    public ShownFigure value(Figure figure, UnitSystem units) {
        return ShownFigure.of(figure.dimension, figure.of(layout.size()), units);
    }

    /**
     * Where a figure comes from.
     *
     * @param figure which
     * @param units which units are read
     */
    public WhereCard card(Figure figure, UnitSystem units) {
        return new BookCards(units)
                .shown(
                        figure.title(),
                        book.card(figure.card)
                                .orElseThrow(() -> new IllegalStateException(
                                        "The card (%s) must be the solver's.".formatted(figure.card))));
    }
}
