// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.samples;

import com.fasterxml.jackson.core.JsonPointer;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import drumfall.solver.brief.Brief;
import drumfall.solver.brief.BriefReader;
import drumfall.solver.brief.BriefWriter;
import drumfall.solver.brief.BundledBriefs;
import java.util.Arrays;

/** Briefs changed field by field, as tables of tests write it. */
public final class Briefs {
    private static final JsonMapper MAPPER = new JsonMapper();

    private Briefs() {}

    /** The demonstration brief with fields changed; see {@link #with}. */
    public static Brief demoWith(String edits) {
        return with(BundledBriefs.demo(), edits);
    }

    /**
     * A brief with fields changed.
     *
     * @param brief the brief
     * @param edits pointer, equals sign and JSON value or {@code remove}, several joined by an ampersand, for example
     *     {@code /weight/limit = "3 kg" & /beat/pendulumLength = remove}
     */
    public static Brief with(Brief brief, String edits) {
        ObjectNode tree = BriefWriter.tree(brief);
        Arrays.stream(edits.split(" & ")).filter(edit -> !edit.isBlank()).forEach(edit -> apply(tree, edit.strip()));
        var result = BriefReader.read(tree);
        return result.accepted()
                .orElseThrow(() -> new IllegalArgumentException("The edits (%s) make a brief with faults: %s"
                        .formatted(
                                edits,
                                result.problems().stream()
                                        .map(problem -> problem.sentence())
                                        .toList())));
    }

    private static void apply(ObjectNode tree, String edit) {
        int sign = edit.indexOf(" = ");
        JsonPointer pointer = JsonPointer.compile(edit.substring(0, sign));
        ObjectNode parent = (ObjectNode) tree.at(pointer.head());
        String field = pointer.last().getMatchingProperty();
        String value = edit.substring(sign + 3);
        if (value.equals("remove")) {
            parent.remove(field);
            return;
        }
        try {
            parent.set(field, MAPPER.readTree(value));
        } catch (JsonProcessingException fault) {
            throw new IllegalArgumentException("The value (%s) of an edit is not JSON.".formatted(value), fault);
        }
    }
}
