// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.making.part;

import static drumfall.solver.making.part.Lengths.mm;

import drumfall.solver.making.shape.Rings;
import drumfall.solver.making.solid.Region;
import drumfall.solver.making.solid.SizeLimitException;
import drumfall.solver.making.solid.Solid;

/**
 * A wheel with a pipe on it, such as the hour wheel, whose pipe carries the hour hand.
 *
 * @param wheel the wheel
 * @param pipe outer diameter of the pipe, m
 * @param length length of the pipe, m, at least a layer
 */
public record PipedWheel(PlateWheel wheel, double pipe, double length) implements PrintedShape {
    /**
     * Checks that the pipe has a wall and stands on solid ground.
     *
     * @throws SizeLimitException if it has not
     */
    public PipedWheel {
        PrintSizes print = wheel.print();
        print.requireHeight("length of a pipe", length);
        SizeLimitException.atLeast(
                "pipe of a wheel", pipe, wheel.bore() + 2 * print.wall(), "two extrusion widths around the bore");
        SizeLimitException.atMost(
                "pipe of a wheel", pipe, 2 * wheel.solidRadius(), "so that it does not hang over a window");
    }

    @Override
    public Solid solid() {
        return wheel.solid()
                .topped(mm(length), Region.of(Rings.circle(mm(pipe) / 2), Rings.hole(mm(wheel.bore()) / 2)));
    }
}
