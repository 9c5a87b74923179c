// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.presenter;

import drumfall.solver.brief.Brief;
import drumfall.solver.search.SearchListener;
import drumfall.solver.search.SearchOutcome;
import drumfall.solver.search.TrainSearch;
import drumfall.ui.work.Searcher;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.BooleanSupplier;

/** The search, which finds the same front for the same brief: tests that start from one brief wait for it once. */
public final class SearchedOnce implements Searcher {
    private static final Map<Brief, SearchOutcome> KNOWN = new ConcurrentHashMap<>();

    @Override
    public SearchOutcome run(Brief brief, SearchListener listener, BooleanSupplier cancelled) {
        SearchOutcome known = KNOWN.get(brief);
        if (known != null) {
            if (!known.front().isEmpty()) {
                listener.frontChanged(known.front());
            }
            return known;
        }
        SearchOutcome found = TrainSearch.run(brief, listener, cancelled);
        if (!(found instanceof SearchOutcome.Stopped)) {
            KNOWN.put(brief, found);
        }
        return found;
    }
}
