// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.rating.why;

import drumfall.solver.quantity.Quantity;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Cards by name, in the order in which they are first needed. */
final class CardShelf {
    static final String OUR_OWN = "our own derivation";
    static final String COUNTS = "counts alone, exact";
    private static final String BRIEF = "the brief";
    private static final String TRAIN = "the train";

    private final Map<String, Card> cards = new LinkedHashMap<>();

    Map<String, Card> cards() {
        return cards;
    }

    Card get(String name) {
        return Optional.ofNullable(cards.get(name))
                .orElseThrow(() -> new IllegalStateException("The card (%s) is not made yet.".formatted(name)));
    }

    /** A field of the brief. */
    Card brief(String symbol, String pointer, Quantity quantity) {
        String name = "brief" + pointer.replace('/', '.');
        return end(name, symbol, quantity.si(), quantity.dimension().siSymbol(), BRIEF, Optional.of(pointer));
    }

    /** A count or size of the train. */
    Card train(String name, String symbol, double value, String unit) {
        return end("train." + name, symbol, value, unit, TRAIN, Optional.empty());
    }

    /** A value that no formula gives. */
    Card given(String name, String symbol, double value, String unit, String source) {
        return end(name, symbol, value, unit, source, Optional.empty());
    }

    /** A value that a maker set in place of a field of the brief. */
    Card set(String name, String symbol, double value, String unit, String pointer) {
        return end(name, symbol, value, unit, "as it is set", Optional.of(pointer));
    }

    private Card end(String name, String symbol, double value, String unit, String source, Optional<String> pointer) {
        return cards.computeIfAbsent(
                name, key -> new Card(key, symbol, value, unit, Optional.empty(), List.of(), source, pointer));
    }

    /** A figure: what the rating says, and how it comes from its inputs. */
    Card figure(
            String name,
            String symbol,
            double value,
            String unit,
            String text,
            Formula.Function function,
            String source,
            Card... inputs) {
        Formula formula = new Formula(text, function);
        Card card = new Card(
                name, symbol, value, unit, Optional.of(formula), Arrays.asList(inputs), source, Optional.empty());
        if (cards.putIfAbsent(name, card) != null) {
            throw new IllegalStateException("The card (%s) is made twice.".formatted(name));
        }
        return card;
    }

    /** The product of wheels over pinions; inputs alternate teeth and leaves. */
    static double ratio(double[] counts, int from, int to) {
        double product = 1;
        for (int i = from; i < to; i += 2) {
            product *= counts[i] / counts[i + 1];
        }
        return product;
    }
}
