// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.view.power;

import drumfall.ui.presenter.PowerFigure;
import drumfall.ui.presenter.PowerPicture;
import drumfall.ui.presenter.PowerSheet;
import drumfall.ui.presenter.PowerStep;
import drumfall.ui.presenter.ShownFigure;
import drumfall.ui.presenter.Texts;
import drumfall.ui.presenter.WhereCard;
import drumfall.ui.view.look.Ink;
import drumfall.ui.view.look.Parts;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.GridLayout;
import java.awt.Rectangle;
import java.awt.event.ActionEvent;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.stream.IntStream;
import javax.swing.AbstractAction;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.KeyStroke;
import javax.swing.Scrollable;

/** The way of the power: a row for each place where some goes, from the weight down to the pendulum. */
final class PowerFlow extends JPanel implements Scrollable {
    private final transient PowerSheet sheet;
    private final transient BiConsumer<JComponent, WhereCard> cards;
    private final transient List<FlowRow> rows = new ArrayList<>();
    private final PowerRow weight = new WeightRow();

    PowerFlow(PowerSheet sheet, BiConsumer<JComponent, WhereCard> cards) {
        super(new GridLayout(0, 1));
        this.sheet = sheet;
        this.cards = cards;
        setName("power.flow");
        Parts.named(this, Texts.of("power.flow.name"));
        weight.setName("power.WEIGHT");
        weight.addActionListener(event ->
                sheet.cards().ifPresent(known -> cards.accept(weight, known.card(PowerFigure.POWER))));
    }

    /** The whole power, before anything is lost. */
    private static final class WeightRow extends PowerRow {
        @Override
        int textStart() {
            return FlowRow.start();
        }

        @Override
        void paintBehind(Graphics2D pen) {
            FlowRow.band(pen, 1, getHeight());
        }
    }

    /** Shows the way of another picture; rows of the same places stay, so that the keyboard stays where it is. */
    void refresh() {
        List<PowerStep> steps = sheet.state().picture().map(PowerPicture::steps).orElse(List.of());
        if (same(steps)) {
            IntStream.range(0, steps.size()).forEach(i -> rows.get(i).show(steps.get(i)));
        } else {
            rebuild(steps);
        }
        sheet.cards()
                .ifPresent(known -> weight.show(
                        Texts.of("power.weight"), known.value(PowerFigure.POWER), new ShownFigure("100", "%")));
        repaint();
    }

    private boolean same(List<PowerStep> steps) {
        return steps.size() == rows.size()
                && IntStream.range(0, steps.size())
                        .allMatch(i -> rows.get(i).step().samePlace(steps.get(i)));
    }

    private void rebuild(List<PowerStep> steps) {
        removeAll();
        rows.clear();
        if (!steps.isEmpty()) {
            add(weight);
        }
        for (PowerStep step : steps) {
            FlowRow row = new FlowRow(step, sheet::isPointedAt);
            listen(row, rows.size());
            rows.add(row);
            add(row);
        }
        revalidate();
    }

    private void listen(FlowRow row, int index) {
        row.addMouseListener(new MouseAdapter() {
            @Override
            public void mouseEntered(MouseEvent event) {
                sheet.pointAt(Optional.of(row.step()));
            }

            @Override
            public void mouseExited(MouseEvent event) {
                sheet.pointAt(Optional.empty());
            }
        });
        row.addFocusListener(new FocusAdapter() {
            @Override
            public void focusGained(FocusEvent event) {
                sheet.pointAt(Optional.of(row.step()));
                row.scrollRectToVisible(new Rectangle(row.getSize()));
            }

            @Override
            public void focusLost(FocusEvent event) {
                sheet.pointAt(Optional.empty());
            }
        });
        row.addActionListener(event -> pressed(row));
        key(row, "UP", index - 1);
        key(row, "DOWN", index + 1);
        key(row, "ENTER", index);
    }

    /** Arrows go from row to row; Enter presses the row, as the space bar does in any button. */
    private void key(FlowRow row, String stroke, int to) {
        row.getInputMap().put(KeyStroke.getKeyStroke(stroke), stroke);
        row.getActionMap().put(stroke, new AbstractAction() {
            @Override
            public void actionPerformed(ActionEvent event) {
                if (rows.indexOf(row) == to) {
                    pressed(row);
                } else if (to >= 0 && to < rows.size()) {
                    rows.get(to).requestFocusInWindow();
                }
            }
        });
    }

    private void pressed(FlowRow row) {
        sheet.pick(row.step());
        sheet.cards().ifPresent(known -> cards.accept(row, known.card(row.step())));
    }

    /** Puts the keyboard on the first row, if there is one. */
    boolean takeFocus() {
        return !rows.isEmpty() && rows.get(0).requestFocusInWindow();
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        graphics.setColor(Ink.paper());
        graphics.fillRect(0, 0, getWidth(), getHeight());
    }

    @Override
    public Dimension getPreferredScrollableViewportSize() {
        return getPreferredSize();
    }

    @Override
    public int getScrollableUnitIncrement(Rectangle visible, int orientation, int direction) {
        return rows.isEmpty() ? 1 : rows.get(0).getHeight();
    }

    @Override
    public int getScrollableBlockIncrement(Rectangle visible, int orientation, int direction) {
        return visible.height;
    }

    @Override
    public boolean getScrollableTracksViewportWidth() {
        return true;
    }

    /** Rows share the height where there is more of it than they need. */
    @Override
    public boolean getScrollableTracksViewportHeight() {
        return getParent() != null && getParent().getHeight() > getPreferredSize().height;
    }
}
