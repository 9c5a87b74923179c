// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.power;

/**
 * What one arbor needs so that everything below it is served.
 *
 * @param out torque its wheel hands on, N m
 * @param load torque with the friction that its wheel's side causes, N m
 * @param passed share that the mesh below lets through under the criterion; 1 for the escape wheel
 */
public record ArborNeed(double out, double load, double passed) {}
