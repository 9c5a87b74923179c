// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.plugin.sheet.pdf;

import java.io.IOException;
import java.io.InputStream;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;

/** One cut of Roboto, embedded in a document as far as it is used. */
final class Typeface {
    private static final String FOLDER = "/com/formdev/flatlaf/fonts/roboto/Roboto-";
    private static final double THOUSAND = 1000;

    private final PDFont font;
    private final CmapLookup glyphs;

    private Typeface(PDFont font, CmapLookup glyphs) {
        this.font = font;
        this.glyphs = glyphs;
    }

    static Typeface regular(PDDocument document) throws IOException {
        return load(document, "Regular.ttf");
    }

    static Typeface medium(PDDocument document) throws IOException {
        return load(document, "Medium.ttf");
    }

    private static Typeface load(PDDocument document, String name) throws IOException {
        try (InputStream in = Typeface.class.getResourceAsStream(FOLDER + name)) {
            if (in == null) {
                throw new IOException("The font (Roboto-" + name + ") must come with the jar. Maybe package it anew.");
            }
            TrueTypeFont face = new TTFParser().parse(new RandomAccessReadBuffer(in.readAllBytes()));
            // Ligatures would be read back, and searched for, as letters of their own.
            face.setEnableGsub(false);
            return new Typeface(PDType0Font.load(document, face, true), face.getUnicodeCmapLookup());
        }
    }

    PDFont font() {
        return font;
    }

    /** The text with a question mark for whatever this font cannot show. */
    String shown(String text) {
        return text.codePoints()
                .map(point -> glyphs.getGlyphId(point) == 0 ? '?' : point)
                .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
                .toString();
    }

    /** Width of a text, points. */
    double width(String text, double size) throws IOException {
        return font.getStringWidth(shown(text)) / THOUSAND * size;
    }
}
