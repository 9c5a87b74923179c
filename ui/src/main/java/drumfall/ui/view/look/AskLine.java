// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.view.look;

import java.util.Optional;
import javax.swing.JButton;
import javax.swing.JPanel;
import javax.swing.JProgressBar;
import javax.swing.JTextArea;
import net.miginfocom.swing.MigLayout;

/** How far a question in the background is, in words and as a bar, with the one thing that can be done about it. */
public final class AskLine extends JPanel {
    private static final int FULL = 1000;

    private final JTextArea words = Parts.lines("");
    private final JProgressBar bar = new JProgressBar(0, FULL);
    private final JButton turn;

    /**
     * A line.
     *
     * @param name the line's name for tests, the beginning of its parts'
     * @param turned does what can be done
     */
    public AskLine(String name, Runnable turned) {
        super(new MigLayout("insets 0, gap 8lp 2lp, hidemode 3, wrap 1", "[grow,fill,0:0:]", ""));
        setName(name);
        setOpaque(false);
        turn = Parts.link("", turned);
        turn.setName(name + ".turn");
        words.setName(name + ".words");
        add(words, "growx, wmin 0");
        add(bar, "growx, wmin 0");
        add(turn, "al left, growx 0");
    }

    /**
     * Shows how far it is.
     *
     * @param told in words; empty if there is nothing to say
     * @param busy whether answers come in
     * @param done share that is done, from 0 to 1; 0 if that is not known
     * @param does what can be done; empty if nothing
     */
    public void show(String told, boolean busy, double done, Optional<String> does) {
        words.setText(told);
        words.getAccessibleContext().setAccessibleName(told);
        words.setVisible(!told.isEmpty());
        bar.setVisible(busy);
        bar.setIndeterminate(busy && done == 0);
        bar.setValue((int) Math.round(done * FULL));
        Parts.named(bar, told);
        turn.setVisible(does.isPresent());
        does.ifPresent(text -> {
            turn.setText(text);
            Parts.named(turn, text);
        });
    }

    /** Puts the keyboard on what can be done; false if nothing can. */
    public boolean takeFocus() {
        return turn.isVisible() && turn.requestFocusInWindow();
    }
}
