// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.view;

import drumfall.ui.presenter.Texts;
import drumfall.ui.presenter.WhereCard;
import drumfall.ui.presenter.WhereCard.Input;
import drumfall.ui.view.look.FigureLabel;
import drumfall.ui.view.look.Ink;
import drumfall.ui.view.look.Look;
import drumfall.ui.view.look.Parts;
import java.awt.Component;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Point;
import java.awt.Rectangle;
import java.awt.event.ActionEvent;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.AbstractAction;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JLayeredPane;
import javax.swing.JPanel;
import javax.swing.KeyStroke;
import javax.swing.SwingUtilities;
import net.miginfocom.swing.MigLayout;

/** The small card that says where a figure comes from; cards lead on to the figures put in and back to the brief. */
final class WhereSheet extends JPanel {
    private static final int WIDTH = 380;

    private final transient Consumer<String> toBrief;
    private Component opener = this;

    WhereSheet(Consumer<String> toBrief) {
        super(new MigLayout("insets 14lp, gap 8lp 5lp, wrap 3", "[][grow,fill,0:0:][]", ""));
        this.toBrief = toBrief;
        setName("where");
        Parts.named(this, Texts.of("where.more"));
        getInputMap(JComponent.WHEN_ANCESTOR_OF_FOCUSED_COMPONENT).put(KeyStroke.getKeyStroke("ESCAPE"), "close");
        getActionMap().put("close", new AbstractAction() {
            @Override
            public void actionPerformed(ActionEvent event) {
                close();
            }
        });
    }

    /** Opens a card below the part of a component that shows its figure, or above it where there is no room. */
    void open(JComponent beside, Rectangle part, WhereCard card) {
        opener = beside;
        JLayeredPane layers = beside.getRootPane().getLayeredPane();
        if (getParent() != layers) {
            layers.add(this, JLayeredPane.POPUP_LAYER);
        }
        fill(card);
        Point at = SwingUtilities.convertPoint(beside, part.x, part.y + part.height, layers);
        int x = Math.max(0, Math.min(at.x, layers.getWidth() - getWidth() - Look.scaled(8)));
        int y = Math.max(0, Math.min(at.y, layers.getHeight() - getHeight() - Look.scaled(8)));
        setLocation(x, y);
    }

    private void fill(WhereCard card) {
        removeAll();
        add(Parts.heading(card.title()), "span 2");
        JButton close = Parts.link(Texts.of("where.close"), this::close);
        add(close, "al right");
        FigureLabel value = new FigureLabel(false);
        value.setFigure(card.value());
        value.setFont(value.getFont().deriveFont(value.getFont().getSize2D() * 1.5f));
        add(value, "span 3, growx");
        add(Parts.lines(card.formula()), "span 3, growx, w 10:10:, gapbottom 4lp");
        card.inputs().forEach(this::addInput);
        add(Parts.remark(Texts.of("where.source")), "aligny top, gaptop 4lp");
        add(Parts.lines(card.source()), "span 2, growx, w 10:10:, gaptop 4lp");
        resize();
        close.requestFocusInWindow();
    }

    private void resize() {
        int width = Look.scaled(WIDTH);
        setSize(width, Look.scaled(800));
        validate();
        // Wrapped lines know their height only once they have their width.
        for (Component part : getComponents()) {
            part.invalidate();
        }
        validate();
        Dimension wanted = getPreferredSize();
        setSize(width, wanted.height);
        validate();
        repaint();
    }

    private void addInput(Input input) {
        add(Parts.remark(input.symbol()));
        add(Parts.caption(input.meaning()), "wmin 0");
        Optional<Runnable> leads = leads(input);
        leads.ifPresentOrElse(
                next -> add(Parts.link(input.value(), next), "al right"),
                () -> add(Parts.caption(input.value()), "al right, wmax 60%"));
    }

    /** Where a value leads: to its own card, or back to the brief. */
    private Optional<Runnable> leads(Input input) {
        Optional<Runnable> own = input.card().map(card -> () -> fill(card.get()));
        Optional<Runnable> typed = input.pointer().map(pointer -> () -> goTo(pointer));
        return own.or(() -> typed);
    }

    private void goTo(String pointer) {
        close();
        toBrief.accept(pointer);
    }

    void close() {
        if (getParent() instanceof JLayeredPane layers) {
            layers.remove(this);
            layers.repaint();
            opener.requestFocusInWindow();
        }
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        graphics.setColor(Ink.paper());
        graphics.fillRect(0, 0, getWidth(), getHeight());
        graphics.setColor(Ink.faint());
        graphics.drawRect(0, 0, getWidth() - 1, getHeight() - 1);
    }
}
