// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.view.power;

import drumfall.solver.power.answers.ArcCurve;
import drumfall.solver.quantity.Dimension;
import drumfall.ui.presenter.MeshSetting.Travel;
import drumfall.ui.presenter.PowerPicture;
import drumfall.ui.presenter.PowerSetting.Dial;
import drumfall.ui.presenter.PowerSheet;
import drumfall.ui.presenter.ShownFigure;
import drumfall.ui.presenter.Texts;
import drumfall.ui.view.train.Inks;
import drumfall.ui.view.train.Pens;
import drumfall.ui.view.train.Role;
import drumfall.ui.view.train.TabularText;
import java.awt.BasicStroke;
import java.awt.Font;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Function;
import javax.accessibility.Accessible;
import javax.accessibility.AccessibleContext;
import javax.accessibility.AccessibleRole;
import javax.swing.JComponent;
import javax.swing.UIManager;

/**
 * The arc against the weight: on the mean as a heavy line, at the worst felt as a thin one; least, recommended and chosen
 * weight stand in it.
 *
 * <p>Pressing or dragging hangs the weight under the pointer.
 */
final class ArcChart extends JComponent implements Accessible {
    private static final double FONT_UNITS = 13;
    private static final double SIZE = 11;
    private static final double LEFT = 42;
    private static final double RIGHT = 10;
    private static final double TOP = 30;
    private static final double FOOT = 18;

    private final transient PowerSheet sheet;
    private transient TabularText text;

    ArcChart(PowerSheet sheet) {
        this.sheet = sheet;
        setName("power.curve");
        setOpaque(true);
        setToolTipText(Texts.of("power.curve.tip"));
        updateUI();
        MouseAdapter pointer = new MouseAdapter() {
            @Override
            public void mousePressed(MouseEvent event) {
                hang(event.getX());
            }

            @Override
            public void mouseDragged(MouseEvent event) {
                hang(event.getX());
            }
        };
        addMouseListener(pointer);
        addMouseMotionListener(pointer);
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

    private void hang(double x) {
        Rectangle2D field = field();
        sheet.travel(Dial.WEIGHT)
                .ifPresent(travel -> sheet.set(Dial.WEIGHT, (x - field.getX()) / field.getWidth() * travel.most()));
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
    protected void paintComponent(Graphics graphics) {
        Inks inks = Inks.current();
        Graphics2D pen = Pens.sharpened((Graphics2D) graphics);
        pen.setColor(inks.paper());
        pen.fillRect(0, 0, getWidth(), getHeight());
        sheet.state()
                .picture()
                .ifPresent(picture -> sheet.travel(Dial.WEIGHT)
                        .ifPresent(travel -> new Painting(pen, inks, picture, travel).paint()));
        pen.dispose();
    }

    @Override
    public AccessibleContext getAccessibleContext() {
        if (accessibleContext == null) {
            accessibleContext = new ChartAccess();
            accessibleContext.setAccessibleName(Texts.of("power.curve.name"));
        }
        return accessibleContext;
    }

    private ShownFigure mass(double kilograms) {
        return ShownFigure.of(Dimension.MASS, kilograms, sheet.units(), ShownFigure.Rounding.UP);
    }

    /** The curve as a screen reader finds it: a picture described by what the weight does. */
    private final class ChartAccess extends AccessibleJComponent {
        private static final long serialVersionUID = 1;

        @Override
        public AccessibleRole getAccessibleRole() {
            return AccessibleRole.CANVAS;
        }

        @Override
        public String getAccessibleDescription() {
            return sheet.state()
                    .picture()
                    .flatMap(picture -> picture.books()
                            .map(books -> Texts.of(
                                    "power.now",
                                    mass(books.weight()).text(),
                                    ShownFigure.of(Dimension.ANGLE, books.semiArc(), sheet.units())
                                            .text())))
                    .orElseGet(() -> sheet.state().sentence().orElse(""));
        }
    }

    /** One painting. */
    private final class Painting {
        private final Graphics2D pen;
        private final Inks inks;
        private final PowerPicture picture;
        private final double heaviest;
        private final double step;
        private final double low;
        private final double high;
        private final Rectangle2D field = field();

        Painting(Graphics2D pen, Inks inks, PowerPicture picture, Travel travel) {
            this.pen = pen;
            this.inks = inks;
            this.picture = picture;
            this.heaviest = travel.most();
            double least = Math.toDegrees(picture.escapeAngle());
            double most = picture.curve().stream()
                    .flatMapToDouble(point -> point.meanArc().stream())
                    .map(Math::toDegrees)
                    .max()
                    .orElse(least + 1);
            this.step = ChartScale.step(most - least, 4);
            this.low = Math.floor(least / step) * step;
            this.high = Math.max(low + step, Math.ceil(most / step) * step);
        }

        private double x(double weight) {
            return field.getX() + weight / heaviest * field.getWidth();
        }

        private double y(double arc) {
            return field.getMaxY() - (Math.toDegrees(arc) - low) / (high - low) * field.getHeight();
        }

        void paint() {
            arcs();
            weights();
            line(ArcCurve.Point::worstArc, Pens.narrow(unit()));
            line(ArcCurve.Point::meanArc, Pens.solid(1.8 * unit()));
            mark("power.least", picture.least(), Pens.chain(unit()), 5 + 1.2 * SIZE);
            mark("power.recommended", picture.recommended(), Pens.narrow(unit()), 5);
            chosen();
            ends();
        }

        private void arcs() {
            for (double arc = low; arc <= high + step / 1000; arc += step) {
                double y = y(Math.toRadians(arc));
                pen.setColor(inks.hairline());
                pen.setStroke(Pens.solid(0.5 * unit()));
                pen.draw(new Line2D.Double(field.getX(), y, field.getMaxX(), y));
                String words = ChartScale.words(arc, step) + "°";
                words(words, field.getX() - 5 * unit() - text.width(words, SIZE * unit()), y + 0.36 * SIZE * unit());
            }
        }

        private void weights() {
            boolean metric = sheet.units() == drumfall.solver.quantity.UnitSystem.METRIC;
            double kilograms = metric ? 1 : 0.45359237;
            double every = ChartScale.step(heaviest / kilograms, 6);
            double foot = field.getMaxY() + (3 + SIZE) * unit();
            for (double mark = 0; mark * kilograms <= heaviest; mark += every) {
                double x = x(mark * kilograms);
                pen.setColor(inks.hairline());
                pen.draw(new Line2D.Double(x, field.getMaxY(), x, field.getMaxY() + 3 * unit()));
                String words = ChartScale.words(mark, every) + (mark == 0 ? metric ? " kg" : " lb" : "");
                words(words, x - text.width(words, SIZE * unit()) / 2, foot);
            }
        }

        private void words(String words, double x, double baseline) {
            pen.setColor(inks.lighter());
            text.draw(pen, words, x, baseline, SIZE * unit());
        }

        private void line(Function<ArcCurve.Point, OptionalDouble> arc, BasicStroke stroke) {
            Path2D path = new Path2D.Double();
            for (ArcCurve.Point point : picture.curve()) {
                arc.apply(point).ifPresent(known -> {
                    if (path.getCurrentPoint() == null) {
                        path.moveTo(x(point.weight()), y(known));
                    } else {
                        path.lineTo(x(point.weight()), y(known));
                    }
                });
            }
            pen.setColor(inks.line());
            pen.setStroke(stroke);
            pen.draw(path);
        }

        /** Both lines are named where they end. */
        private void ends() {
            List<ArcCurve.Point> curve = picture.curve();
            if (!curve.isEmpty()) {
                ArcCurve.Point last = curve.get(curve.size() - 1);
                double gap = y(last.worstArc().orElse(0)) - y(last.meanArc().orElse(0));
                double below = Math.max(gap, 0) + (4 + SIZE) * unit();
                end("power.mean", last.meanArc(), -5 * unit());
                end("power.worst", last.meanArc(), below);
            }
        }

        private void end(String key, OptionalDouble arc, double down) {
            arc.ifPresent(known -> {
                String words = Texts.of(key);
                double y = Math.min(field.getMaxY() - 3 * unit(), y(known) + down);
                double width = text.width(words, SIZE * unit());
                double x = field.getMaxX() - width - 2 * unit();
                pen.setColor(inks.paper());
                pen.fill(new Rectangle2D.Double(
                        x - 2 * unit(), y - 0.85 * SIZE * unit(), width + 4 * unit(), 1.1 * SIZE * unit()));
                words(words, x, y);
            });
        }

        /** An upright at a weight with its figure above the field. */
        private void mark(String key, double weight, BasicStroke stroke, double down) {
            if (!(weight <= heaviest)) {
                return;
            }
            double x = x(weight);
            pen.setColor(inks.line());
            pen.setStroke(stroke);
            double top = (down + 0.2 * SIZE) * unit();
            pen.draw(new Line2D.Double(x, top, x, field.getMaxY()));
            String words = Texts.of(key, mass(weight).text());
            double width = text.width(words, SIZE * unit());
            boolean left = x - width - 5 * unit() > 0;
            double from = left ? x - width - 4 * unit() : x + 4 * unit();
            words(words, from, (down + 0.75 * SIZE) * unit());
        }

        private void chosen() {
            double x = x(picture.setting().weight());
            pen.setColor(inks.role(Role.CHOSEN));
            pen.setStroke(Pens.outline(unit()));
            pen.draw(new Line2D.Double(x, field.getY(), x, field.getMaxY()));
            picture.books().ifPresent(books -> {
                double r = 4 * unit();
                pen.fill(new Ellipse2D.Double(x - r, y(books.semiArc()) - r, 2 * r, 2 * r));
            });
            if (picture.books().isEmpty()) {
                pen.setColor(inks.role(Role.MISSED));
                double r = 4 * unit();
                double y = field.getMaxY() - r;
                pen.draw(new Line2D.Double(x - r, y - r, x + r, y + r));
                pen.draw(new Line2D.Double(x - r, y + r, x + r, y - r));
            }
        }
    }
}
