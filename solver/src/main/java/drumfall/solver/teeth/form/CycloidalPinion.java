// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.teeth.form;

import drumfall.solver.teeth.flank.ArcPiece;
import drumfall.solver.teeth.flank.Flank;
import drumfall.solver.teeth.flank.FlankPiece;
import drumfall.solver.teeth.flank.ToothLimitException;
import java.util.ArrayList;
import java.util.List;

/**
 * A pinion of radial-flanked leaves with rounded tops, at module 1.
 *
 * <p>The top is the arc tangent to the radial flank on the pitch circle that meets its mirror image at the addendum. A
 * top lower than that allows is the circle tangent to both flanks, which then starts a little inside the pitch circle.
 *
 * @param leafCount number of leaves, at least 6
 * @param thickness thickness of a leaf along the pitch circle, modules
 * @param addendum height of the top above the pitch circle, modules
 * @param dedendum depth of the root below the pitch circle, modules
 * @param fillet radius at the root, modules
 */
public record CycloidalPinion(int leafCount, double thickness, double addendum, double dedendum, double fillet)
        implements ToothForm {
    /** The fewest leaves of the clockmaker's form (BS 978-2:1952, from memory). */
    public static final int FEWEST = 6;

    private static final double THINNEST = 0.3;

    /**
     * Checks the proportions.
     *
     * @throws ToothLimitException if there are too few leaves, a leaf fills its pitch, or top or root cannot be drawn
     */
    public CycloidalPinion {
        if (leafCount < FEWEST) {
            throw ToothLimitException.below("leafCount of a cycloidal pinion", leafCount, FEWEST, "");
        }
        String part = "a cycloidal pinion of " + leafCount;
        if (!(thickness >= THINNEST)) {
            throw ToothLimitException.below("thickness of " + part, thickness, THINNEST, "modules");
        }
        if (!(thickness <= Math.PI - THINNEST)) {
            throw ToothLimitException.above("thickness of " + part, thickness, Math.PI - THINNEST, "modules");
        }
        double half = thickness / leafCount;
        double lowest = THINNEST * thickness;
        if (!(addendum >= lowest)) {
            throw ToothLimitException.below("addendum of " + part, addendum, lowest, "modules");
        }
        double flankEnd = flankEnd(leafCount / 2.0, half, addendum);
        RootFillet.check(part, leafCount / 2.0 - dedendum, fillet, half, leafCount, flankEnd);
    }

    @Override
    public int toothCount() {
        return leafCount;
    }

    @Override
    public Flank flank() {
        double pitch = pitchRadius();
        double half = thickness / leafCount;
        double end = flankEnd(pitch, half, addendum);
        List<FlankPiece> pieces = new ArrayList<>(RootFillet.pieces(pitch - dedendum, fillet, half, end));
        pieces.add(end < pitch ? roundTop(half, end) : ogiveTop(half));
        return new Flank(pieces);
    }

    private ArcPiece roundTop(double half, double end) {
        return new ArcPiece(end / Math.cos(half), 0, end * Math.tan(half), false, Math.PI / 2 + half, 0);
    }

    private ArcPiece ogiveTop(double half) {
        double pitch = pitchRadius();
        double tip = pitch + addendum;
        double arc = (tip * tip + pitch * pitch - 2 * pitch * tip * Math.cos(half)) / (2 * tip * Math.sin(half));
        double centre = Math.hypot(pitch, arc);
        double lean = Math.atan2(arc, pitch);
        double startTurn = Math.PI / 2 + lean;
        double cosine = (tip * tip - centre * centre - arc * arc) / (2 * centre * arc);
        return new ArcPiece(centre, half - lean, arc, false, startTurn, Math.acos(Math.min(1, cosine)));
    }

    /** Where the radial flank ends: the pitch circle, or lower for a top below the tangent half circle. */
    private static double flankEnd(double pitch, double half, double addendum) {
        double tangent = (pitch + addendum) / (1 + Math.sin(half)) * Math.cos(half);
        return Math.min(pitch, tangent);
    }
}
