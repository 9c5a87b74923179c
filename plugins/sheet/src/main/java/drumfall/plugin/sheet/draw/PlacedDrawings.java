// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.plugin.sheet.draw;

import drumfall.solver.layout.Disc;
import drumfall.solver.layout.Layout;
import drumfall.solver.layout.PartKind;
import drumfall.solver.layout.Place;
import drumfall.solver.making.Mount;
import drumfall.solver.making.MovementPart;
import drumfall.solver.making.solid.Box;
import drumfall.solver.making.solid.Slab;
import drumfall.solver.teeth.outline.Point;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/** Elevation and section of a placed movement, millimetres at true size. */
public final class PlacedDrawings {
    private static final double MILLIMETRES = 1e-6;
    private static final int CORNERS = 96;
    private static final double MARGIN = 4;
    private static final double BESIDE = 2.5;

    /** How far the numbers stand below the back plate: clear of it where a section a foot wide is shown half a page wide. */
    private static final double NUMBERS = 16;

    /** Sums of decimal sizes miss each other in the last digits, mm. */
    private static final double HAIR = 1e-6;

    private final Layout layout;
    private final List<Stroke> strokes = new ArrayList<>();
    private final List<Label> labels = new ArrayList<>();

    private PlacedDrawings(Layout layout) {
        this.layout = layout;
    }

    /**
     * The movement seen from the dial: tips of all wheels and pinions, rods, pillars, frame and line; arbors numbered from
     * the drum, then the pallet arbor, then the minute arbor.
     *
     * @param layout where everything stands
     */
    public static Drawing elevation(Layout layout) {
        return new PlacedDrawings(layout).elevation();
    }

    /**
     * The section through the arbors in the order of the train, the back plate below, with winding square and hands.
     *
     * @param layout where everything stands
     * @param parts the printed parts as they stand; none if they cannot be made
     * @param depth between the plates as they are made, nm
     */
    public static Drawing section(Layout layout, List<MovementPart> parts, long depth) {
        return new PlacedDrawings(layout).section(parts, depth);
    }

    private Drawing elevation() {
        drumfall.solver.layout.Box frame = layout.frame();
        rectangle(mm(frame.left()), mm(frame.bottom()), mm(frame.right()), mm(frame.top()));
        layout.discs().stream()
                .filter(disc -> disc.part().kind() != PartKind.HUB)
                .forEach(disc -> circle(disc.place(), mm(disc.radius())));
        layout.need()
                .envelope()
                .pillars()
                .ifPresent(four -> layout.pillarPlaces().forEach(place -> circle(place, mm(four.radius()))));
        layout.falls().forEach(fall -> line(mm(fall), mm(layout.place(0).y()), mm(fall), mm(frame.bottom()) - MARGIN));
        IntStream.range(0, layout.places().size()).forEach(arbor -> {
            Place place = layout.place(arbor);
            labels.add(new Label(mm(place.x()) + BESIDE, mm(place.y()) + BESIDE, Integer.toString(arbor + 1)));
        });
        Box box = new Box(
                mm(frame.left()) - MARGIN,
                mm(frame.bottom()) - MARGIN,
                mm(frame.right()) + MARGIN,
                mm(frame.top()) + MARGIN);
        return new Drawing("elevation-seen-from-the-dial", box, strokes, labels);
    }

    private Drawing section(List<MovementPart> parts, long depth) {
        double[] along = along();
        for (Disc disc : layout.discs()) {
            double middle = along[disc.part().number()];
            double half = mm(disc.radius());
            rectangle(
                    middle - half,
                    mm(disc.span().from()),
                    middle + half,
                    mm(disc.span().to()));
        }
        double left = -reach(0) - MARGIN;
        double right = along[along.length - 1] + reach(along.length - 1) + MARGIN;
        double plate = mm(layout.need().envelope().plateThickness());
        double inner = mm(layout.planes().innerDepth());
        rectangle(left, -plate, right, 0);
        rectangle(left, inner, right, inner + plate);
        for (int arbor = 0; arbor < along.length; arbor++) {
            labels.add(new Label(along[arbor] - 1, -plate - NUMBERS, Integer.toString(arbor + 1)));
        }
        double motion = mm(layout.planes().depth()) - plate;
        double top = Math.max(motion, before(parts, along, inner + plate, mm(depth) - inner)) + MARGIN;
        return new Drawing(
                "section-back-plate-below", new Box(left, -plate - NUMBERS - MARGIN, right, top), strokes, labels);
    }

    /** Draws what stands on the arbors before the front plate, slab by slab, and says where it ends. */
    private double before(List<MovementPart> parts, double[] along, double face, double deeper) {
        double top = face;
        for (MovementPart part : parts) {
            if (part.mount().arbor().isEmpty()) {
                continue;
            }
            double middle = along[part.mount().arbor().getAsInt()];
            for (Mount.Stance stance : part.mount().stances()) {
                double rear = 1e3 * part.mount().rear(stance, part.height()) - deeper;
                if (rear < face - HAIR) {
                    continue;
                }
                for (Slab slab : part.solid().slabs()) {
                    Box box = slab.region().box();
                    rectangle(middle + box.left(), rear + slab.from(), middle + box.right(), rear + slab.to());
                }
                top = Math.max(top, rear + part.solid().height());
            }
        }
        return top;
    }

    /** Arbors beside one another as far apart as they are; the minute arbor past the pallets by its own distance. */
    private double[] along() {
        double[] along = new double[layout.places().size()];
        for (int arbor = 1; arbor < along.length; arbor++) {
            boolean minute = layout.minutePlace().isPresent() && arbor == along.length - 1;
            Place from = layout.place(minute ? layout.need().parts().centreArbor() : arbor - 1);
            double apart = MILLIMETRES * from.distance(layout.place(arbor));
            along[arbor] = along[arbor - 1] + Math.max(apart, minute ? reach(arbor) + reach(arbor - 1) + MARGIN : 0);
        }
        return along;
    }

    private double reach(int arbor) {
        return layout.discs().stream()
                .filter(disc -> disc.part().number() == arbor)
                .mapToDouble(disc -> mm(disc.radius()))
                .max()
                .orElse(0);
    }

    private void circle(Place place, double radius) {
        strokes.add(new Stroke(IntStream.range(0, CORNERS)
                .mapToObj(corner -> {
                    double angle = 2 * Math.PI * corner / CORNERS;
                    return new Point(
                            mm(place.x()) + radius * Math.cos(angle), mm(place.y()) + radius * Math.sin(angle));
                })
                .toList()));
    }

    private void rectangle(double left, double bottom, double right, double top) {
        strokes.add(new Stroke(List.of(
                new Point(left, bottom), new Point(right, bottom), new Point(right, top), new Point(left, top))));
    }

    private void line(double x1, double y1, double x2, double y2) {
        strokes.add(new Stroke(List.of(new Point(x1, y1), new Point(x2, y2))));
    }

    private static double mm(long nanometres) {
        return MILLIMETRES * nanometres;
    }
}
