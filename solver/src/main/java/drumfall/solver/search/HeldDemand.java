// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.search;

import drumfall.solver.brief.Locks;
import drumfall.solver.rating.Demand;

/**
 * A demand or a single lock that can be dropped to see whether a train exists without it.
 *
 * @param demand the demand; {@link Demand#LOCK} for a lock
 * @param pointer JSON pointer into the brief
 * @param lock the lock alone, {@link Locks#NONE} for other demands
 */
public record HeldDemand(Demand demand, String pointer, Locks lock) {}
