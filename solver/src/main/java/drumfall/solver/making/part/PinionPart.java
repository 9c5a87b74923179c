// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.making.part;

import drumfall.solver.making.solid.Region;
import drumfall.solver.making.solid.Solid;

/**
 * A pinion by itself.
 *
 * @param leaves its leaves
 * @param length m, at least a layer
 * @param bore diameter of the bore as drawn, m
 * @param print what the printer can do
 */
public record PinionPart(GearCut leaves, double length, double bore, PrintSizes print) implements PrintedShape {
    /**
     * Checks the sizes against each other.
     *
     * @throws drumfall.solver.making.solid.SizeLimitException if a size cannot be made
     */
    public PinionPart {
        print.requireHeight("length of a pinion", length);
        leaves.requireBore("a pinion", bore, print);
    }

    /** Its section. */
    Region section() {
        return Region.of(leaves.solid(bore, print));
    }

    @Override
    public Solid solid() {
        return Solid.of(Lengths.mm(length), section());
    }
}
