// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.presenter;

import drumfall.solver.brief.Brief;
import drumfall.solver.quantity.Dimension;
import drumfall.solver.quantity.UnitSystem;
import drumfall.solver.rating.Rating;
import drumfall.solver.rating.TrainRater;
import drumfall.solver.rating.why.Card;
import drumfall.solver.rating.why.WhereFromBook;
import drumfall.ui.presenter.WhereCard.Input;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The figures of a rated train and the solver's cards that say where each comes from. */
public final class TrainCards {
    private final Rating rating;
    private final Brief brief;
    private final UnitSystem units;
    private WhereFromBook book;

    /**
     * The figures of a train.
     *
     * @param rating the train, rated
     * @param brief the brief it is rated against
     * @param units which units are read
     */
    public TrainCards(Rating rating, Brief brief, UnitSystem units) {
        this.rating = rating;
        this.brief = brief;
        this.units = units;
    }

    /** A figure's value as it is shown. */
    public ShownFigure value(Figure figure) {
        return new BookCards(units).value(solversCard(figure));
    }

    /** The card of a figure. */
    public WhereCard card(Figure figure) {
        WhereCard card = new BookCards(units).shown(figure.title(), solversCard(figure));
        return figure == Figure.LEAST_WEIGHT ? withBand(card) : card;
    }

    /** The solver's cards speak of the middle of all bands; how far the weight may lie from it is said beside them. */
    private WhereCard withBand(WhereCard card) {
        List<Input> inputs = new ArrayList<>(card.inputs());
        String band = mass(rating.leastSmoothest()) + " – " + mass(rating.leastRoughest());
        inputs.add(new Input("", Texts.of("input.band"), band, Optional.empty()));
        return new WhereCard(card.title(), card.value(), card.formula(), inputs, card.source());
    }

    private String mass(double kilograms) {
        return ShownFigure.of(Dimension.MASS, kilograms, units, Figure.LEAST_WEIGHT.rounding())
                .text();
    }

    private Card solversCard(Figure figure) {
        String name = figure.card(rating.weight().deciding());
        return book().card(name)
                .orElseThrow(() -> new IllegalStateException("The card (%s) must be the solver's.".formatted(name)));
    }

    private WhereFromBook book() {
        if (book == null) {
            book = WhereFromBook.of(new TrainRater(brief), rating);
        }
        return book;
    }
}
