// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.making.part;

import drumfall.solver.making.solid.SizeLimitException;
import drumfall.solver.teeth.outline.Point;
import java.util.ArrayList;
import java.util.List;

/**
 * Dovetails along the edge where two pieces of a plate meet.
 *
 * @param depth height of a tail, m
 * @param neck width of a tail at its foot, m
 * @param head width at its end, m, more than the neck, so that it holds
 * @param spacing least distance from one tail to the next, m
 */
public record Joint(double depth, double neck, double head, double spacing) {
    /**
     * Checks the tail.
     *
     * @throws SizeLimitException if it would not hold or two would meet
     */
    public Joint {
        SizeLimitException.atLeast("depth of a dovetail", depth, 1e-3, "or nothing is held");
        SizeLimitException.atLeast("neck of a dovetail", neck, 1e-3, "or it breaks");
        SizeLimitException.atLeast(
                "head of a dovetail", head, neck + 2e-4, "a tenth of a millimetre a side beyond its neck");
        SizeLimitException.atLeast("spacing of dovetails", spacing, 2 * head, "as much between them as they take up");
    }

    /**
     * The corners of an edge from left to right, metres.
     *
     * @param width from the left end to the right, about the middle
     * @param height at which the edge runs
     * @param play by which tails are grown, 0 for the tails themselves, the fit for their sockets
     */
    List<Point> edge(double width, double height, double play) {
        List<Point> corners = new ArrayList<>();
        int tails = Math.max(1, (int) Math.floor(width / spacing));
        corners.add(new Point(-width / 2, height));
        for (int i = 0; i < tails; i++) {
            double middle = (i + 0.5) * width / tails - width / 2;
            double top = height + depth + play;
            corners.add(new Point(middle - neck / 2 - play, height));
            corners.add(new Point(middle - head / 2 - play, top));
            corners.add(new Point(middle + head / 2 + play, top));
            corners.add(new Point(middle + neck / 2 + play, height));
        }
        corners.add(new Point(width / 2, height));
        return corners;
    }
}
