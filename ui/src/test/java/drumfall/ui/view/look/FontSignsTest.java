// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.view.look;

import static org.assertj.core.api.Assertions.assertThat;

import com.formdev.flatlaf.fonts.inter.FlatInterFont;
import java.awt.Font;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.util.Properties;
import java.util.stream.Collectors;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A sign that the window's font does not have is drawn as an empty box. */
class FontSignsTest {
    @ParameterizedTest
    @ValueSource(
            strings = {
                "/drumfall/ui/view/train/words.properties",
                "/drumfall/ui/presenter/texts.properties",
                "/drumfall/ui/wording/wording.properties"
            })
    void every_sign_of_the_windows_words_is_in_its_font(String words) throws IOException {
        FlatInterFont.install();
        Font font = new Font(FlatInterFont.FAMILY, Font.PLAIN, 12);
        assertThat(font.getFamily()).isEqualTo(FlatInterFont.FAMILY);

        assertThat(read(words).values().stream()
                        .flatMapToInt(text -> text.toString().codePoints())
                        .filter(sign -> !font.canDisplay(sign))
                        .mapToObj(Character::toString)
                        .collect(Collectors.toSet()))
                .isEmpty();
    }

    private static Properties read(String name) throws IOException {
        Properties words = new Properties();
        try (InputStream stream = FontSignsTest.class.getResourceAsStream(name);
                Reader reader = new InputStreamReader(stream, StandardCharsets.UTF_8)) {
            words.load(reader);
        }
        return words;
    }
}
