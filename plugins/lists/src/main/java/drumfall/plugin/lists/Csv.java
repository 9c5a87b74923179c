// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.plugin.lists;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Comma-separated values (RFC 4180). */
final class Csv {
    private Csv() {}

    static String text(Table table) {
        return Stream.concat(Stream.of(table.header()), table.rows().stream())
                .map(Csv::line)
                .collect(Collectors.joining());
    }

    private static String line(List<String> cells) {
        return cells.stream().map(Csv::quoted).collect(Collectors.joining(",")) + "\r\n";
    }

    /** Quotes a cell that holds a comma, a quote or a line break, doubling its quotes (RFC 4180, section 2). */
    static String quoted(String cell) {
        return cell.matches("(?s).*[\",\r\n].*") ? '"' + cell.replace("\"", "\"\"") + '"' : cell;
    }
}
