// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.plugin.outlines;

import drumfall.plugin.outlines.draw.Numbers;
import drumfall.solver.brief.FramePillars;
import drumfall.solver.kit.HoleRow;
import drumfall.solver.kit.HoleRow.Plate;
import drumfall.solver.kit.Kit;
import drumfall.solver.layout.Layout;
import drumfall.solver.layout.Place;
import drumfall.solver.layout.size.Nanometres;
import drumfall.solver.making.MakingSizes;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The holes of one plate: those of the kit with their numbers, then those of the pillars.
 *
 * @param plate which plate
 * @param layout where everything stands
 * @param holes the holes
 */
record PlateHoles(Plate plate, Layout layout, List<Hole> holes) {
    /** Copies the list. */
    PlateHoles {
        holes = List.copyOf(holes);
    }

    /**
     * One hole, nm.
     *
     * @param number as the kit numbers it, from 1; pillars from P1
     * @param what goes through it
     * @param place its axis, from the dial centre
     * @param drawn its diameter as drawn
     * @param drill that brings it to size; empty if none does
     * @param seat the wider hole from the plate's inner side, if there is one
     * @param use what it does
     */
    record Hole(String number, String what, Place place, long drawn, String drill, Optional<Seat> seat, String use) {
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

    /** Both plates, the front one first; none without places. */
    static List<PlateHoles> of(Kit kit) {
        return kit.layout()
                .map(layout -> Stream.of(Plate.FRONT, Plate.BACK)
                        .map(plate -> of(plate, kit, layout))
                        .toList())
                .orElse(List.of());
    }

    private static PlateHoles of(Plate plate, Kit kit, Layout layout) {
        List<Hole> holes = new ArrayList<>();
        kit.holes().stream().filter(row -> row.plate() == plate).forEach(row -> holes.add(arborHole(row)));
        kit.brief().frame().pillars().ifPresent(pillars -> {
            List<Place> places = layout.pillarPlaces();
            for (int i = 0; i < places.size(); i++) {
                holes.add(pillar(i + 1, places.get(i), pillars));
            }
        });
        return new PlateHoles(plate, layout, holes);
    }

    private static Hole arborHole(HoleRow row) {
        Optional<Seat> seat = row.seat().isPresent()
                ? Optional.of(new Seat(row.seat().getAsLong(), row.seatDepth(), row.seatDrill()))
                : Optional.empty();
        String use = switch (row.use()) {
            case RUNNING -> "the rod turns in it";
            case HOLDING -> "it holds the rod";
            case SEAT -> "a bearing sits in the seat";
            case UNKNOWN_SEAT -> "for a bearing; its size is not in the brief; only the rod's hole is given";
        };
        return new Hole(
                Integer.toString(row.number()),
                row.name(),
                new Place(row.fromDial(), row.aboveDial()),
                row.drawn(),
                row.drill(),
                seat,
                use);
    }

    private static Hole pillar(int number, Place place, FramePillars pillars) {
        MakingSizes sizes = MakingSizes.customary();
        Seat pocket = new Seat(
                Nanometres.of(pillars.diameter().si()) + 2 * Nanometres.of(sizes.fit()),
                Nanometres.of(sizes.frame().pocket()),
                "");
        return new Hole(
                "P" + number,
                "pillar " + number,
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
                hole.number(),
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
