// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.parts;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class WeightCanTest {
    // By hand: walls 2 mm, rod 6 mm, can of 64 mm: chamber π (30² - 5²) = 2748.9 mm². 4 kg of shot of 5000 kg/m3 fill
    // 0.8 l: 291.03 mm, with the spigot's 2 mm 293.03 mm, in layers of 0.25 mm 293.25 mm; floor and lid 4 mm.
    @Test
    void shot_fills_the_chamber_to_a_whole_layer_below_the_lid() {
        WeightCan can = new WeightCan(5000, 0.002, 0.006);

        assertThat(can.tubeHeight(4, 0.064, 0.00025)).isCloseTo(0.29325, within(1e-12));
        assertThat(can.height(4, 0.064, 0.00025)).isCloseTo(0.29725, within(1e-12));
    }
}
