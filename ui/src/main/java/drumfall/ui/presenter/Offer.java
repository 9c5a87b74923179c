// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.presenter;

import drumfall.solver.explain.Cost;
import drumfall.solver.explain.Easing;
import drumfall.solver.explain.Nearest;
import drumfall.solver.quantity.Dimension;
import drumfall.solver.quantity.UnitSystem;
import drumfall.ui.wording.EasingWording;
import drumfall.ui.wording.FigureWording;
import java.util.Optional;

/**
 * A value offered for one figure of the brief in place of the one that stands there.
 *
 * @param pointer JSON pointer of the figure
 * @param name what the figure is called
 * @param value what would be typed
 * @param instead the value beside the one that it takes the place of, and what else there is to say
 * @param buys what that would buy, in a few words; empty if it lets a train exist
 */
public record Offer(String pointer, String name, String value, String instead, String buys) {
    private static Offer of(Easing easing, String value, String instead, String buys) {
        return new Offer(easing.pointer(), EasingWording.name(easing), value, instead, buys);
    }

    /**
     * The value that lets a train exist; empty if none is known.
     *
     * @param nearest what easing the figure alone does
     */
    static Optional<Offer> of(Nearest nearest) {
        Optional<String> value =
                nearest.verdict() == Nearest.Verdict.NEAREST ? Optional.of(nearest.value()) : nearest.enough();
        String key = nearest.verdict() == Nearest.Verdict.NEAREST ? "offer.instead" : "offer.between";
        return value.map(
                known -> of(nearest.easing(), known, Texts.of(key, known, nearest.typed(), nearest.value()), ""));
    }

    /**
     * The eased value of a figure and what it buys.
     *
     * @param cost what easing the figure buys the chosen train
     * @param units which units are read
     */
    static Offer of(Cost cost, UnitSystem units) {
        FigureWording figures = FigureWording.in(units);
        String value = cost.step().value();
        String instead = Texts.of("offer.instead", value, cost.step().typed());
        String weighs = cost.gain() > 0
                ? cost.best()
                        .map(best -> Texts.of("offer.weighs", instead, figures.recommendedWeight(best)))
                        .orElse(instead)
                : instead;
        String told = cost.proved() ? weighs : Texts.of("offer.unproved", weighs);
        return of(cost.step().easing(), value, told, buys(cost, figures));
    }

    private static String buys(Cost cost, FigureWording figures) {
        if (cost.gain() > 0) {
            return Texts.of("offer.lighter", figures.figure(Dimension.MASS, cost.gain()));
        }
        return Texts.of(cost.best().isPresent() ? "offer.nothing" : "offer.worse");
    }

    /** What pressing it does, as it is read aloud. */
    public String spoken() {
        return buys.isEmpty()
                ? Texts.of("offer.spoken", name, instead)
                : Texts.of("offer.spoken.buys", name, instead, buys);
    }

    /** Puts the value into the brief as a step of its own. */
    void put(Workspace workspace) {
        workspace.sealEdit();
        BriefSheet.rowOf(pointer)
                .ifPresent(row -> row.lines().stream()
                        .filter(line -> line.pointer().equals(pointer))
                        .forEach(line -> new BriefEdits(workspace).enter(row, line, value)));
        workspace.sealEdit();
    }
}
