// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.terminal;

import drumfall.solver.quantity.Dimension;
import drumfall.solver.quantity.Quantity;
import drumfall.solver.quantity.QuantityFormatException;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Reads a quantity of one dimension and holds it against a least value; a refusal names the nearest that would do. */
abstract class Given implements ITypeConverter<Quantity> {
    private final Dimension dimension;
    private final Quantity least;

    /** Smaller values than {@code least} are refused; {@code null} allows all. */
    private Given(Dimension dimension, String least) {
        this.dimension = dimension;
        this.least = least == null ? null : Quantity.parse(dimension, least);
    }

    @Override
    public Quantity convert(String text) {
        try {
            Quantity given = Quantity.parse(dimension, text);
            if (least != null && given.compareTo(least) < 0) {
                throw new TypeConversionException(Phrases.phrase("refused.least", text, least.text()));
            }
            return given;
        } catch (QuantityFormatException unreadable) {
            throw new TypeConversionException(unreadable.getMessage());
        }
    }

    /** A length of something. */
    static final class Length extends Given {
        Length() {
            super(Dimension.LENGTH, "0.001 mm");
        }
    }

    /** A height above or below the sea. */
    static final class Height extends Given {
        Height() {
            super(Dimension.LENGTH, null);
        }
    }

    /** A mass of something. */
    static final class Mass extends Given {
        Mass() {
            super(Dimension.MASS, "0.001 g");
        }
    }

    /** An angle of more than nothing. */
    static final class Angle extends Given {
        Angle() {
            super(Dimension.ANGLE, "0.001°");
        }
    }

    /** An angle that may be nothing. */
    static final class AngleOrNone extends Given {
        AngleOrNone() {
            super(Dimension.ANGLE, "0°");
        }
    }

    /** A latitude; a bare number counts degrees, as on every map. */
    static final class Latitude extends Given {
        Latitude() {
            super(Dimension.ANGLE, null);
        }

        @Override
        public Quantity convert(String text) {
            return super.convert(text.matches("[+-]?[0-9.]+") ? text + "°" : text);
        }
    }

    /** A torque that may be nothing. */
    static final class Torque extends Given {
        Torque() {
            super(Dimension.TORQUE, "0 N mm");
        }
    }

    /** Beats an hour. */
    static final class Beats extends Given {
        Beats() {
            super(Dimension.NUMBER, "1");
        }
    }

    /** A quality factor. */
    static final class Quality extends Given {
        Quality() {
            super(Dimension.NUMBER, "1");
        }
    }

    /** A coefficient or share that may be nothing. */
    static final class Share extends Given {
        Share() {
            super(Dimension.NUMBER, "0");
        }
    }
}
