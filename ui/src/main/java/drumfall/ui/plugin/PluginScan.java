// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.plugin;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/** Goes through the plugin folders in order, their jars by name, and loads what can be loaded. */
final class PluginScan {
    private final PluginLimits limits;
    private final List<JarLoading> loadings = new ArrayList<>();
    private final List<LoadedPlugin> report = new ArrayList<>();
    private final Map<String, String> ids = new HashMap<>();
    private final Set<Path> seen = new HashSet<>();

    PluginScan(PluginLimits limits) {
        this.limits = limits;
    }

    void scan(PluginFolder folder) {
        if (!Files.exists(folder.path(), LinkOption.NOFOLLOW_LINKS)) {
            return;
        }
        try (Stream<Path> entries = Files.list(folder.path())) {
            List<Path> jars = entries.filter(PluginScan::isJar).sorted().toList();
            for (Path jar : jars) {
                if (seen.add(realPath(jar))) {
                    load(folder, jar);
                }
            }
        } catch (UncheckedIOException broken) {
            unreadable(folder, broken.getCause());
        } catch (IOException broken) {
            unreadable(folder, broken);
        }
    }

    /** A link that leads nowhere is reported as a jar that cannot be read. */
    private static Path realPath(Path jar) {
        try {
            return jar.toRealPath();
        } catch (IOException leadsNowhere) {
            return jar;
        }
    }

    private static boolean isJar(Path entry) {
        String name = entry.getFileName().toString();
        return name.toLowerCase(Locale.ROOT).endsWith(".jar") && !name.startsWith(".");
    }

    private void load(PluginFolder folder, Path jar) {
        JarReading reading = JarReading.of(jar);
        if (reading.fault().isPresent()) {
            report.add(new LoadedPlugin(
                    jar,
                    folder,
                    reading.name(),
                    reading.version(),
                    List.of(),
                    List.of(reading.fault().get())));
            return;
        }
        JarLoading loading = new JarLoading(jar, PluginScan.class.getClassLoader(), limits.loading());
        loading.load(ids);
        loadings.add(loading);
        report.add(loading.report(folder, reading));
    }

    private void unreadable(PluginFolder folder, IOException broken) {
        String name = folder.path().toString();
        PluginFault fault = PluginFault.of(FaultKind.FOLDER_UNREADABLE, name, folder.path(), IoReason.of(broken));
        report.add(new LoadedPlugin(folder.path(), folder, name, "", List.of(), List.of(fault)));
    }

    List<LoadedPlugin> report() {
        return report;
    }

    List<JarLoading> loadings() {
        return loadings;
    }
}
