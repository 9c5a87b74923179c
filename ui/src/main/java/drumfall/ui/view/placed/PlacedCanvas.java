// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.view.placed;

import drumfall.ui.presenter.PlacedSheet;
import drumfall.ui.presenter.PlacedState.Seen;
import drumfall.ui.presenter.PlacedWords;
import drumfall.ui.presenter.Texts;
import drumfall.ui.view.train.DrawingView;
import drumfall.ui.view.train.Inks;
import drumfall.ui.view.train.Pens;
import drumfall.ui.view.train.Role;
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
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import javax.accessibility.Accessible;
import javax.accessibility.AccessibleContext;
import javax.accessibility.AccessibleRole;
import javax.swing.AbstractAction;
import javax.swing.JComponent;
import javax.swing.KeyStroke;
import javax.swing.UIManager;

/**
 * What elevation and section share: looking closer, moving, pointing at arbors and selecting them.
 *
 * <p>The wheel and the keys plus and minus look closer or farther, 0 fits the drawing again, dragging the paper moves it; n and
 * p select the next arbor and the one before. With Ctrl, plus, minus and 0 are the window's own: they size its letters.
 */
abstract class PlacedCanvas extends JComponent implements Accessible {
    private static final double FONT_UNITS = 13;
    private static final double STEP = 1.2;
    private static final double MOVE = 40;
    private static final int WIDTH = 420;
    private static final int HEIGHT = 360;

    private final transient PlacedSheet sheet;
    private final String spoken;
    private transient DrawingView view = DrawingView.FITTED;
    private transient TabularText text;

    PlacedCanvas(PlacedSheet sheet, String name, String spoken) {
        this.sheet = sheet;
        this.spoken = spoken;
        setName(name);
        setFocusable(true);
        setOpaque(true);
        updateUI();
        Pointer pointer = new Pointer();
        addMouseListener(pointer);
        addMouseMotionListener(pointer);
        addMouseWheelListener(pointer);
        bindKeys();
        sheet.listen(change -> repaint());
    }

    PlacedSheet sheet() {
        return sheet;
    }

    TabularText text() {
        return text;
    }

    DrawingView view() {
        return view;
    }

    double unit() {
        return getFont().getSize2D() / FONT_UNITS;
    }

    /** The arbor under a point of the sheet. */
    abstract Optional<Integer> arborAt(Point2D point);

    abstract void paint(Graphics2D pen, Inks inks, Shown shown);

    /** An arbor is pulled to a point; true if it follows. */
    boolean pull(int arbor, Point2D to) {
        return false;
    }

    /** The pointer is at a point of the sheet, or has left it. */
    void pointed(Optional<Point2D> point) {
        sheet.point(point.flatMap(this::arborAt));
    }

    /** What a screen reader is told beside the arbors. */
    List<String> spoken() {
        return List.of();
    }

    /** What was pulled is let go. */
    void letGo() {}

    @Override
    public void updateUI() {
        Font font = UIManager.getFont("Label.font");
        setFont(font == null ? new Font(Font.SANS_SERIF, Font.PLAIN, 13) : font);
        setUI(null);
        text = new TabularText(getFont());
        revalidate();
        repaint();
    }

    private void bindKeys() {
        bind("typed +", () -> look(view.zoomed(STEP, new Point2D.Double())));
        bind("typed =", () -> look(view.zoomed(STEP, new Point2D.Double())));
        bind("typed -", () -> look(view.zoomed(1 / STEP, new Point2D.Double())));
        bind("typed 0", () -> look(DrawingView.FITTED));
        bind("LEFT", () -> arrow(-1, 0));
        bind("RIGHT", () -> arrow(1, 0));
        bind("UP", () -> arrow(0, 1));
        bind("DOWN", () -> arrow(0, -1));
        bind("typed n", () -> step(1));
        bind("typed p", () -> step(-1));
    }

    /** Selects the next arbor in the order of the train, or the one before. */
    private void step(int by) {
        sheet.seen().ifPresent(seen -> {
            int count = seen.layout().places().size();
            int from = sheet.selected().orElse(by > 0 ? -1 : 0);
            sheet.select(Optional.of(Math.floorMod(from + by, count)));
        });
    }

    /** An arrow key moves the drawing. */
    void arrow(int across, int up) {
        look(view.moved(-across * MOVE, up * MOVE));
    }

    void bind(String key, Runnable action) {
        bind(key, action, () -> true);
    }

    /** Binds a key that is left to the window while there is nothing here to do. */
    void bind(String key, Runnable action, BooleanSupplier possible) {
        getInputMap().put(KeyStroke.getKeyStroke(key), key);
        getActionMap().put(key, new AbstractAction() {
            @Override
            public boolean isEnabled() {
                return possible.getAsBoolean();
            }

            @Override
            public void actionPerformed(ActionEvent event) {
                action.run();
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
        Shown.of(sheet).ifPresent(shown -> paint(pen, inks, shown));
        if (isFocusOwner()) {
            pen.setColor(inks.role(Role.CHOSEN));
            pen.setStroke(Pens.solid(1.8 * unit()));
            pen.drawRect(1, 1, getWidth() - 3, getHeight() - 3);
        }
        pen.dispose();
    }

    @Override
    public AccessibleContext getAccessibleContext() {
        if (accessibleContext == null) {
            accessibleContext = new Spoken();
            accessibleContext.setAccessibleName(spoken);
        }
        return accessibleContext;
    }

    /** The drawing as a screen reader finds it: a picture with an arbor for each child, then what else there is to tell. */
    private final class Spoken extends AccessibleJComponent {
        private static final long serialVersionUID = 1;

        @Override
        public AccessibleRole getAccessibleRole() {
            return AccessibleRole.CANVAS;
        }

        @Override
        public int getAccessibleChildrenCount() {
            return arbors() + spoken().size();
        }

        private int arbors() {
            return sheet.seen().map(seen -> seen.layout().places().size()).orElse(0);
        }

        @Override
        public Accessible getAccessibleChild(int child) {
            Optional<Seen> seen = sheet.seen();
            if (child < 0 || child >= getAccessibleChildrenCount()) {
                return null;
            }
            if (child >= arbors()) {
                return new SpokenPart(PlacedCanvas.this, child, spoken().get(child - arbors()));
            }
            PlacedWords words = sheet.words().orElseThrow();
            String place = words.place(seen.orElseThrow().layout().place(child));
            return new SpokenArbor(PlacedCanvas.this, child, Texts.of("placed.named", words.arbor(child), place));
        }
    }

    /** Hover, selection, drag and wheel. */
    private final class Pointer extends MouseAdapter {
        private Point2D last = new Point2D.Double();
        private Optional<Integer> pressed = Optional.empty();
        private boolean pulled;

        @Override
        public void mousePressed(MouseEvent event) {
            requestFocusInWindow();
            last = event.getPoint();
            pressed = arborAt(last);
            pulled = false;
            sheet.select(pressed);
        }

        @Override
        public void mouseDragged(MouseEvent event) {
            if (pressed.isPresent() && pull(pressed.get(), event.getPoint())) {
                pulled = true;
                return;
            }
            if (pressed.isEmpty()) {
                look(view.moved(event.getX() - last.getX(), event.getY() - last.getY()));
                last = event.getPoint();
            }
        }

        @Override
        public void mouseReleased(MouseEvent event) {
            if (pulled) {
                pulled = false;
                PlacedCanvas.this.letGo();
            }
        }

        @Override
        public void mouseMoved(MouseEvent event) {
            pointed(Optional.of(event.getPoint()));
        }

        @Override
        public void mouseExited(MouseEvent event) {
            pointed(Optional.empty());
        }

        @Override
        public void mouseWheelMoved(MouseWheelEvent event) {
            Point2D point = new Point2D.Double(event.getX() - getWidth() / 2.0, event.getY() - getHeight() / 2.0);
            look(view.zoomed(Math.pow(STEP, -event.getPreciseWheelRotation()), point));
        }
    }
}
