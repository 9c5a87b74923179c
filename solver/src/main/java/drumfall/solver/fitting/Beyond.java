// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.fitting;

/**
 * How far rods and pillars reach beyond what they carry, nm.
 *
 * @param pocket depth to which a pillar stands in each plate
 * @param square length of the winding square before everything else
 * @param hands length for the hands before everything else
 */
public record Beyond(long pocket, long square, long hands) {}
