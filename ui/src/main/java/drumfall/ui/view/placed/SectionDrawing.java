// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.view.placed;

import drumfall.ui.presenter.PlacedSheet;
import drumfall.ui.presenter.Texts;
import drumfall.ui.view.train.Inks;
import java.awt.Graphics2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.Optional;

/** The section through the planes, the arbors unfolded in the order of the train. */
final class SectionDrawing extends PlacedCanvas {
    private static final double MARGIN = 30;

    /** Room for captions on the left and for depths on the right, in drawing units. */
    private static final double SIDES = 74;

    SectionDrawing(PlacedSheet sheet) {
        super(sheet, "placed.section", Texts.of("placed.section.name"));
    }

    Optional<SectionPlan> plan() {
        return sheet().seen().map(seen -> SectionPlan.of(seen.layout()));
    }

    SheetScale scale(SectionPlan plan) {
        Rectangle2D bounds = plan.bounds();
        double room = Math.max(1, getWidth() - 2 * SIDES * unit());
        double share = room / Math.max(1, getWidth() - 2 * MARGIN * unit());
        double wider = bounds.getWidth() / share - bounds.getWidth();
        Rectangle2D roomy = new Rectangle2D.Double(
                bounds.getX() - wider / 2, bounds.getY(), bounds.getWidth() + wider, bounds.getHeight());
        return SheetScale.fitted(roomy, getSize(), MARGIN * unit(), view());
    }

    @Override
    Optional<Integer> arborAt(Point2D point) {
        return plan().flatMap(plan -> {
            SheetScale scale = scale(plan);
            return plan.arborAt(
                    (point.getX() - scale.originX()) / scale.scale(), (scale.originY() - point.getY()) / scale.scale());
        });
    }

    @Override
    void paint(Graphics2D pen, Inks inks, Shown shown) {
        SectionPlan plan = plan().orElseThrow();
        new SectionPainter(pen, inks, plan, scale(plan), text(), unit(), shown).paint();
    }
}
