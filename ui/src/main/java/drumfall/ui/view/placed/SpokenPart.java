// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.view.placed;

import java.util.Locale;
import javax.accessibility.Accessible;
import javax.accessibility.AccessibleContext;
import javax.accessibility.AccessibleRole;
import javax.accessibility.AccessibleState;
import javax.accessibility.AccessibleStateSet;

/** A part of a sheet as a screen reader finds it: named with its place. */
class SpokenPart extends AccessibleContext implements Accessible {
    private final PlacedCanvas canvas;
    private final int index;
    private final String name;

    SpokenPart(PlacedCanvas canvas, int index, String name) {
        this.canvas = canvas;
        this.index = index;
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
        return AccessibleRole.LABEL;
    }

    @Override
    public AccessibleStateSet getAccessibleStateSet() {
        AccessibleStateSet states = new AccessibleStateSet();
        states.add(AccessibleState.ENABLED);
        states.add(AccessibleState.VISIBLE);
        return states;
    }

    @Override
    public int getAccessibleIndexInParent() {
        return index;
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
}
