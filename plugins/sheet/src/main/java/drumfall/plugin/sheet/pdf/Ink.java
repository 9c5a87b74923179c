// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.plugin.sheet.pdf;

import drumfall.plugin.sheet.draw.Drawing;
import drumfall.plugin.sheet.draw.Stroke;
import drumfall.solver.teeth.outline.Point;
import java.awt.Color;
import java.io.IOException;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDPageContentStream;

/** Draws on one page, points from its lower left corner. */
final class Ink implements AutoCloseable {
    static final Color BLACK = new Color(0x1A1A1A);
    static final Color GREY = new Color(0x666666);
    static final Color PALE = new Color(0xBBBBBB);

    private final PDPageContentStream content;

    Ink(PDPageContentStream content) {
        this.content = content;
    }

    void text(String text, Style style, Color colour, double x, double y) throws IOException {
        content.beginText();
        content.setNonStrokingColor(colour);
        content.setFont(style.face().font(), (float) style.size());
        content.newLineAtOffset((float) x, (float) y);
        content.showText(style.face().shown(text));
        content.endText();
    }

    void textRight(String text, Style style, Color colour, double right, double y) throws IOException {
        text(text, style, colour, right - style.face().width(text, style.size()), y);
    }

    void line(double x1, double y1, double x2, double y2, double width, Color colour) throws IOException {
        content.setStrokingColor(colour);
        content.setLineWidth((float) width);
        content.moveTo((float) x1, (float) y1);
        content.lineTo((float) x2, (float) y2);
        content.stroke();
    }

    void frame(double x, double y, double width, double height, double line, Color colour) throws IOException {
        content.setStrokingColor(colour);
        content.setLineWidth((float) line);
        content.addRect((float) x, (float) y, (float) width, (float) height);
        content.stroke();
    }

    /** Draws within a window of the page only, until {@link #restore()}. */
    void clip(double x, double y, double width, double height) throws IOException {
        content.saveGraphicsState();
        content.addRect((float) x, (float) y, (float) width, (float) height);
        content.clip();
    }

    void restore() throws IOException {
        content.restoreGraphicsState();
    }

    /** A drawing with its origin at a place, so many points to a millimetre. */
    void drawing(Drawing drawing, double x, double y, double scale, double width) throws IOException {
        content.setStrokingColor(BLACK);
        content.setLineWidth((float) width);
        content.setLineJoinStyle(1);
        for (Stroke stroke : drawing.strokes()) {
            path(stroke.points(), x, y, scale);
        }
    }

    private void path(List<Point> points, double x, double y, double scale) throws IOException {
        boolean first = true;
        for (Point point : points) {
            float px = (float) (x + scale * point.x());
            float py = (float) (y + scale * point.y());
            if (first) {
                content.moveTo(px, py);
            } else {
                content.lineTo(px, py);
            }
            first = false;
        }
        content.closeAndStroke();
    }

    @Override
    public void close() throws IOException {
        content.close();
    }
}
