// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.plugin.sheet.pdf;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/** Breaks text into lines. */
final class Lines {
    private static final Pattern SPACES = Pattern.compile(" +");

    private Lines() {}

    /** Lines no wider than the room; a word that is wider alone is broken where it must. */
    static List<String> of(String text, Style style, double room) throws IOException {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : SPACES.splitAsStream(text.trim()).toList()) {
            String longer = line.isEmpty() ? word : line + " " + word;
            if (fits(longer, style, room)) {
                line = new StringBuilder(longer);
            } else {
                if (!line.isEmpty()) {
                    lines.add(line.toString());
                }
                line = new StringBuilder(broken(word, style, room, lines));
            }
        }
        lines.add(line.toString());
        return lines;
    }

    private static String broken(String word, Style style, double room, List<String> lines) throws IOException {
        String rest = word;
        while (!fits(rest, style, room)) {
            int end = rest.offsetByCodePoints(0, 1);
            while (end < rest.length() && fits(rest.substring(0, rest.offsetByCodePoints(end, 1)), style, room)) {
                end = rest.offsetByCodePoints(end, 1);
            }
            if (end >= rest.length()) {
                break;
            }
            lines.add(rest.substring(0, end));
            rest = rest.substring(end);
        }
        return rest;
    }

    private static boolean fits(String text, Style style, double room) throws IOException {
        return style.face().width(text, style.size()) <= room;
    }
}
