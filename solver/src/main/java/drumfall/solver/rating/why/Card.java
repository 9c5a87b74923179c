// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.rating.why;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * One figure and where it comes from.
 *
 * @param name what it is, unique among the cards of a rating, for example {@code least-weight}
 * @param symbol in formulas
 * @param value SI units; may be infinite
 * @param unit the SI unit; 1 for plain numbers
 * @param formula how it comes from the inputs; empty where the chain ends
 * @param inputs cards of what is put in, in the formula's order
 * @param source where the formula, or the value that ends a chain, is from
 * @param pointer JSON pointer of the field of the brief that gives it, or in whose place it was set, if there is one
 */
public record Card(
        String name,
        String symbol,
        double value,
        String unit,
        Optional<Formula> formula,
        List<Card> inputs,
        String source,
        Optional<String> pointer) {
    /**
     * Copies the list.
     *
     * @throws IllegalArgumentException if there are inputs without a formula
     */
    public Card {
        inputs = List.copyOf(inputs);
        if (formula.isEmpty() && !inputs.isEmpty()) {
            throw new IllegalArgumentException(
                    "The card (%s) must have a formula for its %d inputs.".formatted(name, inputs.size()));
        }
    }

    /** The figure reckoned from the values of its inputs; its own value where the chain ends. */
    public double reckoned() {
        return formula.map(how -> how.function()
                        .of(inputs.stream().mapToDouble(Card::value).toArray()))
                .orElse(value);
    }

    /**
     * The same card with others in place of some that it rests on, and every figure reckoned anew.
     *
     * @param others by the names of the cards that they replace; gets the cards made on the way
     */
    Card with(Map<String, Card> others) {
        Card known = others.get(name);
        if (known != null) {
            return known;
        }
        Card card = formula.map(how -> anew(how, others)).orElse(this);
        others.put(name, card);
        return card;
    }

    private Card anew(Formula how, Map<String, Card> others) {
        List<Card> moved = inputs.stream().map(input -> input.with(others)).toList();
        double reckoned =
                how.function().of(moved.stream().mapToDouble(Card::value).toArray());
        return new Card(name, symbol, reckoned, unit, formula, moved, source, pointer);
    }

    /** The figure reckoned all the way from where the chain ends. */
    public double reckonedFromTheEnds() {
        return formula.map(how -> how.function()
                        .of(inputs.stream()
                                .mapToDouble(Card::reckonedFromTheEnds)
                                .toArray()))
                .orElse(value);
    }
}
