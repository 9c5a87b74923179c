// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.teeth.form;

import drumfall.solver.teeth.flank.EpicycloidPiece;
import drumfall.solver.teeth.flank.Flank;
import drumfall.solver.teeth.flank.FlankPiece;
import drumfall.solver.teeth.flank.FlankPoint;
import drumfall.solver.teeth.flank.Roots;
import drumfall.solver.teeth.flank.ToothLimitException;
import java.util.ArrayList;
import java.util.List;

/**
 * A wheel that drives a lantern pinion, at module 1.
 *
 * <p>The addendum is the epicycloid rolled by the pinion's whole pitch circle, set back by the pin's radius. Near the
 * pitch circle the set-back curve turns over itself (a swallowtail); it is trimmed where it leaves the pin that stands
 * on the line of centres, and a radial flank goes down from there.
 *
 * @param toothCount number of teeth
 * @param leafCount pins of the pinion
 * @param pinDiameter diameter of a pin, modules
 * @param addendum height of the tip above the pitch circle, modules
 * @param dedendum depth of the root below the pitch circle, modules, more than the pin's radius
 * @param fillet radius at the root, modules
 */
public record LanternWheel(
        int toothCount, int leafCount, double pinDiameter, double addendum, double dedendum, double fillet)
        implements ToothForm {
    private static final double TOLERANCE = 1e-14;

    /**
     * Checks the proportions.
     *
     * @throws ToothLimitException if the tip would be past its point, the pins have no room, or the root cannot be drawn
     */
    public LanternWheel {
        LanternPinion pinion = new LanternPinion(leafCount, pinDiameter);
        String part = "a lantern wheel of " + toothCount;
        if (toothCount < pinion.leafCount()) {
            throw ToothLimitException.below("toothCount of a lantern wheel", toothCount, leafCount, "");
        }
        double most = pointedAddendum(toothCount, leafCount, pinDiameter);
        if (!(addendum <= most)) {
            throw ToothLimitException.above("addendum of " + part, addendum, most, "modules");
        }
        EpicycloidPiece curve = curve(toothCount, leafCount, pinDiameter, Math.PI);
        FlankPoint foot = curve.atTurn(trimTurn(curve));
        double pitch = toothCount / 2.0;
        if (!(pitch + addendum > foot.radius())) {
            throw ToothLimitException.below("addendum of " + part, addendum, foot.radius() - pitch, "modules");
        }
        if (!(dedendum > pinDiameter / 2)) {
            throw ToothLimitException.below("dedendum of " + part, dedendum, pinDiameter / 2 + 0.1, "modules");
        }
        RootFillet.check(part, pitch - dedendum, fillet, foot.halfAngle(), toothCount, foot.radius());
    }

    /**
     * The height above the pitch circle at which the two flanks of a tooth meet, modules.
     *
     * @param toothCount teeth of the wheel
     * @param leafCount pins of the pinion
     * @param pinDiameter diameter of a pin, modules
     */
    public static double pointedAddendum(int toothCount, int leafCount, double pinDiameter) {
        EpicycloidPiece curve = curve(toothCount, leafCount, pinDiameter, Math.PI);
        double turn = Roots.find(t -> curve.atTurn(t).halfAngle(), trimTurn(curve), Math.PI, TOLERANCE);
        return curve.atTurn(turn).radius() - toothCount / 2.0;
    }

    /**
     * The addendum that carries each pin through a number of pitches, modules.
     *
     * @param toothCount teeth of the wheel
     * @param leafCount pins of the pinion
     * @param pinDiameter diameter of a pin, modules
     * @param contactRatio pitches of action wanted, above 0
     * @throws ToothLimitException if the tooth is pointed before that
     */
    public static double addendumFor(int toothCount, int leafCount, double pinDiameter, double contactRatio) {
        EpicycloidPiece curve = curve(toothCount, leafCount, pinDiameter, Math.PI);
        double start = trimTurn(curve);
        double pitch = 2 * Math.PI / leafCount;
        double pointed = pointedAddendum(toothCount, leafCount, pinDiameter);
        double most = (curve.turnAt(toothCount / 2.0 + pointed) - start) / pitch;
        if (!(contactRatio <= most)) {
            throw ToothLimitException.above("contactRatio of a lantern pair", contactRatio, most, "");
        }
        return curve.atTurn(start + contactRatio * pitch).radius() - toothCount / 2.0;
    }

    @Override
    public Flank flank() {
        EpicycloidPiece whole = curve(toothCount, leafCount, pinDiameter, Math.PI);
        double pitch = pitchRadius();
        double start = trimTurn(whole);
        FlankPoint foot = whole.atTurn(start);
        List<FlankPiece> pieces =
                new ArrayList<>(RootFillet.pieces(pitch - dedendum, fillet, foot.halfAngle(), foot.radius()));
        pieces.add(new EpicycloidPiece(
                pitch, whole.rollerRadius(), whole.offset(), whole.cuspAngle(), start, whole.turnAt(pitch + addendum)));
        return new Flank(pieces);
    }

    private static EpicycloidPiece curve(int toothCount, int leafCount, double pinDiameter, double end) {
        return new EpicycloidPiece(toothCount / 2.0, leafCount / 2.0, pinDiameter / 2, Math.PI / toothCount, 0, end);
    }

    /** The roller's turn at which the set-back curve leaves the pin seated on the line of centres. */
    private static double trimTurn(EpicycloidPiece curve) {
        double pin = curve.offset();
        if (pin == 0) {
            return 0;
        }
        double sum = curve.pitchRadius() + curve.rollerRadius();
        double back = pin * (sum + curve.rollerRadius()) / (4 * curve.rollerRadius() * sum);
        double turn = 2 * Math.asin(Math.min(1, back));
        return Roots.find(t -> fromSeat(curve, t) - pin, turn, 2 * turn, TOLERANCE);
    }

    private static double fromSeat(EpicycloidPiece curve, double turn) {
        FlankPoint point = curve.atTurn(turn);
        double angle = curve.cuspAngle() - point.halfAngle();
        double x = point.radius() * Math.cos(angle) - curve.pitchRadius();
        return Math.hypot(x, point.radius() * Math.sin(angle));
    }
}
