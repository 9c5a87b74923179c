// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.presenter;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.BooleanNode;
import com.fasterxml.jackson.databind.node.IntNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.databind.node.TextNode;
import drumfall.solver.brief.ObjectiveFigure;
import drumfall.solver.quantity.Dimension;
import drumfall.solver.sheet.FieldKind;
import drumfall.solver.sheet.SheetProblem;
import drumfall.ui.design.BriefDraft;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;

/** The brief's sheet as it is filled in: what stands in each entry, what is wrong beside it, and edits as steps. */
public final class BriefEdits {
    private static final String OBJECTIVES = "/objectives";

    private final Workspace workspace;

    /**
     * The edits of a workspace's brief.
     *
     * @param workspace the workspace
     */
    public BriefEdits(Workspace workspace) {
        this.workspace = workspace;
    }

    /** What stands in an entry; several values of a list with commas between them. */
    public String shown(SheetLine line) {
        JsonNode node = workspace.draft().at(line.pointer());
        return line.kind() == SheetLine.Kind.LIST
                ? StreamSupport.stream(node.spliterator(), false)
                        .map(JsonNode::asText)
                        .collect(Collectors.joining(", "))
                : workspace.draft().typed(line.pointer());
    }

    /** What is wrong in a row; a whole group that is missing counts for each of its rows. */
    public List<SheetProblem> problems(SheetRow row) {
        return workspace.draft().problems().stream()
                .filter(problem -> within(problem.pointer(), row.pointer()))
                .toList();
    }

    private static boolean within(String pointer, String place) {
        return pointer.equals(place) || pointer.startsWith(place + "/") || place.startsWith(pointer + "/");
    }

    /** What is wrong with objectives. */
    public List<SheetProblem> objectiveProblems() {
        return problemsUnder(OBJECTIVES);
    }

    /** What is wrong with locks. */
    public List<SheetProblem> lockProblems() {
        return problemsUnder("/locks");
    }

    private List<SheetProblem> problemsUnder(String pointer) {
        return workspace.draft().problems().stream()
                .filter(problem -> problem.pointer().startsWith(pointer))
                .toList();
    }

    /** A problem in the words that stand beside its entry. */
    public static String words(SheetProblem problem) {
        String rule = problem.rule();
        return Texts.of(
                "problem",
                rule.substring(0, 1).toUpperCase(java.util.Locale.ENGLISH) + rule.substring(1),
                problem.remedy());
    }

    /**
     * Enters something.
     *
     * @param row the row, which names the step
     * @param line the entry
     * @param typed what was typed or chosen
     */
    public void enter(SheetRow row, SheetLine line, String typed) {
        if (typed.equals(shown(line))) {
            return;
        }
        BriefDraft draft = workspace.draft();
        BriefDraft changed = RoomEdits.concern(line.pointer())
                ? RoomEdits.entered(draft, line.pointer(), typed)
                : entered(draft, line, typed);
        workspace.edit(Texts.of("step.edit", row.label(line)), changed, Optional.of(line.pointer()));
    }

    private static BriefDraft entered(BriefDraft draft, SheetLine line, String typed) {
        boolean left = typed.isBlank() && line.mayBeLeftOut();
        return left ? draft.without(line.pointer()) : draft.with(line.pointer(), node(line, typed));
    }

    private static JsonNode node(SheetLine line, String typed) {
        return switch (line.kind()) {
            case FLAG -> BooleanNode.valueOf(Boolean.parseBoolean(typed));
            case LIST -> list(line, typed);
            default -> leaf(line, typed);
        };
    }

    private static JsonNode leaf(SheetLine line, String typed) {
        boolean count = line.field().kind() == FieldKind.COUNT && typed.strip().matches("\\d{1,9}");
        return count ? IntNode.valueOf(Integer.parseInt(typed.strip())) : TextNode.valueOf(typed);
    }

    private static ArrayNode list(SheetLine line, String typed) {
        ArrayNode list = JsonNodeFactory.instance.arrayNode();
        Stream.of(typed.split(",", -1))
                .map(String::strip)
                .filter(entry -> !entry.isEmpty())
                .forEach(entry -> list.add(leaf(line, entry)));
        return list;
    }

    /** The figures wanted small, in their order, each with its resolution as typed. */
    public List<Wanted> objectives() {
        List<Wanted> wanted = new ArrayList<>();
        for (JsonNode entry : workspace.draft().at(OBJECTIVES)) {
            figure(entry.path("figure").asText())
                    .ifPresent(figure -> wanted.add(
                            new Wanted(figure, entry.path("resolution").asText(""))));
        }
        return wanted;
    }

    /**
     * A figure wanted small.
     *
     * @param figure the figure
     * @param resolution how finely it is told apart, as typed; empty for counts
     */
    public record Wanted(ObjectiveFigure figure, String resolution) {}

    private static Optional<ObjectiveFigure> figure(String word) {
        return Stream.of(ObjectiveFigure.values())
                .filter(figure -> figure.word().equals(word))
                .findFirst();
    }

    /**
     * Wants a figure small, as the last of the objectives, or no longer.
     *
     * @param figure the figure
     * @param wanted whether it is wanted
     */
    public void want(ObjectiveFigure figure, boolean wanted) {
        List<Wanted> changed = new ArrayList<>(objectives());
        changed.removeIf(entry -> entry.figure() == figure);
        if (wanted) {
            changed.add(new Wanted(figure, usualResolution(figure)));
        }
        write(changed, Texts.of("step.objective", Texts.of("objective." + figure.name())), Optional.empty());
    }

    /**
     * Tells a figure apart more or less finely.
     *
     * @param figure one of the objectives
     * @param typed its resolution
     */
    public void resolve(ObjectiveFigure figure, String typed) {
        List<Wanted> changed = objectives().stream()
                .map(entry -> entry.figure() == figure ? new Wanted(figure, typed) : entry)
                .toList();
        write(
                changed,
                Texts.of("step.resolution", Texts.of("objective." + figure.name())),
                Optional.of(OBJECTIVES + figure));
    }

    /**
     * Makes a figure the first objective.
     *
     * @param figure one of the objectives
     */
    public void putFirst(ObjectiveFigure figure) {
        List<Wanted> changed = new ArrayList<>(objectives());
        changed.sort(java.util.Comparator.comparing(entry -> entry.figure() != figure));
        write(changed, Texts.of("step.first", Texts.of("objective." + figure.name())), Optional.empty());
    }

    private void write(List<Wanted> wanted, String step, Optional<String> series) {
        ArrayNode list = JsonNodeFactory.instance.arrayNode();
        for (Wanted entry : wanted) {
            ObjectNode node = list.addObject().put("figure", entry.figure().word());
            if (!entry.figure().counted() || !entry.resolution().isBlank()) {
                node.put("resolution", entry.resolution());
            }
        }
        workspace.edit(step, workspace.draft().with(OBJECTIVES, list), series);
    }

    /** Resolutions to begin with; the maker sets others. Common practice, no source. */
    private static String usualResolution(ObjectiveFigure figure) {
        return switch (figure.dimension()) {
            case NUMBER -> "";
            case LENGTH -> "1 mm";
            case TIME -> "1 h";
            default -> figure == ObjectiveFigure.FILAMENT_MASS ? "1 g" : "1 %";
        };
    }

    /** What an objective's figure measures. */
    public static Dimension dimension(ObjectiveFigure figure) {
        return figure.dimension();
    }
}
