// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.presenter;

import drumfall.solver.layout.Layout;
import drumfall.solver.quantity.Dimension;
import drumfall.solver.quantity.UnitSystem;
import drumfall.solver.rating.TrainRater;
import drumfall.solver.rating.placing.WeightBesideBob;
import drumfall.solver.rating.placing.WeightBesideBob.Verdict;
import drumfall.solver.train.Train;
import java.util.Optional;

/** What is to be said of the recommended weight and the swinging bob. */
final class PlacedBob {
    private PlacedBob() {}

    /** A sentence if they may meet; nothing if they keep apart or no weight drives the train. */
    static Optional<String> words(TrainRater rater, Train train, Layout layout, UnitSystem units) {
        double weight = rater.objectives().recommended(rater.loaded(train).leastWeight());
        return Optional.of(weight)
                .filter(Double::isFinite)
                .map(hangs -> WeightBesideBob.of(rater, train, layout, hangs))
                .filter(beside -> beside.verdict() != Verdict.CLEAR)
                .map(beside -> Texts.of(
                        "placed.bob." + beside.verdict().name(),
                        length(beside.furtherAside(), units),
                        length(beside.leastBehindPlate(), units)));
    }

    private static String length(double metres, UnitSystem units) {
        return ShownFigure.of(Dimension.LENGTH, metres, units, ShownFigure.Rounding.UP)
                .text();
    }
}
