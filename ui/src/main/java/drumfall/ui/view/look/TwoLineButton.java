// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.view.look;

import drumfall.ui.view.train.Role;
import java.awt.Dimension;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics;
import java.awt.Graphics2D;
import javax.swing.JButton;

/** A button of two lines: a name with a few words at its right edge, and smaller words below. */
public class TwoLineButton extends JButton {
    private static final int PAD = 6;
    private static final float SMALL = 0.92f;

    private final String title;
    private final String below;
    private final String right;

    /**
     * A button.
     *
     * @param title what it is called
     * @param below what else there is to say of it
     * @param right stands at the right of the title; empty if nothing does
     * @param spoken all of it, as it is read aloud
     * @param pressed is run when it is pressed
     */
    public TwoLineButton(String title, String below, String right, String spoken, Runnable pressed) {
        this.title = title;
        this.below = below;
        this.right = right;
        setContentAreaFilled(false);
        setBorderPainted(false);
        setFocusPainted(false);
        setRolloverEnabled(true);
        Parts.named(this, spoken);
        setToolTipText(spoken);
        addActionListener(event -> pressed.run());
    }

    private Font small() {
        return getFont().deriveFont(Font.PLAIN, getFont().getSize2D() * SMALL);
    }

    @Override
    public Dimension getPreferredSize() {
        int height =
                getFontMetrics(getFont()).getHeight() + getFontMetrics(small()).getHeight() + Look.scaled(PAD);
        return new Dimension(Look.scaled(220), height);
    }

    @Override
    public Dimension getMinimumSize() {
        return new Dimension(Look.scaled(60), getPreferredSize().height);
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Graphics2D pen = (Graphics2D) graphics.create();
        Digits.smooth(pen);
        int pad = Look.scaled(PAD);
        boolean lit = getModel().isRollover() || isFocusOwner();
        if (lit) {
            pen.setColor(Ink.wash(Role.CHOSEN));
            pen.fillRoundRect(0, 0, getWidth(), getHeight(), pad, pad);
        }
        if (isFocusOwner()) {
            pen.setColor(Ink.of(Role.CHOSEN));
            pen.drawRoundRect(0, 0, getWidth() - 1, getHeight() - 1, pad, pad);
        }
        FontMetrics large = getFontMetrics(getFont());
        FontMetrics smaller = getFontMetrics(small());
        int top = pad / 2 + large.getAscent();
        int bought = Digits.width(large, right);
        int end = getWidth() - pad - bought;
        pen.setColor(Ink.text());
        Digits.write(pen, getFont(), right, end, top);
        pen.setColor(Ink.of(Role.CHOSEN));
        pen.setFont(getFont());
        pen.drawString(Digits.cut(large, title, end - 2 * pad), pad, top);
        pen.setColor(Ink.faint());
        int baseline = pad / 2 + large.getHeight() + smaller.getAscent();
        pen.setFont(small());
        pen.drawString(Digits.cut(smaller, below, getWidth() - 2 * pad), pad, baseline);
        pen.dispose();
    }
}
