// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.view.look;

import drumfall.ui.presenter.ShownFigure;
import java.awt.Color;
import java.awt.Dimension;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.Insets;
import javax.swing.JLabel;

/** Shows a figure: digits of equal width, its unit lighter, to the right or the left edge. */
public final class FigureLabel extends JLabel {
    private static final int GAP = 3;

    private final boolean right;
    private ShownFigure figure = ShownFigure.NONE;

    /**
     * A label without a figure.
     *
     * @param right whether it stands at the right edge
     */
    public FigureLabel(boolean right) {
        this.right = right;
    }

    /** Shows another figure. */
    public void setFigure(ShownFigure shown) {
        figure = shown;
        getAccessibleContext().setAccessibleName(shown.text());
        revalidate();
        repaint();
    }

    @Override
    public Dimension getPreferredSize() {
        FontMetrics metrics = getFontMetrics(getFont());
        Insets insets = getInsets();
        return new Dimension(
                width(metrics) + insets.left + insets.right + 2, metrics.getHeight() + insets.top + insets.bottom);
    }

    private int width(FontMetrics metrics) {
        return Digits.width(metrics, figure.number())
                + (figure.unit().isEmpty() ? 0 : Look.scaled(GAP) + Digits.width(metrics, figure.unit()));
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Graphics2D pen = (Graphics2D) graphics.create();
        Digits.smooth(pen);
        if (isOpaque()) {
            pen.setColor(getBackground());
            pen.fillRect(0, 0, getWidth(), getHeight());
        }
        write(pen, getFont(), getForeground());
        pen.dispose();
    }

    private void write(Graphics2D pen, Font font, Color colour) {
        FontMetrics metrics = pen.getFontMetrics(font);
        Insets insets = getInsets();
        int x = right ? getWidth() - insets.right - width(metrics) : insets.left;
        int baseline = (getHeight() - metrics.getHeight()) / 2 + metrics.getAscent();
        pen.setColor(colour);
        Digits.write(pen, font, figure.number(), x, baseline);
        int unit = x + Digits.width(metrics, figure.number()) + Look.scaled(GAP);
        pen.setColor(Ink.faint());
        Digits.write(pen, font, figure.unit(), unit, baseline);
    }
}
