// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.app;

import java.awt.Component;
import java.util.List;
import javax.swing.JTable;
import javax.swing.SwingUtilities;

/** What a screen reader would have no name for. */
final class SpokenNames {
    private SpokenNames() {}

    /** Components that take the keyboard, are shown, and have no name to be read. */
    static List<String> lackingIn(OpenWindow window) {
        return OpenWindow.on(() -> window.shown()
                .filter(Component::isFocusable)
                .filter(component -> component.isShowing() && component.isEnabled())
                .filter(SpokenNames::worksByKeyboard)
                .filter(component -> blank(component))
                .map(Component::toString)
                .toList());
    }

    private static boolean worksByKeyboard(Component component) {
        return component instanceof javax.swing.AbstractButton
                || component instanceof javax.swing.text.JTextComponent
                || component instanceof javax.swing.JComboBox
                || component instanceof JTable
                || "front.scatter".equals(component.getName())
                || component instanceof javax.swing.JSlider
                || component instanceof javax.swing.JTabbedPane
                || "drawing".equals(component.getName())
                || "placed.elevation".equals(component.getName())
                || "placed.section".equals(component.getName())
                || "mesh.drawing".equals(component.getName())
                || "strip".equals(component.getName());
    }

    private static boolean blank(Component component) {
        if (SwingUtilities.getAncestorOfClass(javax.swing.JComboBox.class, component) != null
                || SwingUtilities.getAncestorOfClass(javax.swing.JScrollBar.class, component) != null
                || component.getClass().getName().contains("BasicSplitPaneDivider")
                || SwingUtilities.getAncestorOfClass(javax.swing.plaf.basic.BasicSplitPaneDivider.class, component)
                        != null) {
            return false;
        }
        String name = component.getAccessibleContext().getAccessibleName();
        return name == null || name.isBlank();
    }
}
