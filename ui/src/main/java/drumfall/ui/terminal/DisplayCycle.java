// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.terminal;

import drumfall.solver.display.DrivingArbor;
import drumfall.solver.display.KnownCycle;
import drumfall.solver.quantity.Dimension;
import drumfall.solver.quantity.Quantity;
import drumfall.solver.quantity.QuantityFormatException;
import java.util.Map;
import java.util.function.Function;
import org.apache.commons.numbers.fraction.BigFraction;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/**
 * The cycle that a display shows: one of the sky, a length of time, or turns of the arbor that drives it.
 *
 * @param seconds its length, where it may depend on the arbor
 */
record DisplayCycle(Function<DrivingArbor, BigFraction> seconds) {
    private static final Map<String, KnownCycle> NAMES = Map.of(
            "moon", KnownCycle.SYNODIC_MONTH,
            "tide", KnownCycle.LUNAR_DAY,
            "sidereal-day", KnownCycle.SIDEREAL_DAY,
            "year", KnownCycle.TROPICAL_YEAR);

    private static DisplayCycle of(BigFraction seconds) {
        return new DisplayCycle(arbor -> seconds);
    }

    /** Reads a name, a time with its unit, or a ratio without one. */
    static final class Reader implements ITypeConverter<DisplayCycle> {
        @Override
        public DisplayCycle convert(String text) {
            if (NAMES.containsKey(text)) {
                return of(NAMES.get(text).seconds());
            }
            if (!text.matches(".*[0-9].*")) {
                throw new TypeConversionException(Phrases.phrase("refused.cycle", text));
            }
            return text.codePoints().anyMatch(Character::isLetter) ? time(text) : turns(text);
        }

        private static DisplayCycle time(String text) {
            try {
                return of(Quantity.parse(Dimension.TIME, text).exact());
            } catch (QuantityFormatException unreadable) {
                throw new TypeConversionException(unreadable.getMessage());
            }
        }

        private static DisplayCycle turns(String text) {
            BigFraction turns = new RatioTarget().convert(text);
            return new DisplayCycle(arbor -> arbor.secondsPerTurn().multiply(turns));
        }
    }
}
