// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.plugin.outlines;

import drumfall.solver.teeth.outline.ArcSegment;
import drumfall.solver.teeth.outline.OutlineSegment;
import drumfall.solver.teeth.outline.Point;
import java.io.OutputStream;
import java.util.List;
import java.util.Locale;
import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;

/** Writes a drawing as SVG 1.1, one user unit to a millimetre, y turned downwards. */
final class SvgWriter implements Shape.Pen<XMLStreamException> {
    private static final String NAMESPACE = "http://www.w3.org/2000/svg";
    private static final String STYLE = "fill:none;stroke:#000;stroke-width:0.1";
    private static final String CHAIN_DOTTED = "4 1 0.5 1";

    private final XMLStreamWriter xml;

    private SvgWriter(XMLStreamWriter xml) {
        this.xml = xml;
    }

    static void write(Drawing drawing, OutputStream out) throws XMLStreamException {
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
        xml.writeAttribute("width", Numbers.text(drawing.width()) + "mm");
        xml.writeAttribute("height", Numbers.text(drawing.height()) + "mm");
        xml.writeAttribute("viewBox", viewBox(drawing));
        xml.writeAttribute("style", STYLE);
        newLine();
        xml.writeStartElement(NAMESPACE, "title");
        xml.writeCharacters(drawing.title());
        xml.writeEndElement();
        newLine();
        for (Shape shape : drawing.shapes()) {
            shape.draw(this);
        }
        xml.writeEndElement();
        newLine();
        xml.writeEndDocument();
    }

    private static String viewBox(Drawing drawing) {
        return String.join(
                " ",
                Numbers.text(drawing.left()),
                Numbers.text(-drawing.top()),
                Numbers.text(drawing.width()),
                Numbers.text(drawing.height()));
    }

    @Override
    public void outline(Shape.Outline outline) throws XMLStreamException {
        StringBuilder path = new StringBuilder();
        List<OutlineSegment> segments = outline.ring().segments();
        path.append('M').append(place(outline.place(segments.get(0).start()))).append(' ');
        for (OutlineSegment segment : segments) {
            path.append(segment instanceof ArcSegment arc ? arc(arc) : "L")
                    .append(place(outline.place(segment.end())))
                    .append(' ');
        }
        start("path", outline.layer());
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
        start("circle", circle.layer());
        xml.writeAttribute("cx", Numbers.text(circle.centre().x()));
        xml.writeAttribute("cy", Numbers.text(-circle.centre().y()));
        xml.writeAttribute("r", Numbers.text(circle.radius()));
        newLine();
    }

    @Override
    public void line(Shape.Line line) throws XMLStreamException {
        start("line", line.layer());
        xml.writeAttribute("x1", Numbers.text(line.from().x()));
        xml.writeAttribute("y1", Numbers.text(-line.from().y()));
        xml.writeAttribute("x2", Numbers.text(line.to().x()));
        xml.writeAttribute("y2", Numbers.text(-line.to().y()));
        newLine();
    }

    private void start(String element, Layer layer) throws XMLStreamException {
        xml.writeEmptyElement(NAMESPACE, element);
        xml.writeAttribute("class", layer.name().toLowerCase(Locale.ROOT));
        if (layer.chainDotted()) {
            xml.writeAttribute("stroke-dasharray", CHAIN_DOTTED);
        }
    }

    private void newLine() throws XMLStreamException {
        xml.writeCharacters("\n");
    }
}
