// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.plugin.sheet.html;

import drumfall.plugin.sheet.draw.Drawing;
import drumfall.plugin.sheet.draw.Label;
import drumfall.plugin.sheet.draw.Stroke;
import drumfall.solver.making.solid.Box;
import drumfall.solver.teeth.outline.Point;
import java.math.BigDecimal;
import java.math.RoundingMode;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;

/** Writes a drawing into a page. */
final class DrawingElement {
    private static final double PERCENT = 100;

    /** So many lines of letters would fill a drawing. */
    private static final double LETTERS = 28;

    private final XMLStreamWriter out;

    DrawingElement(XMLStreamWriter out) {
        this.out = out;
    }

    /** All drawings of a page are shrunk alike, the widest to the width of its place. */
    void write(Drawing drawing, double widest) throws XMLStreamException {
        Box box = drawing.box();
        out.writeStartElement("svg");
        out.writeAttribute("xmlns", "http://www.w3.org/2000/svg");
        out.writeAttribute("role", "img");
        out.writeAttribute("aria-label", drawing.title());
        out.writeAttribute("style", "width:" + number(PERCENT * box.width() / widest) + "%");
        out.writeAttribute(
                "viewBox",
                number(box.left() - 1) + " " + number(-box.top() - 1) + " " + number(box.width() + 2) + " "
                        + number(box.depth() + 2));
        out.writeEmptyElement("path");
        out.writeAttribute("d", path(drawing));
        for (Label label : drawing.labels()) {
            out.writeStartElement("text");
            out.writeAttribute("x", number(label.x()));
            out.writeAttribute("y", number(-label.y()));
            out.writeAttribute("font-size", number(box.depth() / LETTERS));
            out.writeCharacters(label.text());
            out.writeEndElement();
        }
        out.writeEndElement();
    }

    private static String path(Drawing drawing) {
        StringBuilder path = new StringBuilder();
        for (Stroke stroke : drawing.strokes()) {
            String next = "M";
            for (Point point : stroke.points()) {
                path.append(next).append(number(point.x())).append(' ').append(number(-point.y()));
                next = "L";
            }
            path.append('Z');
        }
        return path.toString();
    }

    /** Hundredths of a millimetre do for a small drawing. */
    private static String number(double value) {
        BigDecimal rounded = BigDecimal.valueOf(value).setScale(2, RoundingMode.HALF_EVEN);
        return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
    }
}
