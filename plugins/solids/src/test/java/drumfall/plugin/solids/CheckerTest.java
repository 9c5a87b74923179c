// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.plugin.solids;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import drumfall.plugin.api.ExportProgress;
import drumfall.plugin.api.trial.TrialFolder;
import drumfall.plugin.api.trial.TrialHandover;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Independent programs read the files, where they are installed. */
class CheckerTest {
    @TempDir
    static Path folder;

    private static final List<Path> STL = new ArrayList<>();

    @BeforeAll
    static void export() throws IOException {
        TrialFolder files = new TrialFolder();
        new SolidsExporter().write(TrialHandover.eightDays(), Movements.eightDays(), files, ExportProgress.unwatched());
        for (String name : files.names()) {
            Path path = Files.write(folder.resolve(name), files.bytes(name));
            if (name.endsWith(".stl")) {
                STL.add(path);
            }
        }
    }

    @Test
    void admesh_finds_every_facet_connected_before_it_mends_anything() throws IOException, InterruptedException {
        assumeThat(answer("admesh", "--version")).as("admesh is installed").contains("ADMesh");
        for (Path file : STL) {
            String said = answer("admesh", file.toString());
            String facets = first(said, "Number of facets\\s*:\\s*(\\d+)");
            // The first of two columns is the file as it came; admesh mends in silence and shows the rest in the
            // second.
            assertThat(first(said, "Facets with 3 disconnected edges\\s*:\\s*(\\d+)"))
                    .isEqualTo("0");
            assertThat(first(said, "Total disconnected facets\\s*:\\s*(\\d+)"))
                    .as(file.toString())
                    .isEqualTo("0");
            for (String fault : List.of(
                    "Degenerate facets",
                    "Edges fixed",
                    "Facets removed",
                    "Facets added",
                    "Facets reversed",
                    "Backwards edges",
                    "Normals fixed")) {
                assertThat(first(said, fault + "\\s*:\\s*(\\d+)"))
                        .as("%s of %s", fault, file)
                        .isEqualTo("0");
            }
            int count = StlSurface.read(Files.readAllBytes(file)).facetCount();
            assertThat(facets).isEqualTo(Integer.toString(count));
        }
    }

    @Test
    void a_slicer_finds_every_stl_file_manifold() throws IOException, InterruptedException {
        assumeThat(answer("prusa-slicer", "--help"))
                .as("prusa-slicer is installed")
                .contains("PrusaSlicer");
        List<String> command = new ArrayList<>(List.of("prusa-slicer", "--info"));
        STL.forEach(file -> command.add(file.toString()));
        String said = answer(command.toArray(String[]::new));
        // It ends well on bad meshes too, so what it says counts, file by file.
        String[] files = said.split("(?m)^\\[(?=.*\\.stl]$)", -1);
        assertThat(files).hasSize(STL.size() + 1);
        for (int i = 0; i < STL.size(); i++) {
            assertThat(files[i + 1])
                    .contains(STL.get(i).getFileName() + "]")
                    .contains("manifold = yes")
                    .doesNotContain("open_edges");
        }
    }

    /** A handed part in steps, a hollow one and one that hangs over; in the thorough run also tall and large ones. */
    static Stream<String> sliced() {
        Stream<String> each = Stream.of("arbor-1-ratchet", "pendulum-bob-half", "weight-pulley");
        return "full".equals(System.getProperty("drumfall.samples"))
                ? Stream.concat(each, Stream.of("arbor-4-escape-wheel-and-pinion", "arbor-1-drum", "cannon-pinion"))
                : each;
    }

    // Paths are written only for what lies on the bed in closed layers.
    @ParameterizedTest
    @MethodSource("sliced")
    void a_slicer_lays_paths_up_to_the_top_of_a_part_and_mends_nothing(String name)
            throws IOException, InterruptedException {
        assumeThat(answer("prusa-slicer", "--help"))
                .as("prusa-slicer is installed")
                .contains("PrusaSlicer");
        Path paths = folder.resolve(name + ".gcode");
        String said = answer(
                "prusa-slicer",
                "--export-gcode",
                "--layer-height",
                "0.2",
                "--first-layer-height",
                "0.2",
                "--output",
                paths.toString(),
                folder.resolve(name + ".stl").toString());
        assertThat(said).doesNotContainIgnoringCase("repair").doesNotContainIgnoringCase("error");
        double top = Pattern.compile("(?m)^;Z:([0-9.]+)$")
                .matcher(Files.readString(paths))
                .results()
                .mapToDouble(layer -> Double.parseDouble(layer.group(1)))
                .max()
                .orElseThrow();
        double height = Movements.eightDays().stream()
                .filter(part -> part.name().equals(name))
                .mapToDouble(part -> part.solid().height())
                .findFirst()
                .orElseThrow();
        // The last layer's middle lies in the part.
        assertThat(top).isBetween(height - 0.1 - 1e-6, height + 0.1 + 1e-6);
    }

    @Test
    void a_slicer_finds_every_object_of_the_package_manifold() throws IOException, InterruptedException {
        assumeThat(answer("prusa-slicer", "--help"))
                .as("prusa-slicer is installed")
                .contains("PrusaSlicer");
        String said =
                answer("prusa-slicer", "--info", folder.resolve("movement.3mf").toString());
        assertThat(said)
                .contains("manifold = yes")
                .doesNotContain("manifold = no")
                .doesNotContain("open_edges");
        assertThat(Pattern.compile("manifold = yes").matcher(said).results().count())
                .isEqualTo(Movements.eightDays().stream()
                        .mapToInt(part -> part.count())
                        .sum());
    }

    private static String first(String text, String pattern) {
        Matcher matcher = Pattern.compile(pattern).matcher(text);
        assertThat(matcher.find()).as("%s in %s", pattern, text).isTrue();
        return matcher.group(1);
    }

    /** What a program says; where there is no such program, nothing. */
    private static String answer(String... command) throws InterruptedException {
        try {
            Process process = new ProcessBuilder(Arrays.asList(command))
                    .redirectErrorStream(true)
                    .start();
            String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
            assertThat(process.waitFor(2, TimeUnit.MINUTES)).isTrue();
            return said;
        } catch (IOException notInstalled) {
            return "not installed";
        }
    }
}
