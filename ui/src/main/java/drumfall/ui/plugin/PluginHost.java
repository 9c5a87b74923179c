// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.plugin;

import drumfall.plugin.api.ExportProgress;
import drumfall.plugin.api.Handover;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The plugins found in some folders: what they are, what is wrong with them, and exports with them.
 *
 * <p>Whatever a plugin does ends up as a {@link PluginFault}, never as an exception. Methods may be called from any
 * thread; loading and exporting wait for plugins and belong off the event thread. One export runs at a time.
 */
public final class PluginHost implements AutoCloseable {
    private final PluginLimits limits;
    private final List<LoadedPlugin> report;
    private final List<JarLoading> loadings;
    private final List<LoadedExporter> exporters;
    private final Map<String, Thread> hanging = new HashMap<>();

    private PluginHost(PluginScan scan, PluginLimits limits) {
        this.limits = limits;
        this.report = List.copyOf(scan.report());
        this.loadings = List.copyOf(scan.loadings());
        this.exporters = loadings.stream()
                .flatMap(loading -> loading.exporters().stream())
                .toList();
    }

    /**
     * Loads the plugins of folders; an id goes to the exporter found first.
     *
     * @param folders in order; those that do not exist are passed over
     */
    public static PluginHost load(List<PluginFolder> folders) {
        return load(folders, PluginLimits.ORDINARY);
    }

    /**
     * Loads the plugins of folders within limits of time.
     *
     * @param folders in order; those that do not exist are passed over
     * @param limits how long a plugin may take
     */
    public static PluginHost load(List<PluginFolder> folders, PluginLimits limits) {
        PluginScan scan = new PluginScan(limits);
        folders.forEach(scan::scan);
        return new PluginHost(scan, limits);
    }

    /** Every jar found, in the order of folders and then of file names, with its exporters and faults. */
    public List<LoadedPlugin> report() {
        return report;
    }

    /** The exporters that can be used, in the order found. */
    public List<ExporterEntry> exporters() {
        return exporters.stream().map(LoadedExporter::entry).toList();
    }

    /**
     * What is wrong with an export before it is begun: an exporter that is not there, a setting that is not.
     *
     * @param ids the exporters
     * @param settings what is set
     */
    public Optional<PluginFault> fault(List<String> ids, SettingTexts settings) {
        return ids.stream()
                .filter(id -> entry(id).isEmpty())
                .findFirst()
                .map(this::unknown)
                .or(() -> idle(ids, settings))
                .or(() -> ids.stream()
                        .flatMap(id -> SettingReading.of(entry(id).orElseThrow(), settings.of(id)).fault().stream())
                        .findFirst());
    }

    private Optional<PluginFault> idle(List<String> ids, SettingTexts settings) {
        return settings.typed().keySet().stream()
                .filter(id -> !ids.contains(id))
                .findFirst()
                .map(id -> entry(id).isEmpty()
                        ? unknown(id)
                        : PluginFault.of(
                                FaultKind.IDLE_SETTING,
                                id,
                                settings.of(id).keySet().stream()
                                        .sorted()
                                        .findFirst()
                                        .orElse(""),
                                String.join(", ", ids)));
    }

    private PluginFault unknown(String id) {
        return PluginFault.of(FaultKind.UNKNOWN_EXPORTER, id, ids());
    }

    private Optional<ExporterEntry> entry(String id) {
        return exporters().stream().filter(entry -> entry.id().equals(id)).findFirst();
    }

    /**
     * Exports with the usual settings within the ordinary limit.
     *
     * @param id the exporter
     * @param handover what to export
     * @param target folder in which the export's own folder, named after the id, is made or replaced
     * @param progress told how far it is, asked whether to stop
     */
    public ExportOutcome export(String id, Handover handover, Path target, ExportProgress progress) {
        return export(id, handover, SettingTexts.NONE, target, progress);
    }

    /**
     * Exports: afterwards either the new export is whole in {@code target/id}, or whatever was there is as it was.
     *
     * @param id the exporter
     * @param handover what to export
     * @param settings what is set about it
     * @param target folder in which the export's own folder, named after the id, is made or replaced; made if need be
     * @param progress told how far it is on the exporter's thread, asked on several threads whether to stop
     */
    public ExportOutcome export(
            String id, Handover handover, SettingTexts settings, Path target, ExportProgress progress) {
        return export(id, handover, settings, target, limits.exporting(), progress, Files::newOutputStream);
    }

    synchronized ExportOutcome export(
            String id,
            Handover handover,
            SettingTexts settings,
            Path target,
            Duration limit,
            ExportProgress progress,
            StagedFolder.Opener opener) {
        PluginLimits.requirePositive("exporting", limit);
        return refusal(List.of(id), settings)
                .orElseGet(() -> run(
                        ExportRun.of(orders(List.of(id), settings).get(0), absolute(target), limit, opener),
                        handover,
                        progress));
    }

    /**
     * Exports with every exporter that can be used and the usual settings.
     *
     * @param handover what to export
     * @param target as for {@link #exportTogether}
     * @param progress told how far all of it is, asked whether to stop
     */
    public ExportOutcome exportAll(Handover handover, Path target, ExportProgress progress) {
        return exportTogether(everyId(), handover, SettingTexts.NONE, target, progress);
    }

    /**
     * Exports with several exporters, within the ordinary limit for each of them.
     *
     * <p>Afterwards either the new export is whole, each exporter's files in a folder named after its id and one list of all
     * of them beside these folders, or whatever was there is as it was.
     *
     * @param ids the exporters
     * @param handover what to export
     * @param settings what is set about it
     * @param target a zip file to make or replace, if its name ends in {@code .zip}; else the folder in which the folder
     *     {@code all_exports} is made or replaced
     * @param progress told how far all of it is, asked whether to stop
     */
    public synchronized ExportOutcome exportTogether(
            List<String> ids, Handover handover, SettingTexts settings, Path target, ExportProgress progress) {
        if (ids.isEmpty()) {
            return new ExportOutcome.Failed(PluginFault.of(FaultKind.NONE_LOADED, FaultText.word("exporters.all")));
        }
        return refusal(ids, settings)
                .orElseGet(() -> run(
                        ExportRun.ofAll(
                                orders(ids, settings), absolute(target), limits.exporting(), Files::newOutputStream),
                        handover,
                        progress));
    }

    private Optional<ExportOutcome> refusal(List<String> ids, SettingTexts settings) {
        return fault(ids, settings)
                .or(() -> exporters.stream()
                        .filter(exporter -> ids.contains(exporter.entry().id()) && hangs(exporter))
                        .findFirst()
                        .map(busy -> PluginFault.of(FaultKind.STILL_HANGING, busy.jar())))
                .map(ExportOutcome.Failed::new);
    }

    /** The exporters in the order found, whatever the order they are asked for in. */
    private List<ExportOrder> orders(List<String> ids, SettingTexts settings) {
        return exporters.stream()
                .filter(exporter -> ids.contains(exporter.entry().id()))
                .map(exporter -> new ExportOrder(
                        exporter,
                        SettingReading.of(
                                        exporter.entry(),
                                        settings.of(exporter.entry().id()))
                                .values()))
                .toList();
    }

    private ExportOutcome run(ExportRun run, Handover handover, ExportProgress progress) {
        ExportOutcome outcome = run.run(handover, progress);
        hanging.putAll(run.leftBehind());
        return outcome;
    }

    private static Path absolute(Path target) {
        return target.toAbsolutePath().normalize();
    }

    private boolean hangs(LoadedExporter exporter) {
        return Optional.ofNullable(hanging.get(exporter.entry().id()))
                .filter(Thread::isAlive)
                .isPresent();
    }

    private String ids() {
        return exporters.isEmpty() ? FaultText.word("exporters.none") : String.join(", ", everyId());
    }

    /** Ids of all exporters that can be used, in the order found. */
    public List<String> everyId() {
        return exporters.stream().map(exporter -> exporter.entry().id()).toList();
    }

    /** Lets go of the jars; exporters must not be used afterwards. */
    @Override
    public void close() {
        for (JarLoading loading : loadings) {
            try {
                loading.close();
            } catch (IOException kept) {
                System.getLogger(PluginHost.class.getName()).log(System.Logger.Level.DEBUG, "A jar stays open.", kept);
            }
        }
    }
}
