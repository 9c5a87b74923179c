// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.view.look;

import java.awt.Component;
import java.awt.Dimension;
import java.awt.LayoutManager;
import java.awt.Rectangle;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.swing.JPanel;
import javax.swing.JTextArea;

/**
 * Components beside one another at the widths that they ask for, in as many rows as the panel's width makes necessary, so that
 * nothing is cut off where letters are large or the panel is narrow. One of them may be text that fills what is left of its row.
 */
public final class WrappedRow extends JPanel {
    private static final long serialVersionUID = 1;

    /** Text with less room than this begins a row of its own, unscaled px. */
    private static final int LEAST_TEXT = 160;

    /** By this the forms around it know that its height follows from its width. */
    private static final String HEIGHT_FOLLOWS = "migLayout.dynamicAspectRatio";

    private final int gap;

    /**
     * An empty row.
     *
     * @param gap between components and between rows, unscaled px
     */
    public WrappedRow(int gap) {
        super(null);
        this.gap = gap;
        setOpaque(false);
        putClientProperty(HEIGHT_FOLLOWS, true);
        setLayout(new Rows());
    }

    /** Another width may take other rows. */
    @Override
    public void setBounds(int x, int y, int width, int height) {
        boolean changed = width != getWidth();
        super.setBounds(x, y, width, height);
        if (changed) {
            revalidate();
        }
    }

    private int gap() {
        return Look.scaled(gap);
    }

    private static boolean fills(Component part) {
        return part instanceof JTextArea;
    }

    /** The width below which a component is not put into a row. */
    private static int least(Component part) {
        if (part instanceof JTextArea text) {
            return text.getText().isEmpty() ? 0 : Look.scaled(LEAST_TEXT);
        }
        return part.getPreferredSize().width;
    }

    private List<List<Component>> rows(int width) {
        List<List<Component>> rows = new ArrayList<>();
        int taken = 0;
        for (Component part : getComponents()) {
            if (!part.isVisible()) {
                continue;
            }
            int more = gap() + least(part);
            if (rows.isEmpty() || taken + more > width) {
                rows.add(new ArrayList<>());
                taken = -gap();
            }
            rows.get(rows.size() - 1).add(part);
            taken += more;
        }
        return rows;
    }

    private Map<Component, Rectangle> placed(int width) {
        Map<Component, Rectangle> placed = new LinkedHashMap<>();
        int top = 0;
        for (List<Component> row : rows(width)) {
            int others = row.stream()
                    .filter(part -> !fills(part))
                    .mapToInt(WrappedRow::least)
                    .sum();
            int left = Math.max(0, width - others - gap() * (row.size() - 1));
            int x = 0;
            int height = 0;
            for (Component part : row) {
                int wide = fills(part) ? left : Math.min(width, least(part));
                int high = height(part, wide);
                placed.put(part, new Rectangle(x, top, wide, high));
                x += wide + gap();
                height = Math.max(height, high);
            }
            for (Component part : row) {
                Rectangle at = placed.get(part);
                at.y = top + (height - at.height) / 2;
            }
            top += height + gap();
        }
        return placed;
    }

    /** Text is as high as it is wrapped. */
    private static int height(Component part, int width) {
        if (part instanceof JTextArea text) {
            if (text.getText().isEmpty()) {
                return 0;
            }
            text.setSize(width, Short.MAX_VALUE);
        }
        return part.getPreferredSize().height;
    }

    /** The rows as a layout. */
    private final class Rows implements LayoutManager {
        @Override
        public void addLayoutComponent(String name, Component part) {}

        @Override
        public void removeLayoutComponent(Component part) {}

        @Override
        public Dimension preferredLayoutSize(java.awt.Container parent) {
            int all = Arrays.stream(getComponents())
                    .filter(Component::isVisible)
                    .mapToInt(part -> least(part) + gap())
                    .sum();
            int width = getWidth() > 0 ? getWidth() : Math.max(0, all - gap());
            int height = placed(width).values().stream()
                    .mapToInt(at -> at.y + at.height)
                    .max()
                    .orElse(0);
            return new Dimension(Math.max(0, all - gap()), height);
        }

        @Override
        public Dimension minimumLayoutSize(java.awt.Container parent) {
            Optional<Integer> widest = Arrays.stream(getComponents())
                    .filter(Component::isVisible)
                    .map(WrappedRow::least)
                    .max(Integer::compare);
            return new Dimension(widest.orElse(0), preferredLayoutSize(parent).height);
        }

        @Override
        public void layoutContainer(java.awt.Container parent) {
            placed(getWidth()).forEach(Component::setBounds);
        }
    }
}
