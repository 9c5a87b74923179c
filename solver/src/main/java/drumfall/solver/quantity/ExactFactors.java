// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.quantity;

import java.math.BigDecimal;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * The numbers from which every unit's factor is built.
 *
 * <p>Sources: the international yard and pound agreement of 1959 (1 yd = 0.9144 m, 1 lb = 0.453 592 37 kg) and the
 * standard acceleration of free fall of the third CGPM, 1901 (9.806 65 m/s²), both as given in NIST Special Publication
 * 811 (2008), A. Thompson and B. N. Taylor, appendix B.
 */
final class ExactFactors {
    /** One inch in metres: a thirty-sixth of the yard. */
    static final BigFraction INCH = decimal("0.0254");

    /** One pound in kilograms. */
    static final BigFraction POUND = decimal("0.45359237");

    /** One ounce (avoirdupois) in kilograms: a sixteenth of the pound. */
    static final BigFraction OUNCE = POUND.divide(16);

    /** The standard acceleration of free fall, in m/s². */
    static final BigFraction STANDARD_GRAVITY = decimal("9.80665");

    /** One pound-force in newtons. */
    static final BigFraction POUND_FORCE = POUND.multiply(STANDARD_GRAVITY);

    /** One ounce-force in newtons. */
    static final BigFraction OUNCE_FORCE = OUNCE.multiply(STANDARD_GRAVITY);

    /**
     * π to 39 decimals (OEIS A000796, from memory), the only number here that is not exact; its relative error is below
     * 10⁻³⁹, far under the 10⁻¹⁶ of a double.
     */
    static final BigFraction PI = decimal("3.141592653589793238462643383279502884197");

    private ExactFactors() {}

    static BigFraction decimal(String digits) {
        return of(new BigDecimal(digits));
    }

    static BigFraction of(BigDecimal decimal) {
        BigFraction unscaled = BigFraction.of(decimal.unscaledValue());
        return unscaled.multiply(BigFraction.of(10).pow(-decimal.scale()));
    }
}
