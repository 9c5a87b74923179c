// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.power.statics;

/**
 * A force across an arbor at one place.
 *
 * @param place behind the front support, m
 * @param across to the right seen from the dial, N
 * @param up against gravity, N
 */
public record PointForce(double place, double across, double up) {
    /**
     * A force from its size and direction.
     *
     * @param place behind the front support, m
     * @param size N
     * @param direction from across towards up, rad
     */
    public static PointForce at(double place, double size, double direction) {
        return new PointForce(place, size * Math.cos(direction), size * Math.sin(direction));
    }

    /**
     * The weight of a part.
     *
     * @param place behind the front support, m
     * @param newtons N, not negative
     */
    public static PointForce weight(double place, double newtons) {
        return new PointForce(place, 0, -newtons);
    }
}
