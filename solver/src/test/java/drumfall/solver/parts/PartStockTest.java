// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.parts;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import drumfall.solver.samples.Trains;
import drumfall.solver.train.Mesh;
import drumfall.solver.train.ToothModule;
import drumfall.solver.train.Train;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Masses by hand: volume of the cylinder times density. Figures in µg are whole, so half of one is the tolerance. */
class PartStockTest {
    private static final PartStock STOCK = new PartStock(0.005, 0.008, 0.45, 1240, 0.040, 0.0024, 0.0015, 0.026);

    // A wheel of 34 mm: 1240 · 0.005 · 0.45 · π · 0.034² kg = 10.13239 g; a pinion of 4 mm, solid: 1240 · 0.008 · π ·
    // 0.004²
    // = 0.4986336 g; the escape wheel of 26 mm: 5.925169 g.
    @Test
    void a_wheel_is_a_share_of_its_disc_and_a_pinion_a_cylinder() {
        assertThat(STOCK.wheelMass(0.034) / 1e6).isCloseTo(10.13239029, within(1e-6));
        assertThat(STOCK.pinionMass(0.004) / 1e6).isCloseTo(0.4986336, within(1e-6));
        assertThat(STOCK.escapeWheelMass() / 1e6).isCloseTo(5.925169408, within(1e-6));
        assertThat(STOCK.gearMass(Mesh.of(68, 8, ToothModule.ofMillimetres("1"))))
                .isEqualTo(STOCK.wheelMass(0.034) + STOCK.pinionMass(0.004));
    }

    // A tube of 36 mm with a wall of 2.4 mm and 40 mm long, two flanges of 18 + 3 · 1.5 = 22.5 mm: 22.031813 g; a drum
    // of
    // 4 mm is solid, the wall reaches the middle: 1.413315 g.
    @ParameterizedTest
    @CsvSource({"0.036, 0.0225, 22.03181335", "0.004, 0.0065, 1.41331457"})
    void a_drum_is_a_tube_with_two_flanges(double diameter, double flange, double grams) {
        assertThat(STOCK.drumFlangeRadius(diameter)).isCloseTo(flange, within(1e-15));
        assertThat(STOCK.drumMass(diameter) / 1e6).isCloseTo(grams, within(1e-6));
    }

    @Test
    void the_sum_of_the_parts_does_not_depend_on_their_order() {
        Train train = Trains.of("68/8 m1 | 58/9 m1.25 · 45/10 m1 · 48/8 m1.5 · E21", "36", 2);
        List<Mesh> turned = new ArrayList<>(train.meshes());
        java.util.Collections.reverse(turned);
        Train other = new Train(turned, 1, train.drumDiameter(), train.reeving(), 21);

        assertThat(STOCK.filamentMass(other)).isEqualTo(STOCK.filamentMass(train));
    }
}
