// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.making;

import drumfall.solver.fitting.FittedArbor;
import drumfall.solver.fitting.FittedMovement;
import drumfall.solver.fitting.PlateHole;
import drumfall.solver.layout.Box;
import drumfall.solver.layout.Layout;
import drumfall.solver.layout.Place;
import java.util.ArrayList;
import java.util.List;

/**
 * Where the arbors and pillars stand in the plates, seen from the dial, metres from the plates' middle.
 *
 * @param width of the plates
 * @param height of the plates
 * @param arbors the arbors in the train's order, then any others such as the pallets'
 * @param depth between the plates
 * @param levels where parts stand along the arbors
 * @param pillars the pillars, at least two, or none if the frame is held apart elsewhere
 * @param spacers rings that keep parts apart on their arbors
 */
public record FramePlaces(
        double width,
        double height,
        double depth,
        Levels levels,
        List<Arbor> arbors,
        List<Pillar> pillars,
        List<Ring> spacers) {
    private static final int FEWEST_PILLARS = 2;
    private static final double METRES = 1e-9;

    /**
     * Copies the lists and counts the pillars.
     *
     * @throws IllegalArgumentException if there is one pillar
     */
    public FramePlaces {
        arbors = List.copyOf(arbors);
        pillars = List.copyOf(pillars);
        spacers = List.copyOf(spacers);
        if (!pillars.isEmpty() && pillars.size() < FEWEST_PILLARS) {
            throw new IllegalArgumentException("The pillars (" + pillars.size()
                    + ") of a frame must be at least 2, or the plates would turn. Maybe add one.");
        }
    }

    /**
     * The places of a fitted movement.
     *
     * @param layout where everything stands
     * @param fitted its fitting
     */
    public static FramePlaces of(Layout layout, FittedMovement fitted) {
        Box frame = layout.frame();
        Place middle = new Place((frame.left() + frame.right()) / 2, (frame.bottom() + frame.top()) / 2);
        List<FittedArbor> train = fitted.arbors().stream()
                .filter(arbor -> arbor.standing().isPresent())
                .toList();
        List<Ring> spacers = new ArrayList<>();
        for (int number = 0; number < train.size(); number++) {
            addSpacers(number, train.get(number).standing().orElseThrow(), spacers);
        }
        return new FramePlaces(
                METRES * (frame.right() - frame.left()),
                METRES * (frame.top() - frame.bottom()),
                METRES * fitted.depth(),
                Levels.of(layout, fitted),
                fitted.arbors().stream()
                        .map(arbor -> arbor(arbor, arbor.place().minus(middle)))
                        .toList(),
                layout.pillarPlaces().stream()
                        .map(place -> place.minus(middle))
                        .map(place -> new Pillar(METRES * place.x(), METRES * place.y()))
                        .toList(),
                spacers);
    }

    private static Arbor arbor(FittedArbor arbor, Place place) {
        return new Arbor(
                arbor.name(),
                METRES * place.x(),
                METRES * place.y(),
                arbor.front().map(Support::of).orElse(Support.NONE),
                arbor.back().map(Support::of).orElse(Support.NONE));
    }

    private static void addSpacers(int number, FittedArbor.Standing standing, List<Ring> spacers) {
        long back = standing.backSpacer();
        long front = standing.frontSpacer();
        double before = METRES * (back + standing.parts());
        if (back == front && back > 0) {
            spacers.add(new Ring(number, METRES * back, List.of(0.0, before)));
            return;
        }
        if (back > 0) {
            spacers.add(new Ring(number, METRES * back, List.of(0.0)));
        }
        if (front > 0) {
            spacers.add(new Ring(number, METRES * front, List.of(before)));
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
     * @param hole diameter of the hole through the plate as drawn, m; 0 if there is none
     * @param seat diameter of a bearing's seat as drawn, m; 0 for a plain hole
     * @param depth of the seat, m; 0 for a plain hole
     */
    public record Support(double hole, double seat, double depth) {
        /** No hole. */
        public static final Support NONE = plain(0);

        static Support of(PlateHole hole) {
            double through = METRES * hole.through().drawn();
            return hole.seat()
                    .map(seat -> new Support(
                            through,
                            METRES * seat.hole().drawn(),
                            METRES * seat.depth().height()))
                    .orElse(plain(through));
        }

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
     * @param rears where each of them begins, m before the back plate's inner face; at least one
     */
    public record Ring(int arbor, double height, List<Double> rears) {
        /** Copies the list. */
        public Ring {
            rears = List.copyOf(rears);
        }
    }
}
