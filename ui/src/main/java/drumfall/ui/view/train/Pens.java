// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.view.train;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.RenderingHints;

/** Line kinds of the drawings, after the line types of technical drawings (ISO 128-2:2020): wide, narrow, long-dashed dotted. */
public final class Pens {
    private Pens() {}

    /**
     * Wide continuous line: visible outlines.
     *
     * @param unit size of a drawing unit, px
     */
    public static BasicStroke outline(double unit) {
        return solid(1.3 * unit);
    }

    /**
     * Narrow continuous line: dimension lines, teeth.
     *
     * @param unit size of a drawing unit, px
     */
    public static BasicStroke narrow(double unit) {
        return solid(0.8 * unit);
    }

    /**
     * Long-dashed dotted narrow line: pitch circles and centre lines.
     *
     * @param unit size of a drawing unit, px
     */
    public static BasicStroke chain(double unit) {
        float u = (float) unit;
        return new BasicStroke(
                0.8f * u,
                BasicStroke.CAP_BUTT,
                BasicStroke.JOIN_ROUND,
                10f,
                new float[] {9 * u, 2.5f * u, 1.5f * u, 2.5f * u},
                0);
    }

    /**
     * Continuous line of any width.
     *
     * @param width px
     */
    public static BasicStroke solid(double width) {
        return new BasicStroke((float) width, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND);
    }

    /**
     * A copy of the graphics set up for fine lines.
     *
     * @param graphics what to draw on; the copy must be disposed of
     */
    public static Graphics2D sharpened(Graphics2D graphics) {
        Graphics2D copy = (Graphics2D) graphics.create();
        copy.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        copy.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        copy.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        copy.setRenderingHint(RenderingHints.KEY_FRACTIONALMETRICS, RenderingHints.VALUE_FRACTIONALMETRICS_ON);
        return copy;
    }
}
