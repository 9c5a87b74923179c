// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.plugin.outlines;

import drumfall.plugin.outlines.draw.Drawing;
import drumfall.plugin.outlines.draw.Layer;
import drumfall.plugin.outlines.draw.LineKind;
import drumfall.plugin.outlines.draw.Shape;
import drumfall.solver.making.MovementPart;
import drumfall.solver.making.solid.Box;
import drumfall.solver.teeth.outline.Point;
import drumfall.solver.teeth.outline.Ring;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * A printed part seen from above as it lies on the bed: each section on a layer of its own.
 *
 * <p>What runs through all sections is drawn once, the bore on {@code BORE}, the rest on {@code THROUGH}; together with these
 * a section's layer holds the whole section.
 */
final class PartDrawing {
    private static final Layer PITCH = new Layer("PITCH", LineKind.CHAIN, 1);
    private static final Layer BORE = new Layer("BORE", LineKind.NARROW, 5);
    private static final Layer THROUGH = new Layer("THROUGH", LineKind.NARROW, 7);
    private static final Layer NOTES = new Layer("NOTES", LineKind.NARROW, 8);
    private static final int[] SECTION_COLOURS = {7, 3, 6, 4, 2};

    /** Height of the notes' capitals and from foot to foot, mm: ISO 3098-1, from memory. */
    private static final double LETTERS = 2.5;

    private static final double LINE_SPACING = 4;
    private static final Point ORIGIN = new Point(0, 0);

    private final MovementPart part;
    private final List<Section> sections;
    private final List<Shape> shapes = new ArrayList<>();

    private PartDrawing(MovementPart part) {
        this.part = part;
        this.sections = Section.of(part);
    }

    static Drawing of(MovementPart part) {
        PartDrawing drawing = new PartDrawing(part);
        drawing.draw();
        return new Drawing(part.name(), drawing.title(), drawing.shapes);
    }

    private String title() {
        return part.name() + ", " + part.count() + " off, " + part.material();
    }

    private void draw() {
        Set<Ring> through = through();
        boolean several = sections.size() > 1;
        for (Ring ring : through) {
            if (bore(ring)) {
                shapes.add(Shape.of(BORE, ring));
            } else if (several) {
                shapes.add(Shape.of(THROUGH, ring));
            }
        }
        for (int i = 0; i < sections.size(); i++) {
            Section section = sections.get(i);
            Layer layer = new Layer(section.name(), LineKind.NARROW, SECTION_COLOURS[i % SECTION_COLOURS.length]);
            section.region()
                    .rings()
                    .filter(ring -> !through.contains(ring) || (!several && !bore(ring)))
                    .forEach(ring -> shapes.add(Shape.of(layer, ring)));
        }
        part.teeth().forEach(teeth -> shapes.add(new Shape.Circle(PITCH, ORIGIN, Section.pitchRadius(teeth))));
        addNotes();
    }

    private Set<Ring> through() {
        Set<Ring> common = new LinkedHashSet<>(sections.get(0).region().rings().toList());
        sections.forEach(section -> common.retainAll(section.region().rings().toList()));
        return common;
    }

    /** A round hole about the axis. */
    private static boolean bore(Ring ring) {
        return ring.moments().area() < 0
                && Shape.of(BORE, ring) instanceof Shape.Circle circle
                && circle.centre().distance(ORIGIN) < Shape.SAME;
    }

    /** Below the part: its name, then what each section is. */
    private void addNotes() {
        Box box = part.solid().box();
        List<String> lines = new ArrayList<>(List.of(title()));
        sections.forEach(section -> lines.add(section.name() + ": " + section.words()));
        for (int i = 0; i < lines.size(); i++) {
            Point at = new Point(box.left(), box.bottom() - (i + 1.5) * LINE_SPACING);
            shapes.add(Shape.Text.level(NOTES, at, lines.get(i), LETTERS));
        }
    }
}
