// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.view.look;

import drumfall.ui.view.train.Role;
import java.awt.Color;
import javax.swing.UIManager;

/** The colours of the look that is on. */
public final class Ink {
    private Ink() {}

    /** What is written on. */
    public static Color paper() {
        return of("Drumfall.paper", Color.WHITE);
    }

    /** What is written. */
    public static Color text() {
        return of("Label.foreground", Color.BLACK);
    }

    /** Units, captions and remarks: lighter, with a contrast that still reads. */
    public static Color faint() {
        return of("Drumfall.faint", Color.DARK_GRAY);
    }

    /** Thin lines. */
    public static Color rule() {
        return of("Drumfall.rule", Color.LIGHT_GRAY);
    }

    /** The colour of a role. */
    public static Color of(Role role) {
        return role.colour(Look.dark());
    }

    /** A role's colour laid thinly on the paper. */
    public static Color wash(Role role) {
        Color colour = of(role);
        return new Color(colour.getRed(), colour.getGreen(), colour.getBlue(), Look.dark() ? 56 : 36);
    }

    private static Color of(String key, Color whenUnstyled) {
        Color found = UIManager.getColor(key);
        return found == null ? whenUnstyled : found;
    }
}
