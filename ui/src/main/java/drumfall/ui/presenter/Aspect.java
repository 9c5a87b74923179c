// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.presenter;

/** Parts of the shared state; whoever shows a part is told when it changes. */
public enum Aspect {
    /** The brief as typed, its problems, its locks. */
    BRIEF,
    /** The front and how much of it is proved. */
    FRONT,
    /** What the search is doing. */
    SEARCH,
    /** The chosen train and its rating. */
    CHOICE,
    /** The tried train. */
    TRIAL,
    /** What is pointed at. */
    HIGHLIGHT,
    /** Name, file and saved state of the design, and what can be undone. */
    DESIGN,
    /** Which units are shown. */
    UNITS,
    /** The line of news. */
    NEWS
}
