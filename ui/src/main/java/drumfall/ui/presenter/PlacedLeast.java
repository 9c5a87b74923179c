// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.presenter;

import drumfall.solver.layout.Layout;
import drumfall.solver.power.statics.PlacedWalk;
import drumfall.solver.quantity.Dimension;
import drumfall.solver.quantity.UnitSystem;
import drumfall.solver.rating.TrainRater;
import drumfall.solver.rating.placing.PlacedPower;
import drumfall.solver.train.Train;
import drumfall.ui.presenter.WhereCard.Input;
import java.util.List;
import java.util.Optional;

/**
 * Least weight of a train with its arbors where they stand, beside the one with the least favourable directions.
 *
 * @param running smallest weight that keeps the arc, placed, kg
 * @param binding smallest weight that overcomes every mesh at its worst, placed, kg
 * @param unplaced least weight with the least favourable directions, kg
 */
public record PlacedLeast(double running, double binding, double unplaced) {
    static PlacedLeast of(TrainRater rater, Train train, Layout layout) {
        PlacedWalk walk = PlacedPower.walk(rater, train, layout);
        return new PlacedLeast(
                walk.runningWeight(), walk.bindingWeight(), rater.loaded(train).leastWeight());
    }

    /** Least weight, placed, kg; infinite if none drives the train. */
    public double least() {
        return Math.max(running, binding);
    }

    /** As shown. */
    public ShownFigure value(UnitSystem units) {
        return mass(least(), units);
    }

    /** Where it comes from. */
    public WhereCard card(UnitSystem units) {
        return new WhereCard(
                Texts.of("placed.least"),
                value(units),
                Texts.of("placed.least.formula"),
                List.of(
                        input("W_r", "running", running, units),
                        input("W_b", "binding", binding, units),
                        input("W", "unplaced", unplaced, units)),
                Texts.of("placed.least.source"));
    }

    private static Input input(String symbol, String key, double kilograms, UnitSystem units) {
        return new Input(
                symbol, Texts.of("placed.least." + key), mass(kilograms, units).text(), Optional.empty());
    }

    private static ShownFigure mass(double kilograms, UnitSystem units) {
        return ShownFigure.of(Dimension.MASS, kilograms, units, ShownFigure.Rounding.UP);
    }
}
