// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.view;

import drumfall.ui.presenter.BriefLink;
import drumfall.ui.presenter.Inquiry;
import drumfall.ui.presenter.NoTrainExplainer;
import drumfall.ui.presenter.ReasonsView;
import drumfall.ui.presenter.ReasonsView.Group;
import drumfall.ui.presenter.Texts;
import drumfall.ui.view.look.AskLine;
import drumfall.ui.view.look.OfferList;
import drumfall.ui.view.look.Parts;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import net.miginfocom.swing.MigLayout;

/** Why there is no train, in full: every clash with its demands, and the single values that would let one exist. */
final class ReasonsPane extends JPanel {
    private final transient NoTrainExplainer explainer;
    private final transient Consumer<String> toBrief;
    private final AskLine line;
    private final JTextArea summary = Parts.lines("");
    private final JPanel clashes = new JPanel(new MigLayout("insets 0, gap 6lp 2lp, wrap 1", "[grow,fill,0:0:]", ""));
    private final JLabel single = Parts.subheading("");
    private final OfferList offers;
    private final JTextArea others = Parts.lines("");
    private transient List<Group> shown = List.of();

    /**
     * A pane.
     *
     * @param explainer explains
     * @param toBrief goes to a place of the brief
     */
    ReasonsPane(NoTrainExplainer explainer, Consumer<String> toBrief) {
        super(new MigLayout("insets 0, gap 6lp 4lp, hidemode 3, wrap 1", "[grow,fill,0:0:]", ""));
        this.explainer = explainer;
        this.toBrief = toBrief;
        setName("reasons");
        setOpaque(false);
        line = new AskLine("reasons.line", this::turned);
        offers = new OfferList(Texts.of("reasons.offers.name"), explainer::put);
        offers.setName("reasons.offers");
        clashes.setOpaque(false);
        clashes.setName("reasons.clashes");
        summary.setName("reasons.summary");
        others.setName("reasons.others");
        add(line, "growx, wmin 0, gaptop 6lp");
        add(summary, "growx, wmin 0, gaptop 6lp");
        add(clashes, "growx, wmin 0");
        add(single, "growx, wmin 0, gaptop 6lp");
        add(offers, "growx, wmin 0");
        add(others, "growx, wmin 0, gaptop 6lp");
    }

    private void turned() {
        if (explainer.canExplain()) {
            explainer.explain();
        } else {
            explainer.stop();
        }
    }

    /** Shows what is known; nothing if there is nothing to explain. */
    void refresh() {
        Optional<ReasonsView> view = explainer.view();
        setVisible(view.isPresent());
        view.ifPresent(this::show);
    }

    private void show(ReasonsView view) {
        line.show(view.doing(), view.stage() == Inquiry.BUSY, view.done(), turn(view.stage()));
        said(summary, view.summary());
        if (!shown.equals(view.clashes())) {
            shown = view.clashes();
            clashes.removeAll();
            shown.forEach(this::addGroup);
        }
        clashes.setVisible(!shown.isEmpty());
        single.setText(view.single());
        single.setVisible(!view.single().isEmpty());
        offers.show(view.offers());
        said(others, String.join("\n", view.others()));
        revalidate();
        repaint();
    }

    private static Optional<String> turn(Inquiry stage) {
        return switch (stage) {
            case UNASKED -> Optional.of(Texts.of("reasons.explain"));
            case BUSY -> Optional.of(Texts.of("reasons.stop"));
            case STOPPED, FAILED -> Optional.of(Texts.of("reasons.again"));
            case DONE -> Optional.empty();
        };
    }

    private static void said(JTextArea lines, String text) {
        lines.setText(text);
        lines.getAccessibleContext().setAccessibleName(text);
        lines.setVisible(!text.isEmpty());
    }

    private void addGroup(Group group) {
        clashes.add(Parts.subheading(group.heading()), "gaptop 4lp");
        for (BriefLink demand : group.demands()) {
            clashes.add(StatePane.demand(demand, toBrief), "growx, wmin 0");
        }
    }
}
