// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.terminal;

import java.io.FilterWriter;
import java.io.IOException;
import java.io.Writer;
import java.nio.charset.Charset;
import java.nio.charset.CharsetEncoder;
import java.util.Map;

/** Spells in plain letters what the terminal's encoding lacks, so that no question marks stand in the tables. */
final class SpellingWriter extends FilterWriter {
    private static final Map<Character, String> PLAIN =
            Map.of('·', "-", '×', "x", '°', " deg", 'µ', "u", '…', "...", '–', "-", 'η', "eta");

    private final CharsetEncoder encoder;

    SpellingWriter(Writer out, Charset charset) {
        super(out);
        this.encoder = charset.newEncoder();
    }

    @Override
    public void write(int character) throws IOException {
        String plain = PLAIN.get((char) character);
        if (plain != null && !encoder.canEncode((char) character)) {
            out.write(plain);
        } else {
            out.write(character);
        }
    }

    @Override
    public void write(char[] characters, int from, int length) throws IOException {
        for (int i = from; i < from + length; i++) {
            write(characters[i]);
        }
    }

    @Override
    public void write(String text, int from, int length) throws IOException {
        write(text.toCharArray(), from, length);
    }
}
