// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.layout;

/** What came of looking for a layout. */
public sealed interface LayoutOutcome {
    /** A layout that meets every demand. */
    record Placed(Layout layout, Merit merit) implements LayoutOutcome {}

    /**
     * There is none, which is proved.
     *
     * @param closest of all arrangements that were refused with most arbors in place, what the nearest to fitting lacked
     * @param scope where there is none
     */
    record NoLayout(Shortfall closest, Scope scope) implements LayoutOutcome {}

    /** The work was cancelled before it found or proved anything. */
    record Stopped() implements LayoutOutcome {}

    /** What is known of a layout among those that meet the demands. */
    enum Merit {
        /** None was preferred. */
        ANY,
        /** No layout on the grid is preferred to it. */
        BEST_ON_GRID,
        /** The work was cancelled; a better one may exist on the grid. */
        BEST_FOUND
    }

    /** How far a proof reaches. */
    enum Scope {
        /** No places whatever would do. */
        ANYWHERE,
        /** No directions of the grid, with what is locked, would do. */
        ON_GRID
    }
}
