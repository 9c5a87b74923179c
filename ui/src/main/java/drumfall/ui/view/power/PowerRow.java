// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.view.power;

import drumfall.ui.presenter.ShownFigure;
import drumfall.ui.presenter.Texts;
import drumfall.ui.view.look.Digits;
import drumfall.ui.view.look.Ink;
import drumfall.ui.view.look.Look;
import drumfall.ui.view.look.Parts;
import drumfall.ui.view.train.Role;
import java.awt.Dimension;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.util.List;
import javax.swing.JButton;

/** A named row with figures at its right edge; pressing it opens the card that says where they come from. */
class PowerRow extends JButton {
    static final int PAD = 4;
    private static final int HEIGHT = 17;
    private static final int PERCENT = 46;
    private static final float SIZE = 0.92f;

    private String title = "";
    private transient List<ShownFigure> figures = List.of();

    PowerRow() {
        setContentAreaFilled(false);
        setBorderPainted(false);
        setFocusPainted(false);
        setRolloverEnabled(true);
    }

    /** Shows another row. */
    final void show(String name, ShownFigure... shown) {
        title = name;
        figures = List.of(shown);
        String read = shown.length == 1
                ? Texts.of("shown.description", name, shown[0].text())
                : Texts.of("power.step.name", name, shown[0].text(), shown[1].text());
        Parts.named(this, read);
        setToolTipText(read);
        repaint();
    }

    /** Where the name begins, px. */
    int textStart() {
        return Look.scaled(PAD);
    }

    /** Whether the row is lit beyond being pointed at. */
    boolean lit() {
        return false;
    }

    private Font small() {
        return getFont().deriveFont(Font.PLAIN, getFont().getSize2D() * SIZE);
    }

    @Override
    public Dimension getPreferredSize() {
        int height = Math.max(Look.scaled(HEIGHT), getFontMetrics(small()).getHeight() + 1);
        return new Dimension(Look.scaled(172), height);
    }

    @Override
    public Dimension getMinimumSize() {
        return new Dimension(Look.scaled(60), getPreferredSize().height);
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Graphics2D pen = (Graphics2D) graphics.create();
        Digits.smooth(pen);
        if (lit() || getModel().isRollover() || isFocusOwner()) {
            pen.setColor(Ink.wash(Role.CHOSEN));
            pen.fillRect(0, 0, getWidth(), getHeight());
        }
        paintBehind(pen);
        words(pen);
        if (isFocusOwner() || lit()) {
            pen.setColor(Ink.of(Role.CHOSEN));
            pen.drawRect(0, 0, getWidth() - 1, getHeight() - 1);
        }
        pen.dispose();
    }

    /** Draws what stands left of the words. */
    void paintBehind(Graphics2D pen) {}

    private void words(Graphics2D pen) {
        FontMetrics metrics = getFontMetrics(small());
        int baseline = (getHeight() - metrics.getHeight()) / 2 + metrics.getAscent();
        int right = getWidth() - Look.scaled(PAD);
        for (int i = figures.size() - 1; i >= 0; i--) {
            figure(pen, metrics, figures.get(i), right, baseline);
            right -= Look.scaled(PERCENT);
        }
        int end = getWidth() - Look.scaled(PAD) - widthOfFigures(metrics);
        pen.setColor(Ink.text());
        pen.setFont(small());
        // The whole of a name that has no room is in the tip.
        pen.drawString(Digits.cut(metrics, title, end - Look.scaled(PAD) - textStart()), textStart(), baseline);
    }

    private int widthOfFigures(FontMetrics metrics) {
        int first = figures.isEmpty() ? 0 : width(metrics, figures.get(0));
        return first + Math.max(0, figures.size() - 1) * Look.scaled(PERCENT);
    }

    private static int width(FontMetrics metrics, ShownFigure figure) {
        int unit = figure.unit().isEmpty() ? 0 : Look.scaled(3) + Digits.width(metrics, figure.unit());
        return Digits.width(metrics, figure.number()) + unit;
    }

    private void figure(Graphics2D pen, FontMetrics metrics, ShownFigure figure, int right, int baseline) {
        int x = right - width(metrics, figure);
        pen.setColor(Ink.text());
        Digits.write(pen, small(), figure.number(), x, baseline);
        pen.setColor(Ink.faint());
        int unit = right - Digits.width(metrics, figure.unit());
        Digits.write(pen, small(), figure.unit(), unit, baseline);
    }
}
