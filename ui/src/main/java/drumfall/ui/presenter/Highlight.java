// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.presenter;

import java.util.Optional;

/**
 * What the maker points at and looks into, the same in every place of the window.
 *
 * @param hovered the figure of the strip under the pointer
 * @param arbor number of the arbor pointed at, 0 for the drum arbor
 * @param mesh number of the mesh looked into, 0 for the one at the drum
 */
public record Highlight(Optional<StripFigure> hovered, Optional<Integer> arbor, Optional<Integer> mesh) {
    /** Nothing is pointed at. */
    public static final Highlight NONE = new Highlight(Optional.empty(), Optional.empty());

    /**
     * What is pointed at, no mesh being looked into.
     *
     * @param hovered the figure of the strip under the pointer
     * @param arbor number of the arbor pointed at
     */
    public Highlight(Optional<StripFigure> hovered, Optional<Integer> arbor) {
        this(hovered, arbor, Optional.empty());
    }

    Highlight withMesh(Optional<Integer> index) {
        return new Highlight(hovered, arbor, index);
    }
}
