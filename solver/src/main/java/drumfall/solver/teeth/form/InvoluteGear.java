// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.teeth.form;

import drumfall.solver.teeth.flank.Flank;
import drumfall.solver.teeth.flank.InvolutePiece;
import drumfall.solver.teeth.flank.Roots;
import drumfall.solver.teeth.flank.ToothLimitException;
import drumfall.solver.teeth.flank.TrochoidPiece;

/**
 * An involute gear with its true root trochoid, at module 1.
 *
 * <p>Geometry as in ISO 21771 (from memory): half-angle on the pitch circle {@code (pi/2 + 2 x tan a) / z}. Where the
 * rack undercuts, the involute starts where the trochoid crosses it, the form radius.
 *
 * @param rack the generating rack
 * @param toothCount number of teeth, at least 5
 * @param shift profile shift, modules
 * @param tipRadius radius of the tip circle, modules, below the radius at which the tooth is pointed
 */
public record InvoluteGear(BasicRack rack, int toothCount, double shift, double tipRadius) implements ToothForm {
    /** The fewest teeth offered; fewer leave no usable flank (common practice, no source). */
    public static final int FEWEST = 5;

    private static final double TOLERANCE = 1e-14;
    private static final double DEEPEST_SHIFT_MARGIN = 1e-3;

    /**
     * Checks that the tooth can be generated and has a tip.
     *
     * @throws ToothLimitException if there are too few teeth, the shift is impossible, or the tip is pointed
     */
    public InvoluteGear {
        if (toothCount < FEWEST) {
            throw ToothLimitException.below("leafCount of an involute pinion", toothCount, FEWEST, "");
        }
        String part = "shift of an involute gear of " + toothCount;
        double most = rack.dedendum() - rack.rounding() - DEEPEST_SHIFT_MARGIN;
        if (!(shift <= most)) {
            throw ToothLimitException.above(part, shift, most, "modules");
        }
        double form = formRadius(rack, toothCount, shift);
        if (!(tipRadius > form)) {
            double least = leastShift(rack, toothCount);
            if (shift < least) {
                throw ToothLimitException.below(part, shift, least, "modules");
            }
            throw ToothLimitException.below(
                    "tipRadius of an involute gear of " + toothCount, tipRadius, form, "modules");
        }
        double pointed = pointedRadius(rack, toothCount, shift);
        if (!(tipRadius <= pointed)) {
            throw ToothLimitException.above(
                    "tipRadius of an involute gear of " + toothCount, tipRadius, pointed, "modules");
        }
    }

    /**
     * A gear with the rack's addendum and no tip shortening.
     *
     * @param rack the generating rack
     * @param toothCount number of teeth
     * @param shift profile shift, modules
     */
    public static InvoluteGear of(BasicRack rack, int toothCount, double shift) {
        return new InvoluteGear(rack, toothCount, shift, toothCount / 2.0 + rack.addendum() + shift);
    }

    /** The radius of the base circle, modules. */
    public double baseRadius() {
        return pitchRadius() * Math.cos(rack.pressureAngle());
    }

    /** The radius of the root circle, modules. */
    public double rootRadius() {
        return pitchRadius() - rack.dedendum() + shift;
    }

    /** The radius at which the usable involute starts, modules. */
    public double formRadius() {
        return formRadius(rack, toothCount, shift);
    }

    /** The radius at which both flanks would meet in a point, modules. */
    public double pointedRadius() {
        return pointedRadius(rack, toothCount, shift);
    }

    /** Whether the rack cuts into the involute. */
    public boolean isUndercut() {
        return shift < leastShift(rack, toothCount);
    }

    /**
     * The least profile shift without undercut, modules: {@code h - z sin^2(a) / 2}.
     *
     * @param rack the generating rack
     * @param toothCount number of teeth
     */
    public static double leastShift(BasicRack rack, int toothCount) {
        return rack.straightDepth() - toothCount / 2.0 * square(Math.sin(rack.pressureAngle()));
    }

    /**
     * The length of the common tangent over a number of teeth, modules.
     *
     * <p>{@code W_k = cos a ((k - 1/2) pi + z inv a) + 2 x sin a} (ISO 21771, from memory).
     *
     * @param spanned number of teeth spanned, at least 1
     */
    public double span(int spanned) {
        double a = rack.pressureAngle();
        return Math.cos(a) * ((spanned - 0.5) * Math.PI + toothCount * Involute.of(a)) + 2 * shift * Math.sin(a);
    }

    @Override
    public Flank flank() {
        TrochoidPiece root = trochoid(rack, toothCount, shift);
        return Flank.of(root, involute(rack, toothCount, shift, root.endRadius(), tipRadius));
    }

    private static double formRadius(BasicRack rack, int toothCount, double shift) {
        return trochoid(rack, toothCount, shift).endRadius();
    }

    private static InvolutePiece involute(BasicRack rack, int count, double shift, double from, double to) {
        double a = rack.pressureAngle();
        double atBase = (Math.PI / 2 + 2 * shift * Math.tan(a)) / count + Involute.of(a);
        return new InvolutePiece(count / 2.0 * Math.cos(a), atBase, from, to);
    }

    private static double pointedRadius(BasicRack rack, int count, double shift) {
        InvolutePiece flank = involute(rack, count, shift, 0, 0);
        return flank.baseRadius() / Math.cos(Involute.inverse(flank.baseAngle()));
    }

    private static TrochoidPiece trochoid(BasicRack rack, int count, double shift) {
        double depth = rack.dedendum() - rack.rounding() - shift;
        double tangent = depth / Math.tan(rack.pressureAngle());
        TrochoidPiece whole = trochoid(rack, count, depth, tangent);
        return shift < leastShift(rack, count)
                ? trochoid(rack, count, depth, crossing(rack, count, shift, whole))
                : whole;
    }

    private static TrochoidPiece trochoid(BasicRack rack, int count, double depth, double end) {
        return new TrochoidPiece(count / 2.0, depth, rack.roundingOffset(), rack.rounding(), Math.PI / count, end);
    }

    /** Where an undercutting trochoid, inside the involute on the base circle, comes out through it. */
    private static double crossing(BasicRack rack, int count, double shift, TrochoidPiece whole) {
        InvolutePiece flank = involute(rack, count, shift, 0, 0);
        double onBase =
                Roots.falling(v -> flank.baseRadius() - whole.atDistance(v).radius(), 0, whole.end(), TOLERANCE);
        return Roots.falling(v -> -outside(whole, flank, v), onBase, whole.end(), TOLERANCE);
    }

    private static double outside(TrochoidPiece root, InvolutePiece flank, double v) {
        var point = root.atDistance(v);
        return point.halfAngle() - flank.halfAngle(point.radius());
    }

    private static double square(double value) {
        return value * value;
    }
}
