// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.presenter;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/**
 * Where a figure comes from.
 *
 * @param title what the figure is called
 * @param value its value
 * @param formula in the field's symbols
 * @param inputs the values put in
 * @param source where the formula is to be found
 */
public record WhereCard(String title, ShownFigure value, String formula, List<Input> inputs, String source) {
    /** Copies the list. */
    public WhereCard {
        inputs = List.copyOf(inputs);
    }

    /**
     * A value put in.
     *
     * @param symbol its symbol in the formula
     * @param meaning what it is
     * @param value as shown
     * @param pointer the place of the brief it was typed in
     * @param card makes the card of its own that it has
     */
    public record Input(
            String symbol, String meaning, String value, Optional<String> pointer, Optional<Supplier<WhereCard>> card) {
        /**
         * A value without a further card of its own.
         *
         * @param symbol its symbol in the formula
         * @param meaning what it is
         * @param value as shown
         * @param pointer the place of the brief it was typed in
         */
        public Input(String symbol, String meaning, String value, Optional<String> pointer) {
            this(symbol, meaning, value, pointer, Optional.empty());
        }
    }
}
