// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.plugin;

import drumfall.plugin.api.ExportSetting;
import drumfall.plugin.api.Exporter;
import java.io.IOException;
import java.net.MalformedURLException;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.ServiceLoader;

/** Loads the exporters of one jar, each step guarded, and keeps what is wrong with the others. */
final class JarLoading implements AutoCloseable {
    /** Far more exporters than any jar has; a guard against a service file without end. */
    private static final int MOST_EXPORTERS = 100;

    private final Path jar;
    private final Duration limit;
    private final URLClassLoader loader;
    private final List<LoadedExporter> exporters = new ArrayList<>();
    private final List<PluginFault> faults = new ArrayList<>();

    JarLoading(Path jar, ClassLoader program, Duration limit) {
        this.jar = jar;
        this.limit = limit;
        this.loader = new URLClassLoader("plugin " + file(jar), new URL[] {url(jar)}, new ApiOnlyLoader(program));
    }

    private static String file(Path jar) {
        return jar.getFileName().toString();
    }

    private static URL url(Path jar) {
        try {
            return jar.toUri().toURL();
        } catch (MalformedURLException impossible) {
            throw new IllegalStateException("The path (%s) of a file must be a URL.".formatted(jar), impossible);
        }
    }

    /** What is made of one entry of the service file: nothing once there is no further one. */
    private record Made(Exporter exporter, String id, String title, List<ExportSetting<?>> settings) {
        static Made of(Exporter exporter) {
            List<ExportSetting<?>> settings = exporter.settings();
            // A list of the plugin's own class is copied here, where its methods are guarded; it may hold null.
            return new Made(
                    exporter, exporter.id(), exporter.title(), settings == null ? null : new ArrayList<>(settings));
        }
    }

    /**
     * Loads whatever can be.
     *
     * @param taken jars by the ids they have; gains the ids of this jar
     */
    void load(Map<String, String> taken) {
        Iterator<Exporter> services = ServiceLoader.load(Exporter.class, loader).iterator();
        for (int i = 0; i < MOST_EXPORTERS; i++) {
            GuardedCall.Ending<Optional<Made>> step = next(services);
            if (step instanceof GuardedCall.Ending.Returned<Optional<Made>> returned) {
                if (returned.value().isEmpty()) {
                    return;
                }
                keep(returned.value().get(), taken);
            } else if (step instanceof GuardedCall.Ending.Threw<Optional<Made>> threw) {
                failed(threw.thrown());
            } else {
                faults.add(PluginFault.of(FaultKind.HUNG_AT_START, file(jar), PluginLimits.seconds(limit)));
                return;
            }
        }
    }

    private GuardedCall.Ending<Optional<Made>> next(Iterator<Exporter> services) {
        return new GuardedCall("load " + file(jar), loader).run(limit, () -> false, () -> {
            if (!services.hasNext()) {
                return Optional.empty();
            }
            return Optional.of(Made.of(services.next()));
        });
    }

    private void keep(Made made, Map<String, String> taken) {
        Optional<PluginFault> fault = ExporterRules.fault(file(jar), made.id(), made.title(), made.settings())
                .or(() -> Optional.ofNullable(taken.get(made.id()))
                        .map(owner -> PluginFault.of(FaultKind.ID_TAKEN, file(jar), made.id(), owner)));
        fault.ifPresent(faults::add);
        if (fault.isEmpty()) {
            taken.put(made.id(), file(jar));
            ExporterEntry entry = new ExporterEntry(made.id(), made.title(), made.settings());
            exporters.add(new LoadedExporter(entry, made.exporter(), file(jar)));
        }
    }

    private void failed(ThrownText thrown) {
        FaultKind kind = thrown.linkage() ? FaultKind.LINKAGE : FaultKind.FAILED_TO_START;
        faults.add(PluginFault.of(kind, file(jar), thrown.summary()).withDetail(thrown.detail()));
    }

    List<LoadedExporter> exporters() {
        return exporters;
    }

    LoadedPlugin report(PluginFolder folder, JarReading reading) {
        return new LoadedPlugin(
                jar,
                folder,
                reading.name(),
                reading.version(),
                exporters.stream().map(LoadedExporter::entry).toList(),
                faults);
    }

    @Override
    public void close() throws IOException {
        loader.close();
    }
}
