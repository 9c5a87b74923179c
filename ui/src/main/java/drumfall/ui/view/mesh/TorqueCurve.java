// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.view.mesh;

import drumfall.ui.presenter.MeshFigure;
import drumfall.ui.presenter.MeshPhases;
import drumfall.ui.presenter.MeshPhases.Stretch;
import drumfall.ui.presenter.MeshSheet;
import drumfall.ui.presenter.MeshState.Traced;
import drumfall.ui.presenter.Texts;
import drumfall.ui.view.train.Inks;
import drumfall.ui.view.train.Pens;
import drumfall.ui.view.train.Role;
import drumfall.ui.view.train.TabularText;
import java.awt.Dimension;
import java.awt.Font;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.Stroke;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.function.ToDoubleFunction;
import javax.accessibility.Accessible;
import javax.accessibility.AccessibleContext;
import javax.accessibility.AccessibleRole;
import javax.swing.JComponent;
import javax.swing.UIManager;

/**
 * The torque of the pinion over one pitch, as a share of that without friction; approach is hatched, the worst phase marked.
 *
 * <p>Pressing or dragging turns the wheel to the phase under the pointer.
 */
final class TorqueCurve extends JComponent implements Accessible {
    private static final double FONT_UNITS = 13;
    private static final double SIZE = 11;
    private static final double LEFT = 42;
    private static final double RIGHT = 10;
    private static final double TOP = 18;
    private static final double FOOT = 5;
    private static final double HATCH = 7;

    /** The scale ends at a whole tenth at least this far below the worst phase. */
    private static final double BELOW = 0.04;

    private final transient MeshSheet sheet;
    private transient TabularText text;

    TorqueCurve(MeshSheet sheet) {
        this.sheet = sheet;
        setName("mesh.curve");
        setOpaque(true);
        updateUI();
        MouseAdapter pointer = new MouseAdapter() {
            @Override
            public void mousePressed(MouseEvent event) {
                sheet.setTurning(false);
                turnTo(event.getX());
            }

            @Override
            public void mouseDragged(MouseEvent event) {
                turnTo(event.getX());
            }
        };
        addMouseListener(pointer);
        addMouseMotionListener(pointer);
        sheet.listen(change -> repaint());
    }

    @Override
    public void updateUI() {
        Font font = UIManager.getFont("Label.font");
        setFont(font == null ? new Font(Font.SANS_SERIF, Font.PLAIN, 13) : font);
        setUI(null);
        text = new TabularText(getFont());
        repaint();
    }

    private double unit() {
        return getFont().getSize2D() / FONT_UNITS;
    }

    /** The end of the pitch looks like its start, so it is not quite reached. */
    private void turnTo(double x) {
        Rectangle2D field = field();
        sheet.turnTo(Math.max(0, Math.min(1 - 1e-9, (x - field.getX()) / field.getWidth())));
    }

    /** Where the curve stands, px. */
    Rectangle2D field() {
        return new Rectangle2D.Double(
                LEFT * unit(),
                TOP * unit(),
                Math.max(1, getWidth() - (LEFT + RIGHT) * unit()),
                Math.max(1, getHeight() - (TOP + FOOT) * unit()));
    }

    @Override
    public Dimension getPreferredSize() {
        return new Dimension((int) (300 * unit()), (int) (112 * unit()));
    }

    @Override
    public Dimension getMinimumSize() {
        return new Dimension((int) (160 * unit()), (int) (60 * unit()));
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Inks inks = Inks.current();
        Graphics2D pen = Pens.sharpened((Graphics2D) graphics);
        pen.setColor(inks.paper());
        pen.fillRect(0, 0, getWidth(), getHeight());
        sheet.state().traced().ifPresent(traced -> new Ink(pen, inks, traced, scaleEnd(traced)).paint());
        pen.dispose();
    }

    /** The lower end of the scale: a whole tenth below all of the curve. */
    static double scaleEnd(Traced traced) {
        double least = Math.min(
                traced.contact().worstTorque(),
                traced.phases().curve().stream()
                        .flatMap(stretch -> stretch.points().stream())
                        .mapToDouble(MeshPhases.Point::torqueShare)
                        .min()
                        .orElse(1));
        return Math.min(0.9, Math.floor((least - BELOW) * 10) / 10);
    }

    @Override
    public AccessibleContext getAccessibleContext() {
        if (accessibleContext == null) {
            accessibleContext = new CurveAccess();
            accessibleContext.setAccessibleName(Texts.of("mesh.curve.name"));
        }
        return accessibleContext;
    }

    /** The curve as a screen reader finds it: a picture described by its worst phase. */
    private final class CurveAccess extends AccessibleJComponent {
        private static final long serialVersionUID = 1;

        @Override
        public AccessibleRole getAccessibleRole() {
            return AccessibleRole.CANVAS;
        }

        @Override
        public String getAccessibleDescription() {
            return sheet.state()
                    .traced()
                    .map(traced -> Texts.of(
                            "mesh.worst",
                            MeshFigure.percent(traced.contact().worstTorque()).text()))
                    .orElse("");
        }
    }

    /** One painting. */
    private final class Ink {
        private final Graphics2D pen;
        private final Inks inks;
        private final Traced traced;
        private final double low;
        private final double high;
        private final Rectangle2D field = field();

        Ink(Graphics2D pen, Inks inks, Traced traced, double low) {
            this.pen = pen;
            this.inks = inks;
            this.traced = traced;
            this.low = low;
            // A rippling pair passes more than its nominal torque at some phases.
            this.high = Math.max(
                    1,
                    traced.phases().curve().stream()
                            .flatMap(stretch -> stretch.points().stream())
                            .mapToDouble(MeshPhases.Point::torqueShare)
                            .max()
                            .orElse(1));
        }

        private double x(double phase) {
            return field.getX() + phase * field.getWidth();
        }

        private double y(double share) {
            return field.getMaxY() - (share - low) / (high - low) * field.getHeight();
        }

        void paint() {
            traced.phases().curve().stream().filter(Stretch::approach).forEach(this::hatch);
            lines();
            sides();
            traced.phases().curve().forEach(stretch -> {
                line(stretch, MeshPhases.Point::least, Pens.narrow(unit()));
                line(stretch, MeshPhases.Point::torqueShare, Pens.solid(1.8 * unit()));
            });
            mean();
            worst();
            now();
        }

        private void hatch(Stretch stretch) {
            Shape before = pen.getClip();
            Rectangle2D box = new Rectangle2D.Double(
                    x(stretch.from()), field.getY(), x(stretch.to()) - x(stretch.from()), field.getHeight());
            pen.setColor(inks.wash());
            pen.fill(box);
            pen.clip(box);
            pen.setColor(inks.hairline());
            pen.setStroke(Pens.solid(0.6 * unit()));
            double step = HATCH * unit();
            Path2D lines = new Path2D.Double();
            for (double x = box.getX() - field.getHeight(); x < box.getMaxX(); x += step) {
                lines.moveTo(x, box.getMaxY());
                lines.lineTo(x + field.getHeight(), box.getY());
            }
            pen.draw(lines);
            pen.setClip(before);
        }

        private void lines() {
            double step = low < 0.55 ? 0.2 : 0.1;
            for (double share = 1; share >= low - 1e-9; share -= step) {
                pen.setColor(inks.hairline());
                pen.setStroke(Pens.solid((Math.abs(share) < 1e-9 ? 1.4 : 0.5) * unit()));
                pen.draw(new Line2D.Double(field.getX(), y(share), field.getMaxX(), y(share)));
                String words = Math.round(100 * share) + " %";
                pen.setColor(inks.lighter());
                text.draw(
                        pen,
                        words,
                        field.getX() - 5 * unit() - text.width(words, SIZE * unit()),
                        y(share) + 0.36 * SIZE * unit(),
                        SIZE * unit());
            }
        }

        /** Neighbouring stretches on one side of the pitch point share their words. */
        private void sides() {
            List<Stretch> curve = traced.phases().curve();
            double from = 0;
            for (int i = 0; i < curve.size(); i++) {
                boolean approach = curve.get(i).approach();
                if (i + 1 == curve.size() || curve.get(i + 1).approach() != approach) {
                    side(
                            Texts.of(approach ? "mesh.approach" : "mesh.recess"),
                            from,
                            curve.get(i).to());
                    from = curve.get(i).to();
                }
            }
        }

        /** Words above a part of the pitch that has room for them. */
        private void side(String words, double from, double to) {
            double width = text.width(words, SIZE * unit());
            if (x(to) - x(from) > width + 4 * unit()) {
                pen.setColor(inks.lighter());
                text.draw(pen, words, (x(from) + x(to) - width) / 2, field.getY() - 5 * unit(), SIZE * unit());
            }
        }

        private void line(Stretch stretch, ToDoubleFunction<MeshPhases.Point> figure, Stroke stroke) {
            Path2D path = new Path2D.Double();
            for (MeshPhases.Point point : stretch.points()) {
                double y = y(figure.applyAsDouble(point));
                if (path.getCurrentPoint() == null) {
                    path.moveTo(x(point.phase()), y);
                } else {
                    path.lineTo(x(point.phase()), y);
                }
            }
            pen.setColor(inks.line());
            pen.setStroke(stroke);
            pen.draw(path);
        }

        private void mean() {
            double y = y(traced.contact().mean());
            pen.setColor(inks.line());
            pen.setStroke(Pens.chain(unit()));
            pen.draw(new Line2D.Double(field.getX(), y, field.getMaxX(), y));
        }

        /** A triangle that stands on its point under the worst phase, with the figure beside it. */
        private void worst() {
            double share = traced.contact().worstTorque();
            double x = x(traced.phases().worstPhase());
            double y = y(share);
            double half = 4.5 * unit();
            Path2D mark = new Path2D.Double();
            mark.moveTo(x, y + 2 * unit());
            mark.lineTo(x + half, y + 2 * unit() + 1.6 * half);
            mark.lineTo(x - half, y + 2 * unit() + 1.6 * half);
            mark.closePath();
            boolean binds = share <= 0;
            pen.setColor(binds ? inks.role(Role.MISSED) : inks.line());
            pen.fill(mark);
            String words = Texts.of("mesh.worst", MeshFigure.percent(share).text());
            double width = text.width(words, SIZE * unit());
            boolean left = x + width + 14 * unit() > field.getMaxX();
            double from = left ? x - width - 8 * unit() : x + 8 * unit();
            double baseline = Math.min(field.getMaxY() - 2 * unit(), y + 11 * unit());
            pen.setColor(inks.paper());
            pen.fill(new Rectangle2D.Double(
                    from - 2 * unit(), baseline - SIZE * unit(), width + 4 * unit(), 1.25 * SIZE * unit()));
            pen.setColor(binds ? inks.role(Role.MISSED) : inks.line());
            text.draw(pen, words, from, baseline - 0.1 * SIZE * unit(), SIZE * unit());
        }

        private void now() {
            MeshPhases.Phase phase = traced.phases().at(sheet.turn());
            double x = x(sheet.turn());
            pen.setColor(inks.role(Role.CHOSEN));
            pen.setStroke(Pens.outline(unit()));
            pen.draw(new Line2D.Double(x, field.getY(), x, field.getMaxY()));
            Shape dot = GearFace.circle(x, y(phase.torqueShare()), 4 * unit());
            pen.setColor(phase.isApproach() ? inks.paper() : inks.role(Role.CHOSEN));
            pen.fill(dot);
            pen.setColor(inks.role(Role.CHOSEN));
            pen.setStroke(Pens.solid(2 * unit()));
            pen.draw(dot);
        }
    }
}
