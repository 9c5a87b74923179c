// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.view.look;

import java.awt.Dimension;
import java.awt.LayoutManager;
import java.awt.Rectangle;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.Scrollable;

/** A panel to be scrolled upright: as wide as there is room, so that words wrap, and as high as it must be. */
public final class TallPanel extends JPanel implements Scrollable {
    private static final int STEP = 16;

    /**
     * A panel.
     *
     * @param layout lays out what is in it
     */
    public TallPanel(LayoutManager layout) {
        super(layout);
    }

    /** A pane without a frame that scrolls something upright only, what is behind it seen through. */
    public static JScrollPane scrolled(JComponent inside) {
        JScrollPane pane = new JScrollPane(
                inside, JScrollPane.VERTICAL_SCROLLBAR_AS_NEEDED, JScrollPane.HORIZONTAL_SCROLLBAR_NEVER);
        pane.setBorder(BorderFactory.createEmptyBorder());
        pane.setOpaque(false);
        pane.getViewport().setOpaque(false);
        return pane;
    }

    @Override
    public Dimension getPreferredScrollableViewportSize() {
        return getPreferredSize();
    }

    @Override
    public int getScrollableUnitIncrement(Rectangle visible, int orientation, int direction) {
        return Look.scaled(STEP);
    }

    @Override
    public int getScrollableBlockIncrement(Rectangle visible, int orientation, int direction) {
        return visible.height;
    }

    @Override
    public boolean getScrollableTracksViewportWidth() {
        return true;
    }

    @Override
    public boolean getScrollableTracksViewportHeight() {
        return false;
    }
}
