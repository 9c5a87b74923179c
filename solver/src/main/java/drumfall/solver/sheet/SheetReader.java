// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.sheet;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Optional;

/** Reads records from JSON; whatever is wrong comes back as problems, all of them, and nothing is thrown. */
public final class SheetReader {
    private SheetReader() {}

    /**
     * The record that a text stands for.
     *
     * @param type the record
     * @param text JSON
     * @throws IllegalArgumentException if the record is none that a sheet can hold
     */
    public static <R extends Record> SheetResult<R> read(Class<R> type, String text) {
        Findings findings = new Findings();
        Optional<JsonNode> tree = SheetText.parse(text, findings);
        return result(tree.flatMap(node -> bind(type, node, findings)), findings);
    }

    /**
     * The record that a tree stands for.
     *
     * @param type the record
     * @param tree JSON, as a window edits it
     * @throws IllegalArgumentException if the record is none that a sheet can hold
     */
    public static <R extends Record> SheetResult<R> read(Class<R> type, JsonNode tree) {
        Findings findings = new Findings();
        return result(bind(type, tree, findings), findings);
    }

    static <R extends Record> Optional<R> bind(Class<R> type, JsonNode tree, Findings findings) {
        return Shapes.ofRecord(type).read(tree, Place.TOP, findings).map(type::cast);
    }

    /** A record may be complete and yet come with a problem, such as an unknown field beside the known ones. */
    static <R> SheetResult<R> result(Optional<R> record, Findings findings) {
        return findings.problems().isEmpty()
                ? new SheetResult.Accepted<>(record.orElseThrow())
                : new SheetResult.Refused<>(findings.problems());
    }
}
