// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.teeth;

/**
 * What sizes, forces, strength and masses need to know of one gear of a mesh, lengths in modules.
 *
 * @param tipRadius radius of the tip circle
 * @param forceArm smallest arm of the mesh force about the gear's axis anywhere on the path: the least favourable for
 *     friction in the bore, and the base radius of an involute
 * @param formFactor Lewis form factor for the whole force at the highest place the other gear touches; infinite for the
 *     pins of a lantern, which are metal rods
 * @param rootRadius radius of the root circle; innermost place of the pins of a lantern
 * @param disc area of the disc with its teeth before they are thinned, square modules; sections of all pins of a lantern
 */
public record GearFigures(double tipRadius, double forceArm, double formFactor, double rootRadius, double disc) {
    /**
     * A gear without teeth, rolling on its pitch circle.
     *
     * @param count teeth or leaves it would have
     */
    public static GearFigures rolling(int count) {
        double radius = count / 2.0;
        return new GearFigures(radius, radius, Double.POSITIVE_INFINITY, radius, Math.PI * radius * radius);
    }

    /**
     * Area of the disc with thinned teeth, square modules: both flanks of each of the {@code z} teeth are turned by {@code t
     * / z} towards each other, which takes {@code t / z · (r_tip² − r_root²)} off the tooth. Where that ends a rounded leaf
     * just below its tip, too much is taken off, by less than a thousandth of the disc.
     *
     * @param thinning taken off each tooth along the pitch circle, both flanks together, modules
     */
    public double area(double thinning) {
        return disc - thinning * (tipRadius * tipRadius - rootRadius * rootRadius);
    }
}
