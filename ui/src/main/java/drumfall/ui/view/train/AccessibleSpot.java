// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.view.train;

import java.awt.Color;
import java.awt.Cursor;
import java.awt.Dimension;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Point;
import java.awt.Rectangle;
import java.awt.event.FocusListener;
import java.util.Locale;
import javax.accessibility.Accessible;
import javax.accessibility.AccessibleAction;
import javax.accessibility.AccessibleComponent;
import javax.accessibility.AccessibleContext;
import javax.accessibility.AccessibleRole;
import javax.accessibility.AccessibleState;
import javax.accessibility.AccessibleStateSet;

/** One figure of the strip as a screen reader finds it: a named toggle button, or a label for a reading. */
final class AccessibleSpot extends AccessibleContext implements Accessible, AccessibleComponent, AccessibleAction {
    private final TrainStrip strip;
    private final StripSpot spot;
    private final int index;

    AccessibleSpot(TrainStrip strip, StripSpot spot, int index) {
        this.strip = strip;
        this.spot = spot;
        this.index = index;
        setAccessibleParent(strip);
    }

    @Override
    public AccessibleContext getAccessibleContext() {
        return this;
    }

    @Override
    public String getAccessibleName() {
        return spot.name();
    }

    @Override
    public String getAccessibleDescription() {
        return TrainText.of(spot.figure().isPresent() ? "tip.figure" : "tip.reading");
    }

    @Override
    public AccessibleRole getAccessibleRole() {
        return spot.figure().isPresent() ? AccessibleRole.TOGGLE_BUTTON : AccessibleRole.LABEL;
    }

    @Override
    public AccessibleStateSet getAccessibleStateSet() {
        AccessibleStateSet states = new AccessibleStateSet();
        states.add(AccessibleState.FOCUSABLE);
        states.add(AccessibleState.ENABLED);
        states.add(AccessibleState.VISIBLE);
        states.add(AccessibleState.SHOWING);
        if (spot.held()) {
            states.add(AccessibleState.CHECKED);
        }
        if (strip.focused().filter(spot::equals).isPresent()) {
            states.add(AccessibleState.FOCUSED);
        }
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
        return strip.getLocale();
    }

    @Override
    public AccessibleComponent getAccessibleComponent() {
        return this;
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
        return action == 0 ? getAccessibleDescription() : null;
    }

    @Override
    public boolean doAccessibleAction(int action) {
        if (action != 0) {
            return false;
        }
        spot.figure().ifPresentOrElse(strip::toggle, () -> strip.askWhereFrom(spot));
        return true;
    }

    @Override
    public void requestFocus() {
        strip.focusOn(spot);
    }

    @Override
    public Rectangle getBounds() {
        return spot.box().getBounds();
    }

    @Override
    public Point getLocation() {
        return getBounds().getLocation();
    }

    @Override
    public Point getLocationOnScreen() {
        Point place = getLocation();
        Point origin = strip.getLocationOnScreen();
        place.translate(origin.x, origin.y);
        return place;
    }

    @Override
    public Dimension getSize() {
        return getBounds().getSize();
    }

    @Override
    public boolean contains(Point point) {
        return point.x >= 0 && point.y >= 0 && point.x < getSize().width && point.y < getSize().height;
    }

    @Override
    public Accessible getAccessibleAt(Point point) {
        return null;
    }

    @Override
    public boolean isFocusTraversable() {
        return true;
    }

    @Override
    public boolean isEnabled() {
        return strip.isEnabled();
    }

    @Override
    public boolean isVisible() {
        return strip.isVisible();
    }

    @Override
    public boolean isShowing() {
        return strip.isShowing();
    }

    @Override
    public Color getBackground() {
        return strip.getBackground();
    }

    @Override
    public Color getForeground() {
        return strip.getForeground();
    }

    @Override
    public Cursor getCursor() {
        return strip.getCursor();
    }

    @Override
    public Font getFont() {
        return strip.getFont();
    }

    @Override
    public FontMetrics getFontMetrics(Font font) {
        return strip.getFontMetrics(font);
    }

    /** Colours, fonts and places are the drawing's own and not for a reader to change. */
    @Override
    public void setBackground(Color colour) {}

    @Override
    public void setForeground(Color colour) {}

    @Override
    public void setCursor(Cursor cursor) {}

    @Override
    public void setFont(Font font) {}

    @Override
    public void setEnabled(boolean enabled) {}

    @Override
    public void setVisible(boolean visible) {}

    @Override
    public void setLocation(Point place) {}

    @Override
    public void setBounds(Rectangle bounds) {}

    @Override
    public void setSize(Dimension size) {}

    @Override
    public void addFocusListener(FocusListener listener) {}

    @Override
    public void removeFocusListener(FocusListener listener) {}
}
