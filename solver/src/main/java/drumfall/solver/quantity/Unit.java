// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.quantity;

import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * One unit of measurement.
 *
 * @param dimension what it measures
 * @param symbol how it is printed; empty for plain numbers
 * @param factor how many base units it holds; positive
 * @param exact whether {@code factor} is exact; only the radian's is not
 * @param spellings every way it may be typed, the symbol first
 */
public record Unit(Dimension dimension, String symbol, BigFraction factor, boolean exact, List<String> spellings) {

    /** Checks the factor and copies the spellings. */
    public Unit {
        if (factor.signum() <= 0) {
            throw new IllegalArgumentException(
                    "The factor (%s) of unit (%s) must be positive.".formatted(factor, symbol));
        }
        spellings = List.copyOf(spellings);
    }

    static Unit exactly(Dimension dimension, BigFraction factor, String... spellings) {
        return new Unit(dimension, spellings[0], factor, true, List.of(spellings));
    }

    /** An amount of this unit as people print it: the degree sign, the percent sign and the bare number stand close. */
    String print(String amount) {
        boolean close = symbol.isEmpty() || symbol.equals("°") || symbol.equals("%");
        return close ? amount + symbol : amount + " " + symbol;
    }
}
