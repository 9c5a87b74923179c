// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.ratio;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PublishedRatiosTest {
    // W. Derham, The Artificial Clock-Maker, London 1696: chapter II.2 § 1 (1440/28 in three steps, 51 3/7) and
    // chapter II.5 § 4 (the annual wheel, 730 turns of the 12-hour wheel); chapter X pp. 111-116. E. Beckett, A
    // Rudimentary Treatise on Clocks, Watches and Bells, 8th ed., 1903: pp. 22-23 (common house clock, drum to
    // centre 12, centre to escape 60), p. 135 (120 : 1), p. 138 (year clock, 570 hours a turn), p. 224 (motion
    // work). Encyclopaedia Britannica, 4th ed., article Clock: Franklin's clock, 4 hours to 1 minute. W. L.
    // Goodrich, The Modern Clock, 1905, chapter XVI: motion work 36/12, 40/10.
    @ParameterizedTest
    @CsvSource({
        "36/4 8/7 5/1, 360/7",
        "73/4 40/4 20/5, 730",
        "96/16 72/9, 48",
        "108/12 72/9 64/8, 576",
        "120/10, 12",
        "64/8 60/8, 60",
        "72/6 60/6, 120",
        "100/12 90/10 76/10, 570",
        "90/25 100/30, 12",
        "160/10 120/8, 240",
        "36/12 40/10, 12",
    })
    void a_published_train_multiplies_out_to_its_published_ratio(String train, String ratio) {
        assertThat(WheelAndPinion.product(train(train))).isEqualTo(BigFraction.parse(ratio.replace("/", " / ")));
    }

    // Encyclopaedia Britannica, 4th ed., article Clock, Ferguson's tide clock: wheels of 57 and 59 turned by a
    // pinion of 19 that turns in 8 hours; printed 24 h and 24 h 50 1/2 min. Half a minute is the printed step,
    // hence the quarter.
    @Test
    void the_tide_wheel_turns_in_twenty_four_hours_fifty_and_a_half_minutes() {
        BigFraction hours = BigFraction.of(8);

        assertThat(hours.multiply(new WheelAndPinion(57, 19).ratio())).isEqualTo(BigFraction.of(24));
        BigFraction tide = hours.multiply(new WheelAndPinion(59, 19).ratio());
        BigFraction minutesPastDay = tide.subtract(24).multiply(60);
        assertThat(minutesPastDay.doubleValue()).isCloseTo(50.5, within(0.25));
    }

    // E. Beckett, p. 140: a moon wheel of 59 teeth, moved a tooth twice a day, is wrong by 44 minutes a month;
    // printed to whole minutes, hence the half. The mean synodic month, 29.530589 days, is from memory.
    @Test
    void the_fifty_nine_tooth_moon_wheel_loses_forty_four_minutes_a_month() {
        BigFraction wheelDays = new WheelAndPinion(59, 2).ratio();
        BigFraction monthDays = BigFraction.of(29_530_589, 1_000_000);

        double minutes = monthDays.subtract(wheelDays).multiply(24 * 60).doubleValue();
        assertThat(minutes).isCloseTo(44, within(0.5));
    }

    // Beckett, p. 138: "best numbers" 100, 90, 76 on pinions 12, 10, 10 for 380 days in 16 turns.
    @Test
    void the_search_lists_the_published_year_train_among_the_exact_ones() {
        RatioQuery query =
                new RatioQuery(BigFraction.of(570), 3, new CountRange(70, 100), new CountRange(10, 12), 1, 10_000);

        RatioEntry exact = RatioSearch.search(query, () -> false).entries().get(0);

        assertThat(exact.error().isZero()).isTrue();
        assertThat(exact.allListed()).isTrue();
        assertThat(exact.trains()).contains(new RatioTrain(List.of(100, 90, 76), List.of(12, 10, 10)));
    }

    // Goodrich, chapter XVI, and Beckett, p. 224: both motion works are exactly 12.
    @Test
    void the_search_lists_the_published_motion_works_among_the_exact_ones() {
        RatioQuery query =
                new RatioQuery(BigFraction.of(12), 2, new CountRange(30, 100), new CountRange(10, 30), 1, 10_000);

        RatioEntry exact = RatioSearch.search(query, () -> false).entries().get(0);

        assertThat(exact.ratio()).isEqualTo(BigFraction.of(12));
        assertThat(exact.allListed()).isTrue();
        assertThat(exact.trains())
                .contains(
                        new RatioTrain(List.of(36, 40), List.of(12, 10)),
                        new RatioTrain(List.of(90, 100), List.of(25, 30)))
                .allSatisfy(train -> assertThat(train.ratio()).isEqualTo(BigFraction.of(12)));
    }

    private static List<WheelAndPinion> train(String text) {
        List<WheelAndPinion> pairs = new ArrayList<>();
        for (String mesh : text.split(" ", -1)) {
            int slash = mesh.indexOf('/');
            pairs.add(new WheelAndPinion(
                    Integer.parseInt(mesh.substring(0, slash)), Integer.parseInt(mesh.substring(slash + 1))));
        }
        return pairs;
    }
}
