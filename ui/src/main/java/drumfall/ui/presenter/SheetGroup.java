// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.presenter;

import java.util.List;

/**
 * A short group of the brief's sheet under one heading.
 *
 * @param key names the heading's text
 * @param rows the rows
 */
public record SheetGroup(String key, List<SheetRow> rows) {
    /** Copies the list. */
    public SheetGroup {
        rows = List.copyOf(rows);
    }

    /** The heading. */
    public String heading() {
        return Texts.of("group." + key);
    }
}
