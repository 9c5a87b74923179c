// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.view.train;

import drumfall.solver.brief.Brief;
import drumfall.solver.quantity.UnitSystem;
import drumfall.solver.train.Train;
import drumfall.ui.view.train.DrawingPlan.Disc;
import drumfall.ui.view.train.DrawingPlan.Part;
import java.awt.Dimension;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;

/** Computes the plan of a drawing: pitch circles to scale in a meshing row, until the arbors have places. */
final class DrawingPlanner {
    private static final double SIDE = 24;
    private static final double HEAD = 62;
    private static final double FOOT = 84;
    private static final double METRES_PER_INCH = 0.0254;
    private static final double LONGEST_BAR = 150;
    private static final double SIZE = 12;

    private final TrainFaces faces;
    private final Brief brief;
    private final Figures figures;
    private final Dimension size;
    private final double unit;
    private final TabularText text;
    private final ArborRow row;
    private final double scale;
    private final List<Point2D> arbors;

    /**
     * A planner.
     *
     * @param train what is drawn
     * @param brief gives frame, teeth, escape wheel
     * @param view how the maker looks at it
     * @param figures how figures are written
     * @param size room, px
     * @param unit a thirteenth of the font size, px
     * @param text measures
     */
    DrawingPlanner(
            Train train,
            Brief brief,
            DrawingView view,
            Figures figures,
            Dimension size,
            double unit,
            TabularText text) {
        this.faces = TrainFaces.of(train, brief);
        this.brief = brief;
        this.figures = figures;
        this.size = size;
        this.unit = unit;
        this.text = text;
        double width = Math.max(1, size.width - 2 * SIDE * unit);
        double height = Math.max(1, size.height - (HEAD + FOOT) * unit);
        this.row = ArborRow.fitting(faces, width / height);
        Rectangle2D bounds = row.bounds();
        this.scale = view.zoom() * Math.min(width / bounds.getWidth(), height / bounds.getHeight());
        this.arbors =
                row.places().stream().map(place -> onSheet(place, bounds, view)).toList();
    }

    /** The middle of the room that a fitted drawing stands in. */
    static Point2D middle(Dimension size, double unit) {
        return new Point2D.Double(size.width / 2.0, (size.height + (HEAD - FOOT) * unit) / 2);
    }

    private Point2D onSheet(Point2D place, Rectangle2D bounds, DrawingView view) {
        return new Point2D.Double(
                middle(size, unit).getX() + view.right() + (place.getX() - bounds.getCenterX()) * scale,
                middle(size, unit).getY() + view.down() + (place.getY() - bounds.getCenterY()) * scale);
    }

    /**
     * The plan.
     *
     * @param pointed number of the arbor pointed at
     * @param mesh number of the mesh looked into
     */
    DrawingPlan plan(Optional<Integer> pointed, Optional<Integer> mesh) {
        return new DrawingPlan(scale, arbors, discs(), balloons(), distances(), bar(), notes(), pointed, mesh);
    }

    private List<Disc> discs() {
        List<Disc> discs = new ArrayList<>();
        discs.add(disc(Part.DRUM, 0, faces.drum(), faces.flange(), 0));
        for (int i = 0; i < faces.meshes().size(); i++) {
            TrainFaces.MeshFace face = faces.meshes().get(i);
            discs.add(disc(Part.WHEEL, i, face.wheelPitch(), face.wheelTip(), face.toothCount()));
            discs.add(disc(Part.PINION, i + 1, face.pinionPitch(), face.pinionTip(), face.leafCount()));
        }
        discs.add(disc(Part.ESCAPE, faces.meshes().size(), faces.escape(), faces.escape(), faces.escapeTeeth()));
        return discs;
    }

    private Disc disc(Part part, int arbor, double inner, double outer, int count) {
        return new Disc(part, arbor, arbors.get(arbor), inner * scale, outer * scale, count);
    }

    /** Numbers stand in one line above all tips, each over its arbor; a row's arbors never share an upright. */
    private List<DrawingPlan.Balloon> balloons() {
        double y = highestTip() - 20 * unit;
        List<DrawingPlan.Balloon> balloons = new ArrayList<>();
        for (int i = 0; i < arbors.size(); i++) {
            Point2D foot = arbors.get(i);
            balloons.add(new DrawingPlan.Balloon(i, new Point2D.Double(foot.getX(), y), 9 * unit, foot));
        }
        return balloons;
    }

    private double highestTip() {
        return discs().stream()
                .mapToDouble(disc -> disc.centre().getY() - disc.outer())
                .min()
                .orElseThrow();
    }

    private double lowestTip() {
        return discs().stream()
                .mapToDouble(disc -> disc.centre().getY() + disc.outer())
                .max()
                .orElseThrow();
    }

    private List<DrawingPlan.Distance> distances() {
        List<DrawingPlan.Distance> distances = new ArrayList<>();
        double below = lowestTip() + 16 * unit;
        for (int i = 0; i < faces.meshes().size(); i++) {
            Figure figure = figures.length(faces.meshes().get(i).centreDistance());
            Point2D from = arbors.get(i);
            Point2D to = arbors.get(i + 1);
            double width = StripSpot.figureWidth(text, figure, SIZE * unit) + 6 * unit;
            double y = row.straight() ? below : (from.getY() + to.getY()) / 2;
            Rectangle2D box = clear(
                    distances,
                    new Rectangle2D.Double((from.getX() + to.getX() - width) / 2, y - 8 * unit, width, 16 * unit));
            double line = row.straight() ? box.getCenterY() : Double.NaN;
            distances.add(new DrawingPlan.Distance(from, to, line, figure, box));
        }
        return distances;
    }

    /** The box, moved down until it is clear of those before it. */
    private Rectangle2D clear(List<DrawingPlan.Distance> before, Rectangle2D box) {
        while (before.stream().anyMatch(other -> other.box().intersects(box))) {
            box.setRect(box.getX(), box.getY() + 18 * unit, box.getWidth(), box.getHeight());
        }
        return box;
    }

    /** The longest of 1, 2 or 5 times a power of ten that is not too long. */
    private DrawingPlan.ScaleBar bar() {
        double unitLength = figures.units() == UnitSystem.METRIC ? 1 : METRES_PER_INCH;
        double most = LONGEST_BAR * unit / scale / unitLength;
        double power = Math.pow(10, Math.floor(Math.log10(most)));
        double amount = DoubleStream.of(5, 2, 1)
                .map(step -> step * power)
                .filter(length -> length <= most)
                .findFirst()
                .orElse(power);
        double length = amount * unitLength;
        Rectangle2D box = new Rectangle2D.Double(SIDE * unit, size.height - 26 * unit, length * scale, 5 * unit);
        return new DrawingPlan.ScaleBar(box, figures.length(length));
    }

    private List<StripPlan.Note> notes() {
        Brief.Frame frame = brief.frame();
        String rectangle = TrainText.of(
                "frame",
                StripSpot.withoutSharedUnit(figures.typed(frame.width()), figures.typed(frame.height()))
                        .text(),
                StripSpot.withoutSharedUnit(figures.typed(frame.height()), figures.typed(frame.depth()))
                        .text(),
                figures.typed(frame.depth()).text());
        double width = text.width(rectangle, SIZE * unit);
        return List.of(
                note(TrainText.of("notPlaced"), SIDE * unit, 22 * unit),
                note(rectangle, size.width - SIDE * unit - width, size.height - 20 * unit));
    }

    private StripPlan.Note note(String words, double x, double baseline) {
        return new StripPlan.Note(words, x, baseline, SIZE * unit, StripPlan.Tone.LIGHTER);
    }
}
