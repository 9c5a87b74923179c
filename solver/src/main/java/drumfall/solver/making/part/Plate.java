// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.making.part;

import drumfall.solver.making.solid.SizeLimitException;
import drumfall.solver.making.solid.Solid;
import java.util.List;

/**
 * A rectangular plate of the frame with holes for arbors, bearings, pillars and screws, in as many pieces as the printer's
 * bed asks for.
 *
 * @param name such as {@code front plate}
 * @param width m
 * @param height m
 * @param thickness m
 * @param holes the holes
 * @param print what the printer can do
 */
public record Plate(
        String name, double width, double height, double thickness, List<PlateHole> holes, PrintSizes print) {
    /**
     * Checks that every hole leaves a wall to the edges, the other holes and below its seat.
     *
     * @throws SizeLimitException if one does not
     */
    public Plate {
        holes = List.copyOf(holes);
        print.requireWall("thickness of the " + name, thickness);
        for (int i = 0; i < holes.size(); i++) {
            requirePlace(name, holes.get(i), width, height, thickness, print);
            for (PlateHole other : holes.subList(0, i)) {
                requireApart(name, holes.get(i), other, print);
            }
        }
    }

    private static void requirePlace(
            String name, PlateHole hole, double width, double height, double thickness, PrintSizes print) {
        String subject = " of the hole for " + hole.name() + " in the " + name;
        SizeLimitException.atLeast("diameter" + subject, hole.through(), print.extrusion(), "one extrusion width");
        double off = hole.radius() + print.wall();
        String reason = "two extrusion widths from the edge";
        SizeLimitException.atMost(
                "distance across from the middle" + subject, Math.abs(hole.x()), width / 2 - off, reason);
        SizeLimitException.atMost(
                "distance up from the middle" + subject, Math.abs(hole.y()), height / 2 - off, reason);
        SizeLimitException.atMost(
                "seat depth" + subject, hole.depth(), thickness - 2 * print.layer(), "two layers short of the plate");
    }

    private static void requireApart(String name, PlateHole one, PlateHole other, PrintSizes print) {
        SizeLimitException.atLeast(
                "distance between the holes for " + other.name() + " and " + one.name() + " in the " + name,
                Math.hypot(one.x() - other.x(), one.y() - other.y()),
                one.radius() + other.radius() + print.wall(),
                "two extrusion widths between their edges");
    }

    /**
     * The plate in pieces that each lie on the bed, row by row; one piece if it fits whole.
     *
     * @param bedWidth one side of the printer's bed, m
     * @param bedDepth its other side, m
     * @param joint how pieces are joined
     * @throws SizeLimitException if the bed is too small for a joint
     * @throws IllegalArgumentException if holes leave no room for a joint
     */
    public List<Solid> pieces(double bedWidth, double bedDepth, Joint joint) {
        return width <= height
                ? new PlateSplit(this, joint).pieces(bedWidth, bedDepth)
                : new PlateSplit(turned(), joint)
                        .pieces(bedWidth, bedDepth).stream()
                                .map(PlateSplit::turnedBack)
                                .toList();
    }

    /** The plate turned a quarter anticlockwise. */
    Plate turned() {
        double across = height;
        double up = width;
        return new Plate(
                name,
                across,
                up,
                thickness,
                holes.stream().map(PlateHole::turned).toList(),
                print);
    }
}
