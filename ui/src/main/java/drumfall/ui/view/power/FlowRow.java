// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.view.power;

import drumfall.ui.presenter.MeshFigure;
import drumfall.ui.presenter.PowerStep;
import drumfall.ui.view.look.Ink;
import drumfall.ui.view.look.Look;
import drumfall.ui.view.train.Pens;
import drumfall.ui.view.train.Role;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.function.Predicate;

/**
 * One place where power goes, with its part of the band: what goes on is plain, what is lost here is hatched and leaves to
 * the right, what arrives at the pendulum is plain to the foot.
 */
final class FlowRow extends PowerRow {
    /** Width of the whole band; the rest of the row is words. */
    static final int BAND = 72;

    private static final int LEFT = 4;
    private static final int HATCH = 5;

    private final transient Predicate<PowerStep> pointedAt;
    private transient PowerStep step;

    FlowRow(PowerStep step, Predicate<PowerStep> pointedAt) {
        this.pointedAt = pointedAt;
        setName("power." + step.place() + "." + step.number());
        show(step);
    }

    void show(PowerStep next) {
        step = next;
        show(next.title(), PowerStep.microwatts(next.power()), MeshFigure.percent(next.share()));
    }

    PowerStep step() {
        return step;
    }

    @Override
    int textStart() {
        return start();
    }

    /** Where the words begin beside the band, px. */
    static int start() {
        return Look.scaled(LEFT + BAND + 8);
    }

    /** Draws what goes on: a share of the weight's power between two edges. */
    static void band(Graphics2D pen, double share, int height) {
        double left = x(0);
        double right = x(share);
        pen.setColor(Ink.wash(Role.CHOSEN));
        pen.fill(new Rectangle2D.Double(left, 0, right - left, height));
        pen.setColor(Ink.of(Role.CHOSEN));
        pen.setStroke(Pens.solid(Look.scaled(1)));
        pen.draw(new Line2D.Double(left, 0, left, height));
        pen.draw(new Line2D.Double(right, 0, right, height));
    }

    @Override
    boolean lit() {
        return pointedAt.test(step);
    }

    /** Place of a share of the weight's power across the band, px. */
    static double x(double share) {
        return Look.scaled(LEFT) + Math.max(0, share) * Look.scaled(BAND);
    }

    @Override
    void paintBehind(Graphics2D pen) {
        double on = step.arrives() ? step.before() : step.after();
        band(pen, on, getHeight());
        if (step.arrives()) {
            arrow(pen, x(0), x(on));
        } else {
            lost(pen, x(on), x(step.before()));
        }
    }

    private void arrow(Graphics2D pen, double left, double right) {
        double foot = getHeight() - 1.0;
        Path2D head = new Path2D.Double();
        head.moveTo(left, foot / 2);
        head.lineTo((left + right) / 2, foot);
        head.lineTo(right, foot / 2);
        head.closePath();
        pen.fill(head);
    }

    private void lost(Graphics2D pen, double from, double to) {
        double middle = getHeight() / 2.0;
        Shape box = new Rectangle2D.Double(from, 0, Math.max(0.5, to - from), middle);
        Shape before = pen.getClip();
        pen.setColor(Ink.text());
        pen.setStroke(Pens.solid(Look.scaled(1)));
        pen.clip(box);
        Path2D lines = new Path2D.Double();
        double apart = Look.scaled(HATCH);
        for (double x = from - getHeight(); x < to; x += apart) {
            lines.moveTo(x, getHeight());
            lines.lineTo(x + getHeight(), 0);
        }
        pen.draw(lines);
        pen.setClip(before);
        pen.draw(new Line2D.Double(to, 0, to, middle));
        pen.draw(new Line2D.Double(from, middle, to, middle));
        pen.setColor(Ink.faint());
        pen.setStroke(Pens.solid(0.5 * Look.scaled(1)));
        pen.draw(new Line2D.Double(to, middle, textStart() - Look.scaled(3), middle));
    }
}
