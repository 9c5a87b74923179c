// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.rating.why;

import drumfall.solver.layout.Layout;
import drumfall.solver.rating.Rating;
import drumfall.solver.rating.TrainRater;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The cards of all figures of one rating, in the middle of all bands. */
public final class WhereFromBook {
    private final Map<String, Card> cards;

    private WhereFromBook(Map<String, Card> cards) {
        this.cards = cards;
    }

    /**
     * The cards of a rating.
     *
     * @param rater what rated it
     * @param rating the rating
     */
    public static WhereFromBook of(TrainRater rater, Rating rating) {
        return of(rater, rating, Optional.empty());
    }

    /**
     * The cards of a rating, and of the weight and the room of the movement where its arbors stand.
     *
     * @param rater what rated it
     * @param rating the rating
     * @param layout where the train's arbors stand, if they have places
     */
    public static WhereFromBook of(TrainRater rater, Rating rating, Optional<Layout> layout) {
        CardShelf shelf = new CardShelf();
        new RunCards(shelf, rater, rating).make();
        new PendulumCards(shelf, rater, rating).make();
        new EscapeCards(shelf, rater, rating).make();
        new PartCards(shelf, rater, rating).make();
        new WeightCards(shelf, rater, rating).make();
        new UseCards(shelf, rater, rating).make();
        new RatchetCards(shelf, rater, rating).make();
        new BuilderCards(shelf, rater, rating).make();
        BobCards bob = new BobCards(shelf, rater, rating);
        bob.make();
        layout.ifPresent(placed -> {
            new PlacedCards(shelf, rater, rating, placed).make();
            new SizeCards(shelf, rater.brief(), placed).make();
            bob.make(placed);
        });
        return new WhereFromBook(shelf.cards());
    }

    /** Every card, those that end a chain among them, each after its inputs. */
    public List<Card> cards() {
        return List.copyOf(cards.values());
    }

    /** The cards that have a formula. */
    public List<Card> figures() {
        return cards.values().stream()
                .filter(card -> card.formula().isPresent())
                .toList();
    }

    /**
     * A card by its name.
     *
     * @param name for example {@code least-weight}; others give an empty answer
     */
    public Optional<Card> card(String name) {
        return Optional.ofNullable(cards.get(name));
    }
}
