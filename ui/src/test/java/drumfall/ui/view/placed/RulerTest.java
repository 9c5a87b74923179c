// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.view.placed;

import static org.assertj.core.api.Assertions.assertThat;

import drumfall.ui.view.placed.Ruler.Stand;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RulerTest {
    // Arrows of six units at either end, as much again for the line that is left of them.
    @ParameterizedTest
    @CsvSource({
        "100, 48, 1,   IN_GAP",
        "72.1, 48, 1,  IN_GAP",
        "72, 48, 1,    ABOVE",
        "65, 48, 1,    ABOVE",
        "48.1, 48, 1,  ABOVE",
        "48, 48, 1,    BEYOND",
        "10, 48, 1,    BEYOND",
        "104, 77, 1.6, ABOVE",
        "116, 77, 1.6, IN_GAP",
    })
    void a_figure_stands_within_its_dimension_wherever_it_has_room(
            double line, double figure, double unit, Stand stand) {
        assertThat(Stand.of(line, figure, unit)).isEqualTo(stand);
    }
}
