// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.view.train;

import drumfall.ui.presenter.StripFigure;
import drumfall.ui.presenter.TrainStripActions;
import drumfall.ui.presenter.TrainStripContent;
import java.awt.Dimension;
import java.awt.Font;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.event.MouseEvent;
import java.awt.geom.Rectangle2D;
import java.util.Optional;
import java.util.function.BiConsumer;
import javax.accessibility.Accessible;
import javax.accessibility.AccessibleContext;
import javax.swing.JComponent;
import javax.swing.ToolTipManager;
import javax.swing.UIManager;

/**
 * The train strip: the whole way of the power as one line drawing, its counts held and tried in place.
 *
 * <p>Click or Space holds a figure, typing tries another value, Enter takes what is tried, Esc drops it, the arrow keys walk
 * from figure to figure, F1 asks where a figure comes from.
 */
public final class TrainStrip extends JComponent implements Accessible {
    private static final double FONT_UNITS = 13;
    private static final int WIDTH = 1440;
    private static final int HEIGHT = 262;
    private static final int LEAST_WIDTH = 900;
    private static final int LEAST_HEIGHT = 216;

    private final transient TrainStripActions actions;
    private final transient StripFocus focus = new StripFocus();
    private final transient StripEditor editor;
    private transient Optional<TrainStripContent> content = Optional.empty();
    private transient Optional<StripPlan> plan = Optional.empty();
    private transient Dimension planned = new Dimension();
    private transient TabularText text;
    private transient BiConsumer<StripSpot, Rectangle> whereFrom = (spot, place) -> {};

    /**
     * A strip.
     *
     * @param actions what the maker asks for goes there
     */
    public TrainStrip(TrainStripActions actions) {
        this.actions = actions;
        this.editor = new StripEditor(this, actions);
        setFocusable(true);
        setOpaque(true);
        updateUI();
        ToolTipManager.sharedInstance().registerComponent(this);
        StripInput.install(this, actions);
    }

    /**
     * Shows a content.
     *
     * @param shown what to show
     */
    public void show(TrainStripContent shown) {
        content = Optional.of(shown);
        plan = Optional.empty();
        focus.keepWithin(plan().map(StripPlan::spots).orElseGet(java.util.List::of));
        getAccessibleContext().setAccessibleDescription(shown.standing().orElse(null));
        repaint();
    }

    /**
     * Asks to be told when the maker wants to know where a figure comes from.
     *
     * @param card gets the figure and its place on the strip
     */
    public void onWhereFrom(BiConsumer<StripSpot, Rectangle> card) {
        whereFrom = card;
    }

    @Override
    public void updateUI() {
        Font font = UIManager.getFont("Label.font");
        setFont(font == null ? new Font(Font.SANS_SERIF, Font.PLAIN, 13) : font);
        setUI(null);
        text = new TabularText(getFont());
        plan = Optional.empty();
        if (editor != null) {
            editor.refresh();
        }
        revalidate();
        repaint();
    }

    double unit() {
        return getFont().getSize2D() / FONT_UNITS;
    }

    /** The plan for the present content and size; empty if no train is chosen. */
    Optional<StripPlan> plan() {
        if (plan.isEmpty() || !planned.equals(getSize())) {
            planned = getSize();
            plan = content.flatMap(
                    shown -> shown.rating().map(chosen -> StripPlanner.plan(shown, chosen, planned, unit(), text)));
        }
        return plan;
    }

    Optional<TrainStripContent> content() {
        return content;
    }

    StripFocus focus() {
        return focus;
    }

    Optional<StripSpot> focused() {
        return plan().flatMap(found -> focus.within(found.spots()));
    }

    /** Moves the keyboard to a figure. */
    void focusOn(StripSpot spot) {
        focus.moveTo(spot);
        spot.figure().flatMap(StripFigure::place).ifPresent(actions::lookInto);
        requestFocusInWindow();
        getAccessibleContext()
                .firePropertyChange(AccessibleContext.ACCESSIBLE_ACTIVE_DESCENDANT_PROPERTY, null, accessible(spot));
        repaint();
    }

    private Object accessible(StripSpot spot) {
        return plan().map(found ->
                        getAccessibleContext().getAccessibleChild(found.spots().indexOf(spot)))
                .orElse(null);
    }

    /** Opens the editor on a figure with what has been typed so far. */
    void edit(StripSpot spot, String typed) {
        spot.figure().ifPresent(figure -> editor.open(figure, spot, typed));
    }

    void toggle(StripFigure figure) {
        actions.toggleLock(figure);
    }

    void askWhereFrom(StripSpot spot) {
        Rectangle2D box = spot.box();
        whereFrom.accept(spot, box.getBounds());
    }

    @Override
    public String getToolTipText(MouseEvent event) {
        return plan().flatMap(found -> found.at(event.getX(), event.getY()))
                .map(spot ->
                        spot.name() + ". " + TrainText.of(spot.figure().isPresent() ? "tip.figure" : "tip.reading"))
                .or(() -> plan().filter(found -> found.onCaution(event.getX(), event.getY(), text))
                        .map(found -> TrainText.of("caution.full")))
                .orElse(null);
    }

    @Override
    public Dimension getPreferredSize() {
        return isPreferredSizeSet() ? super.getPreferredSize() : scaled(WIDTH, HEIGHT);
    }

    @Override
    public Dimension getMinimumSize() {
        return isMinimumSizeSet() ? super.getMinimumSize() : scaled(LEAST_WIDTH, LEAST_HEIGHT);
    }

    private Dimension scaled(int width, int height) {
        return new Dimension((int) Math.ceil(width * unit()), (int) Math.ceil(height * unit()));
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Inks inks = Inks.current();
        Graphics2D pen = Pens.sharpened((Graphics2D) graphics);
        pen.setColor(inks.paper());
        pen.fillRect(0, 0, getWidth(), getHeight());
        plan().ifPresentOrElse(
                        found -> new StripPainter(pen, inks, found, text)
                                .paint(isFocusOwner() ? focused() : Optional.empty()),
                        () -> EmptySheet.paint(pen, inks, text, getSize(), TrainText.of("empty"), unit()));
        pen.dispose();
    }

    @Override
    public AccessibleContext getAccessibleContext() {
        if (accessibleContext == null) {
            accessibleContext = new StripAccess();
        }
        return accessibleContext;
    }

    /** The strip as a screen reader finds it: a panel with a child for every figure, in reading order. */
    private final class StripAccess extends AccessibleJComponent {
        private static final long serialVersionUID = 1;

        StripAccess() {
            setAccessibleName(TrainText.of("strip.name"));
        }

        @Override
        public javax.accessibility.AccessibleRole getAccessibleRole() {
            return javax.accessibility.AccessibleRole.PANEL;
        }

        @Override
        public int getAccessibleChildrenCount() {
            return plan().map(found -> found.spots().size()).orElse(0);
        }

        @Override
        public Accessible getAccessibleChild(int index) {
            return plan().filter(found -> index >= 0 && index < found.spots().size())
                    .map(found ->
                            new AccessibleSpot(TrainStrip.this, found.spots().get(index), index))
                    .orElse(null);
        }
    }
}
