// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.terminal;

import java.util.Arrays;
import java.util.stream.Collectors;
import picocli.CommandLine.TypeConversionException;

/** Finds the value of an enum by the word that stands for it, such as {@code printed-light}. */
final class KindWord {
    private KindWord() {}

    static <E extends Enum<E>> E of(String text, E[] values) {
        return Arrays.stream(values)
                .filter(value -> JsonOutput.word(value).equals(text))
                .findFirst()
                .orElseThrow(() -> new TypeConversionException(Phrases.phrase(
                        "refused.word",
                        text,
                        Arrays.stream(values).map(JsonOutput::word).collect(Collectors.joining(", ")))));
    }
}
