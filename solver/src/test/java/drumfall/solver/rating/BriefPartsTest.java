// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.rating;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import drumfall.solver.samples.Briefs;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BriefPartsTest {
    // By hand: half of 16 mm and a wall of 1.2 mm; otherwise the hub at which arms part, as in the crossing's own test.
    // A rod
    // that turns has its bearings in the plates.
    @ParameterizedTest
    @CsvSource({
        "fixed, rear, 16 mm, 9.2",
        "fixed, front, 16 mm, 9.2",
        "fixed, none, 16 mm, 4.7882",
        "turning, both, 16 mm, 4.7882",
        "fixed, both, 5 mm, 4.7882"
    })
    void hubs_take_the_bearings_that_sit_in_them(String kind, String bearings, String outer, double radius) {
        String edits = "/arbors/intermediate/kind = \"%s\" & /arbors/intermediate/bearings = \"%s\""
                + " & /arbors/intermediate/bearing = {\"outer\": \"%s\", \"width\": \"3 mm\"}";

        assertThat(1e3
                        * BriefParts.crossing(Briefs.demoWith(edits.formatted(kind, bearings, outer)))
                                .hubRadius())
                .isCloseTo(radius, within(1e-4));
    }
}
