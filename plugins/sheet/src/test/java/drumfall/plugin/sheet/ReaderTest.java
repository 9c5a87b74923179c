// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.plugin.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Independent programs read the documents, where they are installed (poppler-utils). */
class ReaderTest {
    @TempDir
    Path folder;

    @BeforeEach
    void look() throws InterruptedException {
        assumeThat(Pages.answer("pdfinfo", "-v"))
                .as("poppler-utils are installed")
                .contains("pdfinfo");
    }

    private String written(String name) throws IOException {
        return Files.write(folder.resolve(name), Trials.files().bytes(name)).toString();
    }

    /** Sizes in points: 210 by 297 mm (ISO 216) and 8.5 by 11 inches. */
    @ParameterizedTest
    @CsvSource({
        "builders-sheet-a4.pdf,     595.276 x 841.89, Builder's sheet: Eight days",
        "builders-sheet-letter.pdf, 612 x 792,        Builder's sheet: Eight days",
        "templates-a4.pdf,          595.276 x 841.89, Paper templates: Eight days",
        "templates-letter.pdf,      612 x 792,        Paper templates: Eight days"
    })
    void another_reader_finds_size_and_title(String name, String size, String title)
            throws IOException, InterruptedException {
        assertThat(Pages.answer("pdfinfo", written(name)))
                .contains("Page size:       " + size + " pts")
                .contains(title)
                .doesNotContainIgnoringCase("error");
    }

    @Test
    void another_reader_finds_the_figures() throws IOException, InterruptedException {
        String said = Pages.oneLine(Pages.answer("pdftotext", "-layout", written("builders-sheet-a4.pdf"), "-"));
        var rating = Trials.eightDays().rating();
        assertThat(said)
                .contains(String.format(
                        Locale.ROOT,
                        "Least weight, pulley included %.3f kg",
                        rating.weight().leastWeight()))
                .contains(String.format(
                        Locale.ROOT, "Recommended weight, pulley included %.2f kg", rating.recommendedWeight()))
                .contains("flick the rim");
    }

    @Test
    void another_reader_draws_every_page_without_complaint() throws IOException, InterruptedException {
        for (String name : new String[] {"builders-sheet-letter.pdf", "templates-a4.pdf"}) {
            String stem = folder.resolve("page").toString();
            assertThat(Pages.answer("pdftoppm", "-r", "30", "-png", written(name), stem))
                    .isEmpty();
        }
        try (var files = Files.list(folder)) {
            assertThat(files.filter(file -> file.toString().endsWith(".png")).count())
                    .isGreaterThan(5);
        }
    }
}
