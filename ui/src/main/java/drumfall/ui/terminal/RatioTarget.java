// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.terminal;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.commons.numbers.fraction.BigFraction;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Reads a ratio exactly: a decimal such as {@code 29.530589}, or a fraction of two such as {@code 235/19}. */
final class RatioTarget implements ITypeConverter<BigFraction> {
    private static final String DECIMAL = "([0-9]{1,150}(?:\\.[0-9]{1,150})?)";
    private static final Pattern TARGET = Pattern.compile(DECIMAL + "(?:\\s*/\\s*" + DECIMAL + ")?");

    @Override
    public BigFraction convert(String text) {
        Matcher target = TARGET.matcher(text);
        if (!target.matches()) {
            throw new TypeConversionException(Phrases.phrase("refused.target", text));
        }
        BigFraction above = exact(target.group(1));
        if (target.group(2) == null) {
            return above;
        }
        BigFraction below = exact(target.group(2));
        if (below.isZero()) {
            throw new TypeConversionException(Phrases.phrase("refused.target.zero", text));
        }
        return above.divide(below);
    }

    private static BigFraction exact(String decimal) {
        BigDecimal value = new BigDecimal(decimal);
        return BigFraction.of(value.unscaledValue(), BigInteger.TEN.pow(value.scale()));
    }
}
