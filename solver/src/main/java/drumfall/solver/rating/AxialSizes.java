// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.rating;

import drumfall.solver.brief.Brief;
import drumfall.solver.layout.size.Gaps;
import drumfall.solver.layout.size.Nanometres;
import drumfall.solver.parts.Shrouds;
import drumfall.solver.quantity.Quantity;

/**
 * What the printed parts of a brief take along their arbors and around them, nm: the numbers that a layout plans with and
 * that the parts are made to.
 *
 * @param brief the brief
 */
public record AxialSizes(Brief brief) {
    private static final double METRES = 1e-9;

    /** A wall is two extrusion widths, one on each side of a tube; common practice, no source. */
    private static final int WALL_WIDTHS = 2;

    /** The room that parts leave each other. */
    public Gaps gaps() {
        return new Gaps(
                nanometres(brief.parts().gap()),
                nanometres(brief.parts().axialGap()),
                nanometres(brief.fit().endShake().high()));
    }

    /** Thickness of a wheel. */
    public long wheel() {
        return nanometres(brief.parts().wheelThickness());
    }

    /** The drum over its flanges. */
    public long drum() {
        return nanometres(brief.drum().length()) + 2 * nanometres(brief.drum().wall());
    }

    /** Whether pinions are lantern pinions. */
    public boolean lantern() {
        return brief.teeth().form() == Brief.ToothForm.LANTERN;
    }

    /** Thickness of one shroud of a lantern pinion: half a wheel's (common practice, no source). */
    public long shroud() {
        return wheel() / 2;
    }

    /**
     * A pinion over all: leaves of the brief's length, or two shrouds and pins of that length between them. Pins are longer
     * where a wheel, resting at either end of both end shakes, would otherwise come nearer to a shroud than the brief's gap.
     */
    public long pinion() {
        long length = nanometres(brief.parts().pinionLength());
        return lantern() ? Math.max(length, wheel() + 2 * gaps().spacing()) + 2 * shroud() : length;
    }

    /** A pinion from the face of its wheel, in the next plane, to its far end: leaves, or shrouds and pins, stand on the wheel. */
    public long leaves() {
        return besideWheel() + gaps().spacing() + pinion();
    }

    /** From the great wheel's face to the drum: what ratchet and click stand in, and what the wheel's plane leaves beside it. */
    public long ratchetRoom() {
        return besideWheel() + clickSpace();
    }

    /** Room for the click beside the great wheel. */
    long clickSpace() {
        return nanometres(brief.drum().clickSpace());
    }

    /** From plate to plate, the most that a movement may take. */
    long depth() {
        return nanometres(brief.frame().depth());
    }

    /** Thickness of a plate. */
    long plate() {
        return nanometres(brief.frame().plate());
    }

    /** Height of a printed layer. */
    long layer() {
        return nanometres(brief.printer().layer());
    }

    private long besideWheel() {
        return (mesh() - wheel()) / 2;
    }

    /** The plane of a mesh, in whose middle the wheel stands. */
    public long mesh() {
        return Math.max(wheel(), pinion());
    }

    /** Thickness of the pallets: the escape wheel stays on them wherever the end shakes of both let it stand. */
    public long pallets() {
        return wheel() + 2 * gaps().endShake();
    }

    /**
     * Radius of a lantern pinion's shrouds, m: a wall around the holes for the pins.
     *
     * @param tipRadius radius around the pins, m
     */
    public double shroudRadius(double tipRadius) {
        return shrouds().radius(tipRadius);
    }

    /** The shrouds of a lantern pinion. */
    public Shrouds shrouds() {
        return new Shrouds(METRES * shroud(), wall());
    }

    /** The thinnest wall that is printed, m: two extrusion widths. */
    public double wall() {
        return WALL_WIDTHS * brief.printer().nozzle().si();
    }

    private static long nanometres(Quantity length) {
        return Nanometres.of(length.si());
    }
}
