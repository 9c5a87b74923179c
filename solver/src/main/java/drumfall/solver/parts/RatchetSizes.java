// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.parts;

/**
 * Ratchet and click between great wheel and drum, about the drum's axis, metres. Pins hold the ratchet to the drum: in its
 * chamber beside the inner tube, or beside the bore of a drum that is too small for a chamber. The click turns on a pin in
 * the great wheel, clear of the ratchet.
 *
 * @param drum diameter of the bare drum, positive
 * @param wall thickness of its wall, positive
 * @param bore diameter of its bore as drawn, positive
 * @param nozzle width of an extrusion, positive
 * @param gap between click and ratchet, not negative
 */
public record RatchetSizes(double drum, double wall, double bore, double nozzle, double gap) {
    /** Diameter of the pins and of the click's pivot, m; common practice, no source. */
    public static final double PIN = 0.003;

    /** Teeth of a ratchet; common practice, no source. */
    public static final int TEETH = 24;

    /** Depth of its teeth, m; common practice, no source. */
    public static final double TOOTH_DEPTH = 0.0025;

    /** Two extrusion widths; common practice, no source. */
    private double least() {
        return 2 * nozzle;
    }

    /** There is a chamber if it takes pins with walls beside them. */
    private boolean hollow() {
        return drum / 2 - 2 * wall - bore / 2 >= PIN + 2 * least();
    }

    /** Radius of the circle on which the pins stand. */
    public double pinRadius() {
        return bore / 2 + (hollow() ? wall : 0) + least() + PIN / 2;
    }

    /** Least diameter of a drum in which pins have a wall on either side. */
    public static double leastDrum(double bore, double nozzle) {
        return bore + 2 * (PIN + 4 * nozzle);
    }

    /** Radius to the roots of the ratchet: a wall around the pins, and four extrusion widths from tooth to tooth. */
    private double root() {
        return Math.max(pinRadius() + PIN / 2 + least() + nozzle / 2, least() * TEETH / Math.PI);
    }

    /** Radius to the tips of the ratchet. */
    public double radius() {
        return root() + TOOTH_DEPTH;
    }

    /** Diameter of the click around its pivot. */
    public double clickBoss() {
        return PIN + 4 * least();
    }

    /** Distance of the click's pivot from the drum's axis. */
    public double clickPivot() {
        return radius() + clickBoss() / 2 + gap;
    }

    /** How far the click reaches from the drum's axis. */
    public double reach() {
        return clickPivot() + clickBoss() / 2;
    }
}
