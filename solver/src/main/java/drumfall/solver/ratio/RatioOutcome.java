// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.ratio;

import java.util.List;

/**
 * What a search found.
 *
 * @param entries distinct ratios, the nearest first; of two equally near the smaller ratio first
 * @param proven whether the whole space was covered, so that no ratio within the bounds is nearer than those listed; false
 *     only when the search was cancelled
 */
public record RatioOutcome(List<RatioEntry> entries, boolean proven) {
    /** Copies the list. */
    public RatioOutcome {
        entries = List.copyOf(entries);
    }
}
