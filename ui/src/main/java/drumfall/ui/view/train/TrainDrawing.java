// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.view.train;

import drumfall.solver.brief.Brief;
import drumfall.solver.quantity.UnitSystem;
import drumfall.solver.rating.Rating;
import drumfall.ui.presenter.Highlight;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.JComponent;

/** Stands in until the drawing is merged. */
public final class TrainDrawing extends JComponent {
    /** A drawing. */
    public TrainDrawing(Consumer<Optional<Integer>> hoverArbor) {}

    /** Shows a train. */
    public void show(Optional<Rating> rating, Brief brief, Highlight highlight, UnitSystem units) {
        repaint();
    }
}
