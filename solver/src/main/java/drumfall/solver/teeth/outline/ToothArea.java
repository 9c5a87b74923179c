// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.teeth.outline;

import drumfall.solver.teeth.flank.FlankPiece;
import drumfall.solver.teeth.flank.FlankPoint;
import drumfall.solver.teeth.form.ToothForm;

/** Areas inside the teeth of a gear at module 1, and how they lie about its axis. */
public final class ToothArea {
    /** Panels on each piece of a flank, then twice as many. */
    private static final int PANELS = 16;

    private ToothArea() {}

    /**
     * Area of the disc with its teeth, square modules: the root circle and, for each tooth, {@code ∫ 2 ψ r dr} over the half
     * angle {@code ψ} from root to tip, by trapezia in {@code r²} and Richardson's extrapolation from two widths.
     *
     * @param form the teeth; not a lantern pinion, whose pins are no teeth
     */
    public static double disc(ToothForm form) {
        double root = form.flank().rootRadius();
        double tooth = form.flank().pieces().stream()
                .mapToDouble(piece -> (4 * under(piece, 2 * PANELS) - under(piece, PANELS)) / 3)
                .sum();
        return Math.PI * root * root + form.toothCount() * tooth;
    }

    /**
     * Second moment about the axis of the disc with its teeth, modules to the fourth: as the area, with {@code ∫ 2 ψ r³ dr} for
     * each tooth, by trapezia in {@code r⁴}.
     *
     * @param form the teeth; not a lantern pinion, whose pins are no teeth
     */
    public static double polar(ToothForm form) {
        double root = form.flank().rootRadius();
        double tooth = form.flank().pieces().stream()
                .mapToDouble(piece -> (4 * about(piece, 2 * PANELS) - about(piece, PANELS)) / 3)
                .sum();
        return Math.PI / 2 * root * root * root * root + form.toothCount() * tooth;
    }

    private static double about(FlankPiece piece, int panels) {
        double sum = 0;
        FlankPoint last = piece.at(0);
        for (int i = 1; i <= panels; i++) {
            FlankPoint next = piece.at((double) i / panels);
            double near = last.radius() * last.radius();
            double far = next.radius() * next.radius();
            sum += (last.halfAngle() + next.halfAngle()) * (far * far - near * near) / 4;
            last = next;
        }
        return sum;
    }

    private static double under(FlankPiece piece, int panels) {
        double sum = 0;
        FlankPoint last = piece.at(0);
        for (int i = 1; i <= panels; i++) {
            FlankPoint next = piece.at((double) i / panels);
            sum += (last.halfAngle() + next.halfAngle())
                    * (next.radius() * next.radius() - last.radius() * last.radius())
                    / 2;
            last = next;
        }
        return sum;
    }
}
