// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.teeth.form;

import drumfall.solver.teeth.flank.ArcPiece;
import drumfall.solver.teeth.flank.EpicycloidPiece;
import drumfall.solver.teeth.flank.Flank;
import drumfall.solver.teeth.flank.FlankPiece;
import drumfall.solver.teeth.flank.Roots;
import drumfall.solver.teeth.flank.ToothLimitException;
import java.util.ArrayList;
import java.util.List;

/**
 * A wheel of the clockmaker's cycloidal form for a pinion of a given leaf count, at module 1.
 *
 * <p>Below the pitch circle the flank is radial; above it an epicycloid rolled by a circle of half the pinion's pitch
 * radius, whose hypocycloid in the pinion is a straight radius (E. Beckett, <i>A Rudimentary Treatise on Clocks, Watches
 * and Bells</i>, 8th ed. 1903, pp. 277-279), or its single arc.
 *
 * @param toothCount number of teeth
 * @param leafCount leaves of the pinion it is rolled for, at least 6
 * @param top curve of the addendum
 * @param thickness thickness of a tooth along the pitch circle, modules
 * @param addendum height of the tip above the pitch circle, modules, at most the theoretical addendum, of
 *     which the single arc reaches 0.95
 * @param dedendum depth of the root below the pitch circle, modules
 * @param fillet radius at the root, modules
 */
public record CycloidalWheel(
        int toothCount, int leafCount, WheelTop top, double thickness, double addendum, double dedendum, double fillet)
        implements ToothForm {
    /** The part of the theoretical addendum in practical use (BS 978-2:1952, from memory). */
    public static final double PRACTICAL = 0.95;

    private static final double ARC_FACTOR = 1.40;
    private static final double TOLERANCE = 1e-14;
    private static final double THINNEST = 0.3;

    /**
     * Checks the proportions.
     *
     * @throws ToothLimitException if the tip would be past its point, or the root cannot be drawn
     */
    public CycloidalWheel {
        String part = "a cycloidal wheel of " + toothCount;
        if (toothCount < CycloidalPinion.FEWEST) {
            throw ToothLimitException.below("toothCount of a cycloidal wheel", toothCount, CycloidalPinion.FEWEST, "");
        }
        if (leafCount < CycloidalPinion.FEWEST) {
            throw ToothLimitException.below("leafCount for " + part, leafCount, CycloidalPinion.FEWEST, "");
        }
        if (!(thickness >= THINNEST)) {
            throw ToothLimitException.below("thickness of " + part, thickness, THINNEST, "modules");
        }
        if (!(thickness <= Math.PI - THINNEST)) {
            throw ToothLimitException.above("thickness of " + part, thickness, Math.PI - THINNEST, "modules");
        }
        double most =
                (top == WheelTop.SINGLE_ARC ? PRACTICAL : 1) * theoreticalAddendum(toothCount, leafCount, thickness);
        if (!(addendum <= most)) {
            throw ToothLimitException.above("addendum of " + part, addendum, most, "modules");
        }
        if (!(addendum > 0)) {
            throw ToothLimitException.below("addendum of " + part, addendum, 0.1, "modules");
        }
        double pitch = toothCount / 2.0;
        RootFillet.check(part, pitch - dedendum, fillet, thickness / toothCount, toothCount, pitch);
    }

    /**
     * The height above the pitch circle at which the two epicycloids of a tooth meet, modules.
     *
     * @param toothCount teeth of the wheel
     * @param leafCount leaves of the pinion
     * @param thickness thickness along the pitch circle, modules; half a pitch gives the tabulated addendum factor
     */
    public static double theoreticalAddendum(int toothCount, int leafCount, double thickness) {
        EpicycloidPiece whole = epicycloid(toothCount, leafCount, thickness, Math.PI);
        double turn = Roots.find(t -> whole.atTurn(t).halfAngle(), 0, Math.PI, TOLERANCE);
        return whole.atTurn(turn).radius() - toothCount / 2.0;
    }

    @Override
    public Flank flank() {
        double pitch = pitchRadius();
        double half = thickness / toothCount;
        List<FlankPiece> pieces = new ArrayList<>(RootFillet.pieces(pitch - dedendum, fillet, half, pitch));
        pieces.add(top == WheelTop.EPICYCLOID ? exactTop() : arcTop());
        return new Flank(pieces);
    }

    private EpicycloidPiece exactTop() {
        double end = epicycloid(toothCount, leafCount, thickness, Math.PI).turnAt(pitchRadius() + addendum);
        return epicycloid(toothCount, leafCount, thickness, end);
    }

    private ArcPiece arcTop() {
        double half = thickness / toothCount;
        double theoretical = theoreticalAddendum(toothCount, leafCount, thickness);
        double height = PRACTICAL * theoretical;
        double arc = ARC_FACTOR * theoretical;
        double pitch = pitchRadius();
        double footX = pitch * Math.cos(half);
        double footY = pitch * Math.sin(half);
        double chordX = pitch + height - footX;
        double chord = Math.hypot(chordX, footY);
        double back = Math.sqrt(arc * arc - chord * chord / 4) / chord;
        // The centre lies across the chord's middle, on the far side of the tooth's centre line.
        double x = footX + chordX / 2 - footY * back;
        double y = footY / 2 - chordX * back;
        double centre = Math.hypot(x, y);
        return new ArcPiece(
                centre, Math.atan2(y, x), arc, false, turn(pitch, centre, arc), turn(pitch + addendum, centre, arc));
    }

    private static double turn(double radius, double centre, double arc) {
        return Math.acos((radius * radius - centre * centre - arc * arc) / (2 * centre * arc));
    }

    private static EpicycloidPiece epicycloid(int toothCount, int leafCount, double thickness, double end) {
        return new EpicycloidPiece(toothCount / 2.0, leafCount / 4.0, 0, thickness / toothCount, 0, end);
    }
}
