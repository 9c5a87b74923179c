// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.terminal;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import drumfall.ui.plugin.ExporterEntry;
import drumfall.ui.plugin.LoadedPlugin;
import drumfall.ui.plugin.PluginFolder;
import drumfall.ui.plugin.PluginHost;
import drumfall.ui.plugin.SettingWords;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Lists the plugins: what is loaded, from where, its version, what failed and why. */
@Command(name = "plugins", mixinStandardHelpOptions = true, resourceBundle = Phrases.BUNDLE)
final class PluginsCommand implements Callable<Integer> {
    private final TerminalPlace place;

    @Option(names = "--json", descriptionKey = "option.json")
    private boolean json;

    PluginsCommand(TerminalPlace place) {
        this.place = place;
    }

    @Override
    public Integer call() {
        try (PluginHost host = PluginHost.load(place.pluginFolders())) {
            if (json) {
                JsonOutput.print(document(host.report()), place.out());
            } else {
                print(host.report());
            }
            boolean sound =
                    host.report().stream().allMatch(plugin -> plugin.faults().isEmpty());
            return (sound ? ExitCode.DONE : ExitCode.EXPORT_FAILED).number();
        }
    }

    private void print(List<LoadedPlugin> report) {
        place.out().println(Phrases.phrase("plugins.folders"));
        for (PluginFolder folder : place.pluginFolders()) {
            place.out()
                    .println("  " + Phrases.phrase("plugins." + folder.origin().name(), folder.path()));
        }
        place.out().println();
        TextTable table = TextTable.of("plugins.columns");
        report.forEach(plugin -> plugin.exporters()
                .forEach(exporter ->
                        table.row(exporter.id(), exporter.title(), plugin.name(), plugin.version(), plugin.file())));
        boolean any = report.stream().anyMatch(plugin -> !plugin.exporters().isEmpty());
        (any ? table.lines() : List.of(Phrases.phrase("plugins.none"))).forEach(place.out()::println);
        printSettings(report);
        report.stream()
                .flatMap(plugin -> plugin.faults().stream())
                .forEach(fault -> place.out().println(Phrases.phrase("plugins.fault", fault.sentence())));
    }

    private void printSettings(List<LoadedPlugin> report) {
        List<ExporterEntry> exporters = report.stream()
                .flatMap(plugin -> plugin.exporters().stream())
                .filter(exporter -> !exporter.settings().isEmpty())
                .toList();
        if (exporters.isEmpty()) {
            return;
        }
        place.out().println();
        place.out().println(Phrases.phrase("plugins.settings"));
        TextTable table = TextTable.of("plugins.settings.columns");
        exporters.forEach(exporter -> exporter.settings()
                .forEach(setting -> table.row(
                        exporter.id() + "." + setting.id(),
                        SettingWords.usual(setting),
                        SettingWords.allowed(setting),
                        setting.help())));
        table.lines().forEach(place.out()::println);
    }

    private static ObjectNode document(List<LoadedPlugin> report) {
        ObjectNode document = JsonOutput.document("drumfall-plugins");
        ArrayNode plugins = document.putArray("plugins");
        report.forEach(plugin -> put(plugins.addObject(), plugin));
        return document;
    }

    private static void put(ObjectNode group, LoadedPlugin plugin) {
        group.put("file", plugin.file().toString());
        group.put("origin", JsonOutput.word(plugin.folder().origin()));
        group.put("name", plugin.name());
        group.put("version", plugin.version());
        ArrayNode exporters = group.putArray("exporters");
        plugin.exporters().forEach(exporter -> put(exporters.addObject(), exporter));
        ArrayNode faults = group.putArray("faults");
        plugin.faults()
                .forEach(fault -> faults.addObject()
                        .put("kind", JsonOutput.word(fault.kind()))
                        .put("text", fault.sentence()));
    }

    private static void put(ObjectNode group, ExporterEntry exporter) {
        group.put("id", exporter.id()).put("title", exporter.title());
        ArrayNode settings = group.putArray("settings");
        exporter.settings()
                .forEach(setting -> settings.addObject()
                        .put("id", setting.id())
                        .put("title", setting.title())
                        .put("help", setting.help())
                        .put("usual", SettingWords.usual(setting))
                        .put("allowed", SettingWords.allowed(setting)));
    }
}
