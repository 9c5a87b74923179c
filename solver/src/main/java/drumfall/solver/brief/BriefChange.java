// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.brief;

import com.fasterxml.jackson.core.JsonPointer;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import drumfall.solver.sheet.SheetResult;

/** Changes one field of a brief as a maker would, and checks the brief anew. */
public final class BriefChange {
    private BriefChange() {}

    /**
     * The brief with another text in a field.
     *
     * @param brief the brief
     * @param pointer JSON pointer of a field that stands in the brief
     * @param text what to write there
     * @throws IllegalArgumentException if no such field stands in the brief
     */
    public static SheetResult<Brief> of(Brief brief, String pointer, String text) {
        return of(brief, pointer, JsonNodeFactory.instance.textNode(text));
    }

    /**
     * The brief with another count in a field.
     *
     * @param brief the brief
     * @param pointer JSON pointer of a field that stands in the brief
     * @param count what to write there
     * @throws IllegalArgumentException if no such field stands in the brief
     */
    public static SheetResult<Brief> of(Brief brief, String pointer, int count) {
        return of(brief, pointer, JsonNodeFactory.instance.numberNode(count));
    }

    /**
     * What stands in a field, as typed.
     *
     * @param brief the brief
     * @param pointer JSON pointer of the field
     * @return the text; empty if no such field stands in the brief
     */
    public static String typed(Brief brief, String pointer) {
        return BriefWriter.tree(brief).at(pointer).asText();
    }

    private static SheetResult<Brief> of(Brief brief, String pointer, JsonNode value) {
        ObjectNode tree = BriefWriter.tree(brief);
        JsonPointer place = JsonPointer.compile(pointer);
        if (tree.at(place).isMissingNode() || !(tree.at(place.head()) instanceof ObjectNode group)) {
            throw new IllegalArgumentException(
                    "The pointer (%s) must lead to a field of the brief. Maybe the brief leaves it out."
                            .formatted(pointer));
        }
        group.set(place.last().getMatchingProperty(), value);
        return BriefReader.read(tree);
    }
}
