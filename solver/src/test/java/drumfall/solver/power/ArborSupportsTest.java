// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.power;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ArborSupportsTest {
    // JTEKT/Koyo catalogue table 8-1 and RoyMech, "Bearing Friction": a deep groove bearing 0.0015 on the bore radius,
    // bore
    // 8 mm, 10 N: 0.060 N mm; a plain bore of the same size at 0.2 takes 8.0 N mm. M = ½ µ P d, exact.
    @Test
    void a_rolling_bearing_takes_a_hundredth_of_a_plain_bore() {
        assertThat(Support.bearing(0.0015, 0.008, 0).slope() * 10).isCloseTo(0.060e-3, within(1e-15));
        assertThat(Support.plain(0.2, 0.004).slope() * 10).isCloseTo(8.0e-3, within(1e-15));
        assertThat(Support.bearing(0.0015, 0.008, 2e-5).drag()).isEqualTo(2e-5);
        assertThat(Support.plain(0.2, 0.004).drag()).isZero();
    }

    // Statics of a beam on two supports, by hand: a load at a quarter of the span loads them 3 : 1; beyond a support by
    // a
    // quarter, 1.25 on the near one and 0.25 on the far one, the other way.
    @ParameterizedTest
    @CsvSource({"0, 1, 0", "0.025, 0.75, 0.25", "0.05, 0.5, 0.5", "0.1, 0, 1", "0.125, 0.25, 1.25", "-0.025, 1.25, 0.25"
    })
    void a_load_is_shared_by_moments_and_an_overhung_one_loads_one_support_with_more(
            double place, double front, double rear) {
        ArborSupports supports = new ArborSupports(new Support(3, 0.5), new Support(7, 0.25), 0.1);

        assertThat(supports.slopeAt(place)).isCloseTo(3 * front + 7 * rear, within(1e-12));
        assertThat(supports.drag()).isEqualTo(0.75);
    }

    @Test
    void no_place_between_the_supports_is_worse_than_the_worst() {
        Random random = new Random(5);
        for (int i = 0; i < 1000; i++) {
            ArborSupports supports =
                    new ArborSupports(new Support(random.nextDouble(), 0), new Support(random.nextDouble(), 0), 0.05);
            double slope = supports.slopeAt(random.nextDouble() * 0.05);

            assertThat(slope).isLessThanOrEqualTo(supports.worstSlopeBetween() * (1 + 1e-15));
        }
    }

    // M_in = (M_out (1 + k_w) + µ r w) / (1 - k_p) with k = µ r / arm. By hand: µ r = 0.2 mm; wheel arm 40 mm, k_w =
    // 0.005;
    // pinion arm 4 mm, k_p = 0.05; parts of 10 g and 1 g at 9.81: 0.0002 · 0.1079 = 2.158e-5; 0.01 · 1.005 = 0.01005;
    // standing 1e-4; (0.01005 + 0.00002158 + 0.0001) / 0.95 = 0.0107069.
    @Test
    void an_arbor_takes_its_share_as_the_chapter_on_power_says() {
        ArborFriction friction = new ArborFriction(0.0002, 0.0002, 1e-4, 9.81);

        double load = friction.load(0.01, 0.040, 10_000_000);
        double given = friction.drive(load, 0.004, 1_000_000);

        assertThat(given).isCloseTo(0.0107069, within(5e-8));
    }

    // Where the friction circle reaches the pinion's force no torque turns the arbor.
    @ParameterizedTest
    @CsvSource({"0.004, true", "0.0040001, true", "0.0039999, false"})
    void friction_as_wide_as_the_pinions_arm_holds_the_arbor(double slope, boolean held) {
        ArborFriction friction = new ArborFriction(0, slope, 0, 9.81);

        assertThat(Double.isInfinite(friction.drive(1, 0.004, 0))).isEqualTo(held);
        assertThat(Double.isInfinite(friction.tension(1, 0.004, 0))).isEqualTo(held);
    }
}
