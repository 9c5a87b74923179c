// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.wording;

import static org.assertj.core.api.Assertions.assertThat;

import drumfall.solver.brief.BundledBriefs;
import drumfall.solver.explain.Easing;
import drumfall.solver.explain.Nearest;
import drumfall.solver.explain.Nearest.Verdict;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class EasingWordingTest {
    @Test
    void every_figure_that_can_be_eased_has_a_name_of_its_own() {
        for (String name : BundledBriefs.names()) {
            assertThat(Easing.of(BundledBriefs.load(name).orElseThrow()).stream()
                            .map(EasingWording::name))
                    .doesNotHaveDuplicates()
                    .allMatch(words -> !words.isBlank() && !words.contains("{"));
        }
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            NEAREST| 1.31 m|       |  | height of fall: 1.31 m instead of 1.20 m
            NONE|    1.20 m|       | 2| height of fall: clash 3 stands whatever it is
            NONE|    12 m|         |  | height of fall: no train even at 12 m
            NONE|    1.20 m|       |  | height of fall: 1.20 m cannot be eased further
            UNKNOWN| 1.25 m| 1.40 m|  | height of fall: 1.40 m instead of 1.20 m would do; 1.25 m would not; between them the time was over
            UNKNOWN| 1.25 m|       |  | height of fall: up to 1.25 m instead of 1.20 m no train exists; beyond that the time was over
            UNKNOWN| 1.20 m|       |  | height of fall: the time was over before anything was known
            """)
    void an_answer_says_what_is_known_and_no_more(
            Verdict verdict, String value, String enough, Integer standing, String line) {
        Easing fall = Easing.of(BundledBriefs.demo()).get(0);
        OptionalInt clash = standing == null ? OptionalInt.empty() : OptionalInt.of(standing);

        assertThat(EasingWording.line(new Nearest(
                        fall, verdict, "1.20 m", value, Optional.ofNullable(enough), clash, Optional.empty())))
                .isEqualTo(line);
    }
}
