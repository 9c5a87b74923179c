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
 */
public record TrainStripContent(
        Optional<Rating> rating,
        Optional<Rating> trial,
        Brief brief,
        Highlight highlight,
        UnitSystem units,
        boolean asOfEarlierBrief) {}
