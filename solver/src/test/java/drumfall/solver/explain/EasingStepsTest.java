// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.explain;

import static org.assertj.core.api.Assertions.assertThat;

import drumfall.solver.brief.Brief;
import drumfall.solver.explain.Easing.Way;
import drumfall.solver.samples.Briefs;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class EasingStepsTest {
    @ParameterizedTest
    @CsvSource(delimiter = ';', quoteCharacter = '`', textBlock = """
            # pointer;             way;  typed;         one step;  three steps
            /fall/height;          UP;   "1.25 m";      1.26 m;    1.28 m
            /fall/height;          UP;   "1250 mm";     1260 mm;   1280 mm
            /fall/height;          DOWN; "1.25 m";      1.24 m;    1.22 m
            # Off the steps the first one is shorter.
            /fall/height;          UP;   "1.2345 m";    1.24 m;    1.26 m
            /fall/height;          UP;   "4 ft 6 in";   54.1 in;   54.3 in
            /weight/limit;         UP;   "5 kg";        5.01 kg;   5.03 kg
            /weight/limit;         UP;   "11 lb";       11.1 lb;   11.3 lb
            /line/ratedLoad;       UP;   "300 N";       301 N;     303 N
            /line/safetyFactor;    DOWN; "8";           7.99;      7.97
            /run/atLeast;          DOWN; "7.5 d";       7.49 d;    7.47 d
            /drum/length;          UP;   "40 mm";       41 mm;     43 mm
            /printer/nozzle;       DOWN; "0.4 mm";      0.35 mm;   0.25 mm
            /teeth/leaves/from;    DOWN; 8;             7;         5
            /escapement/teeth/to;  UP;   30;            33;        39
            /drum/diameter/to;     UP;   "48 mm";       50 mm;     54 mm
            """)
    void steps_lead_from_what_was_typed_in_its_own_unit(
            String pointer, Way way, String typed, String one, String three) {
        EasingSteps steps = steps(Briefs.demoWith(pointer + " = " + typed), pointer, way);

        assertThat(steps.text(0)).isEqualTo(typed.replace("\"", ""));
        assertThat(steps.text(1)).isEqualTo(one);
        assertThat(steps.text(3)).isEqualTo(three);
        assertThat(steps.at(1)).isPresent();
    }

    @Test
    void the_last_step_is_the_last_that_leaves_the_brief_in_order() {
        // A pinion has five leaves at least.
        assertThat(steps(Briefs.demoWith(""), "/teeth/leaves/from", Way.DOWN).last())
                .isEqualTo(3);
        // Between the plates, 75 mm apart, a drum with two walls of 2.4 mm, click room of 6 mm, a wheel of 5 mm, two
        // gaps
        // of 1 mm and end shake of 0.8 mm: 56.4 mm.
        EasingSteps drum = steps(Briefs.demoWith(""), "/drum/length", Way.UP);
        assertThat(drum.text(drum.last())).isEqualTo("56 mm");
        assertThat(drum.at(drum.last() + 1)).isEmpty();
    }

    /** Ten times as much is the furthest, and ten steps of 5 % where there is nothing to take ten times. */
    @ParameterizedTest
    @CsvSource({"5 %, 50%", "10 %, 100%", "0 %, 50%"})
    void a_reserve_is_raised_to_ten_times_and_from_zero_by_ten_steps(String typed, String last) {
        EasingSteps steps = steps(
                Briefs.demoWith("/weight/builders = \"95 %\" & /weight/reserve = \"" + typed + "\""),
                "/weight/reserve",
                Way.UP);

        assertThat(steps.text(steps.last())).isEqualTo(last);
    }

    @Test
    void what_is_nothing_already_has_no_step_down() {
        assertThat(steps(Briefs.demoWith("/parts/gap = \"0 mm\""), "/parts/gap", Way.DOWN)
                        .last())
                .isZero();
    }

    private static EasingSteps steps(Brief brief, String pointer, Way way) {
        return Easing.of(brief).stream()
                .filter(easing -> easing.pointer().equals(pointer) && easing.way() == way)
                .map(easing -> new EasingSteps(brief, easing))
                .findFirst()
                .orElseThrow();
    }
}
