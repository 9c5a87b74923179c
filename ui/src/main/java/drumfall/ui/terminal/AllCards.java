// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.terminal;

import drumfall.solver.power.books.BookKeeper;
import drumfall.solver.power.books.LoadedClock;
import drumfall.solver.rating.Rating;
import drumfall.solver.rating.TrainRater;
import drumfall.solver.rating.answers.Changes;
import drumfall.solver.rating.answers.WeightChance;
import drumfall.solver.rating.why.Card;
import drumfall.solver.rating.why.WhereFromBook;
import drumfall.solver.rating.why.WhereFromChance;
import drumfall.solver.rating.why.WhereFromChanges;
import drumfall.solver.rating.why.WhereFromDials;
import drumfall.solver.rating.why.WhereFromPower;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** The cards of a rating, and those of the power under a weight, of what changes save and of the chance that the weight runs. */
final class AllCards {
    private final TrainRater rater;
    private final Rating rating;
    private final WhereFromBook book;
    private final OptionalDouble weight;

    /**
     * All cards.
     *
     * @param book of the rating
     * @param weight that hangs, kg; empty if none drives the train
     */
    AllCards(TrainRater rater, Rating rating, WhereFromBook book, OptionalDouble weight) {
        this.rater = rater;
        this.rating = rating;
        this.book = book;
        this.weight = weight;
    }

    /** Those that have a formula. */
    List<Card> figures() {
        List<Card> figures = new ArrayList<>(book.figures());
        weight.ifPresent(hung -> figures.addAll(under(hung)));
        return figures;
    }

    /** Every card, also of what was typed or measured, after the cards of its inputs. */
    Collection<Card> cards() {
        Map<String, Card> cards = new LinkedHashMap<>();
        book.cards().forEach(card -> cards.put(card.name(), card));
        weight.ifPresent(hung -> under(hung).forEach(card -> add(card, cards)));
        return cards.values();
    }

    private static void add(Card card, Map<String, Card> cards) {
        if (!cards.containsKey(card.name())) {
            card.inputs().forEach(input -> add(input, cards));
            cards.put(card.name(), card);
        }
    }

    /** A card by its name; only what is not the rating's takes the time of all. */
    Optional<Card> card(String name) {
        return book.card(name)
                .or(() -> figures().stream()
                        .filter(card -> card.name().equals(name))
                        .findFirst());
    }

    private List<Card> under(double hung) {
        LoadedClock clock = rater.loaded(rating.train());
        List<Card> cards = new ArrayList<>(WhereFromPower.of(book, clock, new BookKeeper(clock).under(hung))
                .figures());
        cards.add(new WhereFromDials(book).freeSpin(clock));
        WhereFromChanges changes = new WhereFromChanges(rater, book, rating.train());
        new Changes(rater, rating.train()).all().forEach(change -> cards.add(changes.card(change)));
        WeightChance chance = WeightChance.of(rater, rating.train(), WeightChance.USUAL_TRIALS);
        cards.add(WhereFromChance.of(rater, rating.train(), chance, hung));
        return cards;
    }
}
