// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.terminal;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Lays out cells in columns two blanks apart, headings above them, nothing after the last one. */
final class TextTable {
    private final List<String> headings;
    private final List<List<String>> rows = new ArrayList<>();
    private final boolean[] toTheRight;

    /** A table whose headings say how its columns stand: one that begins with {@code >} stands to the right. */
    TextTable(List<String> headings) {
        this.headings =
                headings.stream().map(heading -> heading.replaceFirst("^>", "")).toList();
        this.toTheRight = new boolean[headings.size()];
        for (int i = 0; i < toTheRight.length; i++) {
            toTheRight[i] = headings.get(i).startsWith(">");
        }
    }

    /** A table with the headings of a phrase, columns separated by {@code |}. */
    static TextTable of(String key) {
        return new TextTable(Arrays.asList(Phrases.phrase(key).split("\\|", -1)));
    }

    TextTable row(List<String> cells) {
        rows.add(List.copyOf(cells));
        return this;
    }

    TextTable row(Object... cells) {
        return row(Arrays.stream(cells).map(String::valueOf).toList());
    }

    /** The lines, the headings first. */
    List<String> lines() {
        List<List<String>> all = new ArrayList<>();
        all.add(headings);
        all.addAll(rows);
        return all.stream().map(row -> line(row, all)).toList();
    }

    private String line(List<String> row, List<List<String>> all) {
        StringBuilder line = new StringBuilder();
        for (int i = 0; i < row.size(); i++) {
            int column = i;
            int width = all.stream()
                    .mapToInt(other -> columns(other.get(column)))
                    .max()
                    .orElse(0);
            String blanks = " ".repeat(width - columns(row.get(i)));
            line.append(i == 0 ? "" : "  ").append(toTheRight[i] ? blanks + row.get(i) : row.get(i) + blanks);
        }
        return line.toString().stripTrailing();
    }

    private static int columns(String text) {
        return text.codePointCount(0, text.length());
    }
}
