// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.plugin;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import drumfall.plugin.api.ExportProgress;
import drumfall.plugin.api.ExportSetting;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Settings of exporters: declared by the plugin, checked by the host, handed over typed, and told in the list of files. */
class SettingsTest {
    private static final String DECLARED = """
            static final ExportSetting.Length EDGE = new ExportSetting.Length("edge", "Edge", "Room around it.",
                    length("5 mm"), length("1 mm"), length("1 in"));
            static final ExportSetting.Count COPIES = new ExportSetting.Count("copies", "Copies", "How many.", 1, 1, 9);
            static final ExportSetting.Choice PAPER = new ExportSetting.Choice("paper", "Paper", "The paper.", "a4",
                    java.util.List.of(new ExportSetting.Choice.Value("a4", "A4"),
                            new ExportSetting.Choice.Value("letter", "Letter")));
            static final ExportSetting.YesNo FRAME = new ExportSetting.YesNo("frame", "Frame", "Draws one.", true);
            static final ExportSetting.Text REMARK = new ExportSetting.Text("remark", "Remark", "A line.", "none", 12);
            static drumfall.solver.quantity.Quantity length(String typed) {
                return drumfall.solver.quantity.Quantity.parse(drumfall.solver.quantity.Dimension.LENGTH, typed);
            }
            public java.util.List<ExportSetting<?>> settings() {
                return java.util.List.of(EDGE, COPIES, PAPER, FRAME, REMARK);
            }
            """;

    private static final String WRITES = """
            SettingValues set = handover.settings();
            String edge = set.of(EDGE).in("mm") + " mm";
            int copies = set.of(COPIES);
            boolean frame = set.of(FRAME);
            write(folder, "a.txt", edge + ", " + copies + ", " + set.of(PAPER) + ", " + frame + ", " + set.of(REMARK));
            """;

    @TempDir
    static Path work;

    @TempDir
    Path folder;

    private static PluginHost host;

    @BeforeAll
    static void load() {
        HostBench bench = new HostBench(work);
        bench.plugin()
                .attribute("Drumfall-Api", "1.1")
                .exporter("Set", DECLARED, "return \"set\";", "return \"Set\";", WRITES)
                .exporter("Fixed", "fixed", "write(folder, \"b.txt\", \"b\");")
                .jar(bench.plugins.resolve("set.jar"));
        host = bench.load();
    }

    @AfterAll
    static void close() {
        host.close();
    }

    private ExportOutcome export(SettingTexts settings) {
        return host.export("set", HostBench.HANDOVER, settings, folder, ExportProgress.unwatched());
    }

    private Map<String, String> files(SettingTexts settings) {
        assertThat(export(settings)).isInstanceOf(ExportOutcome.Written.class);
        return HostBench.tree(folder);
    }

    private static SettingTexts set(String setting, String typed) {
        return SettingTexts.NONE.with("set", setting, typed);
    }

    @Test
    void the_host_knows_the_settings_in_the_plugins_order() {
        assertThat(host.report().get(0).faults()).isEmpty();
        assertThat(host.exporters().get(0).settings())
                .extracting(ExportSetting::id)
                .containsExactly("edge", "copies", "paper", "frame", "remark");
        assertThat(host.exporters().get(1).settings()).isEmpty();
    }

    @Test
    void what_is_not_set_has_its_usual_value() {
        assertThat(files(SettingTexts.NONE)).containsEntry("set/a.txt", "5.0 mm, 1, a4, true, none");
    }

    /** An inch is 25.4 mm (international yard and pound agreement, 1959). */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            edge   | 2 mm   | 2.0 mm, 1, a4, true, none
            edge   | 1/2 in | 12.7 mm, 1, a4, true, none
            copies | 9      | 5.0 mm, 9, a4, true, none
            paper  | letter | 5.0 mm, 1, letter, true, none
            frame  | no     | 5.0 mm, 1, a4, false, none
            remark | a, = b | 5.0 mm, 1, a4, true, a, = b
            remark | ''     | 5.0 mm, 1, a4, true,
            """)
    void what_is_set_arrives_typed(String setting, String typed, String written) {
        assertThat(files(set(setting, typed)).get("set/a.txt").strip()).isEqualTo(written);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            edge   | 0 mm           | "0 mm": it must be a length from 1 mm to 1 in. Maybe take 1 mm.
            edge   | 30 mm          | "30 mm": it must be a length from 1 mm to 1 in. Maybe take 1 in.
            edge   | 0              | is not a length
            edge   | 2 kg           | is not a length
            copies | 0              | "0": it must be a whole number from 1 to 9. Maybe take 1.
            copies | 99999999999999 | it must be a whole number from 1 to 9. Maybe take 9.
            copies | 1.5            | "1.5": it must be a whole number from 1 to 9. Maybe take 1.
            paper  | A4             | "A4": it must be one of a4, letter. Maybe take a4.
            frame  | true           | "true": it must be yes or no. Maybe take yes.
            remark | thirteen long  | it must be one line of at most 12 characters. Maybe take none.
            sides  | 2              | has no setting "sides"; it has: edge, copies, paper, frame, remark.
            """)
    void a_bad_value_is_one_sentence_and_nothing_is_written(String setting, String typed, String told) {
        PluginFault fault = HostBench.fault(export(set(setting, typed)));
        assertThat(fault.sentence()).contains(told).contains("set");
        assertThat(folder).isEmptyDirectory();
        assertThat(host.fault(List.of("set"), set(setting, typed))).contains(fault);
        assertThat(host.exporters().get(0).fault(setting, typed)).contains(fault);
    }

    @Test
    void a_setting_is_for_an_exporter_that_is_there_and_takes_part() {
        assertThat(HostBench.fault(export(SettingTexts.NONE.with("nowhere", "edge", "2 mm")))
                        .kind())
                .isEqualTo(FaultKind.UNKNOWN_EXPORTER);
        assertThat(host.fault(List.of("fixed"), set("edge", "2 mm")).orElseThrow())
                .satisfies(fault -> assertThat(fault.kind()).isEqualTo(FaultKind.IDLE_SETTING))
                .satisfies(fault -> assertThat(fault.sentence()).contains("set.edge", "it is made with: fixed"));
        assertThat(host.fault(List.of("fixed"), SettingTexts.NONE.with("fixed", "edge", "2 mm")))
                .map(PluginFault::kind)
                .contains(FaultKind.NO_SETTINGS);
        assertThat(host.fault(List.of("set", "fixed"), set("edge", "2 mm"))).isEmpty();
    }

    @Test
    void the_list_of_files_names_every_setting_as_it_is_typed() {
        String list = files(set("edge", "1/2 in")).get("set/files.sha256");
        assertThat(list.lines())
                .startsWith(
                        "# set.edge=1/2 in", "# set.copies=1", "# set.paper=a4", "# set.frame=yes", "# set.remark=none")
                .hasSize(6);
    }

    @Test
    void the_same_settings_give_the_same_bytes_and_replace_an_export_with_others() {
        Map<String, String> one = files(set("copies", "2"));
        Map<String, String> other = files(set("copies", "3"));
        assertThat(other).isNotEqualTo(one);
        assertThat(files(set("copies", "2"))).isEqualTo(one);
    }

    /** Comments are passed over by {@code sha256sum --check --strict} (GNU coreutils). */
    @Test
    void sha256sum_passes_over_the_settings() throws IOException, InterruptedException {
        assumeThat(Path.of("/usr/bin/sha256sum")).as("sha256sum is installed").exists();
        host.exportTogether(host.everyId(), HostBench.HANDOVER, set("copies", "2"), folder, ExportProgress.unwatched());
        Process process = new ProcessBuilder("/usr/bin/sha256sum", "--check", "--strict", "files.sha256")
                .directory(folder.resolve("all_exports").toFile())
                .redirectErrorStream(true)
                .start();
        String told = new String(process.getInputStream().readAllBytes(), java.nio.charset.StandardCharsets.UTF_8);
        assertThat(process.waitFor()).as(told).isZero();
        assertThat(told.lines()).containsExactly("fixed/b.txt: OK", "set/a.txt: OK");
    }

    @Test
    void some_of_the_exporters_export_together() {
        assertThat(host.exportTogether(
                        List.of("set"), HostBench.HANDOVER, SettingTexts.NONE, folder, ExportProgress.unwatched()))
                .isInstanceOf(ExportOutcome.Written.class);
        assertThat(HostBench.tree(folder)).containsOnlyKeys("all_exports/files.sha256", "all_exports/set/a.txt");
    }

    @Test
    void a_refusal_is_the_exporters_own_sentence() {
        HostBench bench = new HostBench(folder);
        PluginFault fault = HostBench.fault(bench.exportOver(
                "throw new RefusedExportException(\"The rod (1 m) must be longer. Maybe take 2 m.\");",
                HostBench.LONG));
        assertThat(fault.kind()).isEqualTo(FaultKind.REFUSED);
        assertThat(fault.sentence())
                .contains(": The rod (1 m) must be longer. Maybe take 2 m. The earlier export is as it was.");
        bench.assertEarlierExportWhole();
    }
}
