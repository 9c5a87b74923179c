// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.presenter;

import drumfall.solver.brief.MeshPlace;
import java.util.Optional;

/** What the maker can do in the train strip; called on the event thread. */
public interface TrainStripActions {
    /**
     * Holds a figure fast at the chosen train's value, or lets it go.
     *
     * @param figure the figure
     */
    void toggleLock(StripFigure figure);

    /**
     * Tries another value for a figure of the chosen train.
     *
     * @param figure the figure
     * @param typed the value as typed
     */
    void tryCount(StripFigure figure, String typed);

    /**
     * Points at a figure, or at none.
     *
     * @param figure the figure under the pointer
     */
    void hover(Optional<StripFigure> figure);

    /**
     * Looks into a mesh.
     *
     * @param place the mesh
     */
    void lookInto(MeshPlace place);

    /** Takes the tried train as the chosen one. */
    void acceptTrial();

    /** Goes back to the chosen train. */
    void dropTrial();
}
