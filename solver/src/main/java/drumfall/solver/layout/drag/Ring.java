// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.layout.drag;

import drumfall.solver.layout.Place;
import java.util.List;
import java.util.stream.Stream;

/**
 * What a point asks of an arbor's distance from it.
 *
 * @param middle the point
 * @param least least distance, nm; 0 or less for none
 * @param most greatest distance, nm; the largest number for none
 * @param tolerance by how much either may be missed, nm
 */
record Ring(Place middle, long least, long most, long tolerance) {
    boolean admits(Place at) {
        double squared = at.squaredDistance(middle);
        double nearest = Math.max(0, least - tolerance);
        return squared >= nearest * nearest && (most == Long.MAX_VALUE || at.distance(middle) <= most + tolerance);
    }

    /** The directions from an arc's middle in which it crosses either circle. */
    List<Double> crossings(Arc arc) {
        return Stream.concat(
                        crossings(arc, (double) least),
                        most == Long.MAX_VALUE ? Stream.empty() : crossings(arc, (double) most))
                .toList();
    }

    private Stream<Double> crossings(Arc arc, double radius) {
        double apart = arc.middle().distance(middle);
        double near = arc.radius();
        if (radius <= 0 || apart == 0) {
            return Stream.empty();
        }
        double cosine = (apart * apart + near * near - radius * radius) / (2 * apart * near);
        if (Math.abs(cosine) > 1) {
            return Stream.empty();
        }
        double towards = arc.angleTo(middle);
        return Stream.of(towards + Math.acos(cosine), towards - Math.acos(cosine));
    }
}
