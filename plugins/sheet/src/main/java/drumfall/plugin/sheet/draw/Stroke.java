// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.plugin.sheet.draw;

import drumfall.solver.teeth.outline.Point;
import java.util.List;

/**
 * A closed line through points, millimetres.
 *
 * @param points at least two; the last joins the first
 */
public record Stroke(List<Point> points) {
    /**
     * Copies the points.
     *
     * @throws IllegalArgumentException if there are fewer than two
     */
    public Stroke {
        points = List.copyOf(points);
        if (points.size() < 2) {
            throw new IllegalArgumentException(
                    "The points (" + points.size() + ") of a stroke must be at least 2. Maybe leave it out.");
        }
    }
}
