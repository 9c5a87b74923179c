// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.terminal;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import drumfall.solver.rating.why.Card;

/** Where figures come from, as JSON; every card stands after the cards of its inputs. */
final class CardJson {
    private CardJson() {}

    static void put(ArrayNode entries, AllCards book) {
        book.cards().forEach(card -> put(entries.addObject(), card));
    }

    private static void put(ObjectNode group, Card card) {
        group.put("name", card.name());
        group.put("symbol", card.symbol());
        JsonOutput.put(group, "value_SI", card.value());
        group.put("unit", card.unit());
        card.formula().ifPresent(formula -> group.put("formula", formula.text()));
        ArrayNode inputs = group.putArray("inputs");
        card.inputs().forEach(input -> inputs.add(input.name()));
        group.put("source", card.source());
        card.pointer().ifPresent(pointer -> group.put("pointer", pointer));
    }
}
