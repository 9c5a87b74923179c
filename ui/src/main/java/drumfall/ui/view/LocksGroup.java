// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.view;

import drumfall.ui.presenter.BriefEdits;
import drumfall.ui.presenter.LockEdits;
import drumfall.ui.presenter.Names;
import drumfall.ui.presenter.StripFigure;
import drumfall.ui.presenter.Texts;
import drumfall.ui.presenter.Workspace;
import drumfall.ui.view.look.Parts;
import drumfall.ui.view.look.SignIcon;
import drumfall.ui.view.look.SignIcon.Sign;
import java.util.List;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;

/** What is held fast, each with a way to let it go. */
final class LocksGroup extends JPanel {
    private final transient Workspace workspace;
    private final transient BriefEdits edits;

    LocksGroup(Workspace workspace, BriefEdits edits) {
        super(new MigLayout("insets 0, gap 4lp 1lp, wrap 3", "[][grow,fill,0:0:][]", ""));
        this.workspace = workspace;
        this.edits = edits;
        setOpaque(false);
    }

    void refresh() {
        removeAll();
        List<StripFigure> held = LockEdits.held(workspace.draft().locks());
        held.forEach(this::addLock);
        if (held.isEmpty()) {
            add(Parts.lines(Texts.of("locks.none")), "span 3, growx, wmin 0");
        }
        edits.lockProblems().forEach(problem -> {
            NoteLine note = new NoteLine();
            note.show(Sign.CROSS, BriefEdits.words(problem));
            add(note, "span 3, growx, wmin 0");
        });
        revalidate();
        repaint();
    }

    private void addLock(StripFigure figure) {
        String value = LockEdits.heldValue(workspace.draft().locks(), figure).orElseThrow();
        add(new JLabel(new SignIcon(Sign.SHACKLE)));
        JLabel caption = Parts.caption(Texts.of("locks.held", Names.of(figure), value));
        caption.setToolTipText(caption.getText());
        add(caption, "wmin 0");
        JButton release = Parts.link(Texts.of("locks.release"), () -> workspace.toggleLock(figure));
        add(Parts.named(release, Texts.of("locks.release.named", Names.of(figure))));
    }
}
