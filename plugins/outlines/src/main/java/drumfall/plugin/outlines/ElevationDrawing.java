// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.plugin.outlines;

import drumfall.plugin.outlines.draw.Drawing;
import drumfall.plugin.outlines.draw.Layer;
import drumfall.plugin.outlines.draw.LineKind;
import drumfall.plugin.outlines.draw.Shape;
import drumfall.solver.brief.Brief;
import drumfall.solver.layout.Box;
import drumfall.solver.layout.Disc;
import drumfall.solver.layout.Layout;
import drumfall.solver.layout.PartKind;
import drumfall.solver.layout.Place;
import drumfall.solver.rating.MotionChoice;
import drumfall.solver.rating.TrainRater;
import drumfall.solver.teeth.outline.Point;
import drumfall.solver.train.Train;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * The placed movement seen from the dial, to scale: wheels by their pitch and tip circles (ISO 2203, from memory), frame,
 * pillars, line and the way of the weight, dimensions to the dial centre.
 */
final class ElevationDrawing {
    /** Height of letters, mm: ISO 3098-1, from memory. */
    static final double LETTERS = 3.5;

    /** How far the way of the weight is drawn below everything else, mm; the whole fall would take the sheet. */
    private static final double WAY_SHOWN = 40;

    private static final double LINE_SPACING = 6;
    private static final double MARK = 8;
    private static final double NUMBER_OFF = 1.5;
    private static final double MILLIMETRES = 1000;

    private static final Layer FRAME = new Layer("FRAME", LineKind.WIDE, 7);
    private static final Layer PILLARS = new Layer("PILLARS", LineKind.WIDE, 7);
    private static final Layer PITCH = new Layer("PITCH", LineKind.CHAIN, 1);
    private static final Layer LINE = new Layer("LINE", LineKind.WIDE, 5);
    private static final Layer WAY = new Layer("WEIGHT-PATH", LineKind.DASHED, 5);
    private static final Layer DIAL_CENTRE = new Layer("DIAL-CENTRE", LineKind.CHAIN, 1);
    private static final Layer NUMBERS = new Layer("NUMBERS", LineKind.NARROW, 7);
    private static final Layer NOTES = new Layer("NOTES", LineKind.NARROW, 8);
    private static final Layer MOTION = new Layer("MOTION-WORK", LineKind.NARROW, 2);
    private static final Map<PartKind, Layer> ROUND = new EnumMap<>(Map.of(
            PartKind.DRUM, new Layer("DRUM", LineKind.WIDE, 6),
            PartKind.WHEEL, new Layer("WHEELS", LineKind.NARROW, 3),
            PartKind.PINION, new Layer("PINIONS", LineKind.NARROW, 4),
            PartKind.ESCAPE_WHEEL, new Layer("ESCAPE-WHEEL", LineKind.NARROW, 3),
            PartKind.PALLETS, new Layer("PALLETS", LineKind.DASHED, 4),
            PartKind.ROD, new Layer("ARBORS", LineKind.WIDE, 7),
            PartKind.HUB, new Layer("HUBS", LineKind.NARROW, 8)));

    private static final Set<PartKind> INNER =
            EnumSet.of(PartKind.ROD, PartKind.HUB, PartKind.PINION, PartKind.MINUTE_PINION);

    private final Layout layout;
    private final Brief brief;
    private final Train train;
    private final List<Shape> shapes = new ArrayList<>();

    private ElevationDrawing(Layout layout, Brief brief, Train train) {
        this.layout = layout;
        this.brief = brief;
        this.train = train;
    }

    /**
     * The sheet.
     *
     * @param layout where everything stands
     * @param rater rates against the brief
     * @param train the train
     */
    static Drawing of(Layout layout, TrainRater rater, Train train) {
        ElevationDrawing drawing = new ElevationDrawing(layout, rater.brief(), train);
        drawing.addFrame();
        layout.discs().stream().filter(disc -> disc.radius() > 0).forEach(drawing::add);
        drawing.addPitchCircles(rater);
        double foot = drawing.addWeight();
        drawing.addDialCentre();
        drawing.addNumbers();
        drawing.shapes.addAll(new DialDimensions(layout).shapes());
        drawing.addNotes(foot);
        return new Drawing("elevation", "Elevation seen from the dial, full size: " + train, drawing.shapes);
    }

    private void addFrame() {
        addRectangle(FRAME, layout.frame(), shapes);
        layout.need()
                .envelope()
                .pillars()
                .ifPresent(pillars -> layout.pillarPlaces()
                        .forEach(place -> shapes.add(
                                new Shape.Circle(PILLARS, Millimetres.of(place), Millimetres.of(pillars.radius())))));
    }

    static void addRectangle(Layer layer, Box box, List<Shape> shapes) {
        Point lowerLeft = Millimetres.of(new Place(box.left(), box.bottom()));
        Point upperRight = Millimetres.of(new Place(box.right(), box.top()));
        Point lowerRight = new Point(upperRight.x(), lowerLeft.y());
        Point upperLeft = new Point(lowerLeft.x(), upperRight.y());
        shapes.add(new Shape.Line(layer, lowerLeft, lowerRight));
        shapes.add(new Shape.Line(layer, lowerRight, upperRight));
        shapes.add(new Shape.Line(layer, upperRight, upperLeft));
        shapes.add(new Shape.Line(layer, upperLeft, lowerLeft));
    }

    private void add(Disc disc) {
        Layer layer = ROUND.getOrDefault(disc.part().kind(), MOTION);
        shapes.add(new Shape.Circle(layer, Millimetres.of(disc.place()), Millimetres.of(disc.radius())));
    }

    private void addPitchCircles(TrainRater rater) {
        for (int i = 0; i < train.meshes().size(); i++) {
            addPitchCircles(
                    i, train.meshes().get(i).toothCount(), train.meshes().get(i).leafCount(), layout.place(i + 1), i);
        }
        layout.minutePlace()
                .ifPresent(minute -> MotionChoice.of(
                                rater.brief(), rater.movement().teeth())
                        .ifPresent(work -> {
                            int centre = layout.need().parts().centreArbor();
                            int last = train.meshes().size();
                            addPitchCircles(
                                    centre,
                                    work.counts().cannonPinion(),
                                    work.counts().minuteWheel(),
                                    minute,
                                    last);
                            addPitchCircles(
                                    centre,
                                    work.counts().hourWheel(),
                                    work.counts().minutePinion(),
                                    minute,
                                    last);
                        }));
    }

    /** Working pitch circles: the centre distance shared as the counts are. */
    private void addPitchCircles(int arbor, int count, int otherCount, Place other, int mesh) {
        double share = Millimetres.of(layout.need().centreDistance(mesh)) / (count + otherCount);
        shapes.add(new Shape.Circle(PITCH, Millimetres.of(layout.place(arbor)), share * count));
        shapes.add(new Shape.Circle(PITCH, Millimetres.of(other), share * otherCount));
    }

    /** The line down to the wound weight, and the strip in which the weight goes down; answers where the drawing ends. */
    private double addWeight() {
        double top = Millimetres.of(layout.weightTop());
        double bottom = Millimetres.of(layout.frame().bottom());
        double end = top - MILLIMETRES * brief.fall().height().si();
        double foot = Math.max(end, Math.min(bottom, top) - WAY_SHOWN);
        double drum = Millimetres.of(layout.place(0).y());
        for (long fall : layout.falls()) {
            double x = Millimetres.of(fall);
            shapes.add(new Shape.Line(LINE, new Point(x, drum), new Point(x, top)));
        }
        double middle = Millimetres.of(layout.weightMiddle());
        double half = Millimetres.of(layout.need().line().weightWidth()) / 2;
        addWayLine(middle - half, top, middle + half, top);
        addWayLine(middle - half, top, middle - half, foot);
        addWayLine(middle + half, top, middle + half, foot);
        if (foot == end) {
            addWayLine(middle - half, foot, middle + half, foot);
        }
        return Math.min(foot, bottom);
    }

    private void addWayLine(double x, double y, double toX, double toY) {
        shapes.add(new Shape.Line(WAY, new Point(x, y), new Point(toX, toY)));
    }

    private void addDialCentre() {
        shapes.add(new Shape.Line(DIAL_CENTRE, new Point(-MARK, 0), new Point(MARK, 0)));
        shapes.add(new Shape.Line(DIAL_CENTRE, new Point(0, -MARK), new Point(0, MARK)));
    }

    /** Each beside the rod, clear of the leaves around it. */
    private void addNumbers() {
        for (int arbor = 0; arbor < layout.places().size(); arbor++) {
            double off = NUMBER_OFF + inner(arbor);
            Point centre = Millimetres.of(layout.place(arbor));
            Point at = new Point(centre.x() + off, centre.y() + NUMBER_OFF);
            shapes.add(Shape.Text.level(NUMBERS, at, ArborWords.of(layout, arbor), LETTERS));
        }
    }

    private double inner(int arbor) {
        return layout.discs().stream()
                .filter(disc -> disc.part().number() == arbor
                        && INNER.contains(disc.part().kind()))
                .mapToDouble(disc -> Millimetres.of(disc.radius()))
                .max()
                .orElse(0);
    }

    private void addNotes(double foot) {
        double left = Millimetres.of(layout.frame().left());
        String height = brief.fall().height().toString();
        List<String> lines = List.of(
                "Elevation seen from the dial, full size, dimensions in mm from the dial centre",
                train.toString(),
                "The weight hangs wound where its path begins and goes down " + height);
        for (int i = 0; i < lines.size(); i++) {
            Point at = new Point(left, foot - (i + 2) * LINE_SPACING);
            shapes.add(Shape.Text.level(NOTES, at, lines.get(i), LETTERS));
        }
    }
}
