// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.parts;

/**
 * What stands on the drum's arbor besides the great wheel: drum with both flanges, ratchet with its click, winding square.
 *
 * <p>Left out is the line's hole in a flange.
 *
 * @param length length of the drum between its flanges, m, positive
 * @param wall thickness of the drum's tubes and flanges, m, positive
 * @param line diameter of the line, m, not negative
 * @param bore diameter of the drum's rod, m, positive
 * @param ratchet what is chosen of the ratchet
 * @param room from the great wheel to the drum, which ratchet and boss fill, m, at least the ratchet's thickness
 * @param gap between click and ratchet, m, not negative
 * @param square the winding square
 * @param printWall the thinnest wall that is printed, two extrusion widths, m, positive
 */
public record DrumForm(
        double length,
        double wall,
        double line,
        double bore,
        RatchetSize ratchet,
        double room,
        double gap,
        SquareSize square,
        double printWall) {
    /** Play all round between printed parts that go into each other, m; common practice, no source. */
    public static final double PLAY = 0.00015;

    /** How many pins hold the ratchet to the drum; common practice, no source. */
    public static final int PINS = 3;

    /** Height of a drum flange above the bare drum in line diameters: one layer and a guard; common practice, no source. */
    private static final double FLANGE_LINES = 3;

    /** The ratchet's boss stays half an extrusion width, a quarter of a wall, inside the roots. */
    private static final double BOSS_INSET = 0.25;

    /**
     * Radius of the drum's flanges, m.
     *
     * @param diameter bare diameter, m
     */
    public double flangeRadius(double diameter) {
        return diameter / 2 + FLANGE_LINES * line;
    }

    /**
     * The ratchet of a drum.
     *
     * @param diameter bare diameter, m
     */
    public RatchetForm ratchet(double diameter) {
        return new RatchetForm(ratchet, bore, diameter, wall, printWall);
    }

    /**
     * Volume of the drum with both flanges, cubic metres: a tube around the line's layer and one around the rod, or both as one
     * where there is no room for a chamber; on the second flange a spigot that goes into the chamber. The pins' holes go through
     * the first flange, and through a drum without a chamber.
     *
     * @param diameter bare diameter, m
     */
    public double barrel(double diameter) {
        double outer = diameter / 2;
        double flanges = 2 * wall * ring(flangeRadius(diameter), bore / 2) - wall * pinHoles();
        if (!ratchet(diameter).hollow()) {
            return flanges + length * (ring(outer, bore / 2) - pinHoles());
        }
        double chamber = outer - wall;
        double hub = bore / 2 + wall;
        double spigot = ring(chamber - PLAY, Math.max(chamber - PLAY - wall, hub + PLAY));
        return flanges + length * (ring(outer, chamber) + ring(hub, bore / 2)) + Math.min(wall, length) * spigot;
    }

    /**
     * Volume of the ratchet with its boss, and of the click, cubic metres.
     *
     * @param diameter bare diameter, m
     */
    public double ratchetAndClick(double diameter) {
        RatchetForm form = ratchet(diameter);
        double hole = Math.PI * bore * bore / 4 + pinHoles();
        double boss = bossRadius(diameter);
        return ratchet.thickness() * (saw(form) - hole)
                + (room - ratchet.thickness()) * (Math.PI * boss * boss - hole)
                + ratchet.thickness() * click(form);
    }

    /**
     * Second moment of all of it about the axis over its length, m⁵.
     *
     * @param diameter bare diameter, m
     */
    public double polar(double diameter) {
        return new DrumTurn(this).polar(diameter);
    }

    /**
     * Radius of the ratchet's boss, m.
     *
     * @param diameter bare diameter, m
     */
    double bossRadius(double diameter) {
        return ratchet(diameter).rootRadius() - BOSS_INSET * printWall;
    }

    /** Volume of the winding square with its collar, cubic metres. */
    public double windingSquare() {
        return square.volume(bore, printWall);
    }

    /**
     * Radius of the ground that the click needs on the great wheel, m: as far as the eye around its pivot reaches.
     *
     * @param diameter bare diameter, m
     */
    public double clickGround(double diameter) {
        return ratchet(diameter).reach(gap);
    }

    /** Each tooth is the triangle from the axis to its root and the next one's tip. */
    private static double saw(RatchetForm form) {
        int teeth = form.size().teeth();
        return teeth * form.rootRadius() * form.tipRadius() * Math.sin(2 * Math.PI / teeth) / 2;
    }

    /** Two circles with the lines that touch both, the pivot's hole taken out. */
    private double click(RatchetForm form) {
        double pivot = form.clickPivot(gap);
        double reach = form.contactRadius();
        double arm = Math.sqrt(pivot * pivot - reach * reach);
        double large = form.clickBoss() / 2;
        double small = form.nose() / 2;
        double lean = Math.asin((large - small) / arm);
        return (large + small) * arm * Math.cos(lean)
                + large * large * (Math.PI / 2 + lean)
                + small * small * (Math.PI / 2 - lean)
                - Math.PI * ratchet.pin() * ratchet.pin() / 4;
    }

    private double pinHoles() {
        return PINS * Math.PI * ratchet.pin() * ratchet.pin() / 4;
    }

    private static double ring(double outer, double inner) {
        return Math.PI * (outer * outer - inner * inner);
    }
}
