// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.train;

import java.math.BigDecimal;
import java.math.BigInteger;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Two rational numbers with &pi; between them, 50 decimals apart.
 *
 * <p>Digits: Abramowitz and Stegun, <i>Handbook of Mathematical Functions</i> (1964), table 1.1.
 */
public final class PiBounds {
    private static final BigDecimal BELOW_DECIMAL =
            new BigDecimal("3.14159265358979323846264338327950288419716939937510");

    /** A number just below &pi;. */
    public static final BigFraction BELOW = fraction(BELOW_DECIMAL);

    /** A number just above &pi;. */
    public static final BigFraction ABOVE = fraction(BELOW_DECIMAL.add(BELOW_DECIMAL.ulp()));

    private PiBounds() {}

    private static BigFraction fraction(BigDecimal decimal) {
        return BigFraction.of(decimal.unscaledValue(), BigInteger.TEN.pow(decimal.scale()));
    }
}
