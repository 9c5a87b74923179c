// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.making.part;

import static drumfall.solver.making.part.Lengths.mm;

import drumfall.solver.making.shape.Rings;
import drumfall.solver.making.solid.Region;
import drumfall.solver.making.solid.SizeLimitException;
import drumfall.solver.making.solid.Solid;
import drumfall.solver.teeth.outline.Outline;
import java.util.List;
import java.util.stream.IntStream;

/**
 * The cannon pinion with its pipe for the minute hand and the clutch that lets the hands be set.
 *
 * <p>The pipe's end is slit into three fingers, bored a little smaller than the rest; they spring against the centre arbor
 * and slip when the hands are turned.
 *
 * @param leaves the pinion's leaves
 * @param length of the pinion, m
 * @param bore diameter of the bore as drawn, m
 * @param pipe outer diameter of the pipe, m
 * @param pipeLength length of the closed pipe, m
 * @param fingers length of the fingers, m
 * @param grip by how much the fingers' bore is smaller in radius, m, at most half an extrusion width
 * @param slit width of the slits, m
 * @param print what the printer can do
 */
public record CannonPinion(
        GearCut leaves,
        double length,
        double bore,
        double pipe,
        double pipeLength,
        double fingers,
        double grip,
        double slit,
        PrintSizes print)
        implements PrintedShape {
    private static final int FINGERS = 3;

    /**
     * Checks the sizes against each other.
     *
     * @throws SizeLimitException if a size cannot be made
     */
    public CannonPinion {
        new PinionPart(leaves, length, bore, print);
        print.requireHeight("pipe length of a cannon pinion", pipeLength);
        print.requireHeight("fingers of a cannon pinion", fingers);
        SizeLimitException.atLeast(
                "pipe of a cannon pinion", pipe, bore + 2 * print.wall(), "two extrusion widths around the bore");
        SizeLimitException.atMost(
                "pipe of a cannon pinion of " + leaves.count(),
                pipe,
                2 * leaves.rootRadius(),
                "so that it stands on the leaves' roots");
        SizeLimitException.atLeast("grip of a cannon pinion", grip, 0, "or the fingers would hang loose");
        SizeLimitException.atMost(
                "grip of a cannon pinion",
                grip,
                print.extrusion() / 2,
                "half an extrusion width, the most that may hang over");
        SizeLimitException.atLeast("slit of a cannon pinion", slit, print.extrusion(), "one extrusion width");
        double most = 2 * (bore / 2 - grip) * Math.sin(Math.PI / FINGERS) - print.wall();
        SizeLimitException.atMost("slit of a cannon pinion", slit, most, "so that fingers are left");
    }

    @Override
    public Solid solid() {
        Region tube = Region.of(Rings.circle(mm(pipe) / 2), Rings.hole(mm(bore) / 2));
        return new PinionPart(leaves, length, bore, print)
                .solid()
                .topped(mm(pipeLength), tube)
                .topped(mm(fingers), slitTube());
    }

    private Region slitTube() {
        double inner = mm(bore / 2 - grip);
        double half = Math.asin(mm(slit) / 2 / inner);
        double pitch = 2 * Math.PI / FINGERS;
        List<Outline> pieces = IntStream.range(0, FINGERS)
                .mapToObj(i -> Rings.sector(inner, mm(pipe) / 2, i * pitch + half, (i + 1) * pitch - half))
                .map(ring -> new Outline(ring, List.of()))
                .toList();
        return new Region(pieces);
    }
}
