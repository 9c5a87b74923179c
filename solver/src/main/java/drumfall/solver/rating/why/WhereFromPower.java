// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.rating.why;

import drumfall.solver.power.books.LoadedClock;
import drumfall.solver.power.books.Place;
import drumfall.solver.power.books.PowerBooks;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** The cards of the books of power under any weight, at any place in the brief's bands. */
public final class WhereFromPower {
    private final Map<String, Card> cards;

    private WhereFromPower(Map<String, Card> cards) {
        this.cards = cards;
    }

    /**
     * The cards of books.
     *
     * @param rated the cards of the train's rating, for what neither weight nor bands change
     * @param clock the same train at a place in the bands
     * @param books the books of that clock under a weight
     */
    public static WhereFromPower of(WhereFromBook rated, LoadedClock clock, PowerBooks books) {
        CardShelf shelf = new CardShelf();
        new TorqueCards(shelf, rated, clock, books).make();
        new BeatCards(shelf, rated, clock, books).make();
        return new WhereFromPower(shelf.cards());
    }

    /**
     * Name of the card of an entry of the books.
     *
     * @param place where power goes
     * @param number of the arbor or mesh, from 0 at the drum
     */
    static String name(Place place, int number) {
        return "power-%s-%d".formatted(place.name().toLowerCase(Locale.ROOT).replace('_', '-'), number + 1);
    }

    /**
     * The card of an entry of the books.
     *
     * @param place where power goes
     * @param number of the arbor or mesh, from 0 at the drum
     */
    public Optional<Card> card(Place place, int number) {
        return card(name(place, number));
    }

    /**
     * A card by its name.
     *
     * @param name for example {@code arc-set}; others give an empty answer
     */
    public Optional<Card> card(String name) {
        return Optional.ofNullable(cards.get(name));
    }

    /** The cards that have a formula. */
    public List<Card> figures() {
        return cards.values().stream()
                .filter(card -> card.formula().isPresent())
                .toList();
    }
}
