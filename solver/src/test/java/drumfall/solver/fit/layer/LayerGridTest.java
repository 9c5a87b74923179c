// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.fit.layer;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import drumfall.solver.fit.FitException;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LayerGridTest {
    private static final LayerGrid GRID = new LayerGrid(300_000, 200_000);

    // Worked by hand: heights are 0.3, 0.5, 0.7 … mm.
    @ParameterizedTest
    @CsvSource({
        "5000000, DOWN,    24, 4900000, -100000",
        "5000000, UP,      25, 5100000,  100000",
        "5000000, NEAREST, 25, 5100000,  100000",
        "4999999, NEAREST, 24, 4900000,  -99999",
        "4900000, DOWN,    24, 4900000,       0",
        "4900000, UP,      24, 4900000,       0",
        "4900000, NEAREST, 24, 4900000,       0",
        "300000,  DOWN,     1,  300000,       0",
        "100000,  UP,       1,  300000,  200000",
        "100000,  NEAREST,  1,  300000,  200000",
    })
    void an_asked_height_snaps_to_whole_layers_and_says_by_how_much(
            long asked, LayerRounding rounding, int layers, long height, long difference) {
        LayerHeight snapped = GRID.snap(asked, rounding, "wheel (third)");

        assertThat(snapped).isEqualTo(new LayerHeight(asked, layers, height, rounding));
        assertThat(snapped.difference()).isEqualTo(difference);
    }

    @Test
    void a_height_below_the_first_layer_cannot_go_down() {
        assertThatThrownBy(() -> GRID.snap(299_999, LayerRounding.DOWN, "spacer (second arbor)"))
                .isInstanceOf(FitException.class)
                .hasMessage(
                        "The height (0.299999 mm) of spacer (second arbor) must be at least the first layer of 0.3 mm."
                                + " Maybe ask for 0.3 mm.");
    }

    @Test
    void a_height_of_nothing_is_refused() {
        assertThatThrownBy(() -> GRID.snap(0, LayerRounding.UP, "spacer")).hasMessageContaining("The height (0 mm)");
        assertThatThrownBy(() -> GRID.heightOf(0)).hasMessageContaining("The layers (0) of a printed part");
    }

    @Test
    void a_layer_thinner_than_a_fiftieth_of_a_millimetre_is_refused() {
        assertThatThrownBy(() -> new LayerGrid(300_000, 19_999))
                .hasMessage("The layerHeight (0.019999 mm) of the printer must lie from 0.02 mm to 2 mm."
                        + " Maybe take 0.02 mm.");
        assertThatThrownBy(() -> new LayerGrid(2_000_001, 20_000)).hasMessageContaining("firstLayer");
    }

    @Test
    void down_and_up_enclose_what_is_asked_within_one_layer_and_nearest_is_the_nearer() {
        SplittableRandom random = new SplittableRandom(11);
        for (int i = 0; i < 2000; i++) {
            LayerGrid grid = new LayerGrid(random.nextLong(20_000, 500_000), random.nextLong(20_000, 500_000));
            long asked = random.nextLong(grid.first(), 50_000_000);
            long down = grid.snap(asked, LayerRounding.DOWN, "part").height();
            long up = grid.snap(asked, LayerRounding.UP, "part").height();
            long nearest = grid.snap(asked, LayerRounding.NEAREST, "part").height();

            assertThat(asked).isBetween(down, up);
            assertThat(up - down).isEqualTo(grid.holds(asked) ? 0 : grid.layer());
            assertThat(nearest).isEqualTo(up - asked <= asked - down ? up : down);
            assertThat(grid.holds(down) && grid.holds(up)).isTrue();
        }
    }
}
