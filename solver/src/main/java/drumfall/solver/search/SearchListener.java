// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.search;

import drumfall.solver.rating.Rating;
import java.util.List;

/** Is told how a search goes on; called from the searching thread. */
public interface SearchListener {
    /** Tells nobody. */
    SearchListener SILENT = new SearchListener() {};

    /**
     * The front changed.
     *
     * @param front what is known so far, first objective first
     */
    default void frontChanged(List<Rating> front) {}

    /**
     * The search went on.
     *
     * @param progress what is being done
     */
    default void progressed(SearchProgress progress) {}
}
