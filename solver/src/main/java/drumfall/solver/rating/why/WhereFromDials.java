// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.rating.why;

import drumfall.solver.brief.Brief;
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
        set.put(
                "pallet-friction",
                shelf.given("pallet-friction-set", "µ_p", point.pallets(brief.friction()), "1", SET));
        set.put(
                "quality",
                shelf.given("quality-set", "Q", point.quality(brief.pendulum().quality()), "1", SET));
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
}
