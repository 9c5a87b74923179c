// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.display;

import java.util.List;

/**
 * What a search found.
 *
 * @param options the smallest error first; of two equally wrong the slower first
 * @param proven whether everything within the bounds was covered, so that nothing missing would belong in the list; false
 *     only when the search was cancelled
 */
public record DisplayOutcome(List<DisplayOption> options, boolean proven) {
    /** Copies the list. */
    public DisplayOutcome {
        options = List.copyOf(options);
    }
}
