// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.plugin.outlines;

import drumfall.plugin.outlines.draw.Numbers;
import drumfall.solver.brief.Brief;
import drumfall.solver.fit.bore.FinishedHole;
import drumfall.solver.fitting.FittedArbor;
import drumfall.solver.fitting.FittedMovement;
import drumfall.solver.fitting.PlateHole;
import drumfall.solver.layout.Layout;
import drumfall.solver.layout.Place;
import drumfall.solver.layout.size.Nanometres;
import drumfall.solver.making.MakingSizes;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * The holes of one plate. A hole for an arbor or pillar has the same number in both plates.
 *
 * @param plate {@code front} or {@code back}
 * @param layout where everything stands
 * @param holes by number
 */
record PlateHoles(String plate, Layout layout, List<Hole> holes) {
    static final String FRONT = "front";
    static final String BACK = "back";

    /** Copies the list. */
    PlateHoles {
        holes = List.copyOf(holes);
    }

    /**
     * One hole, nm.
     *
     * @param number from 1
     * @param what goes through it
     * @param place its axis, from the dial centre
     * @param drawn its diameter as drawn
     * @param drill that brings it to size; empty if none does
     * @param seat the wider hole from the plate's inner side, if there is one
     * @param use what it does
     */
    record Hole(int number, String what, Place place, long drawn, String drill, Optional<Seat> seat, String use) {
        /** The axis from the lower left corner of the plate, seen from the dial. */
        Place fromCorner(Layout layout) {
            return place.minus(layout.frameCorner());
        }
    }

    /**
     * A seat for a bearing or the end of a pillar, nm.
     *
     * @param drawn its diameter as drawn
     * @param depth from the plate's inner side
     * @param drill that brings it to size; empty if none does
     */
    record Seat(long drawn, long depth, String drill) {}

    /** Both plates, the front one first. */
    static List<PlateHoles> of(Brief brief, Layout layout, FittedMovement fitted) {
        return List.of(
                of(FRONT, FittedArbor::front, brief, layout, fitted),
                of(BACK, FittedArbor::back, brief, layout, fitted));
    }

    private static PlateHoles of(
            String plate,
            Function<FittedArbor, Optional<PlateHole>> in,
            Brief brief,
            Layout layout,
            FittedMovement fitted) {
        List<Hole> holes = new ArrayList<>();
        List<FittedArbor> arbors = fitted.arbors();
        for (int i = 0; i < arbors.size(); i++) {
            FittedArbor arbor = arbors.get(i);
            int number = i + 1;
            in.apply(arbor).ifPresent(hole -> holes.add(arborHole(number, arbor, hole)));
        }
        brief.frame().pillars().ifPresent(pillars -> {
            long diameter = Nanometres.of(pillars.diameter().si());
            for (Place place : layout.pillarPlaces()) {
                holes.add(pillar(arbors.size(), holes, place, diameter));
            }
        });
        return new PlateHoles(plate, layout, holes);
    }

    private static Hole arborHole(int number, FittedArbor arbor, PlateHole hole) {
        Optional<Seat> seat = hole.seat()
                .map(rolling -> new Seat(rolling.hole().drawn(), rolling.depth().height(), drill(rolling.hole())));
        String use = switch (hole.use()) {
            case RUNNING -> "the rod turns in it";
            case HOLDING -> "it holds the rod";
            case SEAT ->
                "seat of bearing " + hole.seat().orElseThrow().bearing().name();
            case UNKNOWN_SEAT -> "for a bearing; its size is not in the brief; only the rod's hole is given";
        };
        return new Hole(number, arbor.name(), arbor.place(), hole.through().drawn(), drill(hole.through()), seat, use);
    }

    private static String drill(FinishedHole hole) {
        return hole.drill().label();
    }

    /** Pillars are numbered on from the arbors, also where an arbor has no hole. */
    private static Hole pillar(int arbors, List<Hole> before, Place place, long diameter) {
        MakingSizes sizes = MakingSizes.customary();
        int count = (int) before.stream().filter(hole -> hole.number() > arbors).count() + 1;
        Seat pocket = new Seat(
                diameter + 2 * Nanometres.of(sizes.fit()),
                Nanometres.of(sizes.frame().pocket()),
                "");
        return new Hole(
                arbors + count,
                "pillar " + count,
                place,
                Nanometres.of(sizes.frame().screw()),
                "",
                Optional.of(pocket),
                "screw; the pillar stands in the seat");
    }

    /** A line for each hole (RFC 4180). */
    String csv() {
        StringBuilder text =
                new StringBuilder("hole,for,x from dial centre (mm),y from dial centre (mm),x from left edge (mm),"
                        + "y from lower edge (mm),drawn diameter (mm),drill,drawn diameter of seat (mm),"
                        + "depth of seat (mm),drill of seat,use\r\n");
        for (Hole hole : holes) {
            List<String> fields = new ArrayList<>(fields(hole));
            fields.add(fields.size() - 1, hole.seat().map(Seat::drill).orElse(""));
            text.append(String.join(",", fields)).append("\r\n");
        }
        return text.toString();
    }

    /** Number, what it is for, places, diameter, drill, diameter and depth of the seat, use. */
    List<String> fields(Hole hole) {
        Place corner = hole.fromCorner(layout);
        return List.of(
                Integer.toString(hole.number()),
                hole.what(),
                Numbers.micrometres(hole.place().x()),
                Numbers.micrometres(hole.place().y()),
                Numbers.micrometres(corner.x()),
                Numbers.micrometres(corner.y()),
                Numbers.micrometres(hole.drawn()),
                hole.drill(),
                hole.seat().map(seat -> Numbers.micrometres(seat.drawn())).orElse(""),
                hole.seat().map(seat -> Numbers.micrometres(seat.depth())).orElse(""),
                hole.use());
    }
}
