// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.explain;

import drumfall.solver.rating.Demand;
import drumfall.solver.search.HeldDemand;
import java.util.List;
import java.util.Set;

/**
 * Demands that no train meets together.
 *
 * @param demands the demands; empty if even the choices of the brief alone allow no train
 * @param minimal whether it is proved that trains exist as soon as any one of them is dropped
 */
public record MinimalClash(List<HeldDemand> demands, boolean minimal) {
    /** Copies the list. */
    public MinimalClash {
        demands = List.copyOf(demands);
    }

    /**
     * Whether any of some demands is in the clash.
     *
     * @param some the demands
     */
    public boolean holdsAny(Set<Demand> some) {
        return demands.stream().anyMatch(held -> some.contains(held.demand()));
    }
}
