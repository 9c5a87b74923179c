// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.work;

import drumfall.solver.rating.Rating;
import drumfall.solver.search.SearchOutcome;
import drumfall.solver.search.SearchProgress;
import java.util.List;

/** Is told about one search on the thread that the desk was given, and only while no newer search was started. */
public interface SearchWatcher {
    /**
     * The search went on.
     *
     * @param progress what it is doing
     */
    void progressed(SearchProgress progress);

    /**
     * The front changed.
     *
     * @param front what is known so far
     */
    void grew(List<Rating> front);

    /**
     * The search ended.
     *
     * @param outcome how
     */
    void ended(SearchOutcome outcome);

    /**
     * The search broke down.
     *
     * @param fault why
     */
    void failed(Throwable fault);
}
