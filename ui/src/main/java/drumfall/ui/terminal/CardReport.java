// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.terminal;

import drumfall.solver.quantity.Dimension;
import drumfall.solver.rating.why.Card;
import drumfall.ui.wording.FigureWording;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Deque;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/** Where figures come from, for people: a card, then the cards of its inputs, down to the brief. */
final class CardReport {
    private final AllCards book;
    private final FigureWording figures;

    CardReport(AllCards book, FigureWording figures) {
        this.book = book;
        this.figures = figures;
    }

    /** Every figure that has a card. */
    List<String> contents() {
        TextTable table = TextTable.of("why.columns");
        book.figures().forEach(card -> table.row(card.name(), card.symbol(), value(card)));
        return table.lines();
    }

    /** The chain of one figure. */
    List<String> chain(String name) {
        Card first = book.card(name).orElseThrow(() -> RefusedInput.of("figure", name));
        Set<String> seen = new TreeSet<>(Set.of(name));
        Deque<Card> waiting = new ArrayDeque<>(List.of(first));
        List<String> lines = new ArrayList<>();
        while (!waiting.isEmpty()) {
            Card card = waiting.removeFirst();
            lines.addAll(lines(card));
            card.inputs().stream()
                    .filter(input -> input.formula().isPresent() && seen.add(input.name()))
                    .forEach(waiting::addLast);
            lines.addAll(waiting.isEmpty() ? List.of() : List.of(""));
        }
        return lines;
    }

    private List<String> lines(Card card) {
        List<String> lines = new ArrayList<>();
        lines.add(Phrases.phrase("why.card", card.name(), card.symbol(), value(card)));
        card.formula().ifPresent(formula -> lines.add("  " + formula.text()));
        for (Card input : card.inputs()) {
            String from = input.pointer()
                    .or(() -> input.formula().map(formula -> input.name()))
                    .orElse(input.source());
            lines.add("    " + Phrases.phrase("why.input", input.symbol(), value(input), from));
        }
        lines.add("  " + Phrases.phrase("why.source", card.source()));
        return lines;
    }

    private String value(Card card) {
        if (FigureWording.isShare(card)) {
            return FigureWording.percent(card.value());
        }
        Optional<Dimension> dimension = Arrays.stream(Dimension.values())
                .filter(known -> known.siSymbol().equals(card.unit()))
                .findFirst();
        return dimension
                .map(known -> figures.figure(known, card.value()))
                .orElseGet(() -> String.format(Locale.ROOT, "%.4g %s", card.value(), card.unit()));
    }
}
