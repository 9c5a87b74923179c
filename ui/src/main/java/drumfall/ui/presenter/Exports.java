// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.presenter;

import drumfall.plugin.api.ExportProgress;
import drumfall.plugin.api.Handover;
import drumfall.solver.brief.Brief;
import drumfall.solver.layout.Layout;
import drumfall.solver.layout.LayoutNeed;
import drumfall.solver.layout.LayoutOutcome;
import drumfall.solver.layout.Locks;
import drumfall.solver.layout.place.Placer;
import drumfall.solver.rating.Rating;
import drumfall.solver.rating.TrainRater;
import drumfall.solver.rating.placing.TrainPlacing;
import drumfall.solver.train.Train;
import drumfall.ui.plugin.ExportOutcome;
import drumfall.ui.plugin.ExporterEntry;
import drumfall.ui.plugin.LoadedPlugin;
import drumfall.ui.plugin.PluginFolder;
import drumfall.ui.plugin.PluginHost;
import drumfall.ui.plugin.SettingTexts;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executor;

/** The exporters that plugins bring, and the handing over of the chosen train to one of them or to all. */
public final class Exports implements AutoCloseable {
    private final Workspace workspace;
    private final Executor work;
    private final Executor events;
    private final List<PluginFolder> folders;
    private final String version;
    private final ExportSettings settings;
    private volatile boolean stopped;
    private volatile Optional<PluginHost> host = Optional.empty();
    private boolean running;

    /**
     * Exports of a workspace's train; no plugin is loaded yet.
     *
     * @param workspace the workspace
     * @param work runs what waits for plugins
     * @param events runs what comes of it on the workspace's thread
     * @param folders where plugins are looked for
     * @param version the program's version
     * @param settings what is set about exports
     */
    public Exports(
            Workspace workspace,
            Executor work,
            Executor events,
            List<PluginFolder> folders,
            String version,
            ExportSettings settings) {
        this.workspace = workspace;
        this.work = work;
        this.events = events;
        this.folders = List.copyOf(folders);
        this.version = version;
        this.settings = settings;
    }

    /** What is set about exports. */
    public ExportSettings settings() {
        return settings;
    }

    /**
     * Loads the plugins.
     *
     * @param loaded is run when they are
     */
    public void load(Runnable loaded) {
        work.execute(() -> {
            host = Optional.of(PluginHost.load(folders));
            events.execute(loaded);
        });
    }

    /** Whether plugins are loaded yet. */
    public boolean loaded() {
        return host.isPresent();
    }

    /** The exporters that can be used. */
    public List<ExporterEntry> exporters() {
        return host.map(PluginHost::exporters).orElse(List.of());
    }

    /** Every plugin found, with what is wrong with it. */
    public List<LoadedPlugin> report() {
        return host.map(PluginHost::report).orElse(List.of());
    }

    /** Folders that plugins are looked for in. */
    public List<PluginFolder> folders() {
        return folders;
    }

    /** Whether an export runs. */
    public boolean running() {
        return running;
    }

    /** Asks the running export to stop. */
    public void stop() {
        stopped = true;
    }

    /**
     * Hands the chosen train over.
     *
     * @param exporter to whom
     * @param target folder in which the exporter's own folder is made or replaced
     */
    public void export(ExporterEntry exporter, Path target) {
        SettingTexts texts = settings.texts(List.of(exporter));
        run(
                exporter.title(),
                (plugins, handover) -> plugins.export(exporter.id(), handover, texts, target, new Stopping()));
    }

    /**
     * Hands the chosen train over to every exporter that can be used; all of it or nothing is written.
     *
     * @param target a zip file to make or replace, if its name ends in {@code .zip}; else the folder in which the folder of
     *     all exports is made or replaced
     */
    public void exportAll(Path target) {
        exportTogether(exporters(), Texts.of("exporters.all"), target);
    }

    /**
     * Hands the chosen train over to the exporters that take part; all of it or nothing is written.
     *
     * @param target as for {@link #exportAll}
     */
    public void exportTicked(Path target) {
        exportTogether(ticked(), Texts.of("exporters.ticked"), target);
    }

    /** The exporters that take part when several export together. */
    public List<ExporterEntry> ticked() {
        return exporters().stream().filter(settings::takesPart).toList();
    }

    private void exportTogether(List<ExporterEntry> exporters, String title, Path target) {
        SettingTexts texts = settings.texts(exporters);
        List<String> ids = exporters.stream().map(ExporterEntry::id).toList();
        run(title, (plugins, handover) -> plugins.exportTogether(ids, handover, texts, target, new Stopping()));
    }

    /** What is done with the plugins and the handover. */
    private interface Export {
        ExportOutcome with(PluginHost plugins, Handover handover);
    }

    private void run(String title, Export export) {
        Optional<Rating> chosen = workspace.chosen();
        if (chosen.isEmpty() || host.isEmpty()) {
            workspace.setNews(News.trouble(Texts.of("news.export.nothing")));
            return;
        }
        Brief brief = workspace.brief();
        Rating rating = chosen.get();
        Locks drawn = workspace.design().drawnIn(rating.train());
        running = true;
        stopped = false;
        workspace.setNews(News.told(Texts.of("news.exporting", title)));
        work.execute(() -> {
            Handover handover = new Handover(brief, rating, layout(brief, rating.train(), drawn), version);
            ExportOutcome outcome = export.with(host.get(), handover);
            events.execute(() -> ended(title, outcome));
        });
    }

    /** Where the arbors stand, those drawn by hand where they were drawn. */
    private Optional<Layout> layout(Brief brief, Train train, Locks drawn) {
        if (drawn.equals(Locks.NONE)) {
            return TrainPlacing.layout(brief, train, () -> stopped);
        }
        LayoutNeed need = PlacedSheet.drawn(new TrainPlacing(new TrainRater(brief)).need(train), drawn);
        return Placer.place(need, () -> stopped) instanceof LayoutOutcome.Placed placed
                ? Optional.of(placed.layout())
                : Optional.empty();
    }

    /** Stops an export when the maker says so. */
    private final class Stopping implements ExportProgress {
        @Override
        public void at(double share, String doing) {
            events.execute(() -> {
                if (running) {
                    workspace.setNews(News.told(Texts.of("news.exporting.doing", doing)));
                }
            });
        }

        @Override
        public boolean cancelled() {
            return stopped;
        }
    }

    private void ended(String title, ExportOutcome outcome) {
        running = false;
        if (outcome instanceof ExportOutcome.Written written) {
            workspace.setNews(
                    News.told(Texts.of("news.exported", title, written.files().size(), written.folder())));
        } else if (outcome instanceof ExportOutcome.Failed failed) {
            workspace.setNews(News.trouble(failed.fault().sentence()));
        } else {
            workspace.setNews(News.told(Texts.of("news.export.cancelled")));
        }
    }

    /** Lets go of the plugins. */
    @Override
    public void close() {
        stop();
        host.ifPresent(PluginHost::close);
    }
}
