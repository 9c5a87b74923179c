// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.plugin.outlines;

import drumfall.plugin.outlines.draw.Layer;
import drumfall.plugin.outlines.draw.LineKind;
import drumfall.plugin.outlines.draw.Numbers;
import drumfall.plugin.outlines.draw.Shape;
import drumfall.solver.layout.Box;
import drumfall.solver.layout.Layout;
import drumfall.solver.layout.Place;
import drumfall.solver.teeth.outline.Point;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * Dimensions from the dial centre to arbors, pillars and the frame's edges: heights right of the frame, widths above it,
 * each beside its extension line (dimensioning from a common origin, ISO 129-1, from memory).
 */
final class DialDimensions {
    private static final Layer LAYER = new Layer("DIMENSIONS", LineKind.NARROW, 8);
    private static final double LETTERS = 2.5;
    private static final double APART = 4;
    private static final double STRAIGHT = 5;
    private static final double FIGURES = 14;
    private static final double GAP = 1;

    private final Box frame;
    private final List<Place> places;
    private final List<Shape> shapes = new ArrayList<>();

    DialDimensions(Layout layout) {
        this.frame = layout.frame();
        this.places = Stream.of(
                        layout.places().stream(),
                        layout.pillarPlaces().stream(),
                        Stream.of(new Place(frame.left(), frame.bottom()), new Place(frame.right(), frame.top())))
                .flatMap(all -> all)
                .toList();
    }

    List<Shape> shapes() {
        addHeights();
        addWidths();
        return shapes;
    }

    /** From the leftmost point of a height to the right. */
    private void addHeights() {
        Map<Long, Long> starts = new TreeMap<>();
        places.forEach(place -> starts.merge(place.y(), place.x(), Math::min));
        double edge = Millimetres.of(frame.right());
        List<Double> figures = spread(starts);
        int next = 0;
        for (Map.Entry<Long, Long> start : starts.entrySet()) {
            double y = Millimetres.of(start.getKey());
            double at = figures.get(next++);
            Point bend = new Point(edge + STRAIGHT, y);
            shapes.add(new Shape.Line(LAYER, new Point(Millimetres.of(start.getValue()), y), bend));
            shapes.add(new Shape.Line(LAYER, bend, new Point(edge + FIGURES, at)));
            Point foot = new Point(edge + FIGURES + GAP, at - LETTERS / 2);
            shapes.add(Shape.Text.level(LAYER, foot, Numbers.micrometres(start.getKey()), LETTERS));
        }
    }

    /** From the lowest point of a width upwards. */
    private void addWidths() {
        Map<Long, Long> starts = new TreeMap<>();
        places.forEach(place -> starts.merge(place.x(), place.y(), Math::min));
        double edge = Millimetres.of(frame.top());
        List<Double> figures = spread(starts);
        int next = 0;
        for (Map.Entry<Long, Long> start : starts.entrySet()) {
            double x = Millimetres.of(start.getKey());
            double at = figures.get(next++);
            Point bend = new Point(x, edge + STRAIGHT);
            shapes.add(new Shape.Line(LAYER, new Point(x, Millimetres.of(start.getValue())), bend));
            shapes.add(new Shape.Line(LAYER, bend, new Point(at, edge + FIGURES)));
            Point foot = new Point(at + LETTERS / 2, edge + FIGURES + GAP);
            shapes.add(new Shape.Text(LAYER, foot, Numbers.micrometres(start.getKey()), LETTERS, true));
        }
    }

    private static List<Double> spread(Map<Long, Long> starts) {
        return Ordinates.spread(starts.keySet().stream().map(Millimetres::of).toList(), APART);
    }
}
