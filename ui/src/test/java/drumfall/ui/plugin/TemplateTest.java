// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.plugin;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import drumfall.plugin.api.ApiVersion;
import drumfall.plugin.api.ExportProgress;
import drumfall.plugin.api.trial.TrialHandover;
import drumfall.ui.plugin.PluginFolder.Origin;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.w3c.dom.Document;

/** The project for strangers and the program's own exporters go through the host as any jar does. */
class TemplateTest {
    private static final Path PLUGINS = Path.of("..", "plugins");
    private static final Path TEMPLATE = PLUGINS.resolve("template");

    @TempDir
    Path folder;

    @Test
    void the_template_compiles_against_the_api_alone_and_is_loaded_and_used() throws Exception {
        HostBench bench = new HostBench(folder);
        PluginJars jar = bench.plugin();
        Path sources = TEMPLATE.resolve("src/main/java");
        try (Stream<Path> files = Files.walk(sources)) {
            for (Path file :
                    files.filter(path -> path.toString().endsWith(".java")).toList()) {
                String type =
                        sources.relativize(file).toString().replace('\\', '.').replace('/', '.');
                jar.source(type.replaceFirst("\\.java$", ""), Files.readString(file));
            }
        }
        String service = "META-INF/services/drumfall.plugin.api.Exporter";
        jar.resource(
                service, Files.readString(TEMPLATE.resolve("src/main/resources").resolve(service)));
        jar.attribute("Drumfall-Api", property("drumfall.api")).jar(bench.plugins.resolve("summary.jar"));
        try (PluginHost host = bench.load()) {
            assertThat(host.report().get(0).faults()).isEmpty();
            SettingTexts remark = SettingTexts.NONE.with("summary", "remark", "For the workshop");
            assertThat(host.export("summary", HostBench.HANDOVER, remark, bench.target, ExportProgress.unwatched()))
                    .isInstanceOf(ExportOutcome.Written.class);
        }
        assertThat(HostBench.tree(bench.target).get("summary/summary.txt"))
                .contains("wheel 96, pinion 8, module 1.5 mm", "every demand is met", "For the workshop");
    }

    @Test
    void the_template_has_no_parent_and_puts_the_api_version_into_its_manifest() throws Exception {
        assertThat(pom().getElementsByTagName("parent").getLength()).isZero();
        assertThat(pom().getElementsByTagName("Drumfall-Api").item(0).getTextContent())
                .isEqualTo("${drumfall.api}");
        assertThat(property("drumfall.api")).isEqualTo(ApiVersion.CURRENT.toString());
    }

    private static String property(String name) throws Exception {
        return pom().getElementsByTagName(name).item(0).getTextContent();
    }

    private static Document pom() throws Exception {
        return DocumentBuilderFactory.newInstance()
                .newDocumentBuilder()
                .parse(TEMPLATE.resolve("pom.xml").toFile());
    }

    /** Their jars are there once the whole project has been packaged; a build of this module alone may come before. */
    @Test
    void the_programs_own_exporters_load_without_fault_and_export() throws IOException {
        Path record = PLUGINS.resolve("record/target/plugin");
        Path outlines = PLUGINS.resolve("outlines/target/plugin");
        Path solids = PLUGINS.resolve("solids/target/plugin");
        Path sheet = PLUGINS.resolve("sheet/target/plugin");
        Path lists = PLUGINS.resolve("lists/target/plugin");
        assumeThat(Stream.of(record, outlines, solids, sheet, lists).allMatch(Files::isDirectory))
                .as("the exporters are packaged")
                .isTrue();
        List<PluginFolder> folders = List.of(
                new PluginFolder(Origin.PROPERTY, record),
                new PluginFolder(Origin.PROPERTY, outlines),
                new PluginFolder(Origin.PROPERTY, solids),
                new PluginFolder(Origin.PROPERTY, sheet),
                new PluginFolder(Origin.PROPERTY, lists));
        try (PluginHost host = PluginHost.load(folders, HostBench.LONG)) {
            assertThat(host.report()).hasSize(5).allSatisfy(plugin -> {
                assertThat(plugin.faults()).isEmpty();
                assertThat(plugin.version()).isNotEmpty();
            });
            assertThat(host.exporters())
                    .extracting(ExporterEntry::id)
                    .containsExactly("train-record", "outlines", "solids", "sheet", "templates", "lists");
            assertThat(host.exportAll(TrialHandover.eightDays(), folder, ExportProgress.unwatched()))
                    .isInstanceOf(ExportOutcome.Written.class);
        }
        // Solids and pages are no text, so that only their names are looked at.
        assertThat(List.of(
                        "train-record/train.json",
                        "train-record/parts.csv",
                        "outlines/arbor-2-wheel-and-pinion.svg",
                        "solids/movement.3mf",
                        "sheet/builders-sheet.html",
                        "sheet/builders-sheet-a4.pdf",
                        "templates/templates-a4.pdf",
                        "solids/arbor-2-wheel-and-pinion.stl"))
                .allSatisfy(name ->
                        assertThat(folder.resolve("all_exports").resolve(name)).isRegularFile());
    }
}
