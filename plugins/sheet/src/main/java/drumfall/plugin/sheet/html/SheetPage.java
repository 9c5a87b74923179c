// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.plugin.sheet.html;

import drumfall.plugin.sheet.content.Block;
import drumfall.plugin.sheet.content.Section;
import drumfall.plugin.sheet.content.Sheet;
import drumfall.plugin.sheet.draw.Drawing;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;

/** Writes a builder's sheet as one page that needs no other file. */
public final class SheetPage implements Block.Writer<XMLStreamException> {
    private final XMLStreamWriter out;
    private String heading = "";

    private SheetPage(XMLStreamWriter out) {
        this.out = out;
    }

    /**
     * Writes a sheet.
     *
     * @param sheet the sheet
     * @param stream where to
     */
    public static void write(Sheet sheet, OutputStream stream) throws IOException {
        try {
            XMLStreamWriter out = XMLOutputFactory.newInstance().createXMLStreamWriter(stream, "UTF-8");
            new SheetPage(out).page(sheet);
            out.close();
        } catch (XMLStreamException broken) {
            throw new IOException("The sheet could not be written as a page.", broken);
        }
    }

    private void page(Sheet sheet) throws XMLStreamException, IOException {
        out.writeDTD("<!DOCTYPE html>\n");
        start("html");
        out.writeAttribute("xmlns", "http://www.w3.org/1999/xhtml");
        out.writeAttribute("lang", "en");
        out.writeAttribute("xml:lang", "en");
        head(sheet);
        start("body");
        start("header");
        classed("p", "kind", "Builder\u2019s sheet");
        text("h1", sheet.title());
        classed("p", "line", sheet.subtitle());
        out.writeEndElement();
        start("main");
        for (Section section : sheet.sections()) {
            section(section);
        }
        out.writeEndElement();
        start("footer");
        text("p", "Worked out by Drumfall " + sheet.version() + ".");
        out.writeEndElement();
        out.writeEndElement();
        out.writeEndElement();
    }

    private void head(Sheet sheet) throws XMLStreamException, IOException {
        start("head");
        out.writeEmptyElement("meta");
        out.writeAttribute("charset", "utf-8");
        out.writeEmptyElement("meta");
        out.writeAttribute("name", "viewport");
        out.writeAttribute("content", "width=device-width, initial-scale=1");
        text("title", "Builder\u2019s sheet: " + sheet.title());
        text("style", style());
        out.writeEndElement();
    }

    private static String style() throws IOException {
        try (var in = SheetPage.class.getResourceAsStream("sheet.css")) {
            if (in == null) {
                throw new IOException("The style (sheet.css) must come with the jar. Maybe package it anew.");
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    private void section(Section section) throws XMLStreamException {
        heading = section.title();
        start("section");
        text("h2", heading);
        for (Block block : section.blocks()) {
            block.write(this);
        }
        out.writeEndElement();
    }

    @Override
    public void paragraph(Block.Paragraph paragraph) throws XMLStreamException {
        text("p", paragraph.text());
    }

    @Override
    public void listing(Block.Listing listing) throws XMLStreamException {
        start(listing.ordered() ? "ol" : "ul");
        for (String item : listing.items()) {
            text("li", item);
        }
        out.writeEndElement();
    }

    @Override
    public void table(Block.Table table) throws XMLStreamException {
        text("h3", table.caption());
        start("div");
        out.writeAttribute("class", "wide");
        out.writeAttribute("role", "region");
        out.writeAttribute("tabindex", "0");
        out.writeAttribute("aria-label", table.caption());
        start("table");
        start("thead");
        start("tr");
        for (Block.Column column : table.columns()) {
            cell("th", "col", column.numbers(), column.head());
        }
        out.writeEndElement();
        out.writeEndElement();
        start("tbody");
        for (List<String> row : table.rows()) {
            row(table, row);
        }
        out.writeEndElement();
        out.writeEndElement();
        out.writeEndElement();
    }

    private void row(Block.Table table, List<String> row) throws XMLStreamException {
        start("tr");
        for (int i = 0; i < row.size(); i++) {
            boolean numbers = table.columns().get(i).numbers();
            cell(i == 0 ? "th" : "td", i == 0 ? "row" : "", numbers, row.get(i));
        }
        out.writeEndElement();
    }

    private void cell(String name, String scope, boolean number, String content) throws XMLStreamException {
        start(name);
        if (!scope.isEmpty()) {
            out.writeAttribute("scope", scope);
        }
        if (number) {
            out.writeAttribute("class", "n");
        }
        out.writeCharacters(content);
        out.writeEndElement();
    }

    @Override
    public void figures(Block.Figures figures) throws XMLStreamException {
        double largest = figures.drawings().stream()
                .mapToDouble(drawing -> drawing.box().width())
                .max()
                .orElse(1);
        start("div");
        out.writeAttribute("class", figures.inARow() < 3 ? "figures pair" : "figures");
        for (Drawing drawing : figures.drawings()) {
            start("figure");
            new DrawingElement(out).write(drawing, largest);
            text("figcaption", drawing.title());
            out.writeEndElement();
        }
        out.writeEndElement();
    }

    private void classed(String name, String kind, String content) throws XMLStreamException {
        start(name);
        out.writeAttribute("class", kind);
        out.writeCharacters(content);
        out.writeEndElement();
    }

    private void text(String name, String content) throws XMLStreamException {
        start(name);
        out.writeCharacters(content);
        out.writeEndElement();
    }

    private void start(String name) throws XMLStreamException {
        out.writeCharacters("\n");
        out.writeStartElement(name);
    }
}
