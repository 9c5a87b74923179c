// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.view.placed;

import drumfall.ui.presenter.PlacedDrag;
import drumfall.ui.presenter.PlacedSheet;
import drumfall.ui.presenter.PlacedState.Seen;
import drumfall.ui.presenter.Texts;
import drumfall.ui.view.train.Inks;
import java.awt.Graphics2D;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.Optional;

/**
 * The elevation, seen from the dial.
 *
 * <p>An arbor is dragged along its arc; the arrow keys move the selected one, with Shift finely, Enter puts it down and Esc
 * takes it back. With no arbor selected the arrow keys move the drawing.
 */
final class ElevationDrawing extends PlacedCanvas {
    private static final double MARGIN = 52;
    private static final double REACH = 5;
    private static final double KEY_ANGLE = Math.toRadians(2);
    private static final double FINE_ANGLE = Math.toRadians(0.2);

    private transient Optional<Drawn> drawn = Optional.empty();
    private transient Optional<Rectangle2D> held = Optional.empty();
    private transient Point2D grip = new Point2D.Double();

    /** A plan and what it is of. */
    private record Drawn(Seen seen, ElevationPlan plan) {}

    ElevationDrawing(PlacedSheet sheet) {
        super(sheet, "placed.elevation", Texts.of("placed.elevation.name"));
        setToolTipText(null);
        bind("shift LEFT", () -> sheet.nudge(-1, 0, FINE_ANGLE));
        bind("shift RIGHT", () -> sheet.nudge(1, 0, FINE_ANGLE));
        bind("shift UP", () -> sheet.nudge(0, 1, FINE_ANGLE));
        bind("shift DOWN", () -> sheet.nudge(0, -1, FINE_ANGLE));
        bind("ENTER", sheet::letGo);
        bind(
                "ESCAPE",
                this::escape,
                () -> sheet().drag().isPresent() || sheet().selected().isPresent());
        addFocusListener(new FocusAdapter() {
            @Override
            public void focusLost(FocusEvent event) {
                if (!event.isTemporary()) {
                    sheet.giveUp();
                }
            }
        });
    }

    private void escape() {
        if (sheet().drag().isPresent()) {
            sheet().giveUp();
        } else {
            sheet().select(Optional.empty());
        }
    }

    @Override
    void arrow(int across, int up) {
        if (sheet().selected().isPresent()) {
            sheet().nudge(across, up, KEY_ANGLE);
        } else {
            super.arrow(across, up);
        }
    }

    Optional<ElevationPlan> plan() {
        Optional<Seen> seen = sheet().seen();
        if (!seen.equals(drawn.map(Drawn::seen))) {
            drawn = seen.map(found -> new Drawn(found, ElevationPlan.of(found)));
        }
        return drawn.map(Drawn::plan);
    }

    /** The scale; it stays while an arbor is on its way, so that nothing else moves. */
    SheetScale scale(ElevationPlan plan) {
        if (sheet().drag().isEmpty() || held.isEmpty()) {
            held = Optional.of(plan.bounds());
        }
        return SheetScale.fitted(held.get(), getSize(), MARGIN * unit(), view());
    }

    @Override
    Optional<Integer> arborAt(Point2D point) {
        return plan().flatMap(plan -> {
            SheetScale scale = scale(plan);
            double x = (point.getX() - scale.originX()) / scale.scale();
            double y = (scale.originY() - point.getY()) / scale.scale();
            return plan.arborAt(x, y, REACH * unit() / scale.scale());
        });
    }

    @Override
    boolean pull(int arbor, Point2D to) {
        Optional<ElevationPlan> plan = plan();
        boolean can = sheet().seen()
                .filter(seen -> PlacedDrag.canDraw(seen.layout().need().parts(), arbor))
                .isPresent();
        if (plan.isEmpty() || !can) {
            return false;
        }
        SheetScale scale = scale(plan.get());
        if (sheet().drag().isEmpty()) {
            Point2D at = plan.get().arbors().get(arbor);
            grip = new Point2D.Double(to.getX() - scale.x(at.getX()), to.getY() - scale.y(at.getY()));
        }
        sheet().drawTo(arbor, scale.placeAt(new Point2D.Double(to.getX() - grip.getX(), to.getY() - grip.getY())));
        return true;
    }

    @Override
    void letGo() {
        sheet().letGo();
    }

    @Override
    void paint(Graphics2D pen, Inks inks, Shown shown) {
        ElevationPlan plan = plan().orElseThrow();
        new ElevationPainter(pen, inks, plan, scale(plan), text(), unit(), shown).paint();
    }
}
