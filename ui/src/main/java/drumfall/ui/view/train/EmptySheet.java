// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.view.train;

import java.awt.Dimension;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;

/** What a drawing shows before there is a train: one sentence under the outline of a wheel and its pinion. */
final class EmptySheet {
    private EmptySheet() {}

    static void paint(Graphics2D graphics, Inks inks, TabularText text, Dimension size, String sentence, double unit) {
        double x = size.width / 2.0;
        double y = size.height / 2.0;
        double wheel = 34 * unit;
        double pinion = 10 * unit;
        double top = y - 22 * unit;
        graphics.setColor(inks.hairline());
        graphics.setStroke(Pens.chain(unit));
        graphics.draw(GearShape.circle(x - pinion, top, wheel));
        graphics.draw(GearShape.circle(x + wheel, top, pinion));
        graphics.draw(new Line2D.Double(x - pinion - wheel - 8 * unit, top, x + wheel + pinion + 8 * unit, top));
        graphics.setColor(inks.lighter());
        double font = 13 * unit;
        text.draw(graphics, sentence, x - text.width(sentence, font) / 2, y + 38 * unit, font);
    }
}
