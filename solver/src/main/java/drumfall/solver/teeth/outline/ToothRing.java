// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.teeth.outline;

import drumfall.solver.teeth.flank.Flank;
import drumfall.solver.teeth.flank.FlankPiece;
import drumfall.solver.teeth.flank.FlankPoint;
import drumfall.solver.teeth.flank.Roots;
import drumfall.solver.teeth.flank.ToothLimitException;
import drumfall.solver.teeth.form.ToothForm;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;

/** The toothed ring of a gear, in millimetres. */
public final class ToothRing {
    private static final double NOTHING = 1e-9;
    private static final double TOLERANCE = 1e-14;

    private ToothRing() {}

    /**
     * The teeth of a form, the first with its centre line on the x axis.
     *
     * <p>Thinning turns each flank towards its tooth's centre line. Where that makes the flanks of a tooth cross below
     * its tip, as on a rounded leaf, the tooth ends at the crossing.
     *
     * @param form the teeth; not a lantern pinion, which has no teeth to draw
     * @param module tooth module, mm, &gt; 0
     * @param thinning taken off each tooth along the pitch circle, mm, both flanks together
     * @param tolerance greatest distance of the arcs from the true flank, mm, &gt; 0
     * @throws ToothLimitException if the thinning leaves no tooth, or thickens it until the space is filled
     */
    public static Ring of(ToothForm form, double module, double thinning, double tolerance) {
        return of(form, module, thinning, 0, tolerance);
    }

    /** The same with the tips cut down by a height in mm. */
    static Ring of(ToothForm form, double module, double thinning, double tipCut, double tolerance) {
        if (!form.mayDrive()) {
            throw new IllegalArgumentException(
                    "The form (lantern) of a toothed ring must have teeth. Maybe draw its " + "shroud.");
        }
        Flank flank = form.flank();
        double turn = thinning / (2 * form.pitchRadius() * module);
        check(form, flank, module, thinning);
        double end = flank.tipRadius() - tipCut / module;
        List<OutlineSegment> up = upFlank(flank, module, turn, end, tolerance);
        List<OutlineSegment> tooth =
                new ArrayList<>(up.stream().map(OutlineSegment::mirrored).toList());
        Point last = up.get(up.size() - 1).end();
        double tip = Math.atan2(last.y(), last.x());
        if (tip > NOTHING) {
            tooth.add(ArcSegment.about(Math.hypot(last.x(), last.y()), -tip, tip));
        }
        for (int i = up.size() - 1; i >= 0; i--) {
            tooth.add(up.get(i).reversed());
        }
        double foot = flank.rootHalfAngle() - turn;
        double pitch = form.pitchAngle();
        if (pitch / 2 - foot > NOTHING) {
            tooth.add(ArcSegment.about(flank.rootRadius() * module, foot, pitch - foot));
        }
        List<OutlineSegment> ring = new ArrayList<>();
        for (int i = 0; i < form.toothCount(); i++) {
            double angle = i * pitch;
            tooth.forEach(segment -> ring.add(segment.turned(angle)));
        }
        return new Ring(ring);
    }

    private static void check(ToothForm form, Flank flank, double module, double thinning) {
        double pitch = form.pitchRadius();
        double most = 2 * pitch * module * flank.halfAngle(pitch);
        if (!(thinning < most)) {
            throw ToothLimitException.above("thinning of a gear of " + form.toothCount(), thinning, most / 2, "mm");
        }
        double least = -2 * pitch * module * (form.pitchAngle() / 2 - flank.rootHalfAngle());
        if (!(thinning >= least - NOTHING)) {
            throw ToothLimitException.below("thinning of a gear of " + form.toothCount(), thinning, least, "mm");
        }
    }

    private static List<OutlineSegment> upFlank(
            Flank flank, double module, double turn, double endRadius, double tolerance) {
        List<OutlineSegment> up = new ArrayList<>();
        for (FlankPiece piece : flank.pieces()) {
            double share = Math.min(
                    lastShare(piece, p -> p.halfAngle() - turn), lastShare(piece, p -> endRadius - p.radius()));
            up.addAll(new ArcFit(piece, module, turn, tolerance).upTo(share));
            if (share < 1) {
                break;
            }
        }
        return up;
    }

    /** The share of a piece up to which a falling figure is not negative. */
    private static double lastShare(FlankPiece piece, ToDoubleFunction<FlankPoint> figure) {
        return figure.applyAsDouble(piece.at(1)) >= -NOTHING
                ? 1
                : Roots.falling(s -> figure.applyAsDouble(piece.at(s)), 0, 1, TOLERANCE);
    }
}
