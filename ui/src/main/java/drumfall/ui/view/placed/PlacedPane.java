// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.view.placed;

import drumfall.solver.layout.Shortfall;
import drumfall.solver.layout.size.MovementParts;
import drumfall.ui.presenter.PlacedDrag;
import drumfall.ui.presenter.PlacedSheet;
import drumfall.ui.presenter.PlacedSheet.Change;
import drumfall.ui.presenter.PlacedSize;
import drumfall.ui.presenter.PlacedState;
import drumfall.ui.presenter.PlacedWords;
import drumfall.ui.presenter.Texts;
import drumfall.ui.presenter.WhereCard;
import drumfall.ui.view.look.FigureButton;
import drumfall.ui.view.look.Ink;
import drumfall.ui.view.look.Parts;
import drumfall.ui.view.look.WrappedRow;
import drumfall.ui.view.train.Role;
import java.awt.CardLayout;
import java.awt.Graphics;
import java.awt.event.HierarchyEvent;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiConsumer;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import javax.swing.JToggleButton;
import javax.swing.Timer;
import net.miginfocom.swing.MigLayout;

/** One sheet of the placed train with its line of state above and what is pointed at below. */
public final class PlacedPane extends JPanel {
    private static final int FRAME_MILLISECONDS = 33;
    private static final double NANOSECONDS = 1e9;
    private static final int MOST_FAULTS = 2;
    private static final List<PlacedSize.Figure> SEEN_FROM_THE_DIAL =
            List.of(PlacedSize.Figure.WIDTH, PlacedSize.Figure.HEIGHT, PlacedSize.Figure.PLATE);
    private static final List<PlacedSize.Figure> SEEN_FROM_THE_SIDE = List.of(PlacedSize.Figure.DEPTH);
    private static final String SHEET = "sheet";
    private static final String WORDS = "words";

    private final transient PlacedSheet sheet;
    private final PlacedCanvas canvas;
    private final JTextArea state = Parts.lines("");
    private final JTextArea words = Parts.lines("");
    private final JTextArea reading = Parts.lines("");
    private final JToggleButton turn = new JToggleButton(Texts.of("placed.turn"));
    private final JButton again = new JButton(Texts.of("placed.again"));
    private final JButton stop = new JButton(Texts.of("placed.stop"));
    private final JButton free = new JButton(Texts.of("placed.free"));
    private final FigureButton least;
    private final FigureButton bob;
    private final Map<PlacedSize.Figure, FigureButton> sizes = new EnumMap<>(PlacedSize.Figure.class);
    private final CardLayout states = new CardLayout();
    private final JPanel body = new JPanel(states);
    private final transient Timer frames = new Timer(FRAME_MILLISECONDS, event -> frame());
    private long last;

    private PlacedPane(PlacedSheet sheet, PlacedCanvas canvas, BiConsumer<JComponent, WhereCard> cards) {
        super(new MigLayout(
                "insets 6lp 0 0 0, gap 4lp, wrap 1, hidemode 3", "[grow,fill,0:0:]", "[][grow,fill,0:0:][54lp!]"));
        this.sheet = sheet;
        this.canvas = canvas;
        this.least = new FigureButton(
                canvas.getName() + ".least",
                Texts.of("placed.least"),
                1.15f,
                pressed -> sheet.least().ifPresent(known -> cards.accept(pressed, known.card(sheet.units()))));
        this.bob = new FigureButton(
                canvas.getName() + ".bob",
                Texts.of("placed.bob"),
                1.15f,
                pressed -> sheet.bob().ifPresent(known -> cards.accept(pressed, known.card(sheet.units()))));
        boolean elevation = canvas instanceof ElevationDrawing;
        (elevation ? SEEN_FROM_THE_DIAL : SEEN_FROM_THE_SIDE)
                .forEach(figure -> sizes.put(figure, button(figure, cards)));
        setName(canvas.getName() + ".pane");
        setOpaque(false);
        add(head(), "growx, wmin 0");
        body.setOpaque(false);
        body.add(canvas, SHEET);
        body.add(told(), WORDS);
        add(body, "grow, wmin 0, hmin 0");
        add(foot(), "growx, wmin 0");
        sheet.listen(this::changed);
        addHierarchyListener(event -> {
            if ((event.getChangeFlags() & HierarchyEvent.SHOWING_CHANGED) != 0) {
                shownOrHidden();
            }
        });
        refresh();
    }

    private FigureButton button(PlacedSize.Figure figure, BiConsumer<JComponent, WhereCard> cards) {
        return new FigureButton(
                canvas.getName() + "." + figure.name(),
                figure.title(),
                1.15f,
                pressed -> sheet.size().ifPresent(known -> cards.accept(pressed, known.card(figure, sheet.units()))));
    }

    /**
     * The elevation.
     *
     * @param sheet what it shows
     * @param cards opens a card beside a component
     */
    public static PlacedPane elevation(PlacedSheet sheet, BiConsumer<JComponent, WhereCard> cards) {
        return new PlacedPane(sheet, new ElevationDrawing(sheet), cards);
    }

    /**
     * The section.
     *
     * @param sheet what it shows
     * @param cards opens a card beside a component
     */
    public static PlacedPane section(PlacedSheet sheet, BiConsumer<JComponent, WhereCard> cards) {
        SectionDrawing drawing = new SectionDrawing(sheet);
        PlacedPane pane = new PlacedPane(sheet, drawing, cards);
        drawing.addPropertyChangeListener(SectionDrawing.TOLD, change -> pane.read());
        return pane;
    }

    private JPanel head() {
        JPanel head = new WrappedRow(6);
        head.add(least);
        sizes.values().forEach(head::add);
        if (canvas instanceof SectionDrawing) {
            head.add(bob);
        }
        state.setName(canvas.getName() + ".state");
        head.add(state);
        return head;
    }

    /** What is pointed at, and beside it what can be done, so that the drawing keeps its height where letters are large. */
    private JPanel foot() {
        JPanel foot = new JPanel(new MigLayout("insets 0, gap 6lp, hidemode 3", "[grow,fill,0:0:][]", "[]"));
        foot.setOpaque(false);
        reading.setName(canvas.getName() + ".reading");
        reading.setRows(2);
        foot.add(reading, "growx, wmin 0");
        stop.addActionListener(event -> sheet.stop());
        again.addActionListener(event -> sheet.placeAgain());
        free.addActionListener(event -> sheet.release());
        free.setToolTipText(Texts.of("placed.free.tip"));
        turn.addActionListener(event -> sheet.setTurning(turn.isSelected()));
        Parts.named(turn, Texts.of("placed.turn.name"));
        turn.setVisible(canvas instanceof ElevationDrawing);
        List.of(stop, again, free, turn).forEach(button -> foot.add(button, "aligny top"));
        return foot;
    }

    private JPanel told() {
        JPanel told = new JPanel(new MigLayout("insets 24lp, wrap 1, ay 40%", "[grow,fill,0:0:]", "")) {
            @Override
            protected void paintComponent(Graphics graphics) {
                graphics.setColor(Ink.paper());
                graphics.fillRect(0, 0, getWidth(), getHeight());
            }
        };
        words.setName(canvas.getName() + ".words");
        told.add(words, "growx, wmin 0");
        return told;
    }

    private void changed(Change change) {
        switch (change) {
            case STATE -> refresh();
            case POINTED, DRAG -> read();
            case TURNING -> {
                turn.setSelected(sheet.turning());
                runFrames();
            }
            case TURN -> {}
        }
    }

    private void refresh() {
        PlacedState now = sheet.state();
        boolean drawn = now.seen().isPresent();
        states.show(body, drawn ? SHEET : WORDS);
        words.setText(now.sentence().orElse(""));
        state.setText(drawn ? now.sentence().orElse("") : "");
        state.setForeground(now instanceof PlacedState.Unplaced ? Ink.of(Role.MISSED) : Ink.text());
        stop.setVisible(now.busy());
        again.setVisible(now instanceof PlacedState.Unplaced);
        free.setVisible(sheet.locked());
        turn.setEnabled(drawn);
        least.setVisible(sheet.least().isPresent());
        sheet.least().ifPresent(known -> least.show(known.value(sheet.units())));
        bob.setVisible(sheet.bob().isPresent());
        sheet.bob().ifPresent(known -> bob.show(known.value(sheet.units())));
        sizes.forEach((figure, button) -> {
            button.setVisible(sheet.size().isPresent());
            sheet.size().ifPresent(known -> button.show(known.value(figure, sheet.units())));
        });
        read();
    }

    private void read() {
        reading.setForeground(clashes().isEmpty() ? Ink.text() : Ink.of(Role.MISSED));
        String arbor = sheet.drag().map(this::onItsWay).or(this::pointedAt).orElseGet(() -> Texts.of("placed.tip"));
        Optional<String> told = canvas instanceof SectionDrawing section ? section.told() : Optional.empty();
        reading.setText(told.map(words -> arbor + "\n" + words).orElse(arbor));
    }

    private List<Shortfall> clashes() {
        return sheet.drag().map(PlacedDrag::faults).orElse(List.of());
    }

    private Optional<String> pointedAt() {
        return sheet.seen()
                .flatMap(seen -> sheet.pointed()
                        .filter(arbor -> arbor < seen.layout().places().size())
                        .or(sheet::selected)
                        .map(arbor -> named(arbor, seen)));
    }

    private String named(int arbor, PlacedState.Seen seen) {
        MovementParts parts = seen.layout().need().parts();
        PlacedWords named = sheet.words().orElseThrow();
        if (arbor == parts.centreArbor()) {
            return named.mark(arbor) + "  " + named.arbor(arbor) + ": " + Texts.of("placed.stays");
        }
        String place = Texts.of(
                "placed.named", named.arbor(arbor), named.place(seen.layout().place(arbor)));
        String follows = arbor == parts.palletArbor() ? "; " + Texts.of("placed.follows") : "";
        return named.mark(arbor) + "  " + place + follows;
    }

    private String onItsWay(PlacedDrag drag) {
        PlacedWords named = sheet.words().orElseThrow();
        String where = named.arbor(drag.drag().arbor()) + ": "
                + named.place(drag.drag().place()) + ". " + Texts.of("placed.hold") + ".";
        List<Shortfall> faults = drag.faults();
        if (faults.isEmpty()) {
            return where + "\n" + Texts.of("placed.clear");
        }
        List<String> told = faults.stream().limit(MOST_FAULTS).map(named::fault).toList();
        String more = faults.size() > MOST_FAULTS ? "; " + Texts.of("placed.more", faults.size() - MOST_FAULTS) : "";
        return where + "\n" + String.join("; ", told) + more;
    }

    /** A hidden train does not turn, nor go on when it is shown again. */
    private void shownOrHidden() {
        if (!isShowing() && canvas instanceof ElevationDrawing) {
            sheet.setTurning(false);
        }
        runFrames();
    }

    private void runFrames() {
        boolean run = sheet.turning() && isShowing() && canvas instanceof ElevationDrawing;
        if (run && !frames.isRunning()) {
            last = System.nanoTime();
            frames.start();
        } else if (!run) {
            frames.stop();
        }
    }

    private void frame() {
        long now = System.nanoTime();
        sheet.pass((now - last) / NANOSECONDS);
        last = now;
    }

    /** Puts the keyboard on the drawing. */
    public void takeFocus() {
        canvas.requestFocusInWindow();
    }
}
