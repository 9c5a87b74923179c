// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.view.placed;

import java.util.Optional;
import javax.accessibility.AccessibleAction;
import javax.accessibility.AccessibleRole;
import javax.accessibility.AccessibleState;
import javax.accessibility.AccessibleStateSet;

/** One arbor as a screen reader finds it: named with its place, and selected by its action. */
final class SpokenArbor extends SpokenPart implements AccessibleAction {
    private final PlacedCanvas canvas;
    private final int arbor;

    SpokenArbor(PlacedCanvas canvas, int arbor, String name) {
        super(canvas, arbor, name);
        this.canvas = canvas;
        this.arbor = arbor;
    }

    @Override
    public AccessibleRole getAccessibleRole() {
        return AccessibleRole.TOGGLE_BUTTON;
    }

    @Override
    public AccessibleStateSet getAccessibleStateSet() {
        AccessibleStateSet states = super.getAccessibleStateSet();
        if (canvas.sheet().selected().filter(found -> found == arbor).isPresent()) {
            states.add(AccessibleState.CHECKED);
        }
        return states;
    }

    @Override
    public AccessibleAction getAccessibleAction() {
        return this;
    }

    @Override
    public int getAccessibleActionCount() {
        return 1;
    }

    @Override
    public String getAccessibleActionDescription(int action) {
        return action == 0 ? getAccessibleName() : null;
    }

    @Override
    public boolean doAccessibleAction(int action) {
        if (action == 0) {
            canvas.sheet().select(Optional.of(arbor));
        }
        return action == 0;
    }
}
