// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.presenter;

import drumfall.solver.quantity.Dimension;
import drumfall.solver.quantity.UnitSystem;
import drumfall.solver.rating.why.Card;
import drumfall.solver.rating.why.Formula;
import drumfall.ui.presenter.ShownFigure.Rounding;
import drumfall.ui.presenter.WhereCard.Input;
import drumfall.ui.wording.FigureWording;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Stream;

/** Shows the solver's cards: each input that has a formula leads on to its own card, one that was typed back to the brief. */
final class BookCards {
    private final UnitSystem units;

    BookCards(UnitSystem units) {
        this.units = units;
    }

    WhereCard shown(Card card) {
        return shown(meaning(card), card);
    }

    WhereCard shown(String title, Card card) {
        return shown(title, value(card), card);
    }

    /** For a figure that the window shows in its own way, as a share in hundredths. */
    WhereCard shown(String title, ShownFigure value, Card card) {
        return new WhereCard(
                title,
                value,
                card.formula().map(Formula::text).orElse(card.symbol()),
                card.inputs().stream().map(this::input).toList(),
                card.source());
    }

    private Input input(Card card) {
        Optional<Supplier<WhereCard>> next = card.formula().map(formula -> () -> shown(card));
        return new Input(card.symbol(), meaning(card), value(card).text(), typed(card), next);
    }

    private static Optional<String> typed(Card card) {
        return card.pointer().filter(pointer -> BriefSheet.rowOf(pointer).isPresent());
    }

    /** The name on the brief's sheet, that of the window's own figure, or the solver's in words. */
    private static String meaning(Card card) {
        return card.pointer()
                .flatMap(BriefSheet::rowOf)
                .map(SheetRow::label)
                .or(() -> Figure.ofCard(card.name()).map(Figure::title))
                .orElseGet(() -> card.name().replaceFirst("^train\\.", "").replaceAll("[-.]", " "));
    }

    /** A card's value, rounded the way of the window's own figure. */
    ShownFigure value(Card card) {
        if (card.unit().equals("W")) {
            return PowerStep.microwatts(card.value());
        }
        if (FigureWording.isShare(card)) {
            return ShownFigure.share(card.value());
        }
        return Arrays.stream(Dimension.values())
                .filter(known -> known.siSymbol().equals(card.unit()))
                .findFirst()
                .map(known -> ShownFigure.of(known, card.value(), units, rounding(card))
                        .withMinusSign())
                .orElseGet(() -> new ShownFigure(String.format(Locale.ROOT, "%.3g", card.value()), card.unit()));
    }

    private static Rounding rounding(Card card) {
        return Figure.ofCard(card.name()).map(Figure::rounding).orElseGet(() -> unnamed(card));
    }

    /** Weights that are needed are never shown lighter, nor distances and times that are kept longer than they are. */
    private static Rounding unnamed(Card card) {
        if (Stream.of("bob-gap", "free-spin", "coasting").anyMatch(card.name()::startsWith)) {
            return Rounding.DOWN;
        }
        return card.name().startsWith("placed-") && card.unit().equals("kg") ? Rounding.UP : Rounding.NEAREST;
    }
}
