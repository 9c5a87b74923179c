// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.plugin.outlines.draw;

import drumfall.solver.making.solid.Box;
import drumfall.solver.teeth.outline.ArcSegment;
import drumfall.solver.teeth.outline.OutlineSegment;
import drumfall.solver.teeth.outline.Point;
import java.io.OutputStream;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;

/**
 * Writes a drawing as SVG 1.1, one user unit to a millimetre, y turned downwards; a group for each layer, its id the
 * layer's name in lower case.
 */
public final class SvgWriter implements Shape.Pen<XMLStreamException> {
    private static final String NAMESPACE = "http://www.w3.org/2000/svg";
    private static final String LINES = "fill:none;stroke:#000;stroke-width:";
    private static final String LETTERS = "fill:#000;stroke:none;font-family:sans-serif";

    /** Size of a font over the height of its capitals, as sans serif faces have it; common practice, no source. */
    private static final double FONT_SIZE = 1.4;

    private final XMLStreamWriter xml;

    private SvgWriter(XMLStreamWriter xml) {
        this.xml = xml;
    }

    /**
     * Writes a drawing; the stream stays open.
     *
     * @throws XMLStreamException if the stream does not take it
     */
    public static void write(Drawing drawing, OutputStream out) throws XMLStreamException {
        XMLStreamWriter xml = XMLOutputFactory.newDefaultFactory().createXMLStreamWriter(out, "UTF-8");
        new SvgWriter(xml).sheet(drawing);
        xml.flush();
        xml.close();
    }

    private void sheet(Drawing drawing) throws XMLStreamException {
        xml.writeStartDocument("UTF-8", "1.0");
        newLine();
        xml.setDefaultNamespace(NAMESPACE);
        xml.writeStartElement(NAMESPACE, "svg");
        xml.writeDefaultNamespace(NAMESPACE);
        xml.writeAttribute("version", "1.1");
        Box box = drawing.box();
        xml.writeAttribute("width", Numbers.text(box.width()) + "mm");
        xml.writeAttribute("height", Numbers.text(box.depth()) + "mm");
        xml.writeAttribute("viewBox", viewBox(box));
        newLine();
        xml.writeStartElement(NAMESPACE, "title");
        xml.writeCharacters(drawing.title());
        xml.writeEndElement();
        newLine();
        for (Map.Entry<Layer, List<Shape>> layer : drawing.layers().entrySet()) {
            group(layer.getKey(), layer.getValue());
        }
        xml.writeEndElement();
        newLine();
        xml.writeEndDocument();
    }

    private static String viewBox(Box box) {
        return String.join(
                " ",
                Numbers.text(box.left()),
                Numbers.text(-box.top()),
                Numbers.text(box.width()),
                Numbers.text(box.depth()));
    }

    private void group(Layer layer, List<Shape> shapes) throws XMLStreamException {
        xml.writeStartElement(NAMESPACE, "g");
        xml.writeAttribute("id", layer.name().toLowerCase(Locale.ROOT));
        xml.writeAttribute("style", LINES + Numbers.text(layer.line().width()));
        if (!layer.line().pattern().isEmpty()) {
            xml.writeAttribute("stroke-dasharray", layer.line().dashes());
        }
        newLine();
        for (Shape shape : shapes) {
            shape.draw(this);
        }
        xml.writeEndElement();
        newLine();
    }

    @Override
    public void outline(Shape.Outline outline) throws XMLStreamException {
        StringBuilder path = new StringBuilder();
        List<OutlineSegment> segments = outline.ring().segments();
        path.append('M').append(place(segments.get(0).start())).append(' ');
        for (OutlineSegment segment : segments) {
            path.append(segment instanceof ArcSegment arc ? arc(arc) : "L")
                    .append(place(segment.end()))
                    .append(' ');
        }
        xml.writeEmptyElement(NAMESPACE, "path");
        xml.writeAttribute("d", path.append('Z').toString());
        newLine();
    }

    /** The picture's y axis points down, which turns anticlockwise round. */
    private static String arc(ArcSegment arc) {
        String radius = Numbers.text(arc.radius());
        String large = Math.abs(arc.sweep()) > Math.PI ? "1" : "0";
        return "A" + radius + "," + radius + " 0 " + large + " " + (arc.sweep() > 0 ? "0" : "1") + " ";
    }

    private static String place(Point point) {
        return Numbers.text(point.x()) + "," + Numbers.text(-point.y());
    }

    @Override
    public void circle(Shape.Circle circle) throws XMLStreamException {
        xml.writeEmptyElement(NAMESPACE, "circle");
        xml.writeAttribute("cx", Numbers.text(circle.centre().x()));
        xml.writeAttribute("cy", Numbers.text(-circle.centre().y()));
        xml.writeAttribute("r", Numbers.text(circle.radius()));
        newLine();
    }

    @Override
    public void line(Shape.Line line) throws XMLStreamException {
        xml.writeEmptyElement(NAMESPACE, "line");
        xml.writeAttribute("x1", Numbers.text(line.from().x()));
        xml.writeAttribute("y1", Numbers.text(-line.from().y()));
        xml.writeAttribute("x2", Numbers.text(line.to().x()));
        xml.writeAttribute("y2", Numbers.text(-line.to().y()));
        newLine();
    }

    @Override
    public void text(Shape.Text text) throws XMLStreamException {
        xml.writeStartElement(NAMESPACE, "text");
        xml.writeAttribute("style", LETTERS);
        xml.writeAttribute("font-size", Numbers.text(FONT_SIZE * text.height()));
        String x = Numbers.text(text.at().x());
        String y = Numbers.text(-text.at().y());
        if (text.upright()) {
            xml.writeAttribute("transform", "translate(" + x + "," + y + ") rotate(-90)");
        } else {
            xml.writeAttribute("x", x);
            xml.writeAttribute("y", y);
        }
        xml.writeCharacters(text.words());
        xml.writeEndElement();
        newLine();
    }

    private void newLine() throws XMLStreamException {
        xml.writeCharacters("\n");
    }
}
