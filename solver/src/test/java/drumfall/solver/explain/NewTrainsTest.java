// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.explain;

import static org.assertj.core.api.Assertions.assertThat;

import drumfall.solver.brief.Brief;
import drumfall.solver.brief.BriefChange;
import drumfall.solver.explain.Easing.Way;
import drumfall.solver.samples.Briefs;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NewTrainsTest {
    /** With two steps proved to have no train, what is new begins at the third: none of it is left out, nothing twice. */
    @ParameterizedTest
    @CsvSource(delimiter = ';', quoteCharacter = '`', textBlock = """
            # brief;                                                                      eased;                way;  other end;              from the third; to the fifth
            /escapement/teeth = {"from": 24, "to": 30, "step": 3};                        /escapement/teeth/to; UP;   /escapement/teeth/from; 39;    45
            /escapement/teeth = {"from": 30, "to": 36, "step": 2};                        /escapement/teeth/from; DOWN; /escapement/teeth/to; 24;    20
            /drum/diameter = {"from": "40 mm", "to": "48 mm", "step": "2 mm"};            /drum/diameter/to;    UP;   /drum/diameter/from;    54 mm; 58 mm
            /drum/diameter = {"from": "40 mm", "to": "48 mm", "step": "2 mm"};            /drum/diameter/from;  DOWN; /drum/diameter/to;      34 mm; 30 mm
            """)
    void what_is_new_in_a_stepped_range_begins_right_after_what_is_proved(
            String edit, String eased, Way way, String otherEnd, String third, String fifth) {
        Brief brief = Briefs.demoWith(edit);
        Easing easing = Easing.of(brief).stream()
                .filter(each -> each.pointer().equals(eased) && each.way() == way)
                .findFirst()
                .orElseThrow();

        Brief narrowed = new NewTrains(brief, easing, new EasingSteps(brief, easing)).at(5, 2);

        assertThat(BriefChange.typed(narrowed, otherEnd)).isEqualTo(third);
        assertThat(BriefChange.typed(narrowed, eased)).isEqualTo(fifth);
    }
}
