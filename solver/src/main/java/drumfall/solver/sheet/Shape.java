// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.sheet;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Optional;

/** The shape of one part of a sheet: how it is read, written, described and checked. */
sealed interface Shape permits QuantityShape, CountShape, FlagShape, TextShape, ChoiceShape, ListShape, GroupShape {
    /** The value of a node, or nothing after the findings have been told why. */
    Optional<Object> read(JsonNode node, Place place, Findings findings);

    /** The node of a value that this shape has read or would read. */
    JsonNode write(Object value);

    /** What must stand here in JSON, in plain words with an article. */
    String noun();

    /** What to write here, as an order in the middle of a sentence. */
    String advice();

    /** This part's JSON Schema (draft 2020-12). */
    ObjectNode schema();

    /** Adds every leaf field of this part. */
    void listFields(Place place, Optional<String> optionalAt, List<SheetField> fields);
}
