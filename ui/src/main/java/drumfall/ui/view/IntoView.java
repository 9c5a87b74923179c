// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.view;

import java.awt.Rectangle;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import javax.swing.JComponent;

/** Brings a part of a page into view when the keyboard goes there. */
final class IntoView extends FocusAdapter {
    private final JComponent part;

    private IntoView(JComponent part) {
        this.part = part;
    }

    /**
     * Follows the keyboard.
     *
     * @param entry what takes the keyboard
     * @param part what is to be seen then
     */
    static void follow(JComponent entry, JComponent part) {
        entry.addFocusListener(new IntoView(part));
    }

    @Override
    public void focusGained(FocusEvent event) {
        part.scrollRectToVisible(new Rectangle(part.getSize()));
    }
}
