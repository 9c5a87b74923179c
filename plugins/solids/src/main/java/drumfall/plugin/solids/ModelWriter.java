// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.plugin.solids;

import drumfall.solver.making.MovementPart;
import drumfall.solver.making.solid.Box;
import java.io.BufferedWriter;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;

/** The 3D model part of a 3MF package (3MF Core Specification 1.4.0, chapters 3 and 4). */
final class ModelWriter {
    static final String CORE = "http://schemas.microsoft.com/3dmanufacturing/core/2015/02";

    /** The specification asks for a colour beside a material's name; a plain grey. */
    private static final String GREY = "#B0B0B0FF";

    private static final int MATERIALS = 1;
    private static final int BUFFER = 1 << 16;

    private final List<MeshedPart> parts;
    private final XMLStreamWriter xml;

    private ModelWriter(List<MeshedPart> parts, XMLStreamWriter xml) {
        this.parts = parts;
        this.xml = xml;
    }

    /**
     * Writes the model.
     *
     * @param title of the whole
     * @param parts its parts
     * @param width of the rows the parts are laid out in, mm
     * @param out not closed here
     */
    static void write(String title, List<MeshedPart> parts, double width, OutputStream out) throws XMLStreamException {
        // The writer of the platform hands a stream byte by byte.
        Writer text = new BufferedWriter(new OutputStreamWriter(out, StandardCharsets.UTF_8), BUFFER);
        XMLStreamWriter xml = XMLOutputFactory.newInstance().createXMLStreamWriter(text);
        new ModelWriter(parts, xml).model(title, width);
        xml.flush();
    }

    private void model(String title, double width) throws XMLStreamException {
        xml.writeStartDocument(StandardCharsets.UTF_8.name(), "1.0");
        xml.writeStartElement("model");
        xml.writeDefaultNamespace(CORE);
        xml.writeAttribute("unit", "millimeter");
        xml.writeAttribute("xml:lang", "en");
        metadata("Title", title);
        metadata("Application", "Drumfall");
        xml.writeStartElement("resources");
        List<String> materials =
                parts.stream().map(p -> p.part().material()).distinct().toList();
        materials(materials);
        for (int i = 0; i < parts.size(); i++) {
            object(id(i), parts.get(i), materials);
        }
        xml.writeEndElement();
        build(width);
        xml.writeEndElement();
        xml.writeEndDocument();
    }

    private static String id(int index) {
        return Integer.toString(MATERIALS + 1 + index);
    }

    private void metadata(String name, String text) throws XMLStreamException {
        xml.writeStartElement("metadata");
        xml.writeAttribute("name", name);
        xml.writeCharacters(text);
        xml.writeEndElement();
    }

    private void materials(List<String> names) throws XMLStreamException {
        xml.writeStartElement("basematerials");
        xml.writeAttribute("id", Integer.toString(MATERIALS));
        for (String name : names) {
            xml.writeEmptyElement("base");
            xml.writeAttribute("name", name);
            xml.writeAttribute("displaycolor", GREY);
        }
        xml.writeEndElement();
    }

    private void object(String id, MeshedPart meshed, List<String> materials) throws XMLStreamException {
        MovementPart part = meshed.part();
        xml.writeStartElement("object");
        xml.writeAttribute("id", id);
        xml.writeAttribute("type", "model");
        xml.writeAttribute("name", part.name());
        xml.writeAttribute("pid", Integer.toString(MATERIALS));
        xml.writeAttribute("pindex", Integer.toString(materials.indexOf(part.material())));
        xml.writeStartElement("mesh");
        vertices(meshed.mesh());
        triangles(meshed.mesh());
        xml.writeEndElement();
        xml.writeEndElement();
    }

    private void vertices(Mesh mesh) throws XMLStreamException {
        xml.writeStartElement("vertices");
        for (int i = 0; i < mesh.vertexCount(); i++) {
            xml.writeEmptyElement("vertex");
            xml.writeAttribute("x", number(mesh.coordinate(i, 0)));
            xml.writeAttribute("y", number(mesh.coordinate(i, 1)));
            xml.writeAttribute("z", number(mesh.coordinate(i, 2)));
        }
        xml.writeEndElement();
    }

    private void triangles(Mesh mesh) throws XMLStreamException {
        xml.writeStartElement("triangles");
        for (int i = 0; i < mesh.triangleCount(); i++) {
            xml.writeEmptyElement("triangle");
            xml.writeAttribute("v1", Integer.toString(mesh.vertex(i, 0)));
            xml.writeAttribute("v2", Integer.toString(mesh.vertex(i, 1)));
            xml.writeAttribute("v3", Integer.toString(mesh.vertex(i, 2)));
        }
        xml.writeEndElement();
    }

    /** One item for each piece of a part. */
    private void build(double width) throws XMLStreamException {
        List<Integer> items = new ArrayList<>();
        List<Box> boxes = new ArrayList<>();
        for (int i = 0; i < parts.size(); i++) {
            for (int piece = 0; piece < parts.get(i).part().count(); piece++) {
                items.add(i);
                boxes.add(parts.get(i).part().solid().box());
            }
        }
        List<BedRows.Place> places = BedRows.of(boxes, width);
        xml.writeStartElement("build");
        for (int i = 0; i < items.size(); i++) {
            xml.writeEmptyElement("item");
            xml.writeAttribute("objectid", id(items.get(i)));
            BedRows.Place place = places.get(i);
            xml.writeAttribute(
                    "transform",
                    "1 0 0 0 1 0 0 0 1 " + number((float) place.x()) + " " + number((float) place.y()) + " 0");
        }
        xml.writeEndElement();
    }

    /** The shortest decimal that reads as this float again, without an exponent. */
    private static String number(float value) {
        BigDecimal decimal = new BigDecimal(Float.toString(value));
        return decimal.signum() == 0 ? "0" : decimal.stripTrailingZeros().toPlainString();
    }
}
