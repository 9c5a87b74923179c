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
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Independent programs read the files, where they are installed. */
class CheckerTest {
    private static final String AUDIT = """
            import sys, ezdxf
            for name in sys.argv[1:]:
                drawing = ezdxf.readfile(name)
                faults = drawing.audit()
                assert drawing.dxfversion == 'AC1009', drawing.dxfversion
                assert not faults.has_errors and not faults.has_fixes, (name, faults.errors, faults.fixes)
                kinds = [entity.dxftype() for entity in drawing.modelspace()]
                assert 'POLYLINE' in kinds and 'CIRCLE' in kinds, kinds
                assert all(line.is_closed for line in drawing.modelspace().query('POLYLINE')), name
            print('sound', len(sys.argv) - 1)
            """;

    @TempDir
    Path folder;

    @Test
    void ezdxf_finds_nothing_to_mend() throws IOException, InterruptedException {
        assumeThat(answer(List.of("/usr/bin/python3", "-c", "import ezdxf; print('here')")))
                .as("python3-ezdxf is installed")
                .contains("here");
        List<String> command = new ArrayList<>(List.of("/usr/bin/python3", "-c", AUDIT));
        command.addAll(written(".dxf"));
        assertThat(answer(command)).contains("sound 7");
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
        TrialFolder files = Exports.eightDays();
        List<String> paths = new ArrayList<>();
        for (String name : files.names()) {
            if (name.endsWith(ending)) {
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
