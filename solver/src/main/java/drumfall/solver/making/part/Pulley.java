// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.making.part;

import static drumfall.solver.making.part.Lengths.mm;

import drumfall.solver.making.shape.Rings;
import drumfall.solver.making.solid.Region;
import drumfall.solver.making.solid.SizeLimitException;
import drumfall.solver.making.solid.Solid;

/**
 * The pulley at the weight: a groove whose sides rise a layer's height for a layer's width, so that it prints unsupported.
 *
 * @param root diameter at the bottom of the groove, m
 * @param groove depth of the groove, m
 * @param line diameter of the line, which the bottom of the groove is wide, m, positive
 * @param rim thickness of the rims beside the groove, m
 * @param bore diameter of the bore or bearing seat as drawn, m
 * @param print what the printer can do
 */
public record Pulley(double root, double groove, double line, double rim, double bore, PrintSizes print)
        implements PrintedShape {
    private static final int MOST_STEPS = 400;

    /**
     * Checks the sizes against each other.
     *
     * @throws SizeLimitException if a size cannot be made
     */
    public Pulley {
        print.requireHeight("line of a pulley", line);
        print.requireWall("rim of a pulley", rim);
        print.requireWall("bore of a pulley", bore);
        SizeLimitException.atLeast("groove of a pulley", groove, line, "the line's diameter");
        SizeLimitException.atMost("groove of a pulley", groove, MOST_STEPS * print.layer(), MOST_STEPS + " layers");
        SizeLimitException.atLeast(
                "root diameter of a pulley", root, bore + 2 * print.wall(), "two extrusion widths around the bore");
    }

    private int steps() {
        return (int) Math.ceil(groove / print.layer() - 1e-9);
    }

    private Region ring(double radius) {
        return Region.of(Rings.circle(mm(radius)), Rings.hole(mm(bore) / 2));
    }

    @Override
    public Solid solid() {
        double outer = root / 2 + groove;
        Solid solid = Solid.of(mm(rim), ring(outer));
        for (int i = 1; i < steps(); i++) {
            solid = solid.topped(mm(print.layer()), ring(outer - i * print.layer()));
        }
        solid = solid.topped(mm(line), ring(root / 2));
        for (int i = steps() - 1; i > 0; i--) {
            solid = solid.topped(mm(print.layer()), ring(outer - i * print.layer()));
        }
        return solid.topped(mm(rim), ring(outer));
    }
}
