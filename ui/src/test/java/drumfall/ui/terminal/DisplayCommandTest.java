// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.terminal;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import drumfall.ui.terminal.TerminalBench.Run;
import java.nio.file.Path;
import java.util.Arrays;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DisplayCommandTest {
    @TempDir
    Path folder;

    private TerminalBench bench;

    @BeforeEach
    void open() {
        bench = new TerminalBench(folder);
    }

    // Encyclopaedia Britannica, 4th ed., article Clock, Ferguson's tide clock: 59 driven by 19 turning in 8 hours,
    // in 24 h 50 1/2 min, which is 1.03507 d. From the lunar day of 24 h 50.472 min that is 3.14 s a day, by
    // arithmetic.
    @Test
    void fergusons_tide_wheel_is_found_first() {
        Run run = tide("--show", "2");

        assertThat(run.code()).isEqualTo(ExitCode.DONE.number());
        assertThat(run.lines().get(0))
                .isEqualTo("A turn in 1.03505010 d, 3.10515030 turns of the arbor; meshes: 1, drivers: 6 to 19 teeth,"
                        + " followers: 20 to 100 teeth; proved, none has a smaller error");
        assertThat(run.lines().get(1))
                .isEqualTo(
                        "Seen from the dial the display turns anticlockwise; one idler in any mesh turns it clockwise.");
        assertThat(run.lines().get(4)).contains("1.03508772", "-3.140", "79.10 d", "19→59");
        assertThat(run.lines()).hasSize(6);
    }

    private Run tide(String... more) {
        String[] head = {
            "display", "tide", "--arbor", "1/8", "--meshes", "1", "--drivers", "6-19", "--followers", "20-100"
        };
        String[] all = Arrays.copyOf(head, head.length + more.length);
        System.arraycopy(more, 0, all, head.length, more.length);
        return bench.run(all);
    }

    // The same wheel: it loses 3.1 s of 86 400 a day, so a degree of 248.4 s shows after 79 days and a minute after 19.
    @ParameterizedTest
    @CsvSource({"1 deg, 79", "1 min, 19", "1 d, 27515"})
    void the_error_is_told_in_days_until_it_shows(String resolution, int wholeDays) {
        JsonNode json =
                tide("--show", "1", "--resolution", resolution, "--json").json();
        JsonNode best = json.get("displays").get(0);

        assertThat((int) best.get("shows_d").doubleValue()).isEqualTo(wholeDays);
    }

    // W. Derham, The Artificial Clock-Maker, 1696, chapter II.5 § 4: 73/4, 40/4, 20/5 from the wheel of twelve
    // hours make a year of 365 days.
    @ParameterizedTest
    @CsvSource({"365 d", "730"})
    void an_exact_display_never_goes_wrong(String cycle) {
        Run run = bench.run(
                "display",
                cycle,
                "--arbor",
                "hour-wheel",
                "--drivers",
                "4-5",
                "--followers",
                "20-73",
                "--show",
                "1",
                "--trains",
                "1000");

        assertThat(run.code()).isEqualTo(ExitCode.DONE.number());
        assertThat(run.lines().get(4)).contains("365.000000", "exact", "never", "5→73 · 4→40 · 4→20");
    }

    @Test
    void a_disc_of_two_moons_turns_once_in_two_months() {
        JsonNode one = bench.run("display", "moon", "--show", "1", "--json").json();
        JsonNode two = bench.run("display", "moon", "--cycles", "2", "--show", "1", "--json")
                .json();

        assertThat(one.get("cycle_s")).isEqualTo(two.get("cycle_s"));
        assertThat(one.get("turn_s")).isEqualTo(one.get("cycle_s"));
        assertThat(exact(two.get("turn_s"))).isEqualTo(exact(one.get("turn_s")).multiply(2));
        assertThat(exact(two.get("arborTurns")))
                .isEqualTo(exact(one.get("arborTurns")).multiply(2));
    }

    private static BigFraction exact(JsonNode fraction) {
        return BigFraction.parse(fraction.textValue().replace("/", " / "));
    }

    // An odd number of meshes reverses, and so does an arbor that turns the other way.
    @ParameterizedTest
    @CsvSource({"3, false, false", "3, true, true", "4, false, true", "4, true, false"})
    void the_sense_follows_from_meshes_and_arbor(String meshes, boolean anticlockwise, boolean clockwise) {
        String[] command = {
            "display", "moon", "--meshes", meshes, "--followers", "24-72", "--show", "1", "--json", "--anticlockwise"
        };
        JsonNode json = bench.run(anticlockwise ? command : Arrays.copyOf(command, command.length - 1))
                .json();

        assertThat(json.get("clockwise").booleanValue()).isEqualTo(clockwise);
        assertThat(json.get("idlerForClockwise").booleanValue()).isEqualTo(!clockwise);
    }

    @Test
    void by_size_each_smaller_train_has_the_larger_error() {
        Run run = bench.run("display", "moon", "--by-size", "--json");
        JsonNode displays = run.json().get("displays");

        assertThat(run.code()).isEqualTo(ExitCode.DONE.number());
        assertThat(displays.size()).isGreaterThan(2);
        for (int at = 1; at < displays.size(); at++) {
            assertThat(largest(displays.get(at))).isLessThan(largest(displays.get(at - 1)));
            assertThat(Math.abs(displays.get(at).get("gainPerDay_s").doubleValue()))
                    .isGreaterThan(
                            Math.abs(displays.get(at - 1).get("gainPerDay_s").doubleValue()));
        }
        assertThat(bench.run("display", "moon", "--by-size").out()).contains("proved, none beats another");
    }

    private static int largest(JsonNode display) {
        return display.get("trains").get(0).get("largest").intValue();
    }

    @Test
    void a_stopped_search_claims_nothing() {
        Run run = bench.run("display", "moon", "--limit", "0 s");
        assertThat(run.code()).isEqualTo(ExitCode.STOPPED.number());
        assertThat(run.out()).contains("stopped, smaller errors may exist");
    }
}
