// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.sheet;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.file.Path;
import java.util.Optional;

/**
 * A kind of file that holds one sheet: the record, and the name and version that the file opens with.
 *
 * @param type the record
 * @param name of the format, the value of the file's field "format"
 * @param version the newest version this program knows, the value of the file's field "version"; at least 1
 * @param <R> the record
 */
public record SheetFormat<R extends Record>(Class<R> type, String name, int version) {
    static final String FORMAT = "format";
    static final String VERSION = "version";

    /**
     * The record that a text stands for, or everything that is wrong with it.
     *
     * @param text JSON with the two opening fields and then the sheet's
     */
    public SheetResult<R> read(String text) {
        Findings findings = new Findings();
        Optional<JsonNode> tree = SheetText.parse(text, findings);
        return SheetReader.result(tree.flatMap(node -> opened(node, findings)), findings);
    }

    /**
     * The record that a tree stands for, or everything that is wrong with it.
     *
     * @param tree JSON with the two opening fields and then the sheet's; it is not changed
     */
    public SheetResult<R> read(JsonNode tree) {
        Findings findings = new Findings();
        return SheetReader.result(opened(tree, findings), findings);
    }

    /**
     * The record that a file holds, or everything that is wrong with it, an unreadable file included.
     *
     * @param file JSON in UTF-8
     */
    public SheetResult<R> read(Path file) {
        Findings findings = new Findings();
        Optional<JsonNode> tree = SheetFile.text(file, findings).flatMap(text -> SheetText.parse(text, findings));
        return SheetReader.result(tree.flatMap(node -> opened(node, findings)), findings);
    }

    /**
     * The record as the text of a file, ending in a line feed.
     *
     * @param sheet the record
     */
    public String write(R sheet) {
        return JsonText.of(tree(sheet));
    }

    /**
     * The record as a tree of its own, with the two opening fields.
     *
     * @param sheet the record
     */
    public ObjectNode tree(R sheet) {
        ObjectNode tree = JsonText.object().put(FORMAT, name).put(VERSION, version);
        return tree.setAll(SheetWriter.tree(sheet));
    }

    private Optional<R> opened(JsonNode tree, Findings findings) {
        if (!tree.isObject()) {
            findings.wrongType(Place.TOP, tree, Shapes.ofRecord(type));
            return Optional.empty();
        }
        boolean known = formatKnown(tree, findings) && versionKnown(tree, findings);
        return known ? SheetReader.bind(type, withoutOpening(tree), findings) : Optional.empty();
    }

    private static ObjectNode withoutOpening(JsonNode tree) {
        ObjectNode sheet = JsonText.object();
        sheet.setAll((ObjectNode) tree);
        sheet.remove(FORMAT);
        sheet.remove(VERSION);
        return sheet;
    }

    /** A file of another kind is not searched for faults: it would be one long list of unknown fields. */
    private boolean formatKnown(JsonNode tree, Findings findings) {
        JsonNode format = tree.path(FORMAT);
        String advice = "write \"%s\" if this is one, or else choose another file".formatted(name);
        if (format.isMissingNode()) {
            findings.add(Place.TOP.at(FORMAT), SheetProblem.NOTHING, "the field \"format\" is missing", advice);
        } else if (!format.isTextual() || !format.textValue().equals(name)) {
            findings.add(Place.TOP.at(FORMAT), format, "the file is not in the format \"%s\"".formatted(name), advice);
        }
        return format.isMissingNode()
                || (format.isTextual() && format.textValue().equals(name));
    }

    private boolean versionKnown(JsonNode tree, Findings findings) {
        JsonNode written = tree.path(VERSION);
        Place place = Place.TOP.at(VERSION);
        String advice = "write " + version;
        if (written.isMissingNode()) {
            findings.add(place, SheetProblem.NOTHING, "the field \"version\" is missing", advice);
        } else if (!written.isIntegralNumber() || written.bigIntegerValue().signum() <= 0) {
            findings.add(place, written, "the version must be a whole number of at least 1, without quotes", advice);
        } else if (written.bigIntegerValue().bitLength() > 31 || written.intValue() > version) {
            findings.add(place, written, newer(), "open it with a newer version of Drumfall");
            return false;
        }
        return true;
    }

    private String newer() {
        return "the file is in a newer version of \"%s\" than version %d, the newest known here"
                .formatted(name, version);
    }
}
