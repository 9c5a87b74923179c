// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.view;

import drumfall.ui.presenter.Aspect;
import drumfall.ui.presenter.News;
import drumfall.ui.presenter.SearchState;
import drumfall.ui.presenter.Texts;
import drumfall.ui.presenter.Workspace;
import drumfall.ui.view.look.Parts;
import drumfall.ui.view.look.SignIcon.Sign;
import java.util.List;
import java.util.Optional;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JProgressBar;
import net.miginfocom.swing.MigLayout;

/** The line at the foot of the window: news, and what the search is doing with a way to stop it. */
final class NewsBar extends JPanel {
    private static final int FULL = 1000;

    private final transient Workspace workspace;
    private final JLabel told = Parts.caption("");
    private final NoteLine trouble = new NoteLine();
    private final JLabel doing = Parts.remark(Texts.of("search.idle"));
    private final JProgressBar bar = new JProgressBar(0, FULL);
    private final JButton stop;
    private final JPanel offer = new JPanel(new MigLayout("insets 0, gap 6lp", "", ""));

    NewsBar(Workspace workspace) {
        super(new MigLayout(
                "insets 3lp 12lp 4lp 12lp, gap 8lp, hidemode 3", "[][grow,fill,0:0:][][][140lp!][]", "[24lp:]"));
        this.workspace = workspace;
        setName("news");
        Parts.named(this, Texts.of("place.news"));
        stop = Parts.link(Texts.of("search.stop"), workspace::stopSearch);
        stop.setName("search.stop");
        told.setName("news.told");
        trouble.setName("news.trouble");
        doing.setName("search.doing");
        Parts.named(bar, Texts.of("search.STARTED"));
        add(told, "wmin 0");
        add(trouble, "wmin 0, growx");
        add(offer);
        add(doing, "wmin 0");
        add(bar);
        add(stop);
        workspace.listen(this::changed);
        showSearch();
    }

    private void changed(Aspect aspect) {
        switch (aspect) {
            case NEWS -> showNews(workspace.news());
            case SEARCH, BRIEF -> showSearch();
            default -> {}
        }
    }

    private void showNews(News news) {
        told.setText(news.trouble() ? "" : news.text());
        if (news.trouble()) {
            trouble.show(Sign.CROSS, news.text());
        } else {
            trouble.clear();
        }
        revalidate();
    }

    private void showSearch() {
        SearchState search = workspace.search();
        boolean searchable = workspace.draft().brief().isPresent();
        doing.setText(
                search.running()
                        ? search.text(workspace.units())
                        : Texts.of(searchable ? "search.idle" : "search.waiting"));
        bar.setVisible(search.running());
        stop.setVisible(search.running());
        boolean known =
                search.progress().filter(progress -> progress.done() > 0).isPresent();
        bar.setIndeterminate(!known);
        search.progress().ifPresent(progress -> bar.setValue((int) Math.round(progress.done() * FULL)));
    }

    /** An offer the maker may take or leave. */
    record Choice(String text, Runnable action) {}

    /** Shows an offer until it is taken or left. */
    void offer(String text, List<Choice> choices) {
        offer.removeAll();
        offer.add(Parts.caption(text));
        choices.forEach(choice -> offer.add(Parts.link(choice.text(), () -> {
            withdraw();
            choice.action().run();
        })));
        revalidate();
    }

    private void withdraw() {
        offer.removeAll();
        revalidate();
        repaint();
    }

    /** What is told at the moment; empty if nothing is. */
    Optional<String> shown() {
        return Optional.of(workspace.news().text()).filter(text -> !text.isEmpty());
    }
}
