// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.view;

import drumfall.ui.view.look.Ink;
import drumfall.ui.view.look.Parts;
import drumfall.ui.view.look.SignIcon;
import drumfall.ui.view.look.SignIcon.Sign;
import java.util.Optional;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import net.miginfocom.swing.MigLayout;

/** A note beside an entry, with its sign; not there while there is nothing to say. */
final class NoteLine extends JPanel {
    private final JLabel sign = new JLabel();
    private final JTextArea text = Parts.lines("");
    private Optional<Sign> shown = Optional.empty();

    NoteLine() {
        super(new MigLayout("insets 0, gap 4lp, hidemode 3", "[][grow,fill,0:0:]", "[top]"));
        setOpaque(false);
        add(sign, "gaptop 3lp, aligny top");
        add(text, "growx, wmin 0");
        setVisible(false);
    }

    void show(Sign kind, String words) {
        shown = Optional.of(kind);
        sign.setIcon(new SignIcon(kind));
        text.setText(words);
        text.getAccessibleContext().setAccessibleName(words);
        setVisible(true);
        ink();
    }

    void clear() {
        shown = Optional.empty();
        text.setText("");
        setVisible(false);
    }

    /** What the note says; empty if it says nothing. */
    String words() {
        return text.getText();
    }

    private void ink() {
        shown.ifPresent(kind -> text.setForeground(Ink.of(kind.role())));
    }

    @Override
    public void updateUI() {
        super.updateUI();
        if (text != null) {
            text.updateUI();
            ink();
        }
    }
}
