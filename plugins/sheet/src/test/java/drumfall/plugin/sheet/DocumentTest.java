// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.plugin.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import drumfall.plugin.api.SettingValues;
import drumfall.plugin.api.trial.TrialFolder;
import drumfall.plugin.sheet.content.Block;
import drumfall.plugin.sheet.content.Section;
import drumfall.plugin.sheet.content.Sheet;
import drumfall.plugin.sheet.pdf.Paper;
import drumfall.plugin.sheet.pdf.SheetPages;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;

class DocumentTest {
    @Test
    void the_same_design_gives_the_same_bytes() {
        TrialFolder again = Trials.files(Trials.eightDays());
        assertThat(again.names()).isEqualTo(Trials.files().names());
        for (String name : again.names()) {
            assertThat(again.bytes(name)).as(name).isEqualTo(Trials.files().bytes(name));
        }
    }

    @Test
    void every_font_is_embedded() throws IOException {
        for (String name : List.of("builders-sheet-a4.pdf", "templates-letter.pdf")) {
            try (PDDocument document = Loader.loadPDF(Trials.files().bytes(name))) {
                for (PDPage page : document.getPages()) {
                    for (var font : page.getResources().getFontNames()) {
                        PDFont used = page.getResources().getFont(font);
                        assertThat(used.isEmbedded()).as(used.getName()).isTrue();
                    }
                }
            }
        }
    }

    @Test
    void pages_are_numbered_and_headings_can_be_gone_to() throws IOException {
        try (PDDocument document = Loader.loadPDF(Trials.files().bytes("builders-sheet-a4.pdf"))) {
            int pages = document.getNumberOfPages();
            PDFTextStripper stripper = new PDFTextStripper();
            for (int page = 1; page <= pages; page++) {
                stripper.setStartPage(page);
                stripper.setEndPage(page);
                assertThat(stripper.getText(document)).contains("Page " + page + " of " + pages);
            }
            var outline = document.getDocumentCatalog().getDocumentOutline();
            assertThat(outline.getFirstChild().getTitle()).isEqualTo("Before you begin");
            assertThat(outline.getLastChild().getTitle()).isEqualTo("If it stops");
        }
    }

    @Test
    void a_table_longer_than_a_page_repeats_its_head_and_loses_no_row() throws IOException {
        List<List<String>> rows = IntStream.range(0, 120)
                .mapToObj(i -> List.of(
                        "row " + i,
                        Collections.nCopies(1 + i % 9, "words that wrap").toString()))
                .toList();
        Block table = new Block.Table(
                "Long", List.of(new Block.Column("Name", 1, false), new Block.Column("Headword", 1, false)), rows);
        Sheet sheet = new Sheet("Long", "A long table", "0", List.of(new Section("Long", List.of(table))));
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        SheetPages.write(sheet, Paper.LETTER, out);
        try (PDDocument document = Loader.loadPDF(out.toByteArray())) {
            assertThat(document.getNumberOfPages()).isGreaterThan(3);
            String text = new PDFTextStripper().getText(document);
            assertThat(text.split("Headword", -1)).hasSize(document.getNumberOfPages() + 1);
            for (int i = 0; i < rows.size(); i++) {
                assertThat(text).contains("row " + i + " ");
            }
        }
    }

    @Test
    void only_the_paper_that_is_asked_for_is_set() {
        TrialFolder letter =
                Trials.files(Trials.eightDays().with(SettingValues.USUAL.with(PaperChoice.SETTING, "letter")));
        assertThat(letter.names())
                .containsExactly("builders-sheet-letter.pdf", "builders-sheet.html", "templates-letter.pdf");
        for (String name : letter.names()) {
            assertThat(letter.bytes(name)).as(name).isEqualTo(Trials.files().bytes(name));
        }
    }

    /**
     * An inch is 25.4 mm (international yard and pound agreement, 1959). Both are rounded, each by half its last digit at most;
     * every other word is the same.
     */
    @Test
    void lengths_in_inches_are_those_in_millimetres() {
        SettingValues inches = SettingValues.USUAL.with(SheetExporter.UNITS, "inch");
        List<String> metric = words(Trials.files());
        List<String> imperial = words(Trials.files(Trials.eightDays().with(inches)));
        assertThat(imperial).hasSameSizeAs(metric);
        int lengths = 0;
        for (int i = 0; i < metric.size(); i++) {
            if (imperial.get(i).equals("in") && !metric.get(i).equals("in")) {
                lengths++;
                double unit = metric.get(i).equals("m") ? 1000 : 1;
                assertThat(25.4 * Double.parseDouble(imperial.get(i - 1)))
                        .as(metric.get(i - 1) + " " + metric.get(i))
                        .isCloseTo(
                                unit * Double.parseDouble(metric.get(i - 1)),
                                within(unit * rounding(metric.get(i - 1)) + 25.4 * rounding(imperial.get(i - 1))));
            } else if (!imperial.get(i).equals(metric.get(i))) {
                assertThat(imperial.get(i + 1)).isEqualTo("in");
            }
        }
        assertThat(lengths).isGreaterThan(40);
    }

    private static List<String> words(TrialFolder files) {
        String page =
                files.text("builders-sheet.html").replaceAll("<[^>]*>", " ").replaceAll("\\b(mm|in|m)\\b", " $1 ");
        return List.of(page.strip().split("\\s+"));
    }

    private static double rounding(String number) {
        int point = number.indexOf('.');
        return 0.5000001 * Math.pow(10, point < 0 ? 0 : point + 1 - number.length());
    }
}
