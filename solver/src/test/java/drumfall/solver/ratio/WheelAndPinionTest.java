// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.ratio;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WheelAndPinionTest {
    // gcd by Euclid: 64/8 wears the same teeth together, 65/8 every leaf on every tooth.
    @ParameterizedTest
    @CsvSource({"64, 8, false", "65, 8, true", "61, 10, true", "60, 7, true", "9, 6, false", "7, 7, false", "7, 1, true"
    })
    void a_hunting_pair_shares_no_divisor(int toothCount, int leafCount, boolean hunting) {
        assertThat(new WheelAndPinion(toothCount, leafCount).hunts()).isEqualTo(hunting);
    }

    @Test
    void no_pairs_leave_the_speed_as_it_is() {
        assertThat(WheelAndPinion.product(List.of())).isEqualTo(BigFraction.ONE);
    }

    @Test
    void a_wheel_without_teeth_is_refused() {
        assertThatThrownBy(() -> new WheelAndPinion(0, 8))
                .isInstanceOf(RatioException.class)
                .hasMessage("The toothCount (0) must be at least 1. Maybe swap in the wheel that was meant.");
        assertThatThrownBy(() -> new WheelAndPinion(60, -8))
                .isInstanceOf(RatioException.class)
                .hasMessageStartingWith("The leafCount (-8)");
    }

    @Test
    void a_train_has_one_pinion_for_each_wheel() {
        assertThatThrownBy(() -> new RatioTrain(List.of(60, 64), List.of(8)))
                .isInstanceOf(RatioException.class)
                .hasMessage(
                        "The number of pinions (1) must be the number of wheels (2). Maybe give each mesh one of both.");
        assertThat(new RatioTrain(List.of(60, 64), List.of(8, 10)))
                .isEqualTo(new RatioTrain(List.of(64, 60), List.of(10, 8)));
    }

    @ParameterizedTest
    @CsvSource({"1, 1, 1, 1", "1, 2, 1, 3", "1, 2, 3, 6", "2, 1, 1, 3"})
    void equal_wheels_cannot_be_told_apart_in_the_count_of_arrangements(int a, int b, int c, long arrangements) {
        assertThat(new RatioTrain(List.of(a, b, c), List.of(8, 8, 8)).arrangementCount())
                .isEqualTo(arrangements);
    }
}
