// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.work;

import drumfall.solver.brief.Brief;
import drumfall.solver.search.SearchListener;
import drumfall.solver.search.SearchOutcome;
import java.util.function.BooleanSupplier;

/** Finds the front of a brief; tests put a slow or failing one in its place. */
@FunctionalInterface
public interface Searcher {
    /**
     * Searches until it is done or no longer wanted.
     *
     * @param brief the brief
     * @param listener is told how it goes on, on the searching thread
     * @param cancelled whether the search is no longer wanted
     */
    SearchOutcome run(Brief brief, SearchListener listener, BooleanSupplier cancelled);
}
