// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.view;

import drumfall.solver.rating.Rating;
import drumfall.ui.presenter.Aspect;
import drumfall.ui.presenter.Front;
import drumfall.ui.presenter.FrontColumn;
import drumfall.ui.presenter.FrontSizes;
import drumfall.ui.presenter.FrontView;
import drumfall.ui.presenter.NoTrainExplainer;
import drumfall.ui.presenter.Texts;
import drumfall.ui.presenter.Workspace;
import drumfall.ui.view.look.Parts;
import java.awt.CardLayout;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Stream;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JCheckBoxMenuItem;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JPopupMenu;
import javax.swing.JScrollPane;
import javax.swing.JSplitPane;
import net.miginfocom.swing.MigLayout;

/** The front: heading, scatter and table with one selection, and its designed states without trains. */
final class FrontPlace implements Place {
    private static final String TRAINS = "trains";
    private static final String STATE = "state";

    private final Workspace workspace;
    private final FrontSizes sizes;
    private final FrontRows rows;
    private final FrontTable table;
    private final FrontScatter scatter;
    private final StatePane state;
    private final JLabel heading = Parts.heading("");
    private final JLabel earlier = Parts.remark(Texts.of("front.earlier"));
    private final JLabel steps = Parts.remark("");
    private final JButton growing;
    private final CardLayout cards = new CardLayout();
    private final JPanel body = new JPanel(cards);
    private final JPanel place = new JPanel(new MigLayout(
            "insets 8lp 10lp 8lp 10lp, gap 6lp, wrap 1, hidemode 3", "[grow,fill,0:0:]", "[][][grow,fill,0:0:]"));
    private final JComboBox<FrontColumn> across = axis("front.axis.across");
    private final JComboBox<FrontColumn> up = axis("front.axis.up");
    private Optional<FrontColumn> room;

    /**
     * The place.
     *
     * @param workspace the shared state
     * @param sizes the room that the trains take
     * @param explainer explains fully why there is no train
     * @param toBrief goes to a place of the brief
     */
    FrontPlace(Workspace workspace, FrontSizes sizes, NoTrainExplainer explainer, Consumer<String> toBrief) {
        this.workspace = workspace;
        this.sizes = sizes;
        this.rows = new FrontRows(sizes);
        List<FrontColumn> usual = FrontColumn.usual(workspace.brief());
        room = FrontColumn.room(workspace.brief());
        rows.show(usual);
        table = new FrontTable(workspace, rows);
        scatter = new FrontScatter(workspace, rows, usual.get(0), usual.get(Math.min(1, usual.size() - 1)));
        state = new StatePane(explainer, toBrief);
        growing = Parts.link("", workspace::showGrowing);
        growing.setName("front.growing");
        place.setName("front");
        build();
        workspace.listen(this::changed);
        sizes.listen(scatter::repaint);
        refresh();
        table.structure(() -> {}, workspace.chosen().map(Rating::train));
        wantSizes();
    }

    private void build() {
        JPanel top = new JPanel(new MigLayout("insets 0, gap 8lp, hidemode 3", "[][][]push[][][]", ""));
        heading.setName("front.heading");
        top.add(heading);
        earlier.setName("front.earlier");
        top.add(earlier);
        top.add(growing);
        top.add(across, "w 120lp, wmin 0");
        top.add(up, "w 120lp, wmin 0");
        top.add(columnsButton());
        place.add(top, "growx, wmin 0");
        steps.setName("front.steps");
        place.add(steps, "growx, wmin 0");
        JScrollPane scroll = new JScrollPane(table);
        scroll.setBorder(BorderFactory.createEmptyBorder());
        JSplitPane split = new JSplitPane(JSplitPane.VERTICAL_SPLIT, scatter, scroll);
        scroll.setMinimumSize(new java.awt.Dimension(0, 0));
        split.setResizeWeight(0.4);
        split.setBorder(BorderFactory.createEmptyBorder());
        split.setContinuousLayout(true);
        body.add(split, TRAINS);
        body.add(state, STATE);
        place.add(body, "grow, wmin 0, hmin 0");
    }

    private JComboBox<FrontColumn> axis(String key) {
        JComboBox<FrontColumn> box = new JComboBox<>(FrontColumn.values());
        box.setRenderer(new TitleCell());
        box.setName(key);
        box.setToolTipText(Texts.of(key));
        return Parts.named(box, Texts.of(key));
    }

    /** A column by its title. */
    private static final class TitleCell extends javax.swing.DefaultListCellRenderer {
        @Override
        public java.awt.Component getListCellRendererComponent(
                javax.swing.JList<?> list, Object value, int index, boolean selected, boolean focused) {
            String title = value instanceof FrontColumn column ? column.title() : "";
            return super.getListCellRendererComponent(list, title, index, selected, focused);
        }
    }

    private JButton columnsButton() {
        across.setSelectedItem(scatter.across());
        up.setSelectedItem(scatter.up());
        across.addActionListener(event -> axesChanged());
        up.addActionListener(event -> axesChanged());
        JButton button = new JButton(Texts.of("front.columns"));
        button.setName("front.columns");
        button.setToolTipText(Texts.of("front.columns.tip"));
        button.addActionListener(event -> columnsMenu().show(button, 0, button.getHeight()));
        return button;
    }

    private void axesChanged() {
        scatter.axes((FrontColumn) across.getSelectedItem(), (FrontColumn) up.getSelectedItem());
        wantSizes();
    }

    /** Trains are placed for the front only while a column or an axis shows what comes of it. */
    private void wantSizes() {
        sizes.want(Stream.concat(rows.columns().stream(), Stream.of(scatter.across(), scatter.up()))
                .anyMatch(FrontColumn::isOfPlaces));
    }

    private JPopupMenu columnsMenu() {
        JPopupMenu menu = new JPopupMenu();
        Stream.of(FrontColumn.values()).forEach(column -> {
            JCheckBoxMenuItem item =
                    new JCheckBoxMenuItem(column.title(), rows.columns().contains(column));
            item.addActionListener(event -> toggle(column));
            menu.add(item);
        });
        return menu;
    }

    private void toggle(FrontColumn column) {
        List<FrontColumn> shown = new ArrayList<>(rows.columns());
        if (!shown.remove(column)) {
            shown.add(column);
        }
        table.structure(() -> rows.show(shown), workspace.chosen().map(Rating::train));
        wantSizes();
    }

    /** The room comes into sight as soon as trains are told apart by it, and goes when they no longer are. */
    private void followRoom() {
        Optional<FrontColumn> wanted = workspace.front().map(Front::brief).flatMap(FrontColumn::room);
        if (workspace.front().isEmpty() || wanted.equals(room)) {
            return;
        }
        List<FrontColumn> shown = new ArrayList<>(rows.columns());
        room.ifPresent(shown::remove);
        wanted.filter(column -> !shown.contains(column)).ifPresent(shown::add);
        room = wanted;
        table.structure(() -> rows.show(shown), workspace.chosen().map(Rating::train));
        wantSizes();
    }

    private void changed(Aspect aspect) {
        switch (aspect) {
            case FRONT, BRIEF -> refresh();
            case SEARCH -> headings(FrontView.of(workspace));
            case CHOICE -> {
                table.follow(workspace.chosen().map(Rating::train));
                scatter.repaint();
            }
            case TRIAL, HIGHLIGHT -> scatter.repaint();
            case UNITS -> place.repaint();
            default -> {}
        }
    }

    private void refresh() {
        FrontView view = FrontView.of(workspace);
        headings(view);
        boolean trains = view.body() == FrontView.Body.TRAINS;
        followRoom();
        table.structure(() -> rows.show(workspace.front()), workspace.chosen().map(Rating::train));
        state.show(view);
        across.setVisible(trains);
        up.setVisible(trains);
        cards.show(body, trains ? TRAINS : STATE);
        scatter.repaint();
    }

    private void headings(FrontView view) {
        heading.setText(view.heading());
        boolean thinned =
                view.body() == FrontView.Body.TRAINS && !view.sentence().isEmpty();
        steps.setVisible(thinned);
        steps.setText(view.sentence());
        steps.setToolTipText(view.sentence());
        earlier.setVisible(view.earlier());
        growing.setVisible(view.earlier() && view.found() > 0);
        growing.setText(Texts.of("front.found", view.found()));
    }

    @Override
    public JComponent component() {
        return place;
    }

    @Override
    public void takeFocus() {
        table.requestFocusInWindow();
    }
}
