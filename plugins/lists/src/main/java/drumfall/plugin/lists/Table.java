// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.plugin.lists;

import java.util.List;

/**
 * A list with its heading.
 *
 * @param file name of its file without ending
 * @param title what it is
 * @param remark what to know about it, or nothing
 * @param header names of the columns, units included
 * @param rows the rows, each as long as the header
 */
record Table(String file, String title, String remark, List<String> header, List<List<String>> rows) {
    /**
     * Copies the lists.
     *
     * @throws IllegalArgumentException if a row is not as long as the header
     */
    Table {
        header = List.copyOf(header);
        rows = rows.stream().map(List::copyOf).toList();
        for (List<String> row : rows) {
            if (row.size() != header.size()) {
                throw new IllegalArgumentException("The cells (%d) of a row of %s must be %d, as in its header."
                        .formatted(row.size(), title, header.size()));
            }
        }
    }
}
