// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.fit.bore;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SideShakeTest {
    // Straight arbor between two pivots, worked by hand: half of the play at a pivot, their mean in the middle,
    // more outside.
    @ParameterizedTest
    @CsvSource({"0, 50000", "1, 100000", "0.5, 75000", "1.5, 175000", "-1, 200000"})
    void a_gear_strays_by_half_the_play_where_it_sits(double position, double farthest) {
        assertThat(new SideShake("third", 100_000, 200_000, position).farthest())
                .isCloseTo(farthest, within(1e-9)); // a double's last digits only
    }

    // Every pair of pivot positions on the rims of the play is tried; the line through both is read off at the
    // gear.
    @Test
    void no_position_of_the_pivots_brings_the_gear_farther() {
        SplittableRandom random = new SplittableRandom(5);
        for (int i = 0; i < 200; i++) {
            SideShake shake = new SideShake(
                    "arbor", random.nextLong(0, 500_000), random.nextLong(0, 500_000), random.nextDouble(-2, 3));
            double most = 0;
            for (double front : new double[] {-0.5, 0, 0.5}) {
                for (double back : new double[] {-0.5, 0, 0.5}) {
                    double t = shake.position();
                    most = Math.max(most, Math.abs((1 - t) * front * shake.frontPlay() + t * back * shake.backPlay()));
                }
            }
            assertThat(shake.farthest()).isCloseTo(most, within(1e-6)); // a femtometre of rounding
        }
    }

    @Test
    void two_arbors_stray_apart_or_together_on_top_of_the_print_error() {
        SideShake first = new SideShake("second", 100_000, 100_000, 0.5);
        SideShake second = new SideShake("third", 80_000, 80_000, 0.2);

        assertThat(DepthingError.anyWay(first, second, 60_000)).isEqualTo(new DepthingError(-150_000, 150_000));
        assertThat(DepthingError.pushedApart(first, second, 60_000)).isEqualTo(new DepthingError(-60_000, 150_000));
        assertThat(DepthingError.anyWay(first, second, 60_000).widestInModules(1_000_000))
                .isEqualTo(0.15);
        assertThat(DepthingError.anyWay(first, second, 60_000).closestInModules(500_000))
                .isEqualTo(-0.3);
    }

    @Test
    void bad_plays_and_errors_are_refused() {
        assertThatThrownBy(() -> new SideShake("third", -1, 0, 0.5))
                .hasMessageContaining("The frontPlay (-0.000001 mm) of arbor (third) must lie from 0 mm to 5 mm");
        assertThatThrownBy(() -> new SideShake("third", 0, 0, Double.NaN)).hasMessageContaining("position");
        assertThatThrownBy(() -> new DepthingError(1, 2)).hasMessageContaining("must hold the nominal distance");
        SideShake still = new SideShake("third", 0, 0, 0);
        assertThatThrownBy(() -> DepthingError.anyWay(still, still, -1)).hasMessageContaining("print error");
        assertThatThrownBy(() -> new DepthingError(0, 1).widestInModules(0)).hasMessageContaining("module (0 mm)");
    }
}
