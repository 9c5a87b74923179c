// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.view.placed;

import java.util.Locale;
import javax.accessibility.Accessible;
import javax.accessibility.AccessibleAction;
import javax.accessibility.AccessibleContext;
import javax.accessibility.AccessibleRole;
import javax.accessibility.AccessibleState;
import javax.accessibility.AccessibleStateSet;

/** One arbor as a screen reader finds it: named with its place, and selected by its action. */
final class SpokenArbor extends AccessibleContext implements Accessible, AccessibleAction {
    private final PlacedCanvas canvas;
    private final int arbor;
    private final String name;

    SpokenArbor(PlacedCanvas canvas, int arbor, String name) {
        this.canvas = canvas;
        this.arbor = arbor;
        this.name = name;
        setAccessibleParent(canvas);
    }

    @Override
    public AccessibleContext getAccessibleContext() {
        return this;
    }

    @Override
    public String getAccessibleName() {
        return name;
    }

    @Override
    public AccessibleRole getAccessibleRole() {
        return AccessibleRole.TOGGLE_BUTTON;
    }

    @Override
    public AccessibleStateSet getAccessibleStateSet() {
        AccessibleStateSet states = new AccessibleStateSet();
        states.add(AccessibleState.ENABLED);
        states.add(AccessibleState.VISIBLE);
        if (canvas.sheet().selected().filter(found -> found == arbor).isPresent()) {
            states.add(AccessibleState.CHECKED);
        }
        return states;
    }

    @Override
    public int getAccessibleIndexInParent() {
        return arbor;
    }

    @Override
    public int getAccessibleChildrenCount() {
        return 0;
    }

    @Override
    public Accessible getAccessibleChild(int child) {
        return null;
    }

    @Override
    public Locale getLocale() {
        return canvas.getLocale();
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
        return action == 0 ? name : null;
    }

    @Override
    public boolean doAccessibleAction(int action) {
        if (action == 0) {
            canvas.sheet().select(java.util.Optional.of(arbor));
        }
        return action == 0;
    }
}
