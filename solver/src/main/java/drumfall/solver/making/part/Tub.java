// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.making.part;

import static drumfall.solver.making.part.Lengths.mm;

import drumfall.solver.making.shape.Rings;
import drumfall.solver.making.solid.Region;
import drumfall.solver.making.solid.Solid;
import drumfall.solver.teeth.outline.Outline;
import drumfall.solver.teeth.outline.Ring;
import java.util.ArrayList;
import java.util.List;

/**
 * A floor, an outer and an inner tube on it: what a drum and a weight's shell have in common.
 *
 * @param floorRadius m
 * @param floor thickness of the floor, m
 * @param radius outer radius of the outer tube, m
 * @param wall thickness of both tubes, m
 * @param bore diameter of the bore through floor and inner tube, m
 * @param height of the tubes above the floor, m
 * @param hollow whether there is a chamber between the tubes, or else they are one
 */
record Tub(double floorRadius, double floor, double radius, double wall, double bore, double height, boolean hollow) {
    /** Inner radius of the outer tube, m. */
    double chamberOuter() {
        return radius - wall;
    }

    /** Outer radius of the inner tube, m. */
    double chamberInner() {
        return bore / 2 + wall;
    }

    /** Section of the chamber, square metres. */
    double chamberArea() {
        return Math.PI * (chamberOuter() * chamberOuter() - chamberInner() * chamberInner());
    }

    /**
     * Floor and tubes.
     *
     * @param floorHoles holes beside the tubes, through the floor only
     * @param pins holes through the floor, and through the tubes where these are one
     */
    Solid solid(List<Ring> floorHoles, List<Ring> pins) {
        List<Ring> holes = new ArrayList<>(pins);
        holes.add(Rings.hole(mm(bore) / 2));
        holes.addAll(floorHoles);
        Outline ground = new Outline(Rings.circle(mm(floorRadius)), holes);
        return Solid.of(mm(floor), Region.of(ground)).topped(mm(height), tubes(pins));
    }

    private Region tubes(List<Ring> pins) {
        Ring outer = Rings.circle(mm(radius));
        Ring bored = Rings.hole(mm(bore) / 2);
        if (!hollow) {
            List<Ring> holes = new ArrayList<>(pins);
            holes.add(bored);
            return Region.of(new Outline(outer, holes));
        }
        return new Region(List.of(
                new Outline(outer, List.of(Rings.hole(mm(chamberOuter())))),
                new Outline(Rings.circle(mm(chamberInner())), List.of(bored))));
    }

    /** The lid: a disc of the floor's size with a spigot that goes into the chamber. */
    Solid lid(PrintSizes print) {
        Ring bored = Rings.hole(mm(bore) / 2);
        Solid disc = Solid.of(mm(floor), Region.of(Rings.circle(mm(floorRadius)), bored));
        if (!hollow) {
            return disc;
        }
        double outer = chamberOuter() - print.fit();
        double inner = Math.max(outer - wall, chamberInner() + print.fit());
        return disc.topped(mm(Math.min(floor, height)), Region.of(Rings.circle(mm(outer)), Rings.hole(mm(inner))));
    }
}
