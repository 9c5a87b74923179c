// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.wording;

import drumfall.solver.search.SearchProgress;

/** Words for what a search is about, besides its stages. */
public final class SearchWording {
    private SearchWording() {}

    /**
     * What a search looks at beside the meshes of its trains: nothing, or the room it goes into and the steps in which it tells
     * trains apart, each behind a separator.
     *
     * @param progress of the search
     * @param figures units and digits
     */
    public static String searched(SearchProgress progress, FigureWording figures) {
        String room = progress.room()
                .map(limit -> Words.BOOK.phrase(
                        "searched.room",
                        RoomWording.name(limit.figure()),
                        figures.precise(limit.figure().dimension(), limit.most())))
                .orElse("");
        return progress.stepsTimes() == 1 ? room : room + Words.BOOK.phrase("searched.steps", progress.stepsTimes());
    }
}
