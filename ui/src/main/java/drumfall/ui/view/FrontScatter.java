// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.view;

import drumfall.solver.quantity.Dimension;
import drumfall.solver.quantity.UnitSystem;
import drumfall.solver.rating.Rating;
import drumfall.solver.train.Train;
import drumfall.ui.presenter.FrontColumn;
import drumfall.ui.presenter.ShownFigure;
import drumfall.ui.presenter.Texts;
import drumfall.ui.presenter.Workspace;
import drumfall.ui.view.look.Digits;
import drumfall.ui.view.look.Ink;
import drumfall.ui.view.look.Look;
import drumfall.ui.view.look.Parts;
import drumfall.ui.view.train.Role;
import java.awt.BasicStroke;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.Point;
import java.awt.event.ActionEvent;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javax.accessibility.AccessibleContext;
import javax.accessibility.AccessibleRole;
import javax.swing.AbstractAction;
import javax.swing.JComponent;
import javax.swing.KeyStroke;
import javax.swing.ToolTipManager;

/** The front as dots over two figures; a click or the arrow keys choose a train. */
final class FrontScatter extends JComponent {
    private static final int REACH = 14;

    private final transient Workspace workspace;
    private final transient FrontRows rows;
    private FrontColumn across;
    private FrontColumn up;

    FrontScatter(Workspace workspace, FrontRows rows, FrontColumn across, FrontColumn up) {
        this.workspace = workspace;
        this.rows = rows;
        this.across = across;
        this.up = up;
        setName("front.scatter");
        setFocusable(true);
        Parts.named(this, Texts.of("front.chart.name"));
        ToolTipManager.sharedInstance().registerComponent(this);
        setPreferredSize(new java.awt.Dimension(Look.scaled(500), Look.scaled(230)));
        setMinimumSize(new java.awt.Dimension(Look.scaled(200), Look.scaled(110)));
        listenToPointer();
        bind("RIGHT", 1);
        bind("LEFT", -1);
        addFocusListener(new FocusAdapter() {
            @Override
            public void focusGained(FocusEvent event) {
                repaint();
            }

            @Override
            public void focusLost(FocusEvent event) {
                repaint();
            }
        });
    }

    private void listenToPointer() {
        MouseAdapter pointer = new MouseAdapter() {
            @Override
            public void mousePressed(MouseEvent event) {
                requestFocusInWindow();
                at(event.getPoint()).map(Rating::train).ifPresent(workspace::choose);
            }

            @Override
            public void mouseMoved(MouseEvent event) {
                workspace.pointAt(at(event.getPoint()).map(Rating::train));
            }

            @Override
            public void mouseExited(MouseEvent event) {
                workspace.pointAt(Optional.empty());
            }
        };
        addMouseListener(pointer);
        addMouseMotionListener(pointer);
    }

    private void bind(String key, int step) {
        getInputMap().put(KeyStroke.getKeyStroke(key), key);
        getActionMap().put(key, new AbstractAction() {
            @Override
            public void actionPerformed(ActionEvent event) {
                chooseNeighbour(step);
            }
        });
    }

    private void chooseNeighbour(int step) {
        List<Rating> ordered = rows.ratings().stream()
                .sorted(Comparator.comparingDouble(rating -> rows.value(rating, across)))
                .toList();
        if (ordered.isEmpty()) {
            return;
        }
        Optional<Train> chosen = workspace.chosen().map(Rating::train);
        int index = ordered.stream().map(Rating::train).toList().indexOf(chosen.orElse(null));
        int next = Math.max(0, Math.min(ordered.size() - 1, index + step));
        workspace.choose(ordered.get(next).train());
    }

    FrontColumn across() {
        return across;
    }

    FrontColumn up() {
        return up;
    }

    void axes(FrontColumn right, FrontColumn upwards) {
        across = right;
        up = upwards;
        repaint();
    }

    @Override
    public AccessibleContext getAccessibleContext() {
        if (accessibleContext == null) {
            accessibleContext = new AccessibleJComponent() {
                @Override
                public AccessibleRole getAccessibleRole() {
                    return AccessibleRole.CANVAS;
                }

                @Override
                public String getAccessibleDescription() {
                    return Texts.of("front.chart.description", rows.getRowCount(), across.title(), up.title());
                }
            };
        }
        return accessibleContext;
    }

    @Override
    public String getToolTipText(MouseEvent event) {
        return at(event.getPoint())
                .map(rating -> Texts.of("front.dot", rating.train(), shown(rating, across), shown(rating, up)))
                .orElse(null);
    }

    private String shown(Rating rating, FrontColumn column) {
        return column.shown(rows.value(rating, column), workspace.units()).text();
    }

    private Optional<Rating> at(Point point) {
        return known().filter(rating -> dot(rating).distance(point) <= Look.scaled(REACH))
                .min(Comparator.comparingDouble(rating -> dot(rating).distance(point)));
    }

    /** The trains whose figures on both axes are known. */
    private Stream<Rating> known() {
        return rows.ratings().stream().filter(this::isKnown);
    }

    private boolean isKnown(Rating rating) {
        return Double.isFinite(rows.value(rating, across)) && Double.isFinite(rows.value(rating, up));
    }

    /** Where a train's dot stands. */
    Point2D dot(Rating rating) {
        return new Point2D.Double(
                horizontal().pixel(rows.value(rating, across)), vertical().pixel(rows.value(rating, up)));
    }

    private AxisScale horizontal() {
        return AxisScale.of(values(across), Look.scaled(58), getWidth() - Look.scaled(16));
    }

    private AxisScale vertical() {
        return AxisScale.of(values(up), getHeight() - Look.scaled(38), Look.scaled(12));
    }

    private List<Double> values(FrontColumn column) {
        return rows.ratings().stream()
                .map(rating -> rows.value(rating, column))
                .filter(Double::isFinite)
                .toList();
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Graphics2D pen = (Graphics2D) graphics.create();
        Digits.smooth(pen);
        pen.setColor(Ink.paper());
        pen.fillRect(0, 0, getWidth(), getHeight());
        if (!rows.ratings().isEmpty()) {
            paintAxes(pen);
            paintDots(pen);
        }
        if (isFocusOwner()) {
            pen.setColor(Ink.of(Role.CHOSEN));
            pen.drawRect(0, 0, getWidth() - 1, getHeight() - 1);
        }
        pen.dispose();
    }

    private void paintAxes(Graphics2D pen) {
        Font font = getFont().deriveFont(getFont().getSize2D() * 0.88f);
        pen.setFont(font);
        FontMetrics metrics = pen.getFontMetrics();
        AxisScale horizontal = horizontal();
        AxisScale vertical = vertical();
        double bottom = vertical.from();
        double left = horizontal.from();
        pen.setStroke(new BasicStroke(1));
        for (double mark : horizontal.marks(getWidth() / Look.scaled(90), unit(across, horizontal))) {
            int x = (int) Math.round(horizontal.pixel(mark));
            pen.setColor(Ink.rule());
            pen.draw(new Line2D.Double(x, vertical.to(), x, bottom));
            pen.setColor(Ink.faint());
            String text = number(across, mark);
            Digits.write(pen, font, text, x - Digits.width(metrics, text) / 2, (int) bottom + Look.scaled(14));
        }
        for (double mark : vertical.marks(getHeight() / Look.scaled(40), unit(up, vertical))) {
            int y = (int) Math.round(vertical.pixel(mark));
            pen.setColor(Ink.rule());
            pen.draw(new Line2D.Double(left, y, horizontal.to(), y));
            pen.setColor(Ink.faint());
            String text = number(up, mark);
            Digits.write(
                    pen,
                    font,
                    text,
                    (int) left - Look.scaled(6) - Digits.width(metrics, text),
                    y + metrics.getAscent() / 2 - 1);
        }
        paintTitles(pen, metrics, horizontal, bottom);
    }

    private void paintTitles(Graphics2D pen, FontMetrics metrics, AxisScale horizontal, double bottom) {
        pen.setColor(Ink.text());
        String right = across.title() + " →";
        pen.drawString(right, (float) horizontal.to() - metrics.stringWidth(right), (float) bottom + Look.scaled(30));
        pen.drawString("↑ " + up.title(), (float) Look.scaled(8), (float) bottom + Look.scaled(30));
    }

    /** The length of one shown unit in SI, so that marks are round in what is read. */
    private double unit(FrontColumn column, AxisScale scale) {
        double most = Math.max(Math.abs(scale.low()), Math.abs(scale.high()));
        boolean metric = workspace.units() == UnitSystem.METRIC;
        if (column.dimension() == Dimension.TIME) {
            return most >= 2 * 86400 ? 86400 : 3600;
        }
        return switch (column.dimension()) {
            case MASS -> metric ? (most >= 1 ? 1 : 0.001) : (most >= 0.45359237 ? 0.45359237 : 0.028349523125);
            case LENGTH -> metric ? 0.001 : 0.0254;
            case AREA -> metric ? 1e-4 : 0.0254 * 0.0254;
            default -> 1;
        };
    }

    private String number(FrontColumn column, double mark) {
        return ShownFigure.of(column.dimension(), mark, workspace.units()).text();
    }

    private void paintDots(Graphics2D pen) {
        Optional<Train> chosen = workspace.chosen().map(Rating::train);
        Optional<Train> pointed = workspace.pointedTrain();
        for (Rating rating : known().toList()) {
            if (!chosen.equals(Optional.of(rating.train()))) {
                paintDot(pen, rating, pointed.equals(Optional.of(rating.train())));
            }
        }
        known().filter(rating -> chosen.equals(Optional.of(rating.train())))
                .forEach(rating -> paintChosen(pen, rating));
        workspace
                .chosen()
                .filter(this::isKnown)
                .filter(rating ->
                        rows.ratings().stream().noneMatch(shown -> shown.train().equals(rating.train())))
                .ifPresent(rating -> paintOutside(pen, rating));
        workspace.trial().filter(this::isKnown).ifPresent(rating -> paintTrial(pen, rating));
    }

    /** A chosen train that is not on the front shown: its ring alone, drawn only while it lies on the sheet. */
    private void paintOutside(Graphics2D pen, Rating rating) {
        pen.setColor(Ink.of(Role.CHOSEN));
        pen.setStroke(new BasicStroke(Look.scaled(3) / 2f));
        Graphics2D inside = (Graphics2D) pen.create();
        inside.clipRect(
                (int) horizontal().from(), 0, getWidth(), (int) vertical().from());
        inside.draw(circle(dot(rating), Look.scaled(9)));
        inside.dispose();
    }

    private void paintDot(Graphics2D pen, Rating rating, boolean pointed) {
        pen.setColor(workspace.frontIsEarlier() ? Ink.faint() : Ink.text());
        double radius = Look.scaled(pointed ? 6 : 4);
        Ellipse2D dot = circle(dot(rating), radius);
        if (pointed) {
            pen.fill(dot);
        } else {
            pen.setStroke(new BasicStroke(Look.scaled(3) / 2f));
            pen.draw(dot);
        }
    }

    /** The chosen train: filled, and ringed so that it stands out without its colour. */
    private void paintChosen(Graphics2D pen, Rating rating) {
        pen.setColor(Ink.of(Role.CHOSEN));
        pen.fill(circle(dot(rating), Look.scaled(5)));
        pen.setStroke(new BasicStroke(Look.scaled(3) / 2f));
        pen.draw(circle(dot(rating), Look.scaled(9)));
    }

    /** The tried train: a cross, drawn only while it lies on the sheet. */
    private void paintTrial(Graphics2D pen, Rating rating) {
        Point2D at = dot(rating);
        double arm = Look.scaled(6);
        pen.setColor(Ink.of(Role.COMPARED));
        pen.setStroke(new BasicStroke(Look.scaled(2)));
        pen.clipRect((int) horizontal().from(), 0, getWidth(), (int) vertical().from());
        pen.draw(new Line2D.Double(at.getX() - arm, at.getY(), at.getX() + arm, at.getY()));
        pen.draw(new Line2D.Double(at.getX(), at.getY() - arm, at.getX(), at.getY() + arm));
    }

    private static Ellipse2D circle(Point2D centre, double radius) {
        return new Ellipse2D.Double(centre.getX() - radius, centre.getY() - radius, 2 * radius, 2 * radius);
    }
}
