// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.view.train;

import drumfall.solver.brief.Brief;
import drumfall.solver.quantity.UnitSystem;
import drumfall.solver.rating.Rating;
import drumfall.ui.presenter.Highlight;
import java.awt.Dimension;
import java.awt.Font;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.event.ActionEvent;
import java.awt.event.KeyEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.awt.event.MouseWheelEvent;
import java.awt.geom.Point2D;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.IntConsumer;
import java.util.function.UnaryOperator;
import javax.accessibility.Accessible;
import javax.accessibility.AccessibleContext;
import javax.accessibility.AccessibleRole;
import javax.swing.AbstractAction;
import javax.swing.JComponent;
import javax.swing.KeyStroke;
import javax.swing.UIManager;

/**
 * The chosen train to scale: pitch circles in a meshing row until its arbors have places.
 *
 * <p>The wheel and the keys plus and minus look closer or farther, 0 fits the drawing again, dragging and the arrow keys move
 * it.
 */
public final class TrainDrawing extends JComponent implements Accessible {
    private static final double FONT_UNITS = 13;
    private static final double STEP = 1.2;
    private static final double MOVE = 40;
    private static final int WIDTH = 640;
    private static final int HEIGHT = 420;

    private final transient Consumer<Optional<Integer>> hoverArbor;
    private transient IntConsumer lookInto = mesh -> {};
    private transient Runnable enlarge = () -> {};
    private transient Optional<Shown> shown = Optional.empty();
    private transient DrawingView view = DrawingView.FITTED;
    private transient TabularText text;

    /**
     * What is drawn.
     *
     * @param rating the chosen train
     * @param brief its brief
     * @param highlight what is pointed at
     * @param units which units
     */
    private record Shown(Rating rating, Brief brief, Highlight highlight, UnitSystem units) {}

    /**
     * A drawing.
     *
     * @param hoverArbor told which arbor the pointer is on, 0 for the drum arbor
     */
    public TrainDrawing(Consumer<Optional<Integer>> hoverArbor) {
        this.hoverArbor = hoverArbor;
        setFocusable(true);
        setOpaque(true);
        updateUI();
        Pointer pointer = new Pointer();
        addMouseListener(pointer);
        addMouseMotionListener(pointer);
        addMouseWheelListener(pointer);
        bindKeys();
    }

    /**
     * Asks to be told which mesh the maker wants to look into: a click on its ring takes it, a double click opens it.
     *
     * @param chosen gets the number of the mesh, 0 for the one at the drum
     * @param opened shows the mesh taken
     */
    public void onMesh(IntConsumer chosen, Runnable opened) {
        lookInto = chosen;
        enlarge = opened;
    }

    /**
     * Shows a train.
     *
     * @param rating the chosen train; empty if none is chosen
     * @param brief its brief
     * @param highlight what is pointed at
     * @param units which units
     */
    public void show(Optional<Rating> rating, Brief brief, Highlight highlight, UnitSystem units) {
        shown = rating.map(chosen -> new Shown(chosen, brief, highlight, units));
        getAccessibleContext()
                .setAccessibleDescription(
                        rating.map(chosen -> chosen.train().toString()).orElseGet(() -> TrainText.of("drawing.empty")));
        repaint();
    }

    @Override
    public void updateUI() {
        Font font = UIManager.getFont("Label.font");
        setFont(font == null ? new Font(Font.SANS_SERIF, Font.PLAIN, 13) : font);
        setUI(null);
        text = new TabularText(getFont());
        revalidate();
        repaint();
    }

    private double unit() {
        return getFont().getSize2D() / FONT_UNITS;
    }

    DrawingView view() {
        return view;
    }

    Optional<DrawingPlan> plan() {
        return shown.map(found -> new DrawingPlanner(
                        found.rating().train(),
                        found.brief(),
                        view,
                        new Figures(found.units()),
                        getSize(),
                        unit(),
                        text)
                .plan(found.highlight().arbor(), found.highlight().mesh()));
    }

    private void bindKeys() {
        bind(KeyStroke.getKeyStroke('+'), now -> now.zoomed(STEP, middle()));
        bind(KeyStroke.getKeyStroke('='), now -> now.zoomed(STEP, middle()));
        bind(KeyStroke.getKeyStroke('-'), now -> now.zoomed(1 / STEP, middle()));
        bind(KeyStroke.getKeyStroke('0'), now -> DrawingView.FITTED);
        bind(KeyStroke.getKeyStroke(KeyEvent.VK_LEFT, 0), now -> now.moved(MOVE, 0));
        bind(KeyStroke.getKeyStroke(KeyEvent.VK_RIGHT, 0), now -> now.moved(-MOVE, 0));
        bind(KeyStroke.getKeyStroke(KeyEvent.VK_UP, 0), now -> now.moved(0, MOVE));
        bind(KeyStroke.getKeyStroke(KeyEvent.VK_DOWN, 0), now -> now.moved(0, -MOVE));
    }

    private static Point2D middle() {
        return new Point2D.Double();
    }

    private void bind(KeyStroke key, UnaryOperator<DrawingView> change) {
        getInputMap().put(key, key.toString());
        getActionMap().put(key.toString(), new AbstractAction() {
            @Override
            public void actionPerformed(ActionEvent event) {
                look(change.apply(view));
            }
        });
    }

    private void look(DrawingView changed) {
        view = changed;
        repaint();
    }

    @Override
    public Dimension getPreferredSize() {
        return isPreferredSizeSet()
                ? super.getPreferredSize()
                : new Dimension((int) (WIDTH * unit()), (int) (HEIGHT * unit()));
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Inks inks = Inks.current();
        Graphics2D pen = Pens.sharpened((Graphics2D) graphics);
        pen.setColor(inks.paper());
        pen.fillRect(0, 0, getWidth(), getHeight());
        plan().ifPresentOrElse(
                        found -> new DrawingPainter(pen, inks, found, text, unit()).paint(),
                        () -> EmptySheet.paint(pen, inks, text, getSize(), TrainText.of("drawing.empty"), unit()));
        pen.dispose();
    }

    @Override
    public AccessibleContext getAccessibleContext() {
        if (accessibleContext == null) {
            accessibleContext = new DrawingAccess();
            accessibleContext.setAccessibleName(TrainText.of("drawing.name"));
        }
        return accessibleContext;
    }

    /** The drawing as a screen reader finds it: a picture described by the train in one line. */
    private final class DrawingAccess extends AccessibleJComponent {
        private static final long serialVersionUID = 1;

        @Override
        public AccessibleRole getAccessibleRole() {
            return AccessibleRole.CANVAS;
        }
    }

    /** Hover, drag and wheel. */
    private final class Pointer extends MouseAdapter {
        private Optional<Integer> hovered = Optional.empty();
        private Point2D last = new Point2D.Double();

        @Override
        public void mousePressed(MouseEvent event) {
            requestFocusInWindow();
            last = event.getPoint();
        }

        @Override
        public void mouseClicked(MouseEvent event) {
            plan().flatMap(found -> found.meshAt(event.getX(), event.getY(), DrawingPainter.DETAIL * unit()))
                    .ifPresent(mesh -> {
                        lookInto.accept(mesh);
                        if (event.getClickCount() > 1) {
                            enlarge.run();
                        }
                    });
        }

        @Override
        public void mouseDragged(MouseEvent event) {
            look(view.moved(event.getX() - last.getX(), event.getY() - last.getY()));
            last = event.getPoint();
        }

        @Override
        public void mouseMoved(MouseEvent event) {
            hover(plan().flatMap(found -> found.arborAt(event.getX(), event.getY())));
        }

        @Override
        public void mouseExited(MouseEvent event) {
            hover(Optional.empty());
        }

        private void hover(Optional<Integer> arbor) {
            if (!arbor.equals(hovered)) {
                hovered = arbor;
                hoverArbor.accept(arbor);
            }
        }

        @Override
        public void mouseWheelMoved(MouseWheelEvent event) {
            Point2D middle = DrawingPlanner.middle(getSize(), unit());
            Point2D point = new Point2D.Double(event.getX() - middle.getX(), event.getY() - middle.getY());
            look(view.zoomed(Math.pow(STEP, -event.getPreciseWheelRotation()), point));
        }
    }
}
