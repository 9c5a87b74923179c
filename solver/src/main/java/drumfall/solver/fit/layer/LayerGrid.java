// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.fit.layer;

import drumfall.solver.fit.FitException;
import drumfall.solver.fit.Nanometres;

/**
 * The heights that a printer can make: {@code first + (n − 1) layer} for n layers.
 *
 * @param first height of the first layer, nm, 0.02 to 2 mm
 * @param layer height of each other layer, nm, 0.02 to 2 mm
 */
public record LayerGrid(long first, long layer) {
    private static final String OWNER = "the printer";
    private static final long THINNEST = Nanometres.MILLIMETRE / 50;
    private static final long THICKEST = 2 * Nanometres.MILLIMETRE;

    /**
     * Checks both layers.
     *
     * @throws FitException if one is thinner than 0.02 mm or thicker than 2 mm
     */
    public LayerGrid {
        FitException.requireLength("firstLayer", OWNER, first, THINNEST, THICKEST);
        FitException.requireLength("layerHeight", OWNER, layer, THINNEST, THICKEST);
    }

    /**
     * What a number of layers measures, nm.
     *
     * @param layers at least 1
     * @throws FitException if there is no layer
     */
    public long heightOf(int layers) {
        FitException.requireCount("layers", "a printed part", layers, 1, Integer.MAX_VALUE);
        return first + (layers - 1L) * layer;
    }

    /**
     * Whether a height is a whole number of layers.
     *
     * @param height nm
     */
    public boolean holds(long height) {
        return height >= first && (height - first) % layer == 0;
    }

    /**
     * The printed height that stands for an asked one.
     *
     * @param asked nm, positive, at most 100 m
     * @param rounding which way to go
     * @param owner the part, for the refusal
     * @throws FitException if the asked height is not positive, or lies below the first layer and is to go down
     */
    public LayerHeight snap(long asked, LayerRounding rounding, String owner) {
        FitException.requireLength("height", owner, asked, 1, Nanometres.LONGEST);
        if (asked < first && rounding == LayerRounding.DOWN) {
            String rule = "be at least the first layer of " + Nanometres.text(first);
            throw FitException.refused(
                    "height", Nanometres.text(asked), owner, rule, "ask for " + Nanometres.text(first));
        }
        int layers = Math.toIntExact(1 + Math.max(0, steps(asked - first, rounding)));
        return new LayerHeight(asked, layers, heightOf(layers), rounding);
    }

    private long steps(long rest, LayerRounding rounding) {
        return switch (rounding) {
            case DOWN -> Math.floorDiv(rest, layer);
            case UP -> -Math.floorDiv(-rest, layer);
            case NEAREST -> Math.floorDiv(2 * rest + layer, 2 * layer);
        };
    }
}
