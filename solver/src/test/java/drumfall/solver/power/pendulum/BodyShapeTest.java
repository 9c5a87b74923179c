// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.power.pendulum;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import drumfall.solver.power.pendulum.BodyShape.FacingCylinder;
import drumfall.solver.power.pendulum.BodyShape.Lens;
import drumfall.solver.power.pendulum.BodyShape.Sphere;
import drumfall.solver.power.pendulum.BodyShape.ThinRod;
import drumfall.solver.power.pendulum.BodyShape.Tube;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BodyShapeTest {
    private static final int SLICES = 20_000;

    // Derham, The Artificial Clock-Maker, 1696, ch. V (after Huygens): the centre of oscillation of a sphere lies 2/5
    // of
    // r²/l below its centre.
    @Test
    void a_ball_swings_two_fifths_of_its_radius_squared_over_its_distance_lower() {
        double radius = 0.03;
        double distance = 0.4;
        CompoundPendulum ball =
                new CompoundPendulum(new PendulumPart(1.7, new Sphere(radius), distance), java.util.List.of());

        assertThat(ball.equivalentLength()).isCloseTo(distance + 2.0 / 5 * radius * radius / distance, within(1e-15));
    }

    // Sum over thin discs, each radius² / 2 about its axis; midpoints of 20,000 slices are exact to 1e-8.
    @ParameterizedTest
    @CsvSource({"0.05, 0.02", "0.05, 0.0999", "0.03, 0.001", "1, 1.3"})
    void a_lens_is_the_sum_of_its_discs(double radius, double thickness) {
        double cap = thickness / 2;
        double sphere = (radius * radius + cap * cap) / (2 * cap);
        DoubleUnaryOperator disc = depth -> Math.sqrt(Math.max(0, 2 * sphere * depth - depth * depth));
        double mass = 0;
        double inertia = 0;
        for (int i = 0; i < SLICES; i++) {
            double square = Math.pow(disc.applyAsDouble((i + 0.5) * cap / SLICES), 2);
            mass += square;
            inertia += square * square / 2;
        }

        assertThat(new Lens(radius, thickness).gyrationSquared() / (radius * radius))
                .isCloseTo(inertia / mass / (radius * radius), within(1e-7));
    }

    @Test
    void a_lens_lies_between_a_thin_one_and_a_ball() {
        assertThat(new Lens(1, 2).gyrationSquared()).isCloseTo(new Sphere(1).gyrationSquared(), within(1e-15));
        assertThat(new Lens(1, 1e-6).gyrationSquared()).isCloseTo(1.0 / 3, within(1e-9));
    }

    // Sum over slices along the tube: each a ring with (R² + r²)/4 about its diameter, at its own distance.
    @ParameterizedTest
    @CsvSource({"0.3, 0.005, 0.004", "0.05, 0.02, 0", "0.02, 0.03, 0.01"})
    void a_tube_is_the_sum_of_its_rings(double length, double radius, double bore) {
        double sum = 0;
        for (int i = 0; i < SLICES; i++) {
            double place = ((i + 0.5) / SLICES - 0.5) * length;
            sum += (radius * radius + bore * bore) / 4 + place * place;
        }

        assertThat(new Tube(length, radius, bore).gyrationSquared()).isCloseTo(sum / SLICES, within(1e-9));
    }

    @Test
    void a_slender_tube_is_a_thin_rod_and_a_disc_has_half_its_radius_squared() {
        assertThat(new Tube(1, 1e-9, 0).gyrationSquared()).isCloseTo(new ThinRod(1).gyrationSquared(), within(1e-15));
        assertThat(new ThinRod(1).gyrationSquared()).isCloseTo(1.0 / 12, within(1e-15));
        assertThat(new FacingCylinder(0.04).gyrationSquared()).isCloseTo(0.0008, within(1e-15));
    }

    @Test
    void sizes_that_no_part_has_are_refused() {
        assertThatIllegalArgumentException().isThrownBy(() -> new ThinRod(0));
        assertThatIllegalArgumentException().isThrownBy(() -> new Sphere(-1));
        assertThatIllegalArgumentException().isThrownBy(() -> new FacingCylinder(Double.NaN));
        assertThatIllegalArgumentException().isThrownBy(() -> new Tube(1, 0.01, 0.01));
        assertThatIllegalArgumentException().isThrownBy(() -> new Lens(0.01, 0.021));
    }
}
