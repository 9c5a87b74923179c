// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.view;

import drumfall.solver.brief.ObjectiveFigure;
import drumfall.ui.presenter.BriefEdits;
import drumfall.ui.presenter.BriefEdits.Wanted;
import drumfall.ui.presenter.Texts;
import drumfall.ui.view.look.Parts;
import drumfall.ui.view.look.SignIcon.Sign;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.swing.JButton;
import javax.swing.JCheckBox;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;

/** The figures wanted small: picked, ordered by which is first, each with how finely it is told apart. */
final class ObjectivesGroup extends JPanel {
    private final transient BriefEdits edits;
    private final Map<ObjectiveFigure, Line> lines = new EnumMap<>(ObjectiveFigure.class);
    private final NoteLine note = new NoteLine();

    private record Line(JCheckBox box, EntryField resolution, JButton first) {}

    ObjectivesGroup(BriefEdits edits, Runnable sealed) {
        super(new MigLayout("insets 0, gap 4lp 1lp, hidemode 3, wrap 3", "[grow,fill,0:0:][60lp!][58lp!]", ""));
        this.edits = edits;
        setOpaque(false);
        for (ObjectiveFigure figure : ObjectiveFigure.values()) {
            addLine(figure, sealed);
        }
        add(note, "span 3, growx, wmin 0");
    }

    private void addLine(ObjectiveFigure figure, Runnable sealed) {
        String name = Texts.of("objective." + figure.name());
        JCheckBox box = Parts.named(new JCheckBox(name), name);
        box.setName("objective." + figure.name());
        box.addActionListener(event -> edits.want(figure, box.isSelected()));
        EntryField resolution = new EntryField(4, text -> edits.resolve(figure, text), sealed);
        Parts.named(resolution, Texts.of("objective.resolution", name));
        JButton first = Parts.link(Texts.of("objective.first"), () -> edits.putFirst(figure));
        first.setToolTipText(Texts.of("objective.first.tip"));
        Parts.named(first, Texts.of("step.first", name));
        lines.put(figure, new Line(box, resolution, first));
        add(box, "wmin 0, growx");
        add(resolution, "growx, hidemode 2");
        add(first, "hidemode 2");
    }

    void refresh() {
        List<Wanted> wanted = edits.objectives();
        lines.forEach((figure, line) -> {
            Optional<Wanted> entry = wanted.stream()
                    .filter(candidate -> candidate.figure() == figure)
                    .findFirst();
            line.box().setSelected(entry.isPresent());
            line.resolution().setVisible(entry.isPresent() && !figure.counted());
            line.first().setVisible(entry.isPresent() && wanted.indexOf(entry.get()) > 0);
            entry.ifPresent(known -> line.resolution().show(known.resolution()));
        });
        edits.objectiveProblems().stream()
                .findFirst()
                .ifPresentOrElse(problem -> note.show(Sign.CROSS, BriefEdits.words(problem)), note::clear);
    }

    void takeFocus() {
        lines.values().iterator().next().box().requestFocusInWindow();
    }
}
