// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.view.look;

import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics;
import java.awt.Rectangle;
import java.util.function.Supplier;
import javax.swing.AbstractButton;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JTextArea;

/** Small parts that all places are made of. */
public final class Parts {
    private Parts() {}

    /** A label whose colour follows the look. */
    private static final class InkLabel extends JLabel {
        private final transient Supplier<Color> ink;
        private final float share;
        private final int style;

        InkLabel(String text, Supplier<Color> ink, float share, int style) {
            super(text);
            this.ink = ink;
            this.share = share;
            this.style = style;
            updateUI();
        }

        @Override
        public void updateUI() {
            super.updateUI();
            if (ink != null) {
                setForeground(ink.get());
                Font base = javax.swing.UIManager.getFont("Label.font");
                setFont(base.deriveFont(style, base.getSize2D() * share));
            }
        }
    }

    /** A plain caption. */
    public static JLabel caption(String text) {
        return new InkLabel(text, Ink::text, 1, Font.PLAIN);
    }

    /** A lighter, smaller remark. */
    public static JLabel remark(String text) {
        return new InkLabel(text, Ink::faint, 0.92f, Font.PLAIN);
    }

    /** The heading of a place. */
    public static JLabel heading(String text) {
        return new InkLabel(text, Ink::text, 1.08f, Font.BOLD);
    }

    /** The heading of a group. */
    public static JLabel subheading(String text) {
        return new InkLabel(text, Ink::text, 1, Font.BOLD);
    }

    /** Text over several lines that only is read. */
    public static JTextArea lines(String text) {
        return new Lines(text);
    }

    /** Wrapped text; it takes no focus and no background of its own. */
    private static final class Lines extends JTextArea {
        Lines(String text) {
            super(text);
            setEditable(false);
            setFocusable(false);
            setLineWrap(true);
            setWrapStyleWord(true);
            getAccessibleContext().setAccessibleName(text);
        }

        /** A new text moves nothing. */
        @Override
        public void scrollRectToVisible(Rectangle part) {}

        @Override
        public void updateUI() {
            super.updateUI();
            setOpaque(false);
            setBorder(null);
            setFont(javax.swing.UIManager.getFont("Label.font"));
        }
    }

    /** A button that reads as a word in the text. */
    public static JButton link(String text, Runnable action) {
        JButton button = new JButton(text) {
            @Override
            public void updateUI() {
                super.updateUI();
                setForeground(Ink.of(drumfall.ui.view.train.Role.CHOSEN));
            }
        };
        button.putClientProperty("JButton.buttonType", "borderless");
        button.setMargin(new java.awt.Insets(1, 3, 1, 3));
        button.addActionListener(event -> action.run());
        return named(button, text);
    }

    /** Gives a component the name that is read aloud and that tests find it by. */
    public static <T extends JComponent> T named(T component, String name) {
        component.getAccessibleContext().setAccessibleName(name);
        if (component instanceof AbstractButton button
                && button.getToolTipText() == null
                && button.getText().isEmpty()) {
            button.setToolTipText(name);
        }
        return component;
    }

    /** A thin line across. */
    public static JComponent rule() {
        return new JComponent() {
            @Override
            protected void paintComponent(Graphics graphics) {
                graphics.setColor(Ink.rule());
                graphics.fillRect(0, getHeight() / 2, getWidth(), 1);
            }
        };
    }
}
