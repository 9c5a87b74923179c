// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.view;

import drumfall.ui.presenter.Aspect;
import drumfall.ui.presenter.BriefEdits;
import drumfall.ui.presenter.BriefSheet;
import drumfall.ui.presenter.DemandMarks;
import drumfall.ui.presenter.DemandMarks.Mark;
import drumfall.ui.presenter.SheetGroup;
import drumfall.ui.presenter.Texts;
import drumfall.ui.presenter.Workspace;
import drumfall.ui.view.look.Parts;
import drumfall.ui.view.look.SignIcon.Sign;
import drumfall.ui.view.look.TallPanel;
import java.awt.Rectangle;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.SwingUtilities;
import net.miginfocom.swing.MigLayout;

/** The brief: a sheet of short groups with units as typed, what is wrong beside each entry, objectives and locks. */
final class BriefPlace implements Place {
    private final Workspace workspace;
    private final BriefEdits edits;
    private final List<BriefRow> rows = new ArrayList<>();
    private final Map<String, NoteLine> groupNotes = new LinkedHashMap<>();
    private final ObjectivesGroup objectives;
    private final LocksGroup locks;
    private final JScrollPane scroll;

    BriefPlace(Workspace workspace) {
        this.workspace = workspace;
        this.edits = new BriefEdits(workspace);
        this.objectives = new ObjectivesGroup(edits, workspace::sealEdit);
        this.locks = new LocksGroup(workspace, edits);
        TallPanel sheet = new TallPanel(
                new MigLayout("insets 8lp 12lp 12lp 8lp, gap 0 3lp, wrap 1, hidemode 3", "[grow,fill,0:0:]", ""));
        addGroup(sheet, BriefSheet.groups().get(0));
        addSection(sheet, "objectives", objectives);
        addSection(sheet, "locks", locks);
        BriefSheet.groups().stream().skip(1).forEach(group -> addGroup(sheet, group));
        scroll = new JScrollPane(sheet, JScrollPane.VERTICAL_SCROLLBAR_ALWAYS, JScrollPane.HORIZONTAL_SCROLLBAR_NEVER);
        scroll.setBorder(BorderFactory.createEmptyBorder());
        scroll.getVerticalScrollBar().setUnitIncrement(16);
        scroll.setName("brief");
        Parts.named(scroll, Texts.of("place.brief"));
        workspace.listen(this::changed);
        refresh();
    }

    private void addGroup(JPanel sheet, SheetGroup group) {
        heading(sheet, group.key());
        for (String part : parts(group)) {
            NoteLine note = new NoteLine();
            groupNotes.put("/" + part, note);
            sheet.add(note, "growx, wmin 0");
        }
        group.rows().forEach(row -> {
            BriefRow shown = new BriefRow(row, edits, workspace::sealEdit);
            rows.add(shown);
            sheet.add(shown, "growx, wmin 0");
        });
    }

    private static List<String> parts(SheetGroup group) {
        return group.rows().stream()
                .map(row -> row.pointer().split("/", -1)[1])
                .distinct()
                .toList();
    }

    private static void addSection(JPanel sheet, String key, JComponent section) {
        heading(sheet, key);
        sheet.add(section, "growx, wmin 0");
    }

    private static void heading(JPanel sheet, String key) {
        sheet.add(Parts.subheading(Texts.of("group." + key)), "gaptop 8lp");
        sheet.add(Parts.rule(), "growx, h 3lp!");
    }

    private void changed(Aspect aspect) {
        switch (aspect) {
            case BRIEF, CHOICE, UNITS -> refresh();
            case FRONT -> {
                // While it grows, a front says nothing about the demands.
                if (!workspace.search().running()) {
                    refresh();
                }
            }
            default -> {}
        }
    }

    private void refresh() {
        Map<String, Mark> marks = DemandMarks.of(
                workspace.chosen(), workspace.front().filter(front -> !workspace.frontIsEarlier()), workspace.units());
        rows.forEach(row -> row.refresh(mark(marks, row.pointer())));
        groupNotes.forEach((pointer, note) -> {
            Optional<Mark> mark = Optional.ofNullable(marks.get(pointer)).filter(found -> !rowAt(pointer));
            mark.ifPresentOrElse(
                    found -> note.show(
                            found.standing() == DemandMarks.Standing.BINDS ? Sign.STOP : Sign.CROSS, found.text()),
                    note::clear);
        });
        objectives.refresh();
        locks.refresh();
    }

    private boolean rowAt(String pointer) {
        return rows.stream().anyMatch(row -> row.pointer().equals(pointer));
    }

    private static Optional<Mark> mark(Map<String, Mark> marks, String pointer) {
        return marks.entrySet().stream()
                .filter(entry ->
                        entry.getKey().equals(pointer) || entry.getKey().startsWith(pointer + "/"))
                .map(Map.Entry::getValue)
                .findFirst();
    }

    /**
     * Goes to the entry of a place of the brief.
     *
     * @param pointer JSON pointer
     */
    void goTo(String pointer) {
        if (pointer.startsWith("/locks")) {
            locks.scrollRectToVisible(new Rectangle(0, 0, 1, locks.getHeight()));
        }
        rows.stream()
                .filter(row -> pointer.equals(row.pointer())
                        || pointer.startsWith(row.pointer() + "/")
                        || row.pointer().startsWith(pointer + "/"))
                .findFirst()
                .ifPresent(row -> {
                    row.takeFocus();
                    SwingUtilities.invokeLater(() -> row.scrollRectToVisible(new Rectangle(row.getSize())));
                });
    }

    @Override
    public JComponent component() {
        return scroll;
    }

    @Override
    public void takeFocus() {
        rows.get(0).takeFocus();
    }
}
