// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.view.easing;

import drumfall.ui.presenter.BriefLink;
import drumfall.ui.presenter.Texts;
import drumfall.ui.presenter.TrialStanding;
import drumfall.ui.presenter.TrialStanding.Better;
import drumfall.ui.presenter.TriedTrain;
import drumfall.ui.view.look.Parts;
import drumfall.ui.view.look.TwoLineButton;
import java.util.Optional;
import javax.swing.JButton;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import net.miginfocom.swing.MigLayout;

/** Why the tried train is not on the front; not there while none is tried. */
final class TriedPane extends JPanel {
    /** Trains that beat the tried one are shown up to so many; the first are the best in the first objective. */
    private static final int IN_FULL = 5;

    private final transient TriedTrain tried;
    private final transient Ways ways;
    private transient Optional<TrialStanding> shown = Optional.empty();

    TriedPane(TriedTrain tried, Ways ways) {
        super(new MigLayout("insets 0 0 8lp 0, gap 0 2lp, wrap 1", "[grow,fill,0:0:]", ""));
        this.tried = tried;
        this.ways = ways;
        setName("tried");
        setOpaque(false);
        setVisible(false);
        tried.listen(this::refresh);
        refresh();
    }

    private void refresh() {
        Optional<TrialStanding> next = tried.standing();
        if (!next.equals(shown)) {
            shown = next;
            removeAll();
            next.ifPresent(this::build);
            setVisible(next.isPresent());
            revalidate();
            repaint();
        }
    }

    private void build(TrialStanding standing) {
        add(Parts.subheading(Texts.of("tried.title")));
        JTextArea sentence = Parts.lines(standing.sentence());
        sentence.setName("tried.sentence");
        add(sentence, "growx, wmin 0");
        for (BriefLink missed : standing.missed()) {
            link(
                    "tried." + missed.pointer(),
                    missed.words(),
                    () -> ways.toBrief().accept(missed.pointer()));
        }
        int most = Math.min(IN_FULL, standing.better().size());
        for (int i = 0; i < most; i++) {
            add(row(i, standing.better().get(i)), "growx, wmin 0");
        }
        if (standing.better().size() > most) {
            add(Parts.remark(Texts.of("tried.more", standing.better().size() - most)), "gapleft 6lp");
        }
    }

    private TwoLineButton row(int index, Better better) {
        String train = better.train().toString();
        TwoLineButton row = new TwoLineButton(
                train,
                better.words(),
                "",
                Texts.of("tried.spoken", train, better.words()),
                () -> ways.choose().accept(better.train()));
        row.setName("tried.better." + index);
        return row;
    }

    private void link(String name, String words, Runnable way) {
        JButton link = Parts.link(words, way);
        link.setName(name);
        link.setToolTipText(words);
        add(link, "wmin 0, growx 0, al left");
    }

    /** Puts the keyboard on the first link, if there is one. */
    void takeFocus() {
        for (var part : getComponents()) {
            if (part instanceof JButton link) {
                link.requestFocusInWindow();
                return;
            }
        }
    }
}
