// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.plugin.outlines;

import drumfall.plugin.outlines.draw.Numbers;
import drumfall.solver.making.MovementPart;
import drumfall.solver.making.solid.Region;
import drumfall.solver.making.solid.Slab;
import drumfall.solver.teeth.outline.Outline;
import drumfall.solver.teeth.outline.Point;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * One of a part's sections and the heights over the bed at which it is found.
 *
 * @param name capitals, digits and hyphens: the wheel's or the pinion's, or its number from the bed up
 * @param words heights and teeth
 * @param region the figure
 */
record Section(String name, String words, Region region) {
    private static final String PLAIN = "SECTION";
    private static final String PINION = "PINION";
    private static final Point ORIGIN = new Point(0, 0);

    /** Chords keep this close to a ring, mm, while teeth are counted; far below the height of any tooth. */
    private static final double CHORD_ERROR = 0.02;

    /** The sections of a part, from the bed up; one that comes again is listed once. */
    static List<Section> of(MovementPart part) {
        Map<Region, List<Slab>> heights = new LinkedHashMap<>();
        part.solid()
                .slabs()
                .forEach(slab -> heights.computeIfAbsent(slab.region(), region -> new ArrayList<>())
                        .add(slab));
        List<Section> sections = new ArrayList<>();
        heights.forEach((region, slabs) -> sections.add(of(part, region, slabs, sections)));
        return sections;
    }

    private static Section of(MovementPart part, Region region, List<Slab> slabs, List<Section> below) {
        Optional<MovementPart.Toothing> teeth = part.teeth().stream()
                .filter(toothing -> teeth(region, pitchRadius(toothing)) == toothing.count())
                .findFirst();
        String words = slabs.stream()
                .map(slab -> Numbers.text(slab.from()) + " to " + Numbers.text(slab.to()) + " mm")
                .collect(Collectors.joining(", "));
        int number = below.size() + 1;
        String kind = teeth.map(toothing -> kind(part, toothing)).orElse(plain(part, number));
        boolean taken = below.stream().anyMatch(section -> section.name().equals(kind));
        String name = taken || kind.equals(PLAIN) ? kind + "-" + number : kind;
        return new Section(
                name, words + teeth.map(toothing -> words(part, toothing)).orElse(""), region);
    }

    private static String words(MovementPart part, MovementPart.Toothing teeth) {
        String what = kind(part, teeth).equals(PINION) ? " leaves" : " teeth";
        return ", " + teeth.count() + what + ", module " + teeth.module() + " mm";
    }

    /** A part's pinion stands on its wheel; its name ends with what it has on top. */
    private static String kind(MovementPart part, MovementPart.Toothing teeth) {
        boolean top = teeth.equals(part.teeth().get(part.teeth().size() - 1));
        return top && part.name().endsWith("pinion") ? PINION : "WHEEL";
    }

    /** Radius of the pitch circle, mm: half of {@code m z} (ISO 54). */
    static double pitchRadius(MovementPart.Toothing teeth) {
        return teeth.count() * teeth.module().millimetres() / 2;
    }

    /** An escape wheel lies under its pinion. */
    private static String plain(MovementPart part, int number) {
        return number == 1 && part.name().contains("escape-wheel") ? "ESCAPE-WHEEL" : PLAIN;
    }

    /** How often the outer rings pass out of a circle about the axis. */
    private static int teeth(Region region, double radius) {
        return region.outlines().stream()
                .map(Outline::outer)
                .mapToInt(ring -> {
                    List<Point> corners = ring.polygon(CHORD_ERROR);
                    int outwards = 0;
                    boolean out = corners.get(corners.size() - 1).distance(ORIGIN) > radius;
                    for (Point corner : corners) {
                        boolean now = corner.distance(ORIGIN) > radius;
                        outwards += now && !out ? 1 : 0;
                        out = now;
                    }
                    return outwards;
                })
                .sum();
    }
}
