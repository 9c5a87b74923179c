// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.plugin;

import drumfall.plugin.api.ApiVersion;
import drumfall.plugin.api.Exporter;
import drumfall.solver.train.Train;
import java.io.IOException;
import java.io.OutputStream;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.net.URI;
import java.net.URISyntaxException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.jar.Attributes;
import java.util.jar.JarEntry;
import java.util.jar.JarOutputStream;
import java.util.jar.Manifest;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.tools.JavaCompiler;
import javax.tools.JavaFileObject;
import javax.tools.SimpleJavaFileObject;
import javax.tools.ToolProvider;
import org.apache.commons.numbers.fraction.BigFraction;

/** Makes plugin jars while a test runs: sources compiled against the api, packed with a manifest. */
public final class PluginJars {
    private final Path work;
    private final Map<String, String> sources = new LinkedHashMap<>();
    private final Map<String, String> resources = new LinkedHashMap<>();
    private final List<String> services = new ArrayList<>();
    private final List<String> left = new ArrayList<>();
    private final Map<String, String> attributes = new LinkedHashMap<>();

    private PluginJars(Path work) {
        this.work = work;
        attributes.put(ApiVersion.MANIFEST_ATTRIBUTE, "1.0");
    }

    public static PluginJars in(Path work) {
        return new PluginJars(work);
    }

    /** An exporter class in the package stranger; the body may use handover, folder and progress. */
    public PluginJars exporter(String type, String id, String exportBody) {
        return exporter(type, "", "return \"" + id + "\";", "return \"" + id + " title\";", exportBody);
    }

    /** An exporter whose class has further members, such as settings. */
    public PluginJars settable(String type, String id, String members, String exportBody) {
        return exporter(type, members, "return \"" + id + "\";", "return \"" + id + " title\";", exportBody);
    }

    PluginJars exporter(String type, String members, String idBody, String titleBody, String exportBody) {
        return source("stranger." + type, """
                package stranger;
                import drumfall.plugin.api.*;
                public class %s implements Exporter {
                    %s
                    public String id() { %s }
                    public String title() { %s }
                    static void write(ExportFolder folder, String name, String text) throws java.io.IOException {
                        try (java.io.OutputStream out = folder.create(name)) {
                            out.write(text.getBytes(java.nio.charset.StandardCharsets.UTF_8));
                        }
                    }
                    public void export(Handover handover, ExportFolder folder, ExportProgress progress)
                            throws java.io.IOException {
                        %s
                    }
                }
                """.formatted(type, members, idBody, titleBody, exportBody))
                .service("stranger." + type);
    }

    PluginJars source(String type, String text) {
        sources.put(type, text);
        return this;
    }

    PluginJars service(String type) {
        services.add(type);
        return this;
    }

    PluginJars resource(String name, String text) {
        resources.put(name, text);
        return this;
    }

    PluginJars attribute(String name, String value) {
        attributes.put(name, value);
        return this;
    }

    /** Leaves a compiled class out of the jar. */
    PluginJars without(String type) {
        left.add(type);
        return this;
    }

    public Path jar(Path file) {
        try {
            Path classes = Files.createTempDirectory(work, "classes");
            compile(classes);
            Files.createDirectories(file.getParent());
            try (JarOutputStream out = new JarOutputStream(Files.newOutputStream(file), manifest())) {
                pack(classes, out);
                for (Map.Entry<String, String> resource : allResources().entrySet()) {
                    entry(out, resource.getKey(), resource.getValue().getBytes(StandardCharsets.UTF_8));
                }
            }
            return file;
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    private Map<String, String> allResources() {
        Map<String, String> all = new LinkedHashMap<>(resources);
        if (!services.isEmpty()) {
            all.put("META-INF/services/" + Exporter.class.getName(), String.join("\n", services));
        }
        return all;
    }

    private Manifest manifest() {
        Manifest manifest = new Manifest();
        manifest.getMainAttributes().put(Attributes.Name.MANIFEST_VERSION, "1.0");
        attributes.forEach(manifest.getMainAttributes()::putValue);
        return manifest;
    }

    private void compile(Path classes) {
        JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
        StringWriter messages = new StringWriter();
        List<String> options = List.of("-d", classes.toString(), "-classpath", classPath(), "-proc:none");
        List<JavaFileObject> units = sources.entrySet().stream()
                .map(source -> unit(source.getKey(), source.getValue()))
                .toList();
        if (!units.isEmpty()
                && !compiler.getTask(messages, null, null, options, null, units).call()) {
            throw new IllegalStateException("The plugin of a test must compile: " + messages);
        }
    }

    /** What a stranger compiles against: the api and what its records are made of. */
    static String classPath() {
        return Stream.of(Exporter.class, Train.class, BigFraction.class)
                .map(PluginJars::location)
                .collect(Collectors.joining(java.io.File.pathSeparator));
    }

    private static String location(Class<?> type) {
        try {
            return Path.of(type.getProtectionDomain()
                            .getCodeSource()
                            .getLocation()
                            .toURI())
                    .toString();
        } catch (URISyntaxException impossible) {
            throw new IllegalStateException(impossible);
        }
    }

    private static JavaFileObject unit(String type, String text) {
        return new SimpleJavaFileObject(
                URI.create("string:///" + type.replace('.', '/') + ".java"), JavaFileObject.Kind.SOURCE) {
            @Override
            public CharSequence getCharContent(boolean ignoreEncodingErrors) {
                return text;
            }
        };
    }

    private void pack(Path classes, JarOutputStream out) throws IOException {
        try (Stream<Path> files = Files.walk(classes)) {
            for (Path file : files.filter(Files::isRegularFile).sorted().toList()) {
                String name = classes.relativize(file).toString().replace('\\', '/');
                if (!left.contains(name.replace('/', '.').replaceFirst("\\.class$", ""))) {
                    entry(out, name, Files.readAllBytes(file));
                }
            }
        }
    }

    private static void entry(JarOutputStream out, String name, byte[] bytes) throws IOException {
        out.putNextEntry(new JarEntry(name));
        ((OutputStream) out).write(bytes);
        out.closeEntry();
    }
}
