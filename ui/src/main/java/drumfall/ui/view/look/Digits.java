// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.view.look;

import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;

/** Writes texts whose digits all take the same width, since Java cannot ask a font for its tabular figures. */
public final class Digits {
    private Digits() {}

    /** Smooth letters and lines. */
    public static void smooth(Graphics2D graphics) {
        graphics.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        graphics.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        graphics.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
    }

    /** Width of a text in a font. */
    public static int width(FontMetrics metrics, String text) {
        return text.chars().map(c -> cell(metrics, (char) c)).sum();
    }

    /** Writes a text from its left end. */
    public static void write(Graphics2D graphics, Font font, String text, int x, int baseline) {
        graphics.setFont(font);
        FontMetrics metrics = graphics.getFontMetrics();
        int left = x;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            int cell = cell(metrics, c);
            graphics.drawString(String.valueOf(c), left + (cell - metrics.charWidth(c)) / 2f, (float) baseline);
            left += cell;
        }
    }

    /** A plain text, shortened where it has no room. */
    public static String cut(FontMetrics metrics, String text, int room) {
        if (metrics.stringWidth(text) <= room) {
            return text;
        }
        int end = text.length();
        while (end > 0 && metrics.stringWidth(text.substring(0, end).strip() + "…") > room) {
            end--;
        }
        return text.substring(0, end).strip() + "…";
    }

    private static int cell(FontMetrics metrics, char c) {
        return c >= '0' && c <= '9' ? widest(metrics) : metrics.charWidth(c);
    }

    private static int widest(FontMetrics metrics) {
        int widest = 0;
        for (char digit = '0'; digit <= '9'; digit++) {
            widest = Math.max(widest, metrics.charWidth(digit));
        }
        return widest;
    }
}
