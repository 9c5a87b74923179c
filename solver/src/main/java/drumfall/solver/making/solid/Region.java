// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.making.solid;

import drumfall.solver.teeth.outline.Moments;
import drumfall.solver.teeth.outline.Outline;
import drumfall.solver.teeth.outline.Ring;
import java.util.List;
import java.util.stream.Stream;

/**
 * A plane figure of one or more outlines side by side.
 *
 * @param outlines the outlines, none of them touching another; at least one
 */
public record Region(List<Outline> outlines) {
    /**
     * Checks that the rings neither cross nor lie in the wrong order.
     *
     * @throws IllegalArgumentException if there is no outline, rings cross, a hole lies outside its outline or in another
     *     hole, or an outline lies in another
     */
    public Region {
        outlines = List.copyOf(outlines);
        RingOrder.check(outlines);
    }

    /** A figure of one outline. */
    public static Region of(Outline outline) {
        return new Region(List.of(outline));
    }

    /**
     * A figure of one outline.
     *
     * @param outer its outer ring, anticlockwise
     * @param holes the holes, clockwise
     */
    public static Region of(Ring outer, Ring... holes) {
        return of(new Outline(outer, List.of(holes)));
    }

    /** All rings, outer ones anticlockwise, holes clockwise. */
    public Stream<Ring> rings() {
        return outlines.stream()
                .flatMap(outline -> Stream.concat(Stream.of(outline.outer()), outline.holes().stream()));
    }

    /** Area and moments about the origin, holes taken out. */
    public Moments moments() {
        return outlines.stream().map(Outline::moments).reduce(Moments.ZERO, Moments::plus);
    }

    /** The smallest box around it, mm. */
    public Box box() {
        return outlines.stream()
                .map(outline -> Box.around(outline.outer()))
                .reduce(Box::with)
                .orElseThrow();
    }
}
