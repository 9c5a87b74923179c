// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.power;

import java.util.Map;

/**
 * The friction of a whole movement under one criterion.
 *
 * @param toothFriction coefficient at the teeth
 * @param arbors friction of each arbor role, all four present
 */
public record Regime(double toothFriction, Map<ArborRole, ArborFriction> arbors) {
    /**
     * Copies the map.
     *
     * @throws IllegalArgumentException if a role is missing
     */
    public Regime {
        arbors = Map.copyOf(arbors);
        if (arbors.size() != ArborRole.values().length) {
            throw new IllegalArgumentException("A regime must give the friction of every arbor role.");
        }
    }

    /**
     * Friction of the arbors of one role.
     *
     * @param role the role
     */
    public ArborFriction arbor(ArborRole role) {
        return arbors.get(role);
    }
}
