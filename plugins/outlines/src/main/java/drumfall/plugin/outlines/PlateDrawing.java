// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.plugin.outlines;

import drumfall.plugin.outlines.PlateHoles.Hole;
import drumfall.plugin.outlines.draw.Drawing;
import drumfall.plugin.outlines.draw.Layer;
import drumfall.plugin.outlines.draw.LineKind;
import drumfall.plugin.outlines.draw.Shape;
import drumfall.solver.kit.HoleRow.Plate;
import drumfall.solver.layout.Box;
import drumfall.solver.teeth.outline.Point;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** A whole plate seen from the dial, its holes numbered, their table beside it; seats in the front plate are hidden. */
final class PlateDrawing {
    private static final Layer PLATE = new Layer("PLATE", LineKind.WIDE, 7);
    private static final Layer HOLES = new Layer("HOLES", LineKind.WIDE, 5);
    private static final Layer CENTRES = new Layer("CENTRES", LineKind.CHAIN, 1);
    private static final Layer NUMBERS = new Layer("NUMBERS", LineKind.NARROW, 7);
    private static final Layer TABLE = new Layer("TABLE", LineKind.NARROW, 8);
    private static final double LETTERS = 2.5;
    private static final double ROW = 5;
    private static final double OFF = 10;
    private static final double BEYOND = 2;
    private static final List<String> HEAD =
            List.of("Hole", "for", "x", "y", "x left", "y low", "Ø", "drill", "seat Ø", "deep", "use");

    private final PlateHoles plate;
    private final Box frame;
    private final Layer seats;
    private final List<Shape> shapes = new ArrayList<>();

    private PlateDrawing(PlateHoles plate) {
        this.plate = plate;
        this.frame = plate.layout().frame();
        this.seats = new Layer("SEATS", hidden() ? LineKind.DASHED : LineKind.NARROW, 6);
    }

    private boolean hidden() {
        return plate.plate() == Plate.FRONT;
    }

    static Drawing of(PlateHoles plate) {
        PlateDrawing drawing = new PlateDrawing(plate);
        ElevationDrawing.addRectangle(PLATE, drawing.frame, drawing.shapes);
        plate.holes().forEach(drawing::add);
        drawing.addTable();
        return new Drawing(name(plate), drawing.title(), drawing.shapes);
    }

    /** File name without its ending, of the table too. */
    static String name(PlateHoles plate) {
        return side(plate) + "-plate-holes";
    }

    private static String side(PlateHoles plate) {
        return plate.plate().name().toLowerCase(Locale.ROOT);
    }

    private String title() {
        return "Holes of the " + side(plate) + " plate, seen from the dial on its " + (hidden() ? "outer" : "inner")
                + " side, full size";
    }

    private void add(Hole hole) {
        Point centre = Millimetres.of(hole.place());
        double radius = Millimetres.of(hole.drawn()) / 2;
        shapes.add(new Shape.Circle(HOLES, centre, radius));
        hole.seat().ifPresent(seat -> shapes.add(new Shape.Circle(seats, centre, Millimetres.of(seat.drawn()) / 2)));
        double widest =
                hole.seat().map(seat -> Millimetres.of(seat.drawn()) / 2).orElse(radius);
        double arm = widest + BEYOND;
        shapes.add(new Shape.Line(
                CENTRES, new Point(centre.x() - arm, centre.y()), new Point(centre.x() + arm, centre.y())));
        shapes.add(new Shape.Line(
                CENTRES, new Point(centre.x(), centre.y() - arm), new Point(centre.x(), centre.y() + arm)));
        Point at = new Point(centre.x() + widest + BEYOND / 2, centre.y() + BEYOND / 2);
        shapes.add(Shape.Text.level(NUMBERS, at, hole.number(), LETTERS));
    }

    /** Right of the plate, level with its upper edge. */
    private void addTable() {
        List<List<String>> rows = new ArrayList<>(List.of(HEAD));
        plate.holes().forEach(hole -> rows.add(plate.fields(hole)));
        double left = Millimetres.of(frame.right()) + OFF;
        double top = Millimetres.of(frame.top());
        addText(left, top - ROW, title());
        addText(left, top - 2 * ROW, "mm; x, y from the dial centre; x left, y low from the plate's lower left corner");
        double x = left;
        for (int column = 0; column < HEAD.size(); column++) {
            int widest = 0;
            for (int row = 0; row < rows.size(); row++) {
                String field = rows.get(row).get(column);
                addText(x, top - (row + 4) * ROW, field);
                widest = Math.max(widest, field.length());
            }
            x += Shape.Text.length(widest + 1, LETTERS);
        }
        double ruled = top - 4 * ROW - (ROW - LETTERS) / 2;
        shapes.add(new Shape.Line(TABLE, new Point(left, ruled), new Point(x, ruled)));
    }

    private void addText(double x, double y, String words) {
        if (!words.isEmpty()) {
            shapes.add(Shape.Text.level(TABLE, new Point(x, y), words, LETTERS));
        }
    }
}
