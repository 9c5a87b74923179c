// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.terminal;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import drumfall.ui.terminal.TerminalBench.Run;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class RatioCommandTest {
    @TempDir
    Path folder;

    private TerminalBench bench;

    @BeforeEach
    void open() {
        bench = new TerminalBench(folder);
    }

    // E. Beckett, A Rudimentary Treatise on Clocks, Watches and Bells, 8th ed., 1903, pp. 22-23 and 133: 64/8 and 60/8
    // make
    // the sixty turns of the escape wheel.
    @Test
    void the_published_pair_for_sixty_is_found_exact_and_first() {
        Run run = bench.run("ratio", "60", "--wheels", "56-72", "--leaves", "8-8", "--show", "2");
        assertThat(run.code()).isEqualTo(ExitCode.DONE.number());
        assertThat(run.lines().get(0))
                .isEqualTo("Nearest to 60 with 2 meshes, wheels of 56 to 72 teeth and pinions of 8 to 8 leaves:"
                        + " proved, none is nearer");
        assertThat(run.lines().get(3)).contains("60", "exact", "64/8 · 60/8");
        assertThat(run.lines()).hasSize(5);
    }

    @Test
    void a_decimal_and_the_fraction_it_stands_for_are_one_target() {
        String[] rest = {"--wheels", "24-40", "--leaves", "8-9", "--json"};
        assertThat(ratio("12.5", rest)).isEqualTo(ratio("25/2", rest)).isEqualTo(ratio("2.5 / 0.2", rest));
    }

    private JsonNode ratio(String target, String... rest) {
        String[] arguments = new String[rest.length + 2];
        arguments[0] = "ratio";
        arguments[1] = target;
        System.arraycopy(rest, 0, arguments, 2, rest.length);
        return bench.run(arguments).json();
    }

    @Test
    void the_json_gives_exact_errors_and_trains_within_the_bounds() {
        JsonNode json =
                ratio("29.53", "--wheels", "24-60", "--leaves", "8-10", "--show", "5", "--trains", "2", "--json");
        assertThat(json.get("proven").booleanValue()).isTrue();
        assertThat(json.get("target").textValue()).isEqualTo("2953/100");
        assertThat(json.get("ratios")).hasSize(5);
        for (JsonNode ratio : json.get("ratios")) {
            for (JsonNode train : ratio.get("trains")) {
                long wheels = product(train.get("wheels"), 24, 60);
                long pinions = product(train.get("pinions"), 8, 10);
                double value = (double) wheels / pinions;
                assertThat(ratio.get("value").doubleValue()).isEqualTo(value);
                // One division and one subtraction of doubles near 30.
                assertThat(ratio.get("relativeError").doubleValue() * 29.53)
                        .isCloseTo(value - 29.53, org.assertj.core.api.Assertions.within(1e-13));
            }
        }
    }

    private static long product(JsonNode counts, int least, int most) {
        long product = 1;
        for (JsonNode count : counts) {
            assertThat(count.intValue()).isBetween(least, most);
            product *= count.intValue();
        }
        return product;
    }

    @Test
    void a_stopped_search_claims_nothing() {
        Run run = bench.run("ratio", "60", "--limit", "0 s");
        assertThat(run.code()).isEqualTo(ExitCode.STOPPED.number());
        assertThat(run.out()).contains("stopped, nearer ones may exist");
    }
}
