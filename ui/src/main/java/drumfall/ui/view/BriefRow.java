// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.view;

import drumfall.solver.sheet.SheetProblem;
import drumfall.ui.presenter.BriefEdits;
import drumfall.ui.presenter.DemandMarks.Mark;
import drumfall.ui.presenter.DemandMarks.Standing;
import drumfall.ui.presenter.SheetLine;
import drumfall.ui.presenter.SheetRow;
import drumfall.ui.presenter.Texts;
import drumfall.ui.view.look.Parts;
import drumfall.ui.view.look.SignIcon.Sign;
import java.awt.Rectangle;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javax.swing.DefaultListCellRenderer;
import javax.swing.JCheckBox;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.SwingUtilities;
import net.miginfocom.swing.MigLayout;

/** A row of the brief's sheet: label, entries, and beside them what is wrong or worth knowing. */
final class BriefRow extends JPanel {
    private static final int MOST_BESIDE = 3;

    private final transient SheetRow row;
    private final transient BriefEdits edits;
    private final transient Runnable sealed;
    private final transient List<Runnable> refreshers = new ArrayList<>();
    private final List<EntryField> fields = new ArrayList<>();
    private final NoteLine note = new NoteLine();
    private JComponent first = this;
    private boolean refused;

    /**
     * A row.
     *
     * @param row what is entered
     * @param edits takes what is entered
     * @param sealed is called when the maker is done with an entry
     */
    BriefRow(SheetRow row, BriefEdits edits, Runnable sealed) {
        super(new MigLayout("insets 0, gap 4lp 2lp, hidemode 3, wrap 2", "[134lp!][grow,fill,0:0:]", "[]"));
        this.row = row;
        this.edits = edits;
        this.sealed = sealed;
        setOpaque(false);
        JLabel label = Parts.caption(row.label());
        add(label, "wmin 0");
        JPanel entries = new JPanel(
                manyEntries()
                        ? new MigLayout("insets 0, gap 4lp 2lp, wrap 2", "[][grow,fill,0:0:]", "")
                        : new MigLayout("insets 0, gap 4lp", "", ""));
        entries.setOpaque(false);
        row.lines().forEach(line -> addEntry(entries, line, label));
        add(entries, "wmin 0, growx");
        add(note, "span 2, growx, wmin 0");
    }

    private void addEntry(JPanel entries, SheetLine line, JLabel label) {
        JComponent entry = switch (line.kind()) {
            case FLAG -> flag(line);
            case CHOICE -> choice(line);
            default -> field(line);
        };
        if (first == this) {
            first = entry;
            label.setLabelFor(entry);
        }
        entry.setName(line.pointer());
        if (!row.tip(line).isEmpty()) {
            entry.setToolTipText(row.tip(line));
        }
        if (manyEntries()) {
            entries.add(Parts.caption(row.entry(line)), "wmin 0");
        }
        boolean choiceInRow =
                row.lines().size() > 1 && row.lines().stream().anyMatch(other -> other.kind() == SheetLine.Kind.CHOICE);
        String width = line.kind() == SheetLine.Kind.CHOICE && choiceInRow
                ? "pushx, growx, wmin 0, span, wrap"
                : "pushx, growx, wmin 0";
        entries.add(Parts.named(entry, row.label(line)), width + (choiceInRow ? ", sizegroupx a" : ""));
    }

    /** So many entries, or such as may all be empty, stand below one another, each with its own caption. */
    private boolean manyEntries() {
        return row.lines().size() > MOST_BESIDE || row.mayBeSwitchedOff();
    }

    private JComponent field(SheetLine line) {
        EntryField field = new EntryField(4, text -> edits.enter(row, line, text), sealed);
        refreshers.add(() -> field.show(edits.shown(line)));
        fields.add(field);
        return field;
    }

    private JComponent flag(SheetLine line) {
        JCheckBox box = new JCheckBox();
        box.addActionListener(event -> edits.enter(row, line, String.valueOf(box.isSelected())));
        refreshers.add(() -> box.setSelected(Boolean.parseBoolean(edits.shown(line))));
        return box;
    }

    private JComponent choice(SheetLine line) {
        Stream<String> off = line.mayBeLeftOut() ? Stream.of("") : Stream.empty();
        JComboBox<String> box =
                new JComboBox<>(Stream.concat(off, line.choices().stream()).toArray(String[]::new));
        box.setRenderer(new DefaultListCellRenderer() {
            @Override
            public java.awt.Component getListCellRendererComponent(
                    JList<?> list, Object value, int index, boolean selected, boolean focused) {
                String key = "choice." + ("".equals(value) ? "off" : value);
                String text = Texts.has(key) ? Texts.of(key) : String.valueOf(value);
                return super.getListCellRendererComponent(list, text, index, selected, focused);
            }
        });
        box.addActionListener(event -> {
            if (box.getSelectedItem() != null && !box.getSelectedItem().equals(edits.shown(line))) {
                edits.enter(row, line, String.valueOf(box.getSelectedItem()));
            }
        });
        refreshers.add(() -> box.setSelectedItem(edits.shown(line)));
        return box;
    }

    String pointer() {
        return row.pointer();
    }

    void takeFocus() {
        first.requestFocusInWindow();
    }

    /** Shows the brief as it is now. */
    void refresh(Optional<Mark> mark) {
        refreshers.forEach(Runnable::run);
        List<SheetProblem> problems = edits.problems(row);
        fields.forEach(field -> field.mark(
                problems.stream().anyMatch(problem -> problem.pointer().startsWith(field.getName()))));
        if (!problems.isEmpty()) {
            note.show(Sign.CROSS, BriefEdits.words(problems.get(0)));
            if (!refused) {
                // Once the sentence has its room: it may lie below what is seen of the brief.
                SwingUtilities.invokeLater(() -> scrollRectToVisible(new Rectangle(getSize())));
            }
        } else if (mark.isPresent()) {
            note.show(
                    mark.get().standing() == Standing.BINDS ? Sign.STOP : Sign.CROSS,
                    mark.get().text());
        } else {
            note.clear();
        }
        refused = !problems.isEmpty();
    }
}
