// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.making.part;

import static drumfall.solver.making.part.Lengths.mm;

import drumfall.solver.making.shape.Rings;
import drumfall.solver.making.solid.SizeLimitException;
import drumfall.solver.teeth.outline.Point;
import drumfall.solver.teeth.outline.Ring;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Holes for pins or screws, evenly spaced on a circle about the axis.
 *
 * @param count how many, from 0 to 24
 * @param radius of the circle their centres lie on, m
 * @param diameter of a hole, m
 */
public record PinCircle(int count, double radius, double diameter) {
    /** No holes. */
    public static final PinCircle NONE = new PinCircle(0, 0, 0);

    private static final int MOST = 24;

    /**
     * Checks the count.
     *
     * @throws SizeLimitException if the count is out of its range
     */
    public PinCircle {
        SizeLimitException.count("count of pins", count, 0, MOST);
    }

    /**
     * Refuses holes that leave too little material.
     *
     * @param part whose holes they are, such as {@code a ratchet}
     * @param inner radius of the material's inner edge, m
     * @param outer radius of its outer edge, m
     * @param print what can be printed
     */
    void requireWithin(String part, double inner, double outer, PrintSizes print) {
        if (count == 0) {
            return;
        }
        SizeLimitException.atLeast("pin hole of " + part, diameter, print.extrusion(), "one extrusion width");
        double off = diameter / 2 + print.wall();
        SizeLimitException.atLeast(
                "pin circle radius of " + part, radius, inner + off, "two extrusion widths outside the bore");
        SizeLimitException.atMost(
                "pin circle radius of " + part, radius, outer - off, "two extrusion widths inside the edge");
        if (count > 1) {
            double most = 2 * radius * Math.sin(Math.PI / count) - print.wall();
            SizeLimitException.atMost("pin hole of " + part, diameter, most, "two extrusion widths from the next");
        }
    }

    /** The holes. */
    List<Ring> holes() {
        return IntStream.range(0, count)
                .mapToObj(i -> Rings.hole(Point.polar(mm(radius), 2 * Math.PI * i / count), mm(diameter) / 2))
                .toList();
    }
}
