// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.presenter;

import com.fasterxml.jackson.databind.node.ObjectNode;
import drumfall.solver.brief.Brief;
import drumfall.solver.brief.BriefWriter;

/** Tells whether two briefs ask for the same trains: they may differ in their names only. */
final class SameDemands {
    private SameDemands() {}

    static boolean of(Brief first, Brief second) {
        return first.equals(second) || nameless(first).equals(nameless(second));
    }

    static ObjectNode nameless(Brief brief) {
        ObjectNode tree = BriefWriter.tree(brief);
        tree.remove("name");
        return tree;
    }
}
