// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.view;

import drumfall.ui.view.look.Look;
import java.awt.Component;
import java.awt.Dimension;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JSplitPane;

/** The four places with dividers between them: brief, front and drawing side by side, the train strip below. */
final class PlaceSplits {
    private static final int BRIEF = 340;

    private final Place brief;
    private final Place front;
    private final Place drawing;
    private final JSplitPane upper;
    private final JSplitPane all;

    PlaceSplits(Place brief, Place front, Place drawing, Place strip) {
        this.brief = brief;
        this.front = front;
        this.drawing = drawing;
        JSplitPane middle = split(JSplitPane.HORIZONTAL_SPLIT, front.component(), drawing.component(), 0.52);
        this.upper = split(JSplitPane.HORIZONTAL_SPLIT, brief.component(), middle, 0);
        this.all = split(JSplitPane.VERTICAL_SPLIT, upper, strip.component(), 1);
        sizes();
        upper.setDividerLocation(Look.scaled(BRIEF));
    }

    private static JSplitPane split(int orientation, Component first, Component second, double weight) {
        JSplitPane split = new JSplitPane(orientation, true, first, second);
        split.setResizeWeight(weight);
        split.setBorder(BorderFactory.createEmptyBorder());
        return split;
    }

    private void sizes() {
        brief.component().setMinimumSize(new Dimension(Look.scaled(260), 0));
        front.component().setMinimumSize(new Dimension(Look.scaled(300), 0));
        drawing.component().setMinimumSize(new Dimension(Look.scaled(260), 0));
        front.component().setPreferredSize(new Dimension(Look.scaled(580), Look.scaled(560)));
        drawing.component().setPreferredSize(new Dimension(Look.scaled(520), Look.scaled(560)));
    }

    JComponent component() {
        return all;
    }

    /**
     * Follows another size of the letters: the brief grows with them, and the strip gets the height it then needs.
     *
     * @param factor new size over old
     */
    void rescale(double factor) {
        sizes();
        upper.setDividerLocation((int) Math.round(upper.getDividerLocation() * factor));
        all.resetToPreferredSizes();
    }
}
