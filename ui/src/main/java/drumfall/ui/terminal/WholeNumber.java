// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.terminal;

import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Reads a whole number of at least 1. */
final class WholeNumber implements ITypeConverter<Integer> {
    @Override
    public Integer convert(String text) {
        if (!text.matches("[0-9]{1,9}") || Integer.parseInt(text) < 1) {
            throw new TypeConversionException(Phrases.phrase("refused.whole", text));
        }
        return Integer.valueOf(text);
    }
}
