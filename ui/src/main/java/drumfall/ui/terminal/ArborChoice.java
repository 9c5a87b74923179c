// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.terminal;

import drumfall.solver.display.DrivingArbor;
import drumfall.solver.ratio.RatioException;
import org.apache.commons.numbers.fraction.BigFraction;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Option;
import picocli.CommandLine.TypeConversionException;

/** The arbor that a display is driven from. */
final class ArborChoice {
    @Option(
            names = "--arbor",
            paramLabel = "ARBOR",
            defaultValue = "centre",
            converter = Reader.class,
            descriptionKey = "option.arbor")
    private DrivingArbor arbor;

    @Option(names = "--anticlockwise", descriptionKey = "option.anticlockwise")
    private boolean anticlockwise;

    DrivingArbor arbor() {
        return new DrivingArbor(arbor.turnsPerHour(), !anticlockwise);
    }

    /** Reads a name, or turns an hour. */
    static final class Reader implements ITypeConverter<DrivingArbor> {
        @Override
        public DrivingArbor convert(String text) {
            return switch (text) {
                case "centre" -> DrivingArbor.CENTRE;
                case "hour-wheel" -> DrivingArbor.HOUR_WHEEL;
                default -> typed(text);
            };
        }

        private static DrivingArbor typed(String text) {
            if (!text.matches(".*[0-9].*")) {
                throw new TypeConversionException(Phrases.phrase("refused.arbor", text));
            }
            BigFraction turnsPerHour = new RatioTarget().convert(text);
            try {
                return new DrivingArbor(turnsPerHour, true);
            } catch (RatioException refused) {
                throw new TypeConversionException(refused.getMessage());
            }
        }
    }
}
