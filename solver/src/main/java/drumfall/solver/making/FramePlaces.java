// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.making;

import java.util.List;

/**
 * Where the arbors and pillars stand in the plates, seen from the dial, metres from the plates' middle.
 *
 * @param width of the plates
 * @param height of the plates
 * @param arbors the arbors in the train's order, then any others such as the pallets'
 * @param pillars the pillars, at least two
 * @param spacers rings that keep parts apart on their arbors
 */
public record FramePlaces(double width, double height, List<Arbor> arbors, List<Pillar> pillars, List<Ring> spacers) {
    private static final int FEWEST_PILLARS = 2;

    /**
     * Copies the lists and counts the pillars.
     *
     * @throws IllegalArgumentException if there are fewer than two pillars
     */
    public FramePlaces {
        arbors = List.copyOf(arbors);
        pillars = List.copyOf(pillars);
        spacers = List.copyOf(spacers);
        if (pillars.size() < FEWEST_PILLARS) {
            throw new IllegalArgumentException("The pillars (" + pillars.size()
                    + ") of a frame must be at least 2, or the plates would turn. Maybe add one.");
        }
    }

    /**
     * An arbor's place and its supports.
     *
     * @param name such as {@code arbor 2}
     * @param x to the right, m
     * @param y upwards, m
     * @param front its support in the front plate
     * @param back its support in the back plate
     */
    public record Arbor(String name, double x, double y, Support front, Support back) {}

    /**
     * What carries an arbor in a plate.
     *
     * @param hole diameter of the hole through the plate as drawn, m
     * @param seat diameter of a bearing's seat as drawn, m; 0 for a plain hole
     * @param depth of the seat, m; 0 for a plain hole
     */
    public record Support(double hole, double seat, double depth) {
        /** A plain hole. */
        public static Support plain(double hole) {
            return new Support(hole, 0, 0);
        }
    }

    /**
     * A pillar's place.
     *
     * @param x to the right, m
     * @param y upwards, m
     */
    public record Pillar(double x, double y) {}

    /**
     * Spacers of one size on one arbor.
     *
     * @param arbor number of the arbor from the drum, from 0
     * @param height m
     * @param count how many, at least 1
     */
    public record Ring(int arbor, double height, int count) {}
}
