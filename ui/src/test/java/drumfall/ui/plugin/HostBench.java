// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.plugin;

import static org.assertj.core.api.Assertions.assertThat;

import drumfall.plugin.api.ExportProgress;
import drumfall.plugin.api.Handover;
import drumfall.plugin.api.trial.TrialHandover;
import drumfall.ui.plugin.PluginFolder.Origin;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.BooleanSupplier;
import java.util.stream.Stream;

/** A plugin folder, a target folder with an earlier export, and what tests ask of them. */
final class HostBench {
    /** Short enough for tests of what hangs; nothing here asserts how long anything took. */
    static final PluginLimits SHORT = new PluginLimits(Duration.ofMinutes(2), Duration.ofMillis(1500));

    /** The same for loading. */
    static final PluginLimits SHORT_LOADING = new PluginLimits(Duration.ofSeconds(3), Duration.ofMinutes(2));

    /** Long enough never to matter on a busy machine. */
    static final PluginLimits LONG = new PluginLimits(Duration.ofMinutes(2), Duration.ofMinutes(2));

    static final Handover HANDOVER = TrialHandover.eightDays();

    final Path work;
    final Path plugins;
    final Path target;

    HostBench(Path folder) {
        this.work = folder;
        this.plugins = folder.resolve("plugins");
        this.target = folder.resolve("exports");
    }

    PluginJars plugin() {
        return PluginJars.in(work);
    }

    PluginHost load() {
        return load(LONG);
    }

    PluginHost load(PluginLimits limits) {
        return PluginHost.load(java.util.List.of(new PluginFolder(Origin.USER, plugins)), limits);
    }

    /** Exports with the only plugin of the folder. */
    ExportOutcome export(PluginHost host, String id) {
        return host.export(id, HANDOVER, target, ExportProgress.unwatched());
    }

    /** Makes a jar whose exporter "odd" has that body, exports once with an honest one of the same id, then with it. */
    ExportOutcome exportOver(String exportBody, PluginLimits limits) {
        makeEarlierExport();
        plugin().exporter("Odd", "odd", exportBody).jar(plugins.resolve("odd.jar"));
        try (PluginHost host = load(limits)) {
            return export(host, "odd");
        }
    }

    void makeEarlierExport() {
        Path jar = plugin().exporter("Honest", "odd", "write(folder, \"earlier.txt\", \"earlier\");")
                .jar(work.resolve("earlier").resolve("honest.jar"));
        try (PluginHost host =
                PluginHost.load(java.util.List.of(new PluginFolder(Origin.USER, jar.getParent())), LONG)) {
            assertThat(export(host, "odd")).isInstanceOf(ExportOutcome.Written.class);
        }
    }

    /** The earlier export is whole and nothing else lies in the target. */
    void assertEarlierExportWhole() {
        assertThat(tree(target).keySet()).containsExactly("odd/earlier.txt", "odd/files.sha256");
        assertThat(tree(target)).containsEntry("odd/earlier.txt", "earlier");
    }

    static PluginFault fault(ExportOutcome outcome) {
        assertThat(outcome).isInstanceOf(ExportOutcome.Failed.class);
        PluginFault fault = ((ExportOutcome.Failed) outcome).fault();
        assertIsOneSentence(fault);
        return fault;
    }

    static void assertIsOneSentence(PluginFault fault) {
        assertThat(fault.sentence()).doesNotContain("\n", "{", "null").endsWith(".");
    }

    static Map<String, String> tree(Path folder) {
        Map<String, String> files = new TreeMap<>();
        try (Stream<Path> entries = Files.walk(folder)) {
            for (Path entry : entries.filter(Files::isRegularFile).toList()) {
                files.put(folder.relativize(entry).toString().replace('\\', '/'), Files.readString(entry));
            }
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
        return files;
    }

    /** A progress that is cancelled once something holds. */
    static ExportProgress cancelledWhen(BooleanSupplier condition) {
        return new ExportProgress() {
            @Override
            public void at(double share, String doing) {}

            @Override
            public boolean cancelled() {
                return condition.getAsBoolean();
            }
        };
    }
}
