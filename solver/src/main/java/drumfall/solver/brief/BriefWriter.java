// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.brief;

import com.fasterxml.jackson.databind.node.ObjectNode;

/** Writes briefs as they are read: fields in the order of the sheet, quantities as typed. */
public final class BriefWriter {
    private BriefWriter() {}

    /**
     * The text of a brief, ending in a line feed; {@link BriefReader} reads an equal brief back.
     *
     * @param brief the brief
     */
    public static String write(Brief brief) {
        return BriefReader.FORMAT.write(brief);
    }

    /**
     * The brief as a tree of its own, to be edited and read again.
     *
     * @param brief the brief
     */
    public static ObjectNode tree(Brief brief) {
        return BriefReader.FORMAT.tree(brief);
    }
}
