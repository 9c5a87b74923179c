// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.design;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.json.JsonReadFeature;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectWriter;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import drumfall.solver.brief.BriefReader;
import drumfall.solver.brief.TrainReader;
import drumfall.solver.brief.TrainSheet;
import drumfall.solver.sheet.SheetProblem;
import drumfall.solver.sheet.SheetResult;
import drumfall.ui.design.DesignFault.Kind;
import java.util.Optional;
import java.util.Set;

/** Turns a design into the text of a file and back. */
public final class DesignText {
    /** The value of the file's field "format". */
    public static final String FORMAT = "drumfall-design";

    /** The newest version known, the value of the file's field "version". */
    public static final int VERSION = 1;

    private static final String BRIEF = "brief";
    private static final String CHOSEN = "chosen";
    private static final String DRAWN = "drawn";

    /** Deepest nesting; a design needs six. */
    private static final int DEEPEST = 32;

    private static final int DIGITS = 100;

    private static final JsonMapper MAPPER = JsonMapper.builder(com.fasterxml.jackson.core.JsonFactory.builder()
                    .streamReadConstraints(StreamReadConstraints.builder()
                            .maxNestingDepth(DEEPEST)
                            .maxNumberLength(DIGITS)
                            .build())
                    .build())
            .enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS)
            .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
            .enable(JsonParser.Feature.STRICT_DUPLICATE_DETECTION)
            .disable(JsonReadFeature.ALLOW_NON_NUMERIC_NUMBERS)
            .build();

    private static final ObjectWriter WRITER = MAPPER.writerWithDefaultPrettyPrinter();

    private DesignText() {}

    /** The text of a design, ending in a line feed. */
    public static String write(Design design) {
        return laidOut(tree(design));
    }

    static ObjectNode tree(Design design) {
        ObjectNode tree = object().put("format", FORMAT).put("version", VERSION);
        tree.set(BRIEF, design.draft().tree());
        design.chosen()
                .ifPresent(train -> tree.set(CHOSEN, TrainReader.FORMAT.tree(TrainSheet.of(design.name(), train))));
        design.drawn().ifPresent(drawn -> tree.set(DRAWN, DrawnText.tree(design.name(), drawn)));
        return tree;
    }

    static ObjectNode object() {
        return MAPPER.createObjectNode();
    }

    static String laidOut(ObjectNode tree) {
        try {
            return WRITER.writeValueAsString(tree) + "\n";
        } catch (JsonProcessingException fault) {
            throw new IllegalStateException("The design cannot be laid out as JSON.", fault);
        }
    }

    /**
     * The design that a text stands for, or why it is none. A brief as the commands take it stands for a new design of it.
     *
     * @param text JSON
     * @param name what to call the file in a refusal
     */
    public static DesignReading read(String text, String name) {
        try {
            return read(MAPPER.readTree(text), name);
        } catch (JsonProcessingException fault) {
            return notJson(fault, name);
        }
    }

    static DesignReading notJson(JsonProcessingException fault, String name) {
        int line = fault.getLocation() == null ? 1 : fault.getLocation().getLineNr();
        int column = fault.getLocation() == null ? 1 : fault.getLocation().getColumnNr();
        return DesignReading.refused(Kind.NOT_JSON, name, Integer.toString(line), Integer.toString(column));
    }

    static JsonNode parsed(String text) throws JsonProcessingException {
        return MAPPER.readTree(text);
    }

    static DesignReading read(JsonNode tree, String name) {
        if (tree instanceof ObjectNode brief
                && BriefReader.FORMAT.name().equals(brief.path("format").textValue())) {
            return read(brief, Optional.empty(), Optional.empty(), name, false);
        }
        if (!FORMAT.equals(tree.path("format").textValue())
                || !tree.path("version").isIntegralNumber()) {
            return DesignReading.refused(Kind.OTHER_FORMAT, name);
        }
        JsonNode version = tree.path("version");
        if (version.bigIntegerValue().bitLength() > 31 || version.intValue() > VERSION) {
            return DesignReading.refused(Kind.NEWER, name, shortened(version.asText()), Integer.toString(VERSION));
        }
        boolean known = version.intValue() >= 1 && onlyKnownFields(tree);
        return known && tree.path(BRIEF) instanceof ObjectNode brief
                ? read(brief, Optional.ofNullable(tree.get(CHOSEN)), Optional.ofNullable(tree.get(DRAWN)), name, true)
                : DesignReading.refused(Kind.OTHER_FORMAT, name);
    }

    /** An unknown field would be lost when the design is saved again, so it is refused instead. */
    private static boolean onlyKnownFields(JsonNode tree) {
        return tree.properties().stream()
                .allMatch(field ->
                        Set.of("format", "version", BRIEF, CHOSEN, DRAWN).contains(field.getKey()));
    }

    private static DesignReading read(
            ObjectNode brief, Optional<JsonNode> chosen, Optional<JsonNode> drawn, String name, boolean own) {
        BriefDraft draft = BriefDraft.of(brief);
        Optional<SheetProblem> beyond = draft.problems().stream()
                .filter(problem -> !ShownFields.canShow(problem.pointer()))
                .findFirst();
        if (beyond.isPresent()) {
            return DesignReading.refused(Kind.BRIEF_REFUSED, name, beyond.get().sentence());
        }
        DrawnText.Reading arbors =
                drawn.map(DrawnText::read).orElseGet(() -> new DrawnText.Reading(Optional.empty(), ""));
        if (!arbors.problem().isEmpty()) {
            return DesignReading.refused(Kind.DRAWN_REFUSED, name, arbors.problem());
        }
        if (chosen.isEmpty()) {
            return new DesignReading.Opened(new Design(draft, Optional.empty(), arbors.drawn()), own);
        }
        SheetResult<TrainSheet> sheet = TrainReader.read(chosen.get());
        return sheet.fold(
                accepted ->
                        new DesignReading.Opened(new Design(draft, Optional.of(accepted.train()), arbors.drawn()), own),
                problems -> DesignReading.refused(
                        Kind.TRAIN_REFUSED, name, problems.get(0).sentence()));
    }

    static String shortened(String text) {
        return text.length() <= 20 ? text : text.substring(0, 20) + "…";
    }
}
