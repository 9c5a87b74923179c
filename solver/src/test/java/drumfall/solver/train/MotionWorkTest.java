// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.train;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class MotionWorkTest {
    // Goodrich, The Modern Clock, 1905, ch. XVI (12, 36, 10, 40); Derham, The Artificial Clock-Maker, 1696, ch. X § 2
    // (48/48, 6 into 72); Beckett, 8th ed. 1903, p. 224 (wheels 90, 100, pinions 25, 30; which turns which is not
    // printed, so both ways) and p. 136 (minute wheel equal to the cannon wheel, pinion a twelfth of the hour wheel).
    // Last column: module of the second mesh over that of the first.
    @ParameterizedTest
    @CsvSource({
        "12, 36, 10, 40, 24/25",
        "48, 48, 6, 72, 16/13",
        "30, 90, 25, 100, 24/25",
        "25, 90, 30, 100, 23/26",
        "40, 40, 6, 72, 40/39",
        "36, 36, 8, 96, 9/13",
    })
    void a_published_motion_work_gives_twelve_and_needs_two_modules(
            int cannonPinion, int minuteWheel, int minutePinion, int hourWheel, String moduleRatio) {
        MotionWork work = new MotionWork(cannonPinion, minuteWheel, minutePinion, hourWheel);

        assertThat(work.ratio()).isEqualTo(BigFraction.of(12));
        assertThat(work.twelve()).isTrue();
        assertThat(work.oneModuleServes()).isFalse();
        assertThat(work.moduleRatio()).isEqualTo(BigFraction.parse(moduleRatio.replace("/", " / ")));
    }

    // By arithmetic: 36/12 · 40/10 as printed by Goodrich has unequal sums; 30/10 · 32/8 has sums of 40 and 40.
    @ParameterizedTest
    @CsvSource({"10, 30, 8, 32, true, true", "12, 36, 10, 38, false, true", "12, 36, 10, 41, false, false"})
    void one_module_serves_when_the_sums_of_counts_agree(
            int cannonPinion, int minuteWheel, int minutePinion, int hourWheel, boolean twelve, boolean oneModule) {
        MotionWork work = new MotionWork(cannonPinion, minuteWheel, minutePinion, hourWheel);

        assertThat(work.twelve()).isEqualTo(twelve);
        assertThat(work.oneModuleServes()).isEqualTo(oneModule);
    }

    @ParameterizedTest
    @ValueSource(ints = {0, -3})
    void a_count_below_one_is_refused(int count) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new MotionWork(12, 36, 10, count))
                .withMessageContaining("at least 1");
    }
}
