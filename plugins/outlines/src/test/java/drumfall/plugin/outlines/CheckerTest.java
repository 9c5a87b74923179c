// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.plugin.outlines;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import drumfall.plugin.api.trial.TrialFolder;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Independent programs read the files, where they are installed. */
class CheckerTest {
    /** No fault, nothing to mend, all polylines closed; holes of the plate where its table has them. */
    private static final String AUDIT = """
            import csv, sys, ezdxf
            for name in sys.argv[1:]:
                drawing = ezdxf.readfile(name)
                faults = drawing.audit()
                assert drawing.dxfversion == 'AC1009', drawing.dxfversion
                assert not faults.has_errors and not faults.has_fixes, (name, faults.errors, faults.fixes)
                sheet = drawing.modelspace()
                assert sheet.query('POLYLINE CIRCLE'), name
                assert all(line.is_closed for line in sheet.query('POLYLINE')), name
                if name.endswith('-plate-holes.dxf'):
                    with open(name[:-3] + 'csv', newline='', encoding='utf-8') as table:
                        rows = list(csv.DictReader(table))
                    holes = sheet.query('CIRCLE[layer=="HOLES"]')
                    assert len(rows) == len(holes) > 9, name
                    for row, hole in zip(rows, holes):
                        assert abs(float(row['x from dial centre (mm)']) - hole.dxf.center.x) < 1.1e-3
                        assert abs(float(row['y from dial centre (mm)']) - hole.dxf.center.y) < 1.1e-3
                        assert abs(float(row['drawn diameter (mm)']) - 2 * hole.dxf.radius) < 1.1e-3
            print('sound', len(sys.argv) - 1)
            """;

    private static final boolean THOROUGH = "full".equals(System.getProperty("drumfall.samples"));

    /** Sheets of every kind; all of them are read where thorough samples are asked for. */
    private static final Set<String> SOME = Set.of(
            "arbor-2-wheel-and-pinion",
            "arbor-5-spacer-15800-um",
            "back-plate-1-of-2",
            "back-plate-holes",
            "elevation",
            "front-plate-holes",
            "pallets");

    @TempDir
    Path folder;

    @Test
    void ezdxf_finds_nothing_to_mend() throws IOException, InterruptedException {
        assumeThat(answer(List.of("/usr/bin/python3", "-c", "import ezdxf; print('here')")))
                .as("python3-ezdxf is installed")
                .contains("here");
        List<String> command = new ArrayList<>(List.of("/usr/bin/python3", "-c", AUDIT));
        written(".csv");
        List<String> drawings = written(".dxf");
        command.addAll(drawings);
        assertThat(answer(command)).isEqualToIgnoringWhitespace("sound " + drawings.size());
    }

    @Test
    void xmllint_finds_the_drawings_well_formed() throws IOException, InterruptedException {
        assumeThat(answer(List.of("/usr/bin/xmllint", "--version")))
                .as("xmllint is installed")
                .contains("libxml");
        List<String> command = new ArrayList<>(List.of("/usr/bin/xmllint", "--noout", "--nonet"));
        command.addAll(written(".svg"));
        assertThat(answer(command)).isEmpty();
    }

    private List<String> written(String ending) throws IOException {
        TrialFolder files = Exports.FILES;
        List<String> paths = new ArrayList<>();
        for (String name : files.names()) {
            if (name.endsWith(ending) && (THOROUGH || SOME.contains(name.substring(0, name.lastIndexOf('.'))))) {
                paths.add(Files.write(folder.resolve(name), files.bytes(name)).toString());
            }
        }
        return paths;
    }

    /** What a program says; where there is no such program, nothing. */
    private static String answer(List<String> command) throws InterruptedException {
        try {
            Process process =
                    new ProcessBuilder(command).redirectErrorStream(true).start();
            String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
            assertThat(process.waitFor(2, TimeUnit.MINUTES)).isTrue();
            return said;
        } catch (IOException notInstalled) {
            return "not installed";
        }
    }
}
