// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.teeth.outline;

import drumfall.solver.teeth.flank.Flank;
import drumfall.solver.teeth.flank.FlankPiece;
import drumfall.solver.teeth.flank.FlankPoint;
import drumfall.solver.teeth.form.ToothForm;

/**
 * Sections of a tooth: its form factor in bending and whether it can be printed.
 *
 * @param form the teeth
 * @param thinning taken off each tooth along the pitch circle, modules, both flanks together
 */
public record ToothStrength(ToothForm form, double thinning) {
    private static final int SECTIONS = 200;
    private static final int PLACES = 24;

    /**
     * The Lewis form factor for a load at a radius.
     *
     * <p>{@code Y = min t^2 / (6 h) * (arm / r) / n}, lengths in modules: {@code t} the chord of a section, {@code h}
     * its distance from where the load's line crosses the tooth's centre line, {@code n} the share of the load across
     * that line, {@code arm} the load's lever about the gear's centre and {@code r} the pitch radius, so that {@code
     * stress = F / (b m Y)} holds for the tangential force {@code F} at the pitch circle. W. Lewis, 1892, by way of
     * Shigley's Mechanical Engineering Design, chapter 14; the factor {@code arm / (r n)}, cos 20 over the cosine at the
     * tip for an involute, is often left out.
     *
     * @param loadRadius radius at which the load acts, modules; the flank there must not face outward only
     */
    public double formFactor(double loadRadius) {
        Flank flank = form.flank();
        double turn = turn();
        FlankPiece loaded = flank.pieces().get(flank.pieceIndexAt(loadRadius));
        double angle = loaded.halfAngle(loadRadius) - turn;
        double radial = loaded.radialNormal(loadRadius);
        double forward = Math.sqrt(Math.max(0, (1 - radial) * (1 + radial)));
        double normalX = radial * Math.cos(angle) - forward * Math.sin(angle);
        double across = radial * Math.sin(angle) + forward * Math.cos(angle);
        double apex = loadRadius * (Math.cos(angle) - Math.sin(angle) * normalX / across);
        double least = Double.POSITIVE_INFINITY;
        for (FlankPiece piece : flank.pieces()) {
            for (int i = 0; i <= SECTIONS; i++) {
                least = Math.min(least, section(piece.at((double) i / SECTIONS), turn, apex));
            }
        }
        return least * (loadRadius * forward / form.pitchRadius()) / across;
    }

    /** The form factor for a load at the tip. */
    public double formFactorAtTip() {
        return formFactor(form.flank().tipRadius());
    }

    /**
     * The bending stress at the root, MPa: {@code F / (b m Y)}.
     *
     * @param force tangential force at the pitch circle, N
     * @param width face width, mm
     * @param module tooth module, mm
     * @param formFactor {@code Y}
     */
    public static double bendingStress(double force, double width, double module, double formFactor) {
        return force / (width * module * formFactor);
    }

    private static double section(FlankPoint point, double turn, double apex) {
        double angle = point.halfAngle() - turn;
        double height = apex - point.radius() * Math.cos(angle);
        double thickness = 2 * point.radius() * Math.sin(angle);
        return height > 0 ? thickness * thickness / (6 * height) : Double.POSITIVE_INFINITY;
    }

    /**
     * The narrowest chord between the root and a height below the tip, modules.
     *
     * @param belowTip distance below the tip where the search ends, modules, &ge; 0
     */
    public double narrowest(double belowTip) {
        return narrowest(form.flank(), belowTip);
    }

    private double narrowest(Flank flank, double belowTip) {
        double turn = turn();
        double end = flank.tipRadius() - belowTip;
        double least = thickness(flank, end);
        for (FlankPiece piece : flank.pieces()) {
            for (int i = 0; i <= PLACES; i++) {
                FlankPoint point = piece.at((double) i / PLACES);
                if (point.radius() < end) {
                    least = Math.min(least, 2 * point.radius() * Math.sin(point.halfAngle() - turn));
                }
            }
        }
        return least;
    }

    /**
     * The chord of the tooth at a radius, modules.
     *
     * @param radius modules, from root to tip
     */
    public double thickness(double radius) {
        return thickness(form.flank(), radius);
    }

    private double thickness(Flank flank, double radius) {
        return 2 * radius * Math.sin(flank.halfAngle(radius) - turn());
    }

    /**
     * Whether the tooth can be printed.
     *
     * <p>From the root to the pitch circle it must be two extrusion widths thick, and one at half an extrusion width
     * below the tip (common practice, no source).
     *
     * @param extrusion width of one extrusion, modules, &gt; 0
     */
    public boolean isPrintable(double extrusion) {
        return printableSection(extrusion) >= 2 * extrusion;
    }

    /**
     * The section that decides whether the tooth can be printed, modules: the narrowest chord from the root to the pitch
     * circle or twice the chord at half an extrusion width below the tip, whichever is less.
     *
     * @param extrusion width of one extrusion, modules, &gt; 0
     */
    public double printableSection(double extrusion) {
        Flank flank = form.flank();
        double tip = flank.tipRadius();
        double toPitch = Math.max(extrusion / 2, tip - form.pitchRadius());
        return Math.min(narrowest(flank, toPitch), 2 * thickness(flank, tip - extrusion / 2));
    }

    private double turn() {
        return thinning / (2 * form.pitchRadius());
    }
}
