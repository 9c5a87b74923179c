// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.terminal;

import java.util.ArrayList;
import java.util.List;

/** Breaks sentences into lines. */
final class Paragraph {
    private static final int COLUMNS = 96;

    private Paragraph() {}

    static List<String> lines(List<String> sentences) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : String.join(" ", sentences).split(" ", -1)) {
            if (line.length() + word.length() >= COLUMNS) {
                lines.add(line.toString());
                line.setLength(0);
            }
            line.append(line.length() == 0 ? "" : " ").append(word);
        }
        lines.add(line.toString());
        return lines;
    }
}
