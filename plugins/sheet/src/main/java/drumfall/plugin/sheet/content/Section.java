// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.plugin.sheet.content;

import java.util.List;

/**
 * A part of a sheet under one heading.
 *
 * @param title the heading
 * @param blocks what stands under it
 */
public record Section(String title, List<Block> blocks) {
    /** Copies the blocks. */
    public Section {
        blocks = List.copyOf(blocks);
    }
}
