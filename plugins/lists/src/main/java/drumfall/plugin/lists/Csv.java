// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.plugin.lists;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Comma-separated values (RFC 4180), or the same with another separator in place of the comma. */
final class Csv {
    private Csv() {}

    /** What stands between cells. */
    enum Separator {
        /** As RFC 4180 has it. */
        COMMA(",", "comma"),
        /** Read by spreadsheets where the comma divides decimals; common practice, no source. */
        SEMICOLON(";", "semicolon"),
        /** As IANA's text/tab-separated-values has it, but cells that hold a tab are quoted. */
        TAB("\t", "tab");

        private final String text;
        private final String title;

        Separator(String text, String title) {
            this.text = text;
            this.title = title;
        }

        static Separator of(String id) {
            return valueOf(id.toUpperCase(Locale.ROOT));
        }

        String id() {
            return name().toLowerCase(Locale.ROOT);
        }

        String title() {
            return title;
        }
    }

    static String text(Table table, Separator separator) {
        return Stream.concat(Stream.of(table.header()), table.rows().stream())
                .map(cells -> line(cells, separator))
                .collect(Collectors.joining());
    }

    private static String line(List<String> cells, Separator separator) {
        return cells.stream().map(cell -> quoted(cell, separator)).collect(Collectors.joining(separator.text)) + "\r\n";
    }

    /** Quotes a cell that holds the separator, a quote or a line break, doubling its quotes (RFC 4180, section 2). */
    static String quoted(String cell, Separator separator) {
        return cell.matches("(?s).*[" + separator.text + "\"\r\n].*") ? '"' + cell.replace("\"", "\"\"") + '"' : cell;
    }
}
