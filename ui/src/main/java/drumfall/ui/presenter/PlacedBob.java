// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.presenter;

import drumfall.solver.layout.Layout;
import drumfall.solver.quantity.Dimension;
import drumfall.solver.quantity.UnitSystem;
import drumfall.solver.rating.TrainRater;
import drumfall.solver.rating.placing.WeightBesideBob;
import drumfall.solver.rating.placing.WeightBesideBob.Verdict;
import drumfall.solver.rating.why.Card;
import drumfall.solver.rating.why.WhereFromBook;
import drumfall.solver.train.Train;
import java.util.Optional;

/**
 * The recommended weight beside the swinging bob of a placed train.
 *
 * @param gap the solver's card of the distance that they surely keep, not positive where they may meet
 * @param words a sentence if they may meet; empty if they keep apart
 */
public record PlacedBob(Card gap, Optional<String> words) {
    /** Nothing if no weight drives the train. */
    static Optional<PlacedBob> of(TrainRater rater, Train train, Layout layout, WhereFromBook book, UnitSystem units) {
        return book.card("bob-gap").map(gap -> new PlacedBob(gap, words(rater, train, layout, book, units)));
    }

    private static Optional<String> words(
            TrainRater rater, Train train, Layout layout, WhereFromBook book, UnitSystem units) {
        double weight = book.card("recommended-weight").orElseThrow().value();
        WeightBesideBob beside = WeightBesideBob.of(rater, train, layout, weight);
        return beside.verdict() == Verdict.CLEAR
                ? Optional.empty()
                : Optional.of(Texts.of(
                        "placed.bob." + beside.verdict().name(),
                        length(beside.furtherAside(), units),
                        length(beside.leastBehindPlate(), units)));
    }

    /** The distance as shown. */
    public ShownFigure value(UnitSystem units) {
        return new BookCards(units).value(gap);
    }

    /** Where the distance comes from. */
    public WhereCard card(UnitSystem units) {
        return new BookCards(units).shown(Texts.of("placed.bob"), gap);
    }

    private static String length(double metres, UnitSystem units) {
        return ShownFigure.of(Dimension.LENGTH, metres, units, ShownFigure.Rounding.UP)
                .text();
    }
}
