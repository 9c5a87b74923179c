// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.terminal;

import drumfall.solver.display.Resolution;
import drumfall.solver.quantity.Dimension;
import drumfall.solver.quantity.Quantity;
import drumfall.solver.quantity.QuantityFormatException;
import drumfall.solver.ratio.RatioException;
import java.util.stream.Stream;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Reads the smallest error that shows: an angle, or a time. */
final class ResolutionReader implements ITypeConverter<Resolution> {
    @Override
    public Resolution convert(String text) {
        try {
            return new Resolution(Quantity.parse(dimension(text), text));
        } catch (QuantityFormatException | RatioException refused) {
            throw new TypeConversionException(refused.getMessage());
        }
    }

    /** Minutes are minutes of time here; minutes of arc are written as such. */
    private static Dimension dimension(String text) {
        return Stream.of("deg", "°", "rad", "arcmin", "'").anyMatch(text::contains) ? Dimension.ANGLE : Dimension.TIME;
    }
}
