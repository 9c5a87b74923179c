// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.presenter;

import java.util.Optional;

/**
 * What the maker points at, the same in every place of the window.
 *
 * @param hovered the figure of the strip under the pointer
 * @param arbor number of the arbor pointed at, 0 for the drum arbor
 */
public record Highlight(Optional<StripFigure> hovered, Optional<Integer> arbor) {
    /** Nothing is pointed at. */
    public static final Highlight NONE = new Highlight(Optional.empty(), Optional.empty());
}
