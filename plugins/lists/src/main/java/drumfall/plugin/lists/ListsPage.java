// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.plugin.lists;

import java.io.IOException;
import java.io.OutputStream;
import java.util.List;
import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;

/** Writes tables as one page that needs no other file and prints on A4 or Letter. */
final class ListsPage {
    private static final List<String> CAUTIONS = List.of(
            "A hanging weight can fall. Use a line and a hook of a known rating, fix them into structure, let nothing and"
                    + " nobody be under the weight, and keep children and animals away.",
            "Wear eye protection when you drill or saw; hold the part in a clamp, not in the hand.",
            "Fill the weight with steel shot where you can. Use lead only sealed, and with gloves on.",
            "The figures are design aids, not a certified structural calculation. Fixings follow your local building code;"
                    + " where a wall or a ceiling is in doubt, ask a licensed professional.");

    private static final String STYLE = """
            body { font: 11pt/1.35 sans-serif; color: #111; background: #fff; margin: 1.2cm auto; max-width: 25cm; }
            h1 { font-size: 18pt; margin: 0 0 0.2em; }
            h2 { font-size: 13pt; margin: 1.6em 0 0.3em; break-after: avoid; }
            p { margin: 0.3em 0; }
            table { border-collapse: collapse; width: 100%; font-size: 9.5pt; }
            th, td { text-align: left; vertical-align: top; padding: 0.2em 0.6em 0.2em 0; border-bottom: 0.5pt solid #999; }
            th { font-weight: 600; }
            tr { break-inside: avoid; }
            thead { display: table-header-group; }
            @page { margin: 1.5cm; }
            @media print { body { margin: 0; } }
            """;

    private final XMLStreamWriter out;

    private ListsPage(XMLStreamWriter out) {
        this.out = out;
    }

    /**
     * Writes the page.
     *
     * @param name of the clock
     * @param train its train
     * @param tables the lists
     * @param stream where to
     */
    static void write(String name, String train, List<Table> tables, OutputStream stream) throws IOException {
        try {
            XMLStreamWriter out = XMLOutputFactory.newInstance().createXMLStreamWriter(stream, "UTF-8");
            new ListsPage(out).page(name, train, tables);
            out.close();
        } catch (XMLStreamException broken) {
            throw new IOException("The lists could not be written as a page.", broken);
        }
    }

    private void page(String name, String train, List<Table> tables) throws XMLStreamException {
        out.writeDTD("<!DOCTYPE html>\n");
        out.writeStartElement("html");
        out.writeAttribute("xmlns", "http://www.w3.org/1999/xhtml");
        out.writeAttribute("lang", "en");
        out.writeAttribute("xml:lang", "en");
        out.writeStartElement("head");
        out.writeEmptyElement("meta");
        out.writeAttribute("charset", "UTF-8");
        element("title", name + ": lists");
        element("style", STYLE);
        out.writeEndElement();
        out.writeStartElement("body");
        element("h1", name);
        element("p", train);
        out.writeStartElement("ul");
        for (String caution : CAUTIONS) {
            element("li", caution);
        }
        out.writeEndElement();
        for (Table table : tables) {
            table(table);
        }
        out.writeEndElement();
        out.writeEndElement();
        out.writeCharacters("\n");
    }

    private void table(Table table) throws XMLStreamException {
        element("h2", table.title());
        if (!table.remark().isEmpty()) {
            element("p", table.remark());
        }
        out.writeStartElement("table");
        out.writeStartElement("thead");
        row("th", table.header().stream().map(ListsPage::words).toList());
        out.writeEndElement();
        out.writeStartElement("tbody");
        for (List<String> row : table.rows()) {
            row("td", row);
        }
        out.writeEndElement();
        out.writeEndElement();
    }

    /** A column's name as it is read: {@code mass_g} as {@code mass, g}. */
    static String words(String column) {
        return column.replaceFirst("_(mm|g|kg)$", ", $1").replace('_', ' ');
    }

    private void row(String cell, List<String> texts) throws XMLStreamException {
        out.writeStartElement("tr");
        for (String text : texts) {
            element(cell, text);
        }
        out.writeEndElement();
        out.writeCharacters("\n");
    }

    private void element(String name, String text) throws XMLStreamException {
        out.writeStartElement(name);
        out.writeCharacters(text);
        out.writeEndElement();
    }
}
