// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.view.train;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import drumfall.solver.power.pendulum.Pendulum;
import drumfall.solver.rating.Rating;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PowerBandTest {
    /** Two ways to the same product of a dozen doubles differ in their last digits. */
    private static final double LAST_DIGITS = 1 + 1e-12;

    private static PowerBand band(int meshes) {
        return PowerBand.of(rating(meshes), SampleTrains.brief()).orElseThrow();
    }

    private static Rating rating(int meshes) {
        return SampleTrains.rate(SampleTrains.of(meshes), SampleTrains.brief());
    }

    @ParameterizedTest
    @ValueSource(ints = {2, 3, 4, 5, 6, 7, 8})
    void power_never_grows_on_its_way(int meshes) {
        PowerBand band = band(meshes);
        double power = band.weight();
        for (PowerBand.Station station : band.arbors()) {
            assertThat(station.in()).isLessThanOrEqualTo(power * LAST_DIGITS);
            assertThat(station.out()).isLessThanOrEqualTo(station.in() * LAST_DIGITS);
            power = station.out();
        }
        assertThat(band.pendulum()).isPositive().isLessThan(power);
    }

    @Test
    void the_weight_gives_its_fall_over_the_duration() {
        Rating rating = rating(4);
        double fall = SampleTrains.brief().fall().height().si();
        double seconds = 3600 * rating.durationRoundedDown().doubleValue();
        double power = rating.weight().running().weight() * Pendulum.STANDARD_GRAVITY * fall / seconds;
        // Both are chains of a dozen double operations.
        assertThat(band(4).weight()).isCloseTo(power, within(1e-12 * power));
    }
}
