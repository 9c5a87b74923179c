// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.rating.why;

/**
 * A formula as it is read and as it is reckoned.
 *
 * @param text in the field's symbols
 * @param function the same of the inputs' values in their order
 */
public record Formula(String text, Function function) {
    /** A function of inputs in SI units. */
    @FunctionalInterface
    public interface Function {
        /**
         * The figure.
         *
         * @param inputs in the card's order, SI units
         */
        double of(double... inputs);
    }
}
