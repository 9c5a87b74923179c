// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.presenter;

import drumfall.solver.quantity.Dimension;
import drumfall.solver.quantity.UnitSystem;
import drumfall.solver.rating.why.Card;
import drumfall.solver.rating.why.WhereFromBook;

/**
 * Least weight of a train with its arbors where they stand, beside the one with the least favourable directions.
 *
 * @param placed the solver's card of the least weight, placed
 * @param unplaced least weight with the least favourable directions, kg
 */
public record PlacedLeast(Card placed, double unplaced) {
    static PlacedLeast of(WhereFromBook book) {
        return new PlacedLeast(
                book.card("placed-least-weight").orElseThrow(),
                book.card("least-weight").orElseThrow().value());
    }

    /** Least weight, placed, kg; infinite if none drives the train. */
    public double least() {
        return placed.value();
    }

    /** As shown. */
    public ShownFigure value(UnitSystem units) {
        return ShownFigure.of(Dimension.MASS, least(), units, ShownFigure.Rounding.UP);
    }

    /** Where it comes from. */
    public WhereCard card(UnitSystem units) {
        return new BookCards(units).shown(Texts.of("placed.least"), placed);
    }
}
