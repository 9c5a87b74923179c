// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.terminal;

import drumfall.solver.quantity.Dimension;
import drumfall.solver.quantity.Quantity;
import drumfall.solver.quantity.QuantityFormatException;
import java.util.function.BooleanSupplier;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Option;
import picocli.CommandLine.TypeConversionException;

/** When a command stops early. */
final class StopChoice {
    private static final double NANOSECONDS_PER_SECOND = 1e9;

    @Option(names = "--limit", paramLabel = "TIME", converter = Reader.class, descriptionKey = "option.limit")
    private Quantity limit;

    /** Counts the limit from now on; true once it is over or the user wants an end. */
    BooleanSupplier from(TerminalPlace place) {
        if (limit == null) {
            return place.interrupted();
        }
        long start = System.nanoTime();
        double nanoseconds = limit.si() * NANOSECONDS_PER_SECOND;
        return () -> place.interrupted().getAsBoolean() || System.nanoTime() - start >= nanoseconds;
    }

    /** Reads a time that is not negative. */
    static final class Reader implements ITypeConverter<Quantity> {
        @Override
        public Quantity convert(String text) {
            try {
                Quantity time = Quantity.parse(Dimension.TIME, text);
                if (time.si() < 0) {
                    throw new TypeConversionException(Phrases.phrase("refused.limit", text));
                }
                return time;
            } catch (QuantityFormatException unreadable) {
                throw new TypeConversionException(unreadable.getMessage());
            }
        }
    }
}
