// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.view;

import drumfall.ui.presenter.Texts;
import drumfall.ui.view.look.Look;
import drumfall.ui.view.look.Parts;
import java.awt.BorderLayout;
import java.awt.Dimension;
import java.awt.Frame;
import java.awt.event.ActionEvent;
import java.util.List;
import javax.swing.AbstractAction;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JDialog;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.KeyStroke;
import net.miginfocom.swing.MigLayout;

/** A page beside the main window that may stay open; Esc closes it. */
final class Page extends JDialog {
    private static final int WIDTH = 560;
    private static final int HEIGHT = 420;

    private final JPanel text = new JPanel(new MigLayout("insets 16lp, gap 4lp 8lp, wrap 1", "[grow,fill,0:0:]", ""));

    private final JPanel foot = new JPanel(new MigLayout("insets 8lp 16lp 12lp 16lp", "", ""));

    Page(Frame owner, String title, String name) {
        super(owner, title, false);
        setName(name);
        setDefaultCloseOperation(DISPOSE_ON_CLOSE);
        JScrollPane scroll = new JScrollPane(text);
        scroll.setHorizontalScrollBarPolicy(JScrollPane.HORIZONTAL_SCROLLBAR_NEVER);
        scroll.setBorder(BorderFactory.createEmptyBorder());
        add(scroll);
        JButton close = new JButton(Texts.of("about.close"));
        close.addActionListener(event -> dispose());
        foot.add(close, "pushx, alignx right");
        add(foot, BorderLayout.SOUTH);
        getRootPane().setDefaultButton(close);
        getRootPane()
                .getInputMap(JComponent.WHEN_ANCESTOR_OF_FOCUSED_COMPONENT)
                .put(KeyStroke.getKeyStroke("ESCAPE"), "close");
        getRootPane().getActionMap().put("close", new AbstractAction() {
            @Override
            public void actionPerformed(ActionEvent event) {
                dispose();
            }
        });
    }

    Page heading(String words) {
        text.add(Parts.subheading(words), "gaptop 6lp");
        return this;
    }

    Page line(String words) {
        text.add(Parts.lines(words), "wmin 0");
        return this;
    }

    Page lines(List<String> words) {
        words.forEach(this::line);
        return this;
    }

    Page note(String words) {
        NoteLine note = new NoteLine();
        note.show(drumfall.ui.view.look.SignIcon.Sign.CROSS, words);
        text.add(note, "wmin 0");
        return this;
    }

    Page part(JComponent component) {
        text.add(component, "wmin 0");
        return this;
    }

    /** Puts buttons before the one that closes the page. */
    Page actions(List<JButton> buttons) {
        for (int i = 0; i < buttons.size(); i++) {
            foot.add(buttons.get(i), "", i);
        }
        return this;
    }

    void open() {
        open(HEIGHT);
    }

    /** Opens the page with another height than the usual one, in unscaled pixels. */
    void open(int height) {
        setSize(new Dimension(Look.scaled(WIDTH), Look.scaled(height)));
        setLocationRelativeTo(getOwner());
        setVisible(true);
    }
}
