// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.view;

import drumfall.ui.presenter.Aspect;
import drumfall.ui.presenter.Texts;
import drumfall.ui.presenter.Workspace;
import drumfall.ui.view.look.Parts;
import drumfall.ui.view.train.TrainStrip;
import java.awt.BorderLayout;
import javax.swing.JComponent;
import javax.swing.JPanel;

/** The train strip over the full width. */
final class StripPlace implements Place {
    private final Workspace workspace;
    private final TrainStrip strip;
    private final JPanel place = new JPanel(new BorderLayout());

    StripPlace(Workspace workspace) {
        this.workspace = workspace;
        this.strip = new TrainStrip(workspace);
        strip.setName("strip");
        place.setName("strip.place");
        Parts.named(place, Texts.of("place.strip"));
        place.add(strip);
        workspace.listen(this::changed);
        strip.show(workspace.strip());
    }

    private void changed(Aspect aspect) {
        switch (aspect) {
            case CHOICE, TRIAL, BRIEF, HIGHLIGHT, UNITS, FRONT -> strip.show(workspace.strip());
            default -> {}
        }
    }

    @Override
    public JComponent component() {
        return place;
    }

    @Override
    public void takeFocus() {
        strip.requestFocusInWindow();
    }
}
