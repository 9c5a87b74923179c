// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.terminal;

import drumfall.plugin.api.ApiVersion;
import drumfall.plugin.api.ExportFolder;
import drumfall.plugin.api.ExportProgress;
import drumfall.plugin.api.ExportSetting;
import drumfall.plugin.api.Exporter;
import drumfall.plugin.api.Handover;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.List;
import java.util.jar.Attributes;
import java.util.jar.JarEntry;
import java.util.jar.JarOutputStream;
import java.util.jar.Manifest;

/** An exporter that writes the train in one line, packed into a jar by the tests that need one. */
public final class LineExporter implements Exporter {
    /** Made by the plugin host. */
    public LineExporter() {}

    static final ExportSetting.Count COPIES =
            new ExportSetting.Count("copies", "Copies", "How often the line is written.", 1, 1, 9);

    @Override
    public List<ExportSetting<?>> settings() {
        return List.of(COPIES);
    }

    @Override
    public String id() {
        return "line";
    }

    @Override
    public String title() {
        return "One line";
    }

    @Override
    public void export(Handover handover, ExportFolder folder, ExportProgress progress) throws IOException {
        try (OutputStream out = folder.create("train.txt")) {
            String line = handover.rating().train().toString();
            String lines =
                    String.join("\n", Collections.nCopies(handover.settings().of(COPIES), line));
            out.write(lines.getBytes(StandardCharsets.UTF_8));
        }
    }

    static void jar(Path file) throws IOException {
        Files.createDirectories(file.getParent());
        Manifest manifest = new Manifest();
        manifest.getMainAttributes().put(Attributes.Name.MANIFEST_VERSION, "1.0");
        manifest.getMainAttributes().put(Attributes.Name.IMPLEMENTATION_VERSION, "2.5");
        manifest.getMainAttributes().putValue(ApiVersion.MANIFEST_ATTRIBUTE, "1.1");
        String type = LineExporter.class.getName();
        String classFile = type.replace('.', '/') + ".class";
        try (JarOutputStream jar = new JarOutputStream(Files.newOutputStream(file), manifest);
                InputStream code = LineExporter.class.getClassLoader().getResourceAsStream(classFile)) {
            entry(jar, classFile, code.readAllBytes());
            entry(jar, "META-INF/services/" + Exporter.class.getName(), type.getBytes(StandardCharsets.UTF_8));
        }
    }

    private static void entry(JarOutputStream jar, String name, byte[] bytes) throws IOException {
        jar.putNextEntry(new JarEntry(name));
        jar.write(bytes, 0, bytes.length);
        jar.closeEntry();
    }
}
