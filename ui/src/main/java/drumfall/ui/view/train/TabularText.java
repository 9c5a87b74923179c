// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.view.train;

import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.font.FontRenderContext;
import java.util.HashMap;
import java.util.Map;

/**
 * Text whose digits all take the same width, whatever the font does.
 *
 * <p>Java offers no way to ask a font for its tabular figures, so each digit is centred in a cell of the widest one.
 */
public final class TabularText {
    private static final FontRenderContext CONTEXT = new FontRenderContext(null, true, true);

    private final Font font;
    private final Map<Character, Double> widths = new HashMap<>();
    private final double digit;

    /**
     * Text in one font.
     *
     * @param font the font, of any size
     */
    public TabularText(Font font) {
        this.font = font.deriveFont(100f);
        this.digit =
                "0123456789".chars().mapToDouble(c -> natural((char) c)).max().orElseThrow();
    }

    /** The font in a size. */
    Font font(double size) {
        return font.deriveFont((float) size);
    }

    /**
     * Width of a text.
     *
     * @param text the text
     * @param size font size, px
     * @return px
     */
    public double width(String text, double size) {
        return text.chars().mapToDouble(c -> cell((char) c)).sum() * size / 100;
    }

    /**
     * Draws a text.
     *
     * @param graphics gives the colour
     * @param text the text
     * @param x left edge
     * @param baseline baseline
     * @param size font size, px
     */
    public void draw(Graphics2D graphics, String text, double x, double baseline, double size) {
        graphics.setFont(font(size));
        double left = x;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            double slack = (cell(c) - natural(c)) * size / 200;
            graphics.drawString(String.valueOf(c), (float) (left + slack), (float) baseline);
            left += cell(c) * size / 100;
        }
    }

    private double cell(char c) {
        return c >= '0' && c <= '9' ? digit : natural(c);
    }

    private double natural(char c) {
        return widths.computeIfAbsent(
                c, key -> font.getStringBounds(String.valueOf(key), CONTEXT).getWidth());
    }
}
