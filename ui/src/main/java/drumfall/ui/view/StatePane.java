// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.view;

import drumfall.ui.presenter.BriefLink;
import drumfall.ui.presenter.FrontView;
import drumfall.ui.presenter.Inquiry;
import drumfall.ui.presenter.NoTrainExplainer;
import drumfall.ui.presenter.ReasonsView;
import drumfall.ui.view.look.Ink;
import drumfall.ui.view.look.Parts;
import drumfall.ui.view.look.SignIcon;
import drumfall.ui.view.look.SignIcon.Sign;
import drumfall.ui.view.look.TallPanel;
import java.awt.BorderLayout;
import java.awt.Graphics;
import java.util.function.Consumer;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import net.miginfocom.swing.MigLayout;

/** A place without trains: one sentence, the clashing demands as ways into the brief, the next step, and why in full. */
final class StatePane extends JPanel {
    private final transient NoTrainExplainer explainer;
    private final transient Consumer<String> toBrief;
    private final JPanel first = new JPanel(new MigLayout("insets 0, gap 6lp 8lp, wrap 1", "[grow,fill,0:0:]", ""));
    private final ReasonsPane reasons;
    private transient FrontView shown;

    StatePane(NoTrainExplainer explainer, Consumer<String> toBrief) {
        super(new BorderLayout());
        this.explainer = explainer;
        this.toBrief = toBrief;
        this.reasons = new ReasonsPane(explainer, toBrief);
        setName("front.state");
        JPanel sheet = new TallPanel(
                new MigLayout("insets 24lp 32lp 24lp 32lp, gap 0 8lp, hidemode 3, wrap 1", "[grow,fill,0:0:]", ""));
        sheet.setOpaque(false);
        first.setOpaque(false);
        sheet.add(first, "growx, wmin 0");
        sheet.add(reasons, "growx, wmin 0");
        add(TallPanel.scrolled(sheet));
        explainer.listen(() -> {
            first(shown);
            reasons.refresh();
        });
    }

    /** A clashing demand with its sign, leading to its place in the brief. */
    static JPanel demand(BriefLink demand, Consumer<String> toBrief) {
        JPanel line = new JPanel(new MigLayout("insets 0, gap 4lp", "[][grow,fill,0:0:]", ""));
        line.setOpaque(false);
        line.add(new JLabel(new SignIcon(Sign.CROSS)));
        JButton link = Parts.link(demand.words(), () -> toBrief.accept(demand.pointer()));
        link.setName("clash." + demand.pointer());
        link.setToolTipText(demand.words());
        line.add(link, "wmin 0, growx 0, al left");
        return line;
    }

    void show(FrontView view) {
        if (!view.equals(shown)) {
            shown = view;
            first(view);
        }
        reasons.refresh();
    }

    /** The first clash gives way to the list of all as soon as that begins. */
    private void first(FrontView view) {
        boolean inFull = explainer
                .view()
                .filter(known -> !known.clashes().isEmpty() || known.stage() == Inquiry.DONE)
                .map(ReasonsView::stage)
                .isPresent();
        first.removeAll();
        first.setVisible(!inFull);
        if (!inFull) {
            JLabel sentence = Parts.heading(view.sentence());
            sentence.setName("front.sentence");
            first.add(sentence, "wmin 0");
            view.clash().forEach(demand -> first.add(demand(demand, toBrief), "growx, wmin 0"));
            JTextArea next = Parts.lines(view.next());
            next.setForeground(Ink.faint());
            first.add(next, "growx, wmin 0");
        }
        revalidate();
        repaint();
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        graphics.setColor(Ink.paper());
        graphics.fillRect(0, 0, getWidth(), getHeight());
    }
}
