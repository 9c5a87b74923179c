// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.search;

/**
 * What a search is doing.
 *
 * @param stage what is being done
 * @param meshesAbove meshes above the centre of the trains in hand, 0 while half trains below are listed
 * @param meshesBelow meshes below the centre of the trains in hand
 * @param done share of this stage that is done, from 0 to 1
 */
public record SearchProgress(Stage stage, int meshesAbove, int meshesBelow, double done) {
    /** Stages of a search, in order. */
    public enum Stage {
        /** Half trains are listed. */
        LISTING,
        /** Half trains are joined. */
        JOINING,
        /** Clashing demands are looked for. */
        EXPLAINING
    }
}
