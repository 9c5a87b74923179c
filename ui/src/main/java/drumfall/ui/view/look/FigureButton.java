// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.view.look;

import drumfall.ui.presenter.ShownFigure;
import drumfall.ui.presenter.Texts;
import drumfall.ui.view.train.Role;
import java.awt.Dimension;
import java.awt.Font;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.util.function.Consumer;
import javax.swing.JButton;

/** A figure under its name; pressing it opens the card that says where it comes from. */
public final class FigureButton extends JButton {
    private static final int PAD = 6;

    private final String title;
    private final float share;
    private transient ShownFigure value = ShownFigure.NONE;

    /**
     * A button for a figure.
     *
     * @param name the figure's name for tests
     * @param title what the figure is called
     * @param share size of the number over the usual one
     * @param pressed opens the card
     */
    public FigureButton(String name, String title, float share, Consumer<FigureButton> pressed) {
        this.title = title;
        this.share = share;
        setName("figure." + name);
        setContentAreaFilled(false);
        setBorderPainted(false);
        setFocusPainted(false);
        setRolloverEnabled(true);
        setToolTipText(Texts.of("where.title", title));
        addActionListener(event -> pressed.accept(this));
    }

    /** Shows another value. */
    public void show(ShownFigure shown) {
        value = shown;
        Parts.named(this, Texts.of("shown.description", title, shown.text()));
        revalidate();
        repaint();
    }

    private Font large() {
        return getFont().deriveFont(Font.PLAIN, getFont().getSize2D() * share);
    }

    private Font small() {
        return getFont().deriveFont(Font.PLAIN, getFont().getSize2D() * 0.88f);
    }

    @Override
    public Dimension getPreferredSize() {
        int number = Digits.width(getFontMetrics(large()), value.number());
        int unit = Digits.width(getFontMetrics(small()), value.unit());
        int name = getFontMetrics(small()).stringWidth(title);
        int pad = Look.scaled(PAD);
        return new Dimension(
                Math.max(number + unit + Look.scaled(4), name) + 2 * pad,
                getFontMetrics(large()).getHeight() + getFontMetrics(small()).getHeight() + pad);
    }

    @Override
    public Dimension getMinimumSize() {
        return getPreferredSize();
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Graphics2D pen = (Graphics2D) graphics.create();
        Digits.smooth(pen);
        int pad = Look.scaled(PAD);
        if (getModel().isRollover() || isFocusOwner()) {
            pen.setColor(Ink.wash(Role.CHOSEN));
            pen.fillRoundRect(0, 0, getWidth(), getHeight(), pad, pad);
        }
        if (isFocusOwner()) {
            pen.setColor(Ink.of(Role.CHOSEN));
            pen.drawRoundRect(0, 0, getWidth() - 1, getHeight() - 1, pad, pad);
        }
        int top = pad / 2 + getFontMetrics(small()).getAscent();
        pen.setColor(Ink.faint());
        pen.setFont(small());
        pen.drawString(title, pad, top);
        int baseline = pad / 2
                + getFontMetrics(small()).getHeight()
                + getFontMetrics(large()).getAscent();
        pen.setColor(Ink.text());
        Digits.write(pen, large(), value.number(), pad, baseline);
        pen.setColor(Ink.faint());
        int unit = pad + Digits.width(getFontMetrics(large()), value.number()) + Look.scaled(4);
        Digits.write(pen, small(), value.unit(), unit, baseline);
        pen.dispose();
    }
}
