// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.terminal;

import drumfall.solver.power.pendulum.BodyShape;
import drumfall.solver.quantity.Quantity;
import java.util.Arrays;
import java.util.Locale;
import java.util.stream.Collectors;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Shapes of a bob that may be named. */
enum BobShapeName {
    POINT(false, false),
    UPRIGHT(true, true),
    FACING(true, false),
    LENS(true, true),
    BALL(true, false);

    private final boolean hasDiameter;
    private final boolean hasThickness;

    BobShapeName(boolean hasDiameter, boolean hasThickness) {
        this.hasDiameter = hasDiameter;
        this.hasThickness = hasThickness;
    }

    /** The shape with its sizes; refused if one is missing or one too many. */
    BodyShape sized(Quantity diameter, Quantity thickness) {
        size("--bob-diameter", hasDiameter, diameter);
        size("--bob-thickness", hasThickness, thickness);
        double radius = hasDiameter ? diameter.si() / 2 : 0;
        return switch (this) {
            case POINT -> new BodyShape.MassPoint();
            case UPRIGHT -> new BodyShape.Tube(thickness.si(), radius, 0);
            case FACING -> new BodyShape.FacingCylinder(radius);
            case LENS -> lens(radius, diameter, thickness);
            case BALL -> new BodyShape.Sphere(radius);
        };
    }

    private static BodyShape lens(double radius, Quantity diameter, Quantity thickness) {
        if (thickness.compareTo(diameter) > 0) {
            throw RefusedInput.of("lens", thickness, diameter);
        }
        return new BodyShape.Lens(radius, thickness.si());
    }

    private void size(String option, boolean has, Quantity given) {
        if (has && given == null) {
            throw RefusedInput.of("needs", "--bob-shape " + word(), option);
        }
        if (!has && given != null) {
            throw RefusedInput.of("size", word(), option);
        }
    }

    private String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** Reads a shape. */
    static final class Reader implements ITypeConverter<BobShapeName> {
        @Override
        public BobShapeName convert(String text) {
            return Arrays.stream(values())
                    .filter(shape -> shape.word().equals(text))
                    .findFirst()
                    .orElseThrow(() -> new TypeConversionException(Phrases.phrase(
                            "refused.shape",
                            text,
                            Arrays.stream(values()).map(BobShapeName::word).collect(Collectors.joining(", ")))));
        }
    }
}
