// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.wording;

import drumfall.solver.explain.Cost;
import drumfall.solver.explain.Easing;
import drumfall.solver.explain.Nearest;
import drumfall.solver.quantity.UnitSystem;

/** Words for figures of a brief that could be eased. */
public final class EasingWording {
    private final FigureWording figures;

    /**
     * Words with figures in a system of units; entries stay as typed.
     *
     * @param system the units
     */
    public EasingWording(UnitSystem system) {
        this.figures = FigureWording.in(system);
    }

    /**
     * What the figure is, for example "height of fall".
     *
     * @param easing the figure
     */
    public static String name(Easing easing) {
        String key = "easing" + easing.pointer().replace('/', '.');
        boolean down = easing.way() == Easing.Way.DOWN;
        return Words.BOOK.phraseIfAny(down ? key + ".down" : key).orElseGet(() -> Words.BOOK.phrase(key));
    }

    /**
     * What easing a figure alone does, in one line.
     *
     * @param nearest the answer
     */
    public static String line(Nearest nearest) {
        String name = name(nearest.easing());
        return switch (nearest.verdict()) {
            case NEAREST -> Words.BOOK.phrase("nearest", name, nearest.value(), nearest.typed());
            case UNKNOWN ->
                nearest.enough()
                        .map(enough ->
                                Words.BOOK.phrase("nearest.between", name, nearest.value(), enough, nearest.typed()))
                        .orElseGet(() -> Words.BOOK.phrase(
                                nearest.value().equals(nearest.typed()) ? "nearest.nothing" : "nearest.unknown",
                                name,
                                nearest.value(),
                                nearest.typed()));
            case NONE ->
                nearest.standing().isPresent()
                        ? Words.BOOK.phrase(
                                "nearest.standing", name, nearest.standing().getAsInt() + 1)
                        : nearest.value().equals(nearest.typed())
                                ? Words.BOOK.phrase("nearest.end", name, nearest.typed())
                                : Words.BOOK.phrase("nearest.none", name, nearest.value());
        };
    }

    /**
     * What easing a figure would buy, in one line.
     *
     * @param cost the answer
     */
    public String line(Cost cost) {
        String name = name(cost.step().easing());
        String value = cost.step().value();
        String typed = cost.step().typed();
        String key = cost.gain() > 0 ? "cost.gain" : cost.best().isPresent() ? "cost.nothing" : "cost.none";
        String line = Words.BOOK.phrase(
                key,
                name,
                value,
                typed,
                cost.gain() > 0 ? figures.figure(drumfall.solver.quantity.Dimension.MASS, cost.gain()) : "",
                cost.best().map(figures::recommendedWeight).orElse(""));
        return cost.proved() ? line : Words.BOOK.phrase("cost.unproved", line);
    }
}
