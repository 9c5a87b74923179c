// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.teeth.outline;

import java.util.List;

/**
 * A plane figure: one outer ring and the holes in it.
 *
 * @param outer the outer ring, anticlockwise
 * @param holes the holes, clockwise
 */
public record Outline(Ring outer, List<Ring> holes) {
    /**
     * Checks the sense of the rings.
     *
     * @throws IllegalArgumentException if the outer ring runs clockwise or a hole anticlockwise
     */
    public Outline {
        holes = List.copyOf(holes);
        check("outer ring", outer, 1);
        holes.forEach(hole -> check("hole", hole, -1));
    }

    private static void check(String name, Ring ring, int sense) {
        double area = ring.moments().area();
        if (!(area * sense > 0)) {
            throw new IllegalArgumentException("The area (" + area + ") of the " + name + " of an outline must be "
                    + (sense > 0 ? "above" : "below") + " 0 mm^2. Maybe reverse it.");
        }
    }

    /** Area and moments, holes taken out. */
    public Moments moments() {
        return holes.stream().map(Ring::moments).reduce(outer.moments(), Moments::plus);
    }
}
