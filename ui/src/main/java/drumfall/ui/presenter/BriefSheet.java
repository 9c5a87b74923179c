// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.presenter;

import drumfall.solver.brief.Brief;
import drumfall.solver.sheet.SheetField;
import drumfall.solver.sheet.SheetFields;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** The brief laid out as a sheet of short groups; every field of a brief has its entry, objectives and locks their own places. */
public final class BriefSheet {
    /** Parts of a brief that stand under one heading, in the order of the sheet. */
    private static final Map<String, List<String>> HEADINGS = headings();

    private static final List<SheetGroup> GROUPS = laidOut();

    private BriefSheet() {}

    private static Map<String, List<String>> headings() {
        Map<String, List<String>> headings = new LinkedHashMap<>();
        headings.put("name", List.of("name"));
        headings.put("run", List.of("run", "fall"));
        headings.put("weight", List.of("weight", "line"));
        headings.put("drum", List.of("drum"));
        headings.put("beat", List.of("beat", "pendulum"));
        headings.put("escapement", List.of("escapement"));
        headings.put("teeth", List.of("teeth", "train"));
        headings.put("arbors", List.of("arbors"));
        headings.put("frame", List.of("frame", "parts"));
        headings.put("fit", List.of("fit"));
        headings.put("printer", List.of("printer", "material"));
        headings.put("friction", List.of("friction", "hands"));
        return headings;
    }

    /** The groups in order. */
    public static List<SheetGroup> groups() {
        return GROUPS;
    }

    /** The rows of all groups. */
    public static Stream<SheetRow> rows() {
        return GROUPS.stream().flatMap(group -> group.rows().stream());
    }

    /**
     * The row in which a place of the brief is entered; empty for objectives, locks and whole groups.
     *
     * @param pointer JSON pointer
     */
    public static Optional<SheetRow> rowOf(String pointer) {
        return rows().filter(row -> pointer.equals(row.pointer()) || pointer.startsWith(row.pointer() + "/"))
                .findFirst();
    }

    private static List<SheetGroup> laidOut() {
        List<SheetRow> rows = allRows();
        return HEADINGS.entrySet().stream()
                .map(heading -> new SheetGroup(
                        heading.getKey(),
                        rows.stream()
                                .filter(row -> heading.getValue()
                                        .contains(row.pointer().split("/", -1)[1]))
                                .toList()))
                .toList();
    }

    private static List<SheetRow> allRows() {
        Map<String, List<SheetLine>> rows = new LinkedHashMap<>();
        SheetFields.of(Brief.class).stream()
                .map(SheetField::pointer)
                .filter(pointer -> !pointer.startsWith("/objectives") && !pointer.startsWith("/locks"))
                .forEach(pointer -> rows.computeIfAbsent(rowPointer(pointer), key -> new ArrayList<>()));
        SheetFields.of(Brief.class)
                .forEach(field -> Optional.ofNullable(rows.get(rowPointer(field.pointer())))
                        .ifPresent(lines -> lines.add(SheetLine.of(field))));
        return rows.entrySet().stream()
                .map(row -> new SheetRow(row.getKey(), row.getValue()))
                .toList();
    }

    /** Entries three levels deep stand side by side in one row. */
    private static String rowPointer(String pointer) {
        String[] parts = pointer.split("/", -1);
        return parts.length > 3 ? "/" + parts[1] + "/" + parts[2] : pointer;
    }
}
