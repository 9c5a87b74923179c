// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.search;

import java.util.List;

/**
 * Demands that no train meets together.
 *
 * @param demands the clashing demands; all others may be dropped and still no train exists. Empty if even the choices of
 *     the brief alone allow no train
 * @param smallest whether it is proved that no smaller set clashes; false if the time for the proof ran out
 */
public record Clash(List<HeldDemand> demands, boolean smallest) {
    /** Copies the list. */
    public Clash {
        demands = List.copyOf(demands);
    }
}
