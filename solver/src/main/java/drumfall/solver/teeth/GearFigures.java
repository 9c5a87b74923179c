// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.teeth;

/**
 * What sizes, forces and strength need to know of one gear of a mesh, lengths in modules.
 *
 * @param tipRadius radius of the tip circle
 * @param forceArm smallest arm of the mesh force about the gear's axis anywhere on the path: the least favourable for
 *     friction in the bore, and the base radius of an involute
 * @param formFactor Lewis form factor for the whole force at the highest place the other gear touches; infinite for the
 *     pins of a lantern, which are metal rods
 */
public record GearFigures(double tipRadius, double forceArm, double formFactor) {}
