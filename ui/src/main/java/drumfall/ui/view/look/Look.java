// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.view.look;

import com.formdev.flatlaf.FlatDarkLaf;
import com.formdev.flatlaf.FlatLaf;
import com.formdev.flatlaf.FlatLightLaf;
import com.formdev.flatlaf.fonts.inter.FlatInterFont;
import com.formdev.flatlaf.util.UIScale;
import java.awt.Font;
import javax.swing.UIManager;

/** Puts the window's look on, light or dark, in the size wanted, while the window is open too. */
public final class Look {
    /** Smallest size in percent of the usual one. */
    public static final int SMALLEST = 70;

    /** Largest size in percent of the usual one. */
    public static final int LARGEST = 250;

    private static final int USUAL_POINTS = 13;
    private static final int PERCENT = 100;

    private Look() {}

    /**
     * Puts the look on every window there is and every one to come; they wear it already if it is the one put on last.
     *
     * @param dark dark or light
     * @param percent size, percent of the usual one
     */
    public static void apply(boolean dark, int percent) {
        boolean worn = UIManager.getLookAndFeel() instanceof FlatLaf
                && dark == dark()
                && font(percent).equals(UIManager.getFont("defaultFont"));
        if (!worn) {
            putOn(dark, percent);
        }
    }

    private static void putOn(boolean dark, int percent) {
        FlatInterFont.installLazy();
        FlatLaf.registerCustomDefaultsSource("drumfall.ui.view.look", Look.class.getClassLoader());
        FlatLaf.setPreferredFontFamily(FlatInterFont.FAMILY);
        UIManager.put("defaultFont", font(percent));
        if (dark) {
            FlatDarkLaf.setup();
        } else {
            FlatLightLaf.setup();
        }
        FlatLaf.updateUI();
    }

    private static Font font(int percent) {
        float scaled = USUAL_POINTS * startScale() * percent / PERCENT;
        return new Font(FlatInterFont.FAMILY, Font.PLAIN, 1).deriveFont(scaled);
    }

    /** The size asked for when the program was started: a number, or a percentage. */
    private static float startScale() {
        String asked = System.getProperty("flatlaf.uiScale", "1").strip();
        boolean share = asked.endsWith("%");
        String digits = asked.replaceAll("[%x]$", "");
        if (!digits.matches("\\d{1,3}(\\.\\d{1,3})?")) {
            return 1;
        }
        float factor = Float.parseFloat(digits) / (share ? PERCENT : 1);
        return factor < 0.5f || factor > 8 ? 1 : factor;
    }

    /** Whether the look is dark. */
    public static boolean dark() {
        return FlatLaf.isLafDark();
    }

    /** A length at the present size. */
    public static int scaled(int pixels) {
        return UIScale.scale(pixels);
    }
}
