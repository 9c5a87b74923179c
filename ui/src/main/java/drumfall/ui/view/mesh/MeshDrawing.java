// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.view.mesh;

import drumfall.ui.presenter.MeshSheet;
import drumfall.ui.presenter.MeshSheet.Change;
import drumfall.ui.presenter.MeshState.Traced;
import drumfall.ui.presenter.Texts;
import drumfall.ui.presenter.TracedMesh;
import drumfall.ui.view.train.Inks;
import drumfall.ui.view.train.Pens;
import drumfall.ui.view.train.TabularText;
import java.awt.Dimension;
import java.awt.Font;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.event.ActionEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.awt.event.MouseWheelEvent;
import java.awt.geom.Point2D;
import java.util.Optional;
import javax.accessibility.Accessible;
import javax.accessibility.AccessibleContext;
import javax.accessibility.AccessibleRole;
import javax.swing.AbstractAction;
import javax.swing.JComponent;
import javax.swing.KeyStroke;
import javax.swing.UIManager;

/**
 * Both gears near their contact, to scale.
 *
 * <p>Dragging either gear and the arrow keys turn them, Space sets them turning and stops them, the wheel and the keys plus
 * and minus look closer or farther, 0 shows the usual part.
 */
final class MeshDrawing extends JComponent implements Accessible {
    private static final double FONT_UNITS = 13;
    private static final double STEP = 1.2;
    private static final double LEAST_ZOOM = 0.5;
    private static final double MOST_ZOOM = 6;

    /** A key turns by so much of a pitch, with Shift by a tenth of that. */
    private static final double KEY_TURN = 0.05;

    private static final double FINE = 0.1;

    private final transient MeshSheet sheet;
    private transient TabularText text;
    private transient Optional<Faces> faces = Optional.empty();
    private transient double zoom = 1;

    /** Outlines of a traced mesh. */
    private record Faces(TracedMesh mesh, GearFace wheel, GearFace pinion) {
        static Faces of(TracedMesh mesh) {
            return new Faces(
                    mesh,
                    GearFace.of(mesh.teeth().pair().driver(), mesh.wheelTooth()),
                    GearFace.of(mesh.teeth().pair().follower(), mesh.leaf()));
        }
    }

    MeshDrawing(MeshSheet sheet) {
        this.sheet = sheet;
        setName("mesh.drawing");
        setFocusable(true);
        setOpaque(true);
        updateUI();
        Pointer pointer = new Pointer();
        addMouseListener(pointer);
        addMouseMotionListener(pointer);
        addMouseWheelListener(pointer);
        bindKeys();
        sheet.listen(this::changed);
    }

    private void changed(Change change) {
        if (change == Change.STATE) {
            getAccessibleContext()
                    .setAccessibleDescription(sheet.state()
                            .sentence()
                            .or(() -> sheet.mesh().map(mesh -> mesh.toString()))
                            .orElse(""));
        }
        repaint();
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

    double zoom() {
        return zoom;
    }

    Optional<MeshPlan> plan() {
        return sheet.state().traced().map(this::plan);
    }

    private MeshPlan plan(Traced traced) {
        var pair = traced.mesh().teeth().pair();
        double distance =
                pair.centreDistance() + traced.mesh().path().conditions().centreError();
        return new MeshPlan(
                        1,
                        new Point2D.Double(),
                        pair.driver().pitchRadius(),
                        pair.follower().pitchRadius(),
                        distance,
                        sheet.clockwise())
                .fitted(getSize(), zoom);
    }

    private void bindKeys() {
        bind("RIGHT", () -> sheet.turnBy(KEY_TURN));
        bind("LEFT", () -> sheet.turnBy(-KEY_TURN));
        bind("UP", () -> sheet.turnBy(KEY_TURN));
        bind("DOWN", () -> sheet.turnBy(-KEY_TURN));
        bind("shift RIGHT", () -> sheet.turnBy(FINE * KEY_TURN));
        bind("shift LEFT", () -> sheet.turnBy(-FINE * KEY_TURN));
        bind("HOME", () -> sheet.turnTo(0));
        bind("SPACE", () -> sheet.setTurning(!sheet.turning()));
        bind("typed +", () -> look(zoom * STEP));
        bind("typed =", () -> look(zoom * STEP));
        bind("typed -", () -> look(zoom / STEP));
        bind("typed 0", () -> look(1));
    }

    private void bind(String key, Runnable action) {
        getInputMap().put(KeyStroke.getKeyStroke(key), key);
        getActionMap().put(key, new AbstractAction() {
            @Override
            public void actionPerformed(ActionEvent event) {
                action.run();
            }
        });
    }

    private void look(double wanted) {
        zoom = Math.max(LEAST_ZOOM, Math.min(MOST_ZOOM, wanted));
        repaint();
    }

    @Override
    public Dimension getPreferredSize() {
        return new Dimension((int) (300 * unit()), (int) (240 * unit()));
    }

    @Override
    public Dimension getMinimumSize() {
        return new Dimension((int) (120 * unit()), (int) (80 * unit()));
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Inks inks = Inks.current();
        Graphics2D pen = Pens.sharpened((Graphics2D) graphics);
        pen.setColor(inks.paper());
        pen.fillRect(0, 0, getWidth(), getHeight());
        sheet.state().traced().ifPresent(traced -> paint(pen, inks, traced));
        if (isFocusOwner()) {
            pen.setColor(inks.role(drumfall.ui.view.train.Role.CHOSEN));
            pen.setStroke(Pens.solid(1.8 * unit()));
            pen.drawRect(1, 1, getWidth() - 3, getHeight() - 3);
        }
        pen.dispose();
    }

    private void paint(Graphics2D pen, Inks inks, Traced traced) {
        Faces shown = faces.filter(
                        known -> known.mesh().path().equals(traced.mesh().path()))
                .orElseGet(() -> Faces.of(traced.mesh()));
        faces = Optional.of(shown);
        new MeshPainter(pen, inks, plan(traced), getSize(), text, unit())
                .paint(traced, shown.wheel(), shown.pinion(), traced.phases().at(sheet.turn()));
    }

    @Override
    public AccessibleContext getAccessibleContext() {
        if (accessibleContext == null) {
            accessibleContext = new DrawingAccess();
            accessibleContext.setAccessibleName(Texts.of("mesh.drawing.name"));
        }
        return accessibleContext;
    }

    /** The gears as a screen reader finds them: a picture. */
    private final class DrawingAccess extends AccessibleJComponent {
        private static final long serialVersionUID = 1;

        @Override
        public AccessibleRole getAccessibleRole() {
            return AccessibleRole.CANVAS;
        }
    }

    /** Drag and wheel. */
    private final class Pointer extends MouseAdapter {
        private Point2D last = new Point2D.Double();

        @Override
        public void mousePressed(MouseEvent event) {
            requestFocusInWindow();
            sheet.setTurning(false);
            last = event.getPoint();
        }

        @Override
        public void mouseDragged(MouseEvent event) {
            plan().ifPresent(found ->
                    sheet.turnBy(found.dragged(last, event.getPoint()) * found.wheelRadius() / Math.PI));
            last = event.getPoint();
        }

        @Override
        public void mouseWheelMoved(MouseWheelEvent event) {
            look(zoom * Math.pow(STEP, -event.getPreciseWheelRotation()));
        }
    }
}
