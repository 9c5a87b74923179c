// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.terminal;

import drumfall.solver.quantity.UnitSystem;
import java.util.Arrays;
import java.util.Locale;
import java.util.stream.Collectors;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Option;
import picocli.CommandLine.TypeConversionException;

/** The units that tables are shown in. */
final class UnitsChoice {
    @Option(
            names = "--units",
            paramLabel = "SYSTEM",
            defaultValue = "metric",
            converter = Reader.class,
            descriptionKey = "option.units")
    private UnitSystem system;

    UnitSystem system() {
        return system;
    }

    /** Reads a system of units. */
    static final class Reader implements ITypeConverter<UnitSystem> {
        @Override
        public UnitSystem convert(String text) {
            return Arrays.stream(UnitSystem.values())
                    .filter(system -> word(system).equals(text))
                    .findFirst()
                    .orElseThrow(() -> new TypeConversionException(Phrases.phrase("refused.units", text, words())));
        }

        private static String words() {
            return Arrays.stream(UnitSystem.values()).map(Reader::word).collect(Collectors.joining(", "));
        }

        private static String word(UnitSystem system) {
            return system.name().toLowerCase(Locale.ROOT);
        }
    }
}
