// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.making.part;

import drumfall.solver.making.solid.SizeLimitException;
import drumfall.solver.making.solid.Solid;
import java.util.List;

/**
 * A can for shot with a lid; a threaded rod through both carries the load.
 *
 * @param diameter outer diameter, m
 * @param height inner height, m
 * @param wall thickness of wall, floor and lid, m
 * @param rod diameter of the bore for the rod as drawn, m
 * @param print what the printer can do
 */
public record WeightShell(double diameter, double height, double wall, double rod, PrintSizes print)
        implements PrintedShape {
    /**
     * Checks that there is a chamber.
     *
     * @throws SizeLimitException if a size cannot be made
     */
    public WeightShell {
        print.requireWall("wall of a weight shell", wall);
        print.requireHeight("height of a weight shell", height);
        print.requireWall("rod bore of a weight shell", rod);
        SizeLimitException.atLeast(
                "diameter of a weight shell",
                diameter,
                rod + 4 * wall + 2 * (print.wall() + 2 * print.fit()),
                "so that shot and the lid's spigot go in");
    }

    private Tub tub() {
        return new Tub(diameter / 2, wall, diameter / 2, wall, rod, height, true);
    }

    /** The can. */
    @Override
    public Solid solid() {
        return tub().solid(List.of(), List.of());
    }

    /** The lid. */
    public Solid lid() {
        return tub().lid(print);
    }

    /** Room for shot under the lid's spigot, cubic metres. */
    public double shotVolume() {
        return tub().chamberArea() * (height - Math.min(wall, height));
    }
}
