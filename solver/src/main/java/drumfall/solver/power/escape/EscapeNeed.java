// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.power.escape;

/**
 * What the escape wheel must be given so that the pendulum keeps its arc, and how long the pendulum remembers.
 *
 * @param torque least torque at the escape wheel, N m; infinite if no torque keeps the arc
 * @param semiArc arc kept, the escape angle and its reserve, rad
 * @param memory time over which the pendulum averages the torque, {@code τ}, s
 * @param equivalentLength length of the simple pendulum that keeps the beat at that arc, m
 * @param pendulumLoss energy the pendulum loses in a beat, J
 */
public record EscapeNeed(double torque, double semiArc, double memory, double equivalentLength, double pendulumLoss) {}
