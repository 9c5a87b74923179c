// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.view;

import drumfall.solver.quantity.UnitSystem;
import drumfall.ui.design.RecoveryFolder.LeftBehind;
import drumfall.ui.presenter.Aspect;
import drumfall.ui.presenter.EasingSheet;
import drumfall.ui.presenter.Exports;
import drumfall.ui.presenter.FileDesk;
import drumfall.ui.presenter.FrontSizes;
import drumfall.ui.presenter.MeshSheet;
import drumfall.ui.presenter.NoTrainExplainer;
import drumfall.ui.presenter.PlacedSheet;
import drumfall.ui.presenter.Settings;
import drumfall.ui.presenter.Texts;
import drumfall.ui.presenter.Workspace;
import drumfall.ui.view.look.Look;
import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.Dimension;
import java.awt.GraphicsEnvironment;
import java.awt.KeyboardFocusManager;
import java.awt.Rectangle;
import java.awt.event.WindowAdapter;
import java.awt.event.WindowEvent;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import javax.swing.JFrame;
import javax.swing.SwingUtilities;

/** The window: brief on the left, front and drawing beside it, the train strip along the foot. */
public final class MainWindow extends JFrame {
    private static final int LEAST_WIDTH = 900;
    private static final int LEAST_HEIGHT = 600;
    private static final int USUAL_WIDTH = 1440;
    private static final int USUAL_HEIGHT = 900;
    private static final int STEP = 10;
    private static final int USUAL_SIZE = 100;

    private final transient Workspace workspace;
    private final transient FileDesk files;
    private final transient Settings settings;
    private final transient Runnable closed;
    private final transient List<Place> places;
    private final transient Commands commands;
    private final transient Pages pages;
    private final transient PlaceSplits splits;
    private final NewsBar news;

    /**
     * The window, not yet visible.
     *
     * @param workspace the shared state
     * @param files the design's file
     * @param sheets what the sheets of the drawing show
     * @param sizes the room that the trains of the front take
     * @param explainer explains fully why there is no train
     * @param exports plugins and handing over
     * @param settings what is remembered
     * @param version the program's version
     * @param asks asks for files and folders; empty for the usual dialogs
     * @param closed ends the program's work once the window is closed
     */
    public MainWindow(
            Workspace workspace,
            FileDesk files,
            DrawingSheets sheets,
            FrontSizes sizes,
            NoTrainExplainer explainer,
            Exports exports,
            Settings settings,
            String version,
            Optional<FileChoice> asks,
            Runnable closed) {
        this.workspace = workspace;
        this.files = files;
        this.settings = settings;
        this.closed = closed;
        setName("main");
        this.pages = new Pages(this, exports, version);
        FileChoice choice = asks.orElseGet(() -> new FileDialogs(this));
        this.commands = new Commands(workspace, files, choice);
        addWindowCommands(choice);
        BriefPlace brief = new BriefPlace(workspace);
        FrontPlace front = new FrontPlace(workspace, sizes, explainer, brief::goTo);
        DrawingPlace drawing = new DrawingPlace(workspace, sheets, brief::goTo, pages::cautions);
        StripPlace strip = new StripPlace(workspace, sheets.tried(), drawing::openCard);
        addSheetCommands(drawing, sheets.mesh());
        addStopCommand(explainer, sheets.easing());
        addHolesCommand(sheets.placed());
        commands.add(new Command("explain", explainer::explain).when(explainer::canExplain));
        explainer.listen(commands::refresh);
        this.places = List.of(brief, front, drawing, strip);
        this.news = new NewsBar(workspace);
        this.splits = new PlaceSplits(brief, front, drawing, strip);
        add(splits.component());
        add(news, BorderLayout.SOUTH);
        setJMenuBar(new MenuBar(commands, files, exports, choice));
        setMinimumSize(new Dimension(LEAST_WIDTH, LEAST_HEIGHT));
        setDefaultCloseOperation(DO_NOTHING_ON_CLOSE);
        addWindowListener(new WindowAdapter() {
            @Override
            public void windowClosing(WindowEvent event) {
                quit();
            }
        });
        workspace.listen(this::changed);
        restore();
        retitle();
    }

    private void addWindowCommands(FileChoice choice) {
        commands.add(new Command("quit", this::quit));
        commands.add(new Command("dark", () -> look(!Look.dark(), percent())).on(Look::dark));
        commands.add(
                new Command("larger", () -> look(Look.dark(), percent() + STEP)).when(() -> percent() < Look.LARGEST));
        commands.add(new Command("smaller", () -> look(Look.dark(), percent() - STEP))
                .when(() -> percent() > Look.SMALLEST));
        commands.add(new Command("usual", () -> look(Look.dark(), USUAL_SIZE)));
        commands.add(new Command("nextplace", () -> go(1)));
        commands.add(new Command("previousplace", () -> go(-1)));
        commands.add(new Command("plugins", pages::plugins));
        commands.add(new Command("exportpage", () -> pages.export(choice, commands::proposedName)));
        commands.add(new Command("about", pages::about));
        commands.add(new Command("cautions", pages::cautions));
    }

    private void addSheetCommands(DrawingPlace drawing, MeshSheet mesh) {
        commands.add(new Command("elevation", () -> drawing.showSheet(DrawingPlace.ELEVATION)));
        commands.add(new Command("section", () -> drawing.showSheet(DrawingPlace.SECTION)));
        commands.add(new Command("wheels", () -> drawing.showSheet(DrawingPlace.WHEELS)));
        commands.add(new Command("meshsheet", () -> drawing.showSheet(DrawingPlace.MESH)));
        commands.add(new Command("powersheet", () -> drawing.showSheet(DrawingPlace.POWER)));
        commands.add(new Command("easingsheet", () -> drawing.showSheet(DrawingPlace.EASING)));
        commands.add(new Command("turnmesh", () -> mesh.setTurning(!mesh.turning()))
                .when(() -> mesh.state().traced().isPresent())
                .on(mesh::turning));
        mesh.listen(change -> {
            if (change != MeshSheet.Change.PHASE) {
                commands.refresh();
            }
        });
    }

    /** One key ends whatever the maker set searching. */
    private void addStopCommand(NoTrainExplainer explainer, EasingSheet easing) {
        commands.add(new Command("stop", () -> {
                    workspace.stopSearch();
                    explainer.stop();
                    easing.stop();
                })
                .when(() -> workspace.search().running() || explainer.busy() || easing.busy()));
        easing.listen(commands::refresh);
    }

    private void addHolesCommand(PlacedSheet placed) {
        commands.add(new Command("keepholes", placed::keepHoles).when(placed::canKeepHoles));
        placed.listen(change -> {
            if (change == PlacedSheet.Change.STATE) {
                commands.refresh();
            }
        });
    }

    private int percent() {
        return settings.number("size").orElse(USUAL_SIZE);
    }

    private void look(boolean dark, int percent) {
        int size = Math.max(Look.SMALLEST, Math.min(Look.LARGEST, percent));
        double factor = (double) size / percent();
        settings.put("dark", dark);
        settings.put("size", size);
        Look.apply(dark, size);
        if (factor != 1) {
            splits.rescale(factor);
        }
        commands.refresh();
    }

    private void go(int step) {
        Component owner = KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner();
        int current = 0;
        for (int i = 0; i < places.size(); i++) {
            if (owner != null
                    && SwingUtilities.isDescendingFrom(owner, places.get(i).component())) {
                current = i + 1;
            }
        }
        int next = Math.floorMod(current - 1 + step, places.size());
        places.get(current == 0 && step < 0 ? places.size() - 1 : next).takeFocus();
    }

    private void restore() {
        workspace.setUnits(
                settings.get("units").filter("IMPERIAL"::equals).isPresent() ? UnitSystem.IMPERIAL : UnitSystem.METRIC);
        Rectangle room = GraphicsEnvironment.getLocalGraphicsEnvironment().getMaximumWindowBounds();
        setSize(
                settings.number("width").orElse(Math.min(room.width, Look.scaled(USUAL_WIDTH))),
                settings.number("height").orElse(Math.min(room.height, Look.scaled(USUAL_HEIGHT))));
        settings.number("left")
                .ifPresent(left -> setLocation(left, settings.number("top").orElse(0)));
        if (!onScreen()) {
            setLocationRelativeTo(null);
        }
    }

    private boolean onScreen() {
        return settings.number("left").isPresent()
                && Arrays.stream(GraphicsEnvironment.getLocalGraphicsEnvironment()
                                .getScreenDevices())
                        .anyMatch(screen ->
                                screen.getDefaultConfiguration().getBounds().contains(getLocation()));
    }

    private void remember() {
        settings.put("left", getX());
        settings.put("top", getY());
        settings.put("width", getWidth());
        settings.put("height", getHeight());
        settings.put("units", workspace.units());
    }

    private void changed(Aspect aspect) {
        if (aspect != Aspect.HIGHLIGHT && aspect != Aspect.NEWS) {
            commands.refresh();
        }
        if (aspect == Aspect.DESIGN) {
            retitle();
        }
    }

    private void retitle() {
        String name = workspace.design().name().isBlank()
                ? Texts.of("app.unnamed")
                : workspace.design().name();
        setTitle(Texts.of("app.title", name, files.changed() ? Texts.of("app.changed") : ""));
    }

    /** Offers unsaved work that was kept from an earlier day, if there is any. */
    public void offerLeftBehind() {
        files.leftBehind().stream().findFirst().ifPresent(this::offer);
    }

    private void offer(LeftBehind work) {
        news.offer(
                Texts.of("recovery.offer", work.unsaved().design().name()),
                List.of(
                        new NewsBar.Choice(Texts.of("recovery.take"), () -> files.bringBack(work)),
                        new NewsBar.Choice(Texts.of("recovery.forget"), () -> files.forget(work))));
    }

    private void quit() {
        remember();
        dispose();
        closed.run();
    }
}
