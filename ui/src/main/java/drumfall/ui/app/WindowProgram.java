// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.app;

import drumfall.solver.brief.Brief;
import drumfall.solver.brief.BundledBriefs;
import drumfall.solver.layout.LayoutNeed;
import drumfall.solver.rating.TrainRater;
import drumfall.solver.rating.placing.TrainPlacing;
import drumfall.solver.search.TrainSearch;
import drumfall.solver.train.Train;
import drumfall.ui.design.Design;
import drumfall.ui.design.RecoveryFolder;
import drumfall.ui.plugin.PluginFolder;
import drumfall.ui.plugin.PluginFolders;
import drumfall.ui.presenter.EasingSheet;
import drumfall.ui.presenter.ExportSettings;
import drumfall.ui.presenter.Exports;
import drumfall.ui.presenter.FileDesk;
import drumfall.ui.presenter.FrontSizes;
import drumfall.ui.presenter.MeshSheet;
import drumfall.ui.presenter.NoTrainExplainer;
import drumfall.ui.presenter.PlacedSheet;
import drumfall.ui.presenter.PowerSheet;
import drumfall.ui.presenter.Settings;
import drumfall.ui.presenter.TriedTrain;
import drumfall.ui.presenter.Workspace;
import drumfall.ui.view.DrawingSheets;
import drumfall.ui.view.FileChoice;
import drumfall.ui.view.MainWindow;
import drumfall.ui.view.look.Look;
import drumfall.ui.wording.ProgramVersion;
import drumfall.ui.work.LatestDesk;
import drumfall.ui.work.LongDesk;
import drumfall.ui.work.SearchDesk;
import drumfall.ui.work.Searcher;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import javax.swing.SwingUtilities;

/**
 * The program with its window; made and used on the event thread.
 *
 * @param workspace the shared state
 * @param files the design's file
 * @param placed where the arbors stand
 * @param mesh the mesh looked into
 * @param power where the power goes
 * @param easing what easing the brief would buy
 * @param tried how the tried train stands
 * @param explainer why the brief has no train
 * @param exports plugins
 * @param window the window
 */
public record WindowProgram(
        Workspace workspace,
        FileDesk files,
        PlacedSheet placed,
        MeshSheet mesh,
        PowerSheet power,
        EasingSheet easing,
        TriedTrain tried,
        NoTrainExplainer explainer,
        Exports exports,
        MainWindow window) {
    /**
     * What the program starts with; tests put their own in place.
     *
     * @param brief the brief on the first sheet
     * @param searcher finds fronts
     * @param folders where things are remembered
     * @param plugins where plugins are looked for
     * @param asks asks for files; empty for the usual dialogs
     */
    record Start(
            Brief brief, Searcher searcher, Folders folders, List<PluginFolder> plugins, Optional<FileChoice> asks) {
        /** Copies the list. */
        Start {
            plugins = List.copyOf(plugins);
        }

        static Start usual() {
            return new Start(
                    BundledBriefs.demo(),
                    TrainSearch::run,
                    Folders.usual(),
                    PluginFolders.ofThisProgram(),
                    Optional.empty());
        }
    }

    /** Opens the window on the demonstration, searching; called from any thread. */
    static void open() {
        SwingUtilities.invokeLater(() -> {
            WindowProgram program = made(Start.usual());
            program.window().setVisible(true);
            program.window().offerLeftBehind();
            program.workspace().solve();
        });
    }

    /** The program, its window not yet visible. */
    static WindowProgram made(Start start) {
        Settings settings = new Settings(start.folders().settings());
        Look.apply(
                settings.get("dark").filter("true"::equals).isPresent(),
                settings.number("size").orElse(100));
        SearchDesk desk = new SearchDesk(SwingUtilities::invokeLater, start.searcher());
        ExecutorService disk = Executors.newSingleThreadExecutor(task -> daemon(task, "files"));
        ExecutorService exporting = Executors.newSingleThreadExecutor(task -> daemon(task, "export"));
        Workspace workspace = new Workspace(Design.of(start.brief()), start.brief(), desk);
        FileDesk files = new FileDesk(
                workspace,
                disk,
                SwingUtilities::invokeLater,
                settings,
                new RecoveryFolder(start.folders().recovery()));
        Exports exports = new Exports(
                workspace,
                exporting,
                SwingUtilities::invokeLater,
                start.plugins(),
                ProgramVersion.text(),
                new ExportSettings(settings));
        LatestDesk tracing = new LatestDesk(SwingUtilities::invokeLater, "mesh");
        MeshSheet mesh = new MeshSheet(workspace, tracing);
        LatestDesk dials = new LatestDesk(SwingUtilities::invokeLater, "power");
        LatestDesk findings = new LatestDesk(SwingUtilities::invokeLater, "savings");
        PowerSheet power = new PowerSheet(workspace, dials, findings);
        LatestDesk layouts = new LatestDesk(SwingUtilities::invokeLater, "layout");
        PlacedSheet placed = new PlacedSheet(workspace, WindowProgram::need, layouts);
        LatestDesk sizing = new LatestDesk(SwingUtilities::invokeLater, "sizes");
        FrontSizes sizes = new FrontSizes(workspace, WindowProgram::need, sizing);
        LatestDesk trials = new LatestDesk(SwingUtilities::invokeLater, "trial");
        TriedTrain tried = new TriedTrain(workspace, trials);
        LongDesk costs = new LongDesk(SwingUtilities::invokeLater, "easing");
        EasingSheet easing = new EasingSheet(workspace, costs);
        LongDesk reasons = new LongDesk(SwingUtilities::invokeLater, "reasons");
        NoTrainExplainer explainer = new NoTrainExplainer(workspace, reasons);
        Runnable close = () -> {
            desk.close();
            List.of(tracing, dials, findings, layouts, sizing, trials).forEach(LatestDesk::close);
            List.of(costs, reasons).forEach(LongDesk::close);
            files.close();
            exports.close();
            disk.shutdown();
            exporting.shutdown();
        };
        MainWindow window = new MainWindow(
                workspace,
                files,
                new DrawingSheets(placed, mesh, power, easing, tried),
                sizes,
                explainer,
                exports,
                settings,
                ProgramVersion.text(),
                start.asks(),
                close);
        exports.load(() -> {});
        return new WindowProgram(workspace, files, placed, mesh, power, easing, tried, explainer, exports, window);
    }

    private static Optional<LayoutNeed> need(Brief brief, Train train) {
        TrainPlacing placing = new TrainPlacing(new TrainRater(brief));
        return placing.lacking(train).isPresent() ? Optional.empty() : Optional.of(placing.need(train));
    }

    /** Saving ends before the program does: the file thread is not cut off. */
    private static Thread daemon(Runnable task, String name) {
        Thread thread = new Thread(task, name);
        thread.setDaemon(!name.equals("files"));
        return thread;
    }
}
