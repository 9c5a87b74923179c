// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.layout.place;

import drumfall.solver.layout.Box;
import drumfall.solver.layout.Part;

/**
 * Frame corners that set a pillar too close to something: those nearer than a radius to an upright strip that ends above
 * at a height, or to a point if {@code strip} is false.
 *
 * @param part what the pillar would be too close to
 * @param pillar the pillar
 * @param x middle of the strip or the point, nm
 * @param half half the strip's width, nm
 * @param y upper end of the strip or the point, nm
 * @param radius nm
 * @param strip whether everything below y belongs to it too
 */
record Obstacle(Part part, Part pillar, long x, long half, long y, long radius, boolean strip) {
    boolean blocks(long cornerX, long cornerY) {
        long across = Math.max(0, Math.abs(cornerX - x) - half);
        long up = strip ? Math.max(0, cornerY - y) : Math.abs(cornerY - y);
        return across < radius && up < radius && across * across + up * up < radius * radius;
    }

    /** How much the gap at a corner lacks, nm; 0 or less if nothing. */
    long lacks(long cornerX, long cornerY) {
        double across = Math.max(0, Math.abs(cornerX - x) - half);
        double up = strip ? Math.max(0, cornerY - y) : Math.abs(cornerY - y);
        return (long) Math.ceil(radius - Math.hypot(across, up));
    }

    /** Whether it reaches into a box, or nearly: a crossing of edges is rounded to whole nanometres. */
    boolean touches(Box box) {
        long margin = 2;
        double across = Math.max(0, Math.max(box.left() - x, x - box.right()) - half);
        double up = Math.max(0, strip ? box.bottom() - y : Math.max(box.bottom() - y, y - box.top()));
        double reach = (double) radius + margin;
        return across * across + up * up <= reach * reach;
    }

    /** Whether it blocks all of a box: it is convex, so the corners decide. */
    boolean covers(Box box) {
        return blocks(box.left(), box.bottom())
                && blocks(box.left(), box.top())
                && blocks(box.right(), box.bottom())
                && blocks(box.right(), box.top());
    }
}
