// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.terminal;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;

class TextTableTest {
    @Test
    void columns_stand_under_their_headings_to_the_left_or_right() {
        TextTable table =
                new TextTable(List.of(">no.", "wheel", "note")).row(1, "96", "").row(10, "108", "great");
        assertThat(table.lines()).containsExactly("no.  wheel  note", "  1  96", " 10  108    great");
    }

    @Test
    void sentences_are_broken_between_words() {
        String word = "a".repeat(40);
        assertThat(Paragraph.lines(List.of(word + " " + word, word))).containsExactly(word + " " + word, word);
    }

    @Test
    void what_an_encoding_lacks_is_spelt_in_plain_letters() throws IOException {
        StringWriter plain = new StringWriter();
        try (SpellingWriter writer = new SpellingWriter(plain, StandardCharsets.US_ASCII)) {
            writer.write("64/8 · 60/8, 20°");
        }
        assertThat(plain).hasToString("64/8 - 60/8, 20 deg");

        StringWriter whole = new StringWriter();
        try (SpellingWriter writer = new SpellingWriter(whole, StandardCharsets.UTF_8)) {
            writer.write("64/8 · 60/8, 20°");
        }
        assertThat(whole).hasToString("64/8 · 60/8, 20°");
    }
}
