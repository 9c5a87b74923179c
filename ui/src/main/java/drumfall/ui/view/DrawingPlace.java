// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.view;

import drumfall.solver.brief.Arrangement;
import drumfall.solver.rating.DemandFigure;
import drumfall.solver.rating.Rating;
import drumfall.ui.presenter.Aspect;
import drumfall.ui.presenter.DemandMarks;
import drumfall.ui.presenter.Figure;
import drumfall.ui.presenter.PlacedSheet;
import drumfall.ui.presenter.Texts;
import drumfall.ui.presenter.TrainCards;
import drumfall.ui.presenter.WhereCard;
import drumfall.ui.presenter.Workspace;
import drumfall.ui.view.easing.EasingPane;
import drumfall.ui.view.easing.Ways;
import drumfall.ui.view.look.FigureButton;
import drumfall.ui.view.look.Parts;
import drumfall.ui.view.look.SignIcon.Sign;
import drumfall.ui.view.mesh.MeshPane;
import drumfall.ui.view.placed.PlacedPane;
import drumfall.ui.view.power.PowerPane;
import drumfall.ui.view.train.TrainDrawing;
import java.awt.Rectangle;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTabbedPane;
import net.miginfocom.swing.MigLayout;

/** The drawing of the chosen train, its figures, and beside the weight what to mind. */
final class DrawingPlace implements Place {
    /** Number of the sheet with the placed train seen from the dial. */
    static final int ELEVATION = 0;

    /** Number of the sheet with the section through its planes. */
    static final int SECTION = 1;

    /** Number of the sheet with the mesh looked into. */
    static final int MESH = 2;

    /** Number of the sheet with the way of the power. */
    static final int POWER = 3;

    /** Number of the sheet with all wheels beside one another. */
    static final int WHEELS = 4;

    /** Number of the sheet with what easing the brief would buy. */
    static final int EASING = 5;

    private static final List<Figure> SMALL = List.of(
            Figure.DURATION,
            Figure.BEATS_PER_HOUR,
            Figure.PENDULUM_LENGTH,
            Figure.DRUM_TURNS,
            Figure.LINE_LENGTH,
            Figure.FILAMENT);

    private final Workspace workspace;
    private final DrawingSheets shown;
    private final WhereSheet where;
    private final TrainDrawing drawing;
    private final PlacedPane elevation;
    private final PlacedPane section;
    private final MeshPane mesh;
    private final PowerPane power;
    private final EasingPane easing;
    private final JTabbedPane sheets = new JTabbedPane();
    private final Map<Figure, FigureButton> figures = new EnumMap<>(Figure.class);
    private final JLabel verdict = Parts.remark("");
    private final NoteLine missed = new NoteLine();
    private final JPanel place = new JPanel(new MigLayout(
            "insets 8lp 10lp 8lp 10lp, gap 6lp, wrap 1, hidemode 3", "[grow,fill,0:0:]", "[][][][grow,fill,0:0:]"));

    /**
     * The place.
     *
     * @param workspace the shared state
     * @param shown what its sheets show
     * @param toBrief goes to a place of the brief
     * @param cautions opens all cautions
     */
    DrawingPlace(Workspace workspace, DrawingSheets shown, Consumer<String> toBrief, Runnable cautions) {
        this.workspace = workspace;
        this.shown = shown;
        this.where = new WhereSheet(toBrief);
        this.drawing = new TrainDrawing(workspace::pointAtArbor);
        drawing.setName("drawing");
        drawing.onMesh(shown.mesh()::lookInto, () -> showSheet(MESH));
        this.mesh = new MeshPane(shown.mesh(), this::openCard);
        this.power = new PowerPane(shown.power(), this::openCard);
        this.easing = new EasingPane(shown.easing(), shown.tried(), new Ways(toBrief, workspace::choose));
        this.elevation = PlacedPane.elevation(shown.placed(), this::openCard);
        this.section = PlacedPane.section(shown.placed(), this::openCard);
        place.setName("drawing.place");
        verdict.setName("drawing.verdict");
        build(cautions);
        workspace.listen(this::changed);
        shown.placed().listen(change -> {
            if (change == PlacedSheet.Change.STATE) {
                showVerdict();
            }
        });
        refresh();
    }

    private void build(Runnable cautions) {
        JPanel weight = new JPanel(new MigLayout("insets 0, gap 8lp", "[][grow,fill,0:0:]", "[]"));
        weight.add(figure(Figure.RECOMMENDED_WEIGHT, 1.9f));
        JPanel words = new JPanel(new MigLayout("insets 0, gap 2lp, wrap 1", "[grow,fill,0:0:]", "[]"));
        words.add(Parts.subheading(Texts.of("cautions.title")));
        words.add(Parts.lines(Texts.of("cautions.short")), "wmin 0");
        JButton more = Parts.link(Texts.of("cautions.more"), cautions);
        words.add(more, "growx 0");
        weight.add(words, "growx, wmin 0");
        place.add(weight, "growx, wmin 0");
        JPanel row = new JPanel(new MigLayout("insets 0, gap 2lp, wrap 6", "", ""));
        SMALL.forEach(figure -> row.add(figure(figure, 1.15f)));
        place.add(row, "growx, wmin 0");
        JPanel verdicts = new JPanel(new MigLayout("insets 0, hidemode 3, wrap 1", "[grow,fill,0:0:]", ""));
        verdicts.add(verdict, "wmin 0");
        verdicts.add(missed, "wmin 0");
        place.add(verdicts, "growx, wmin 0");
        sheets.setName("drawing.sheets");
        Parts.named(sheets, Texts.of("sheets"));
        sheets.addTab(Texts.of("sheet.elevation"), elevation);
        sheets.addTab(Texts.of("sheet.section"), section);
        sheets.addTab(Texts.of("sheet.mesh"), mesh);
        sheets.addTab(Texts.of("sheet.power"), power);
        sheets.addTab(Texts.of("sheet.wheels"), drawing);
        sheets.addTab(Texts.of("sheet.easing"), easing);
        place.add(sheets, "grow, wmin 0, hmin 0");
    }

    private FigureButton figure(Figure figure, float share) {
        FigureButton button = new FigureButton(
                figure.name(),
                figure.title(),
                share,
                pressed -> openCard(figure, pressed, new Rectangle(pressed.getSize())));
        figures.put(figure, button);
        return button;
    }

    /**
     * Opens the card of a figure of the chosen train.
     *
     * @param figure the figure
     * @param beside the component that shows it
     * @param at where in that component
     */
    void openCard(Figure figure, JComponent beside, Rectangle at) {
        workspace
                .chosen()
                .map(rating -> new TrainCards(rating, workspace.brief(), workspace.units()))
                .ifPresent(cards -> where.open(beside, at, cards.card(figure)));
    }

    private void openCard(JComponent beside, WhereCard card) {
        where.open(beside, new Rectangle(beside.getSize()), card);
    }

    private void changed(Aspect aspect) {
        switch (aspect) {
            case CHOICE, UNITS, BRIEF -> refresh();
            case HIGHLIGHT -> draw();
            default -> {}
        }
    }

    private void refresh() {
        where.close();
        Optional<Rating> chosen = workspace.chosen();
        Optional<TrainCards> values =
                chosen.map(rating -> new TrainCards(rating, workspace.brief(), workspace.units()));
        figures.forEach((figure, button) ->
                button.show(values.map(known -> known.value(figure)).orElse(drumfall.ui.presenter.ShownFigure.NONE)));
        showVerdict();
        draw();
    }

    private void showVerdict() {
        List<DemandFigure> misses =
                workspace.chosen().map(rating -> rating.missed().toList()).orElse(List.of());
        verdict.setVisible(misses.isEmpty());
        verdict.setText(
                workspace.chosen().isPresent()
                        ? Texts.of("drawing.met", placed())
                        : Texts.of("drawing.none") + " " + Texts.of("drawing.none.next"));
        if (misses.isEmpty()) {
            missed.clear();
        } else {
            String words = String.join("; ", misses.stream().map(this::words).toList());
            missed.show(Sign.CROSS, Texts.of("drawing.missed", words));
        }
    }

    private String placed() {
        boolean unplaced = workspace.brief().frame().arrangement() == Arrangement.UNPLACED;
        return Texts.of(
                unplaced
                        ? "drawing.unplaced"
                        : "drawing.placed." + shown.placed().state().key());
    }

    private String words(DemandFigure figure) {
        return DemandMarks.missed(figure, workspace.units());
    }

    private void draw() {
        drawing.show(workspace.chosen(), workspace.brief(), workspace.highlight(), workspace.units());
    }

    /**
     * Shows a sheet of the drawing and puts the keyboard on it.
     *
     * @param number {@link #ELEVATION}, {@link #SECTION}, {@link #MESH}, {@link #POWER}, {@link #WHEELS} or {@link #EASING}
     */
    void showSheet(int number) {
        sheets.setSelectedIndex(number);
        switch (number) {
            case MESH -> mesh.takeFocus();
            case POWER -> power.takeFocus();
            case SECTION -> section.takeFocus();
            case EASING -> easing.takeFocus();
            case WHEELS -> drawing.requestFocusInWindow();
            default -> elevation.takeFocus();
        }
    }

    @Override
    public JComponent component() {
        return place;
    }

    @Override
    public void takeFocus() {
        figures.get(Figure.RECOMMENDED_WEIGHT).requestFocusInWindow();
    }
}
