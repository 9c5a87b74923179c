// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.fit.cutting;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * How one rod, or several alike, is cut.
 *
 * @param pieces how many of each arbor, by name, longest first
 * @param rods how many rods are cut this way
 * @param offcut what is left of each, nm
 */
public record RodCut(Map<String, Integer> pieces, int rods, long offcut) {
    /** Copies the pieces, in their order. */
    public RodCut {
        pieces = Collections.unmodifiableMap(new LinkedHashMap<>(pieces));
    }
}
