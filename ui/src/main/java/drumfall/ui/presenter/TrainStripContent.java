// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.presenter;

import drumfall.solver.brief.Brief;
import drumfall.solver.quantity.UnitSystem;
import drumfall.solver.rating.Rating;
import java.util.Optional;

/**
 * All that the train strip shows.
 *
 * @param rating the chosen train; empty if none is chosen
 * @param trial the chosen train with one figure tried; empty if none is tried
 * @param brief the brief the ratings answer, with its locks
 * @param highlight what is pointed at
 * @param units which units are shown
 * @param asOfEarlierBrief whether the chosen train answers a brief that has changed since
 * @param standing why the tried train is not on the front, in a sentence; empty if there is nothing to say
 */
public record TrainStripContent(
        Optional<Rating> rating,
        Optional<Rating> trial,
        Brief brief,
        Highlight highlight,
        UnitSystem units,
        boolean asOfEarlierBrief,
        Optional<String> standing) {
    /**
     * A content that says nothing of how the tried train stands.
     *
     * @param rating the chosen train
     * @param trial the tried train
     * @param brief the brief the ratings answer
     * @param highlight what is pointed at
     * @param units which units are shown
     * @param asOfEarlierBrief whether the chosen train answers a brief that has changed since
     */
    public TrainStripContent(
            Optional<Rating> rating,
            Optional<Rating> trial,
            Brief brief,
            Highlight highlight,
            UnitSystem units,
            boolean asOfEarlierBrief) {
        this(rating, trial, brief, highlight, units, asOfEarlierBrief, Optional.empty());
    }

    /**
     * The same content, saying how the tried train stands.
     *
     * @param sentence why it is not on the front; empty if there is nothing to say
     */
    public TrainStripContent saying(Optional<String> sentence) {
        return new TrainStripContent(rating, trial, brief, highlight, units, asOfEarlierBrief, sentence);
    }
}
