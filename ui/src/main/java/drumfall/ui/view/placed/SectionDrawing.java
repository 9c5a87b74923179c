// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.view.placed;

import drumfall.ui.presenter.PlacedSheet;
import drumfall.ui.presenter.PlacedState;
import drumfall.ui.presenter.PlacedWords;
import drumfall.ui.presenter.Texts;
import drumfall.ui.view.train.Inks;
import java.awt.Graphics2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** The section through the planes, the arbors unfolded in the order of the train. */
final class SectionDrawing extends PlacedCanvas {
    private static final double MARGIN = 30;

    /** Less is enough above, where no numbers stand. */
    private static final double TOP = 14;

    /** Room for captions on the left and for depths on the right, in drawing units. */
    private static final double SIDES = 100;

    /** The name of the change that tells which part before the front plate is pointed at. */
    static final String TOLD = "told";

    private Optional<String> told = Optional.empty();

    SectionDrawing(PlacedSheet sheet) {
        super(sheet, "placed.section", Texts.of("placed.section.name"));
    }

    Optional<SectionPlan> plan() {
        return sheet().seen().map(SectionPlan::of);
    }

    SheetScale scale(SectionPlan plan) {
        Rectangle2D bounds = plan.bounds();
        double room = Math.max(1, getWidth() - 2 * SIDES * unit());
        double share = room / Math.max(1, getWidth() - 2 * MARGIN * unit());
        double wider = bounds.getWidth() / share - bounds.getWidth();
        double high = Math.max(1, getHeight() - 2 * MARGIN * unit());
        double higher = Math.max(1, getHeight() - (MARGIN + TOP) * unit());
        Rectangle2D roomy = new Rectangle2D.Double(
                bounds.getX() - wider / 2,
                bounds.getY(),
                bounds.getWidth() + wider,
                bounds.getHeight() * high / higher);
        return SheetScale.fitted(roomy, getSize(), MARGIN * unit(), view());
    }

    @Override
    Optional<Integer> arborAt(Point2D point) {
        return plan().flatMap(plan -> {
            Point2D at = onPlan(plan, point);
            return plan.arborAt(at.getX(), at.getY());
        });
    }

    private Point2D onPlan(SectionPlan plan, Point2D point) {
        SheetScale scale = scale(plan);
        return new Point2D.Double(
                (point.getX() - scale.originX()) / scale.scale(), (scale.originY() - point.getY()) / scale.scale());
    }

    @Override
    void pointed(Optional<Point2D> point) {
        super.pointed(point);
        Optional<String> before = told;
        told = point.flatMap(this::wordsAt);
        firePropertyChange(TOLD, before.orElse(null), told.orElse(null));
    }

    /** What is pointed at before the front plate, with its sizes. */
    Optional<String> told() {
        return told;
    }

    private Optional<String> wordsAt(Point2D point) {
        return plan().flatMap(plan -> {
            Point2D at = onPlan(plan, point);
            PlacedWords words = sheet().words().orElseThrow();
            return plan.pieceAt(at.getX(), at.getY())
                    .map(words::piece)
                    .or(() -> plan.dialAt(at.getX(), at.getY()).map(words::dial));
        });
    }

    @Override
    List<String> spoken() {
        return sheet().seen()
                .map(PlacedState.Seen::front)
                .map(front -> {
                    PlacedWords words = sheet().words().orElseThrow();
                    return Stream.concat(
                                    front.pieces().stream().map(words::piece),
                                    front.dial().stream().map(words::dial))
                            .toList();
                })
                .orElse(List.of());
    }

    @Override
    void paint(Graphics2D pen, Inks inks, Shown shown) {
        SectionPlan plan = plan().orElseThrow();
        new SectionPainter(pen, inks, plan, scale(plan), text(), unit(), shown).paint();
    }
}
