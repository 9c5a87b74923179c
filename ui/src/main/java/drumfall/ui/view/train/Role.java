// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.view.train;

import java.awt.Color;

/**
 * The four roles a colour may have in the window; each also has a shape or a word, so that colour is never the only sign.
 *
 * <p>Each colour stands against its paper with a contrast of at least 4.5 (WCAG 2.1, success criterion 1.4.3, level AA).
 */
public enum Role {
    /** What is chosen or pointed at. */
    CHOSEN(0x1F5FA8, 0xA9D2FA),
    /** What is held fast. */
    HELD(0x8A4B00, 0xF7C987),
    /** What is tried or compared. */
    COMPARED(0x00695F, 0x8CE3D5),
    /** A demand that is missed. */
    MISSED(0xB3261E, 0xFFBDB6);

    private final Color onLight;
    private final Color onDark;

    Role(int onLight, int onDark) {
        this.onLight = new Color(onLight);
        this.onDark = new Color(onDark);
    }

    /**
     * The colour on a paper.
     *
     * @param dark whether the paper is dark
     */
    public Color colour(boolean dark) {
        return dark ? onDark : onLight;
    }
}
