// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.plugin.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.StringReader;
import javax.xml.parsers.DocumentBuilder;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;

class HtmlTest {
    /** The page as the JDK's own parser reads it; it refuses what is not well-formed. */
    private static Document parsed(String page) {
        try {
            DocumentBuilder builder = DocumentBuilderFactory.newInstance().newDocumentBuilder();
            return builder.parse(new InputSource(new StringReader(page)));
        } catch (ParserConfigurationException | SAXException | IOException broken) {
            throw new AssertionError(broken);
        }
    }

    static String text(String page) {
        return Pages.oneLine(page.replaceAll("(?s)<style>.*?</style>", "").replaceAll("<[^>]*>", " "))
                .replace("&amp;", "&");
    }

    private static NodeList all(String name) {
        return parsed(Trials.files().text("builders-sheet.html")).getElementsByTagName(name);
    }

    @Test
    void the_page_is_well_formed_and_says_its_language() {
        Element html = parsed(Trials.files().text("builders-sheet.html")).getDocumentElement();
        assertThat(html.getTagName()).isEqualTo("html");
        assertThat(html.getAttribute("lang")).isEqualTo("en");
        assertThat(all("h1").getLength()).isEqualTo(1);
    }

    @Test
    void every_head_of_a_table_says_what_it_is_the_head_of() {
        NodeList heads = all("th");
        assertThat(heads.getLength()).isGreaterThan(20);
        for (int i = 0; i < heads.getLength(); i++) {
            assertThat(((Element) heads.item(i)).getAttribute("scope")).isIn("row", "col");
        }
    }

    @Test
    void every_drawing_has_a_caption_and_a_name_for_readers_who_do_not_see() {
        NodeList figures = all("figure");
        assertThat(figures.getLength()).isGreaterThan(3);
        for (int i = 0; i < figures.getLength(); i++) {
            Element figure = (Element) figures.item(i);
            String caption = figure.getElementsByTagName("figcaption").item(0).getTextContent();
            Element drawing = (Element) figure.getElementsByTagName("svg").item(0);
            assertThat(drawing.getAttribute("aria-label")).isEqualTo(caption);
        }
    }

    @Test
    void the_page_asks_for_no_other_file() {
        assertThat(Trials.files().text("builders-sheet.html"))
                .doesNotContain("src=")
                .doesNotContain("href=")
                .doesNotContain("url(")
                .doesNotContain("@import");
    }

    @Test
    void a_name_with_marks_control_characters_and_letters_that_no_font_has_is_written() throws IOException {
        String name = "A <b> & \"c\" \u0001 \u6642\u8a08 \ud800";
        var files = Trials.files(Trials.named(name));
        assertThat(parsed(files.text("builders-sheet.html"))
                        .getElementsByTagName("h1")
                        .item(0)
                        .getTextContent())
                .startsWith("A <b> & \"c\"")
                .contains("\u6642\u8a08");
        assertThat(Pages.text(files.bytes("builders-sheet-a4.pdf"))).contains("A <b> & \"c\" ??");
    }
}
