// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.view;

import javax.swing.JComponent;

/** One of the places of the window that the keyboard goes to with one key. */
interface Place {
    /** The whole place. */
    JComponent component();

    /** Puts the keyboard where work in this place begins. */
    void takeFocus();
}
