// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.plugin.sheet.pdf;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDMetadata;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.destination.PDPageFitWidthDestination;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDDocumentOutline;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.apache.pdfbox.pdmodel.interactive.viewerpreferences.PDViewerPreferences;

/**
 * A document of pages; the same content gives the same bytes, since it holds no date and its identifier follows from its
 * title.
 */
final class Booklet implements AutoCloseable {
    private static final String METADATA = """
            <?xpacket begin="\uFEFF" id="W5M0MpCehiHzreSzNTczkc9d"?>
            <x:xmpmeta xmlns:x="adobe:ns:meta/"><rdf:RDF xmlns:rdf="http://www.w3.org/1999/02/22-rdf-syntax-ns#">
            <rdf:Description rdf:about="" xmlns:dc="http://purl.org/dc/elements/1.1/">
            <dc:title><rdf:Alt><rdf:li xml:lang="x-default">%s</rdf:li></rdf:Alt></dc:title>
            <dc:language><rdf:Bag><rdf:li>en</rdf:li></rdf:Bag></dc:language>
            </rdf:Description></rdf:RDF></x:xmpmeta>
            <?xpacket end="r"?>""";

    private final PDDocument document = new PDDocument();
    private final PDDocumentOutline outline = new PDDocumentOutline();
    private final Paper paper;

    Booklet(String title, String program, Paper paper) throws IOException {
        this.paper = paper;
        document.setDocumentId((long) title.hashCode());
        document.getDocumentInformation().setTitle(title);
        document.getDocumentInformation().setCreator(program);
        document.getDocumentCatalog().setLanguage("en");
        document.getDocumentCatalog().setDocumentOutline(outline);
        PDViewerPreferences preferences = new PDViewerPreferences(new org.apache.pdfbox.cos.COSDictionary());
        preferences.setDisplayDocTitle(true);
        document.getDocumentCatalog().setViewerPreferences(preferences);
        byte[] packet = METADATA.replace("%s", escaped(title)).getBytes(StandardCharsets.UTF_8);
        document.getDocumentCatalog().setMetadata(new PDMetadata(document, new ByteArrayInputStream(packet)));
    }

    private static String escaped(String text) {
        return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
    }

    Typeface regular() throws IOException {
        return Typeface.regular(document);
    }

    Typeface medium() throws IOException {
        return Typeface.medium(document);
    }

    Paper paper() {
        return paper;
    }

    int pages() {
        return document.getNumberOfPages();
    }

    /** Begins a page; close what is handed out before the next begins. */
    Ink page() throws IOException {
        PDPage page = new PDPage(paper.rectangle());
        document.addPage(page);
        return new Ink(new PDPageContentStream(document, page));
    }

    /** Draws on a page that was closed. */
    Ink again(int page) throws IOException {
        return new Ink(new PDPageContentStream(
                document, document.getPage(page), PDPageContentStream.AppendMode.APPEND, true, true));
    }

    /** Makes the last page findable by a heading. */
    void mark(String heading) {
        PDPageFitWidthDestination place = new PDPageFitWidthDestination();
        place.setPage(document.getPage(pages() - 1));
        PDOutlineItem item = new PDOutlineItem();
        item.setTitle(heading);
        item.setDestination(place);
        outline.addLast(item);
    }

    void save(OutputStream out) throws IOException {
        document.save(out);
    }

    @Override
    public void close() throws IOException {
        document.close();
    }
}
