// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.layout;

import java.util.List;
import java.util.stream.IntStream;

/**
 * The directions in which a mesh may run: equal steps of a turn, upright and level among them.
 *
 * @param steps of a whole turn, a multiple of 4 from 4 to 720
 */
public record AngleGrid(int steps) {
    private static final int MOST = 720;
    private static final int QUARTERS = 4;

    /**
     * Checks the number of steps.
     *
     * @throws IllegalArgumentException if the steps are out of range or do not hold a quarter turn
     */
    public AngleGrid {
        if (steps < QUARTERS || steps > MOST || steps % QUARTERS != 0) {
            throw new IllegalArgumentException(
                    "The steps (%d) of the grid must be a multiple of 4 from 4 to %d. Maybe use 48."
                            .formatted(steps, MOST));
        }
    }

    /**
     * The direction of a step, rad anticlockwise from the right.
     *
     * @param step 0 to steps - 1
     */
    public double direction(int step) {
        return 2 * Math.PI * step / steps;
    }

    /**
     * All points of the grid on a circle around the dial centre, in order of direction, to the nearest nanometre.
     *
     * <p>Computed in one quarter and turned, so that the points are exactly their own mirror images.
     *
     * @param radius nm
     */
    public List<Place> circle(long radius) {
        return IntStream.range(0, steps).mapToObj(step -> point(radius, step)).toList();
    }

    private Place point(long radius, int step) {
        int quarter = steps / QUARTERS;
        int half = steps / 2;
        if (step > half) {
            Place above = point(radius, steps - step);
            return new Place(above.x(), -above.y());
        }
        if (step > quarter) {
            return point(radius, half - step).mirrored();
        }
        return step == quarter ? new Place(0, radius) : Place.polar(radius, direction(step));
    }
}
