// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.view.train;

import drumfall.ui.presenter.TrainStripActions;
import drumfall.ui.presenter.TrainStripContent;
import java.awt.Dimension;
import javax.swing.JComponent;

/** Stands in until the strip is merged. */
public final class TrainStrip extends JComponent {
    /** A strip. */
    public TrainStrip(TrainStripActions actions) {
        setPreferredSize(new Dimension(100, 240));
    }

    /** Shows a content. */
    public void show(TrainStripContent content) {
        repaint();
    }
}
