// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.plugin.outlines;

import drumfall.solver.layout.Layout;

/** What arbors are called on drawings: numbered from the drum, from 1, the others by what they carry. */
final class ArborWords {
    private ArborWords() {}

    static String of(Layout layout, int arbor) {
        int escape = layout.need().parts().escapeArbor();
        if (arbor > escape) {
            return arbor == layout.need().parts().palletArbor() ? "pallets" : "minute wheel";
        }
        String words = Integer.toString(arbor + 1);
        words += arbor == 0 ? " drum" : arbor == escape ? " escape" : "";
        return words + (arbor == layout.need().parts().centreArbor() ? " centre" : "");
    }
}
