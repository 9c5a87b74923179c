// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.view;

import drumfall.ui.presenter.FrontView;
import drumfall.ui.presenter.FrontView.Clashing;
import drumfall.ui.view.look.Ink;
import drumfall.ui.view.look.Parts;
import drumfall.ui.view.look.SignIcon;
import drumfall.ui.view.look.SignIcon.Sign;
import java.awt.Graphics;
import java.util.function.Consumer;
import javax.swing.JLabel;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;

/** A place without trains: one sentence, the clashing demands as ways into the brief, and the next step. */
final class StatePane extends JPanel {
    private final transient Consumer<String> toBrief;

    StatePane(Consumer<String> toBrief) {
        super(new MigLayout("insets 24lp 32lp 24lp 32lp, gap 6lp 8lp, wrap 2, ay 40%", "[][grow,fill,0:0:]", ""));
        this.toBrief = toBrief;
        setName("front.state");
    }

    void show(FrontView view) {
        removeAll();
        JLabel sentence = Parts.heading(view.sentence());
        sentence.setName("front.sentence");
        add(sentence, "span 2, wmin 0");
        for (Clashing demand : view.clash()) {
            add(new JLabel(new SignIcon(Sign.CROSS)));
            add(Parts.link(demand.words(), () -> toBrief.accept(demand.pointer())), "wmin 0, growx 0, al left");
        }
        add(Parts.remark(view.next()), "span 2, wmin 0");
        revalidate();
        repaint();
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        graphics.setColor(Ink.paper());
        graphics.fillRect(0, 0, getWidth(), getHeight());
    }
}
