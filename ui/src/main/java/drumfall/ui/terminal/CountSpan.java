// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.terminal;

import drumfall.solver.ratio.CountRange;
import drumfall.solver.ratio.RatioException;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Reads a range of counts, such as {@code 24-90}. */
final class CountSpan implements ITypeConverter<CountRange> {
    private static final Pattern SPAN = Pattern.compile("([0-9]{1,9})-([0-9]{1,9})");

    @Override
    public CountRange convert(String text) {
        Matcher span = SPAN.matcher(text);
        if (!span.matches()) {
            throw new TypeConversionException(Phrases.phrase("refused.span", text));
        }
        try {
            return new CountRange(Integer.parseInt(span.group(1)), Integer.parseInt(span.group(2)));
        } catch (RatioException refused) {
            throw new TypeConversionException(refused.getMessage());
        }
    }
}
