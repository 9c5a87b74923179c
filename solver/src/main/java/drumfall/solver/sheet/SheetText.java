// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.sheet;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.exc.StreamConstraintsException;
import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Optional;

/** Turns text into a JSON tree, or says in plain words why it is none. */
final class SheetText {
    /** The longest text, in characters; a hundred times the longest sensible sheet. */
    static final int LONGEST = 1_000_000;

    /** Deepest nesting of groups and lists; sheets need four. */
    private static final int DEEPEST = 32;

    /** Most digits of a number; counts need three, quantities are texts. */
    private static final int DIGITS = 100;

    /** The longest name of a field, in characters. */
    private static final int NAME = 1000;

    private static final char BYTE_ORDER_MARK = '\uFEFF';

    private static final JsonFactory FACTORY = JsonFactory.builder()
            .streamReadConstraints(StreamReadConstraints.builder()
                    .maxNestingDepth(DEEPEST)
                    .maxNumberLength(DIGITS)
                    .maxNameLength(NAME)
                    .build())
            .build();

    private SheetText() {}

    static Optional<JsonNode> parse(String text, Findings findings) {
        if (text.length() > LONGEST) {
            return refused(
                    findings,
                    SheetProblem.shortened(text),
                    "the text must have at most %d characters, and it has %d".formatted(LONGEST, text.length()),
                    "check that this is the right file");
        }
        if (text.isBlank()) {
            return refused(findings, SheetProblem.NOTHING, "the text is empty", "write the sheet as a group in braces");
        }
        if (text.charAt(0) == BYTE_ORDER_MARK) {
            return refused(
                    findings,
                    "a byte order mark",
                    "the text must begin with its first brace",
                    "save the file as UTF-8 without a byte order mark");
        }
        return tree(text, findings);
    }

    private static Optional<JsonNode> tree(String text, Findings findings) {
        try (JsonParser parser = FACTORY.createParser(text)) {
            return tree(parser, text, findings);
        } catch (IOException fault) {
            throw new UncheckedIOException("A text in memory could not be closed.", fault);
        }
    }

    private static Optional<JsonNode> tree(JsonParser parser, String text, Findings findings) throws IOException {
        try {
            parser.nextToken();
            JsonNode tree = new TreeBuilder(parser, findings).value(Place.TOP);
            return endsThere(parser, text, findings) ? Optional.of(tree) : Optional.empty();
        } catch (StreamConstraintsException limit) {
            return tooMuch(text, parser.currentLocation(), findings);
        } catch (JsonProcessingException fault) {
            return notJson(text, fault.getLocation(), findings);
        }
    }

    private static Optional<JsonNode> tooMuch(String text, JsonLocation location, Findings findings) {
        return refused(
                findings,
                excerpt(text, location),
                "groups and lists may stand at most %d deep, numbers have at most %d digits and names at most %d characters"
                        .formatted(DEEPEST, DIGITS, NAME),
                "shorten what stands " + where(location));
    }

    private static Optional<JsonNode> notJson(String text, JsonLocation location, Findings findings) {
        return refused(
                findings,
                excerpt(text, location),
                "the text is not JSON " + where(location),
                "check the quotes, commas, colons and brackets there and just before");
    }

    private static boolean endsThere(JsonParser parser, String text, Findings findings) throws IOException {
        JsonLocation end = parser.currentLocation();
        String rest = text.substring((int) end.getCharOffset());
        if (rest.isBlank()) {
            return true;
        }
        refused(
                findings,
                SheetProblem.shortened(rest.strip()),
                "nothing may stand after the sheet's closing brace " + where(end),
                "remove what follows");
        return false;
    }

    private static String where(JsonLocation location) {
        return "at line %d, column %d".formatted(location.getLineNr(), location.getColumnNr());
    }

    /** What stands at a place, up to the end of its line. */
    private static String excerpt(String text, JsonLocation location) {
        long offset = Math.max(0, Math.min(location.getCharOffset(), text.length()));
        String rest = text.substring((int) offset).strip();
        return rest.lines().findFirst().map(SheetProblem::shortened).orElse("the end of the text");
    }

    private static Optional<JsonNode> refused(Findings findings, String value, String rule, String remedy) {
        findings.add(Place.TOP, value, rule, remedy);
        return Optional.empty();
    }
}
