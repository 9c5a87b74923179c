// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.search;

import drumfall.solver.brief.RoomFigure;
import java.util.Optional;

/**
 * What a search is doing.
 *
 * @param stage what is being done
 * @param meshesAbove meshes above the centre of the trains in hand, 0 while half trains below are listed
 * @param meshesBelow meshes below the centre of the trains in hand
 * @param done share of this stage that is done, from 0 to 1
 * @param stepsTimes how many times as large as the brief's the steps are that trains are told apart in
 * @param room the room that trains are searched in, if it is less than the brief allows
 */
public record SearchProgress(
        Stage stage, int meshesAbove, int meshesBelow, double done, int stepsTimes, Optional<Room> room) {
    /** Stages of a search, in order. */
    public enum Stage {
        /** Half trains are listed. */
        LISTING,
        /** Half trains are joined. */
        JOINING,
        /** Clashing demands are looked for. */
        EXPLAINING
    }

    /**
     * The most room that a movement may take.
     *
     * @param figure what is measured
     * @param most m, of an area m&sup2;
     */
    public record Room(RoomFigure figure, double most) {}

    /**
     * Progress in the brief's own steps, in all the room that it allows.
     *
     * @param stage what is being done
     * @param meshesAbove meshes above the centre of the trains in hand
     * @param meshesBelow meshes below the centre of the trains in hand
     * @param done share of this stage that is done, from 0 to 1
     */
    public SearchProgress(Stage stage, int meshesAbove, int meshesBelow, double done) {
        this(stage, meshesAbove, meshesBelow, done, 1, Optional.empty());
    }

    SearchProgress inSteps(int times) {
        return new SearchProgress(stage, meshesAbove, meshesBelow, done, times, room);
    }

    SearchProgress within(Optional<Room> limit) {
        return new SearchProgress(stage, meshesAbove, meshesBelow, done, stepsTimes, limit);
    }
}
