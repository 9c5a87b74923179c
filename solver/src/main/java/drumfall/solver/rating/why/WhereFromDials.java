// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.rating.why;

import drumfall.solver.brief.Brief;
import drumfall.solver.power.books.LoadedClock;
import drumfall.solver.rating.BandPoint;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/**
 * Cards of a rating reckoned anew with what a maker sets in place of what the rating takes.
 *
 * @param rated the cards of the rating
 */
public record WhereFromDials(WhereFromBook rated) {
    private static final String SET = "as it is set";

    /**
     * The card of the least weight at a place in the bands.
     *
     * @param brief the brief of the rating
     * @param point the place
     */
    public Card leastWeight(Brief brief, BandPoint point) {
        CardShelf shelf = new CardShelf();
        Map<String, Card> set = new HashMap<>();
        set.put("tooth-friction", shelf.given("tooth-friction-set", "µ_t", point.teeth(brief.friction()), "1", SET));
        set.put("bore-friction", shelf.given("bore-friction-set", "µ", point.bores(brief.friction()), "1", SET));
        Brief.Friction friction = brief.friction();
        double quality = point.quality(brief.pendulum().quality());
        set.put(
                "tooth-friction",
                shelf.set("tooth-friction-set", "µ_t", point.teeth(friction), "1", "/friction/teeth/low"));
        set.put(
                "bore-friction",
                shelf.set("bore-friction-set", "µ", point.bores(friction), "1", "/friction/bores/low"));
        set.put(
                "pallet-friction",
                shelf.set("pallet-friction-set", "µ_p", point.pallets(friction), "1", "/friction/pallets/low"));
        set.put("quality", shelf.set("quality-set", "Q", quality, "1", "/pendulum/quality/low"));
        return rated.card("least-weight").orElseThrow().with(set);
    }

    /**
     * The card of the bending stress in the ratchet under a weight at rest; empty if the rating has none.
     *
     * @param weight kg
     */
    public Optional<Card> ratchet(double weight) {
        Map<String, Card> set = new HashMap<>();
        set.put("recommended-weight", new CardShelf().given("weight-set", "W", weight, "kg", SET));
        return rated.card("ratchet-bending").map(card -> card.with(set));
    }

    /**
     * The card of how long the arbor that stands first spins by itself after a flick.
     *
     * @param clock the same train at a place in the bands
     */
    public Card freeSpin(LoadedClock clock) {
        return new SpinCards(new CardShelf(), rated, clock).make();
    }
}
