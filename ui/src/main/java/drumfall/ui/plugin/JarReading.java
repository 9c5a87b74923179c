// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.plugin;

import drumfall.plugin.api.ApiVersion;
import drumfall.plugin.api.Exporter;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.jar.Attributes;
import java.util.jar.JarFile;
import java.util.jar.Manifest;

/**
 * What a jar says of itself, read without running anything of it.
 *
 * @param name implementation title, or else the file name
 * @param version implementation version, or else empty
 * @param fault what keeps it from being loaded, if anything
 */
record JarReading(String name, String version, Optional<PluginFault> fault) {
    private static final String SERVICE = "META-INF/services/" + Exporter.class.getName();

    static JarReading of(Path jar) {
        String file = jar.getFileName().toString();
        try {
            return Files.size(jar) == 0 ? unreadable(file, FaultText.word("reason.empty")) : read(jar, file);
        } catch (IOException failure) {
            return unreadable(file, IoReason.of(failure));
        } catch (SecurityException | IllegalArgumentException damaged) {
            return unreadable(file, String.valueOf(damaged.getMessage()));
        }
    }

    private static JarReading unreadable(String file, String reason) {
        return new JarReading(file, "", Optional.of(PluginFault.of(FaultKind.NOT_A_JAR, file, reason)));
    }

    private static JarReading read(Path jar, String file) throws IOException {
        try (JarFile open = new JarFile(jar.toFile())) {
            Attributes manifest = Optional.ofNullable(open.getManifest())
                    .map(Manifest::getMainAttributes)
                    .orElseGet(Attributes::new);
            return new JarReading(
                    text(manifest, "Implementation-Title").orElse(file),
                    text(manifest, "Implementation-Version").orElse(""),
                    fault(open, manifest, file));
        }
    }

    private static Optional<PluginFault> fault(JarFile open, Attributes manifest, String file) {
        if (open.getEntry(SERVICE) == null) {
            return Optional.of(PluginFault.of(FaultKind.NO_EXPORTER, file, SERVICE));
        }
        String asked = text(manifest, ApiVersion.MANIFEST_ATTRIBUTE).orElse("");
        try {
            ApiVersion version = ApiVersion.parse(asked);
            return ApiVersion.CURRENT.serves(version)
                    ? Optional.empty()
                    : Optional.of(PluginFault.of(FaultKind.NEWER_API, file, version, ApiVersion.CURRENT));
        } catch (IllegalArgumentException unreadable) {
            return Optional.of(PluginFault.of(
                    FaultKind.NO_API_VERSION, file, ApiVersion.MANIFEST_ATTRIBUTE, asked, ApiVersion.CURRENT));
        }
    }

    private static Optional<String> text(Attributes manifest, String name) {
        return Optional.ofNullable(manifest.getValue(name))
                .map(FaultText::oneLine)
                .filter(value -> !value.isEmpty());
    }
}
