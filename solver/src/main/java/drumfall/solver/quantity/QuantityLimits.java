// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.quantity;

/**
 * How much text a quantity may hold, so that hostile input is refused before any arithmetic is done on it.
 *
 * <p>The bounds are generous for people and small for the machine: any accepted value fits some hundreds of bits.
 */
final class QuantityLimits {
    /** The longest text, in characters; a compound of four full numbers stays below it. */
    static final int TEXT_LENGTH = 300;

    /** Most digits in one number; π to 39 decimals times or over any unit's factor fits. */
    static final int DIGITS = 60;

    /** The largest power of ten, either way; astronomy to atoms in any base unit. */
    static final int EXPONENT = 30;

    private QuantityLimits() {}
}
