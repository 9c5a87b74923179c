// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.display;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import drumfall.solver.quantity.Dimension;
import drumfall.solver.quantity.Quantity;
import drumfall.solver.ratio.CountRange;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PublishedDisplaysTest {
    private static final BigFraction DAY = BigFraction.of(86_400);

    // Sidereal over mean day 0.99727: E. Beckett, A Rudimentary Treatise on Clocks, Watches and Bells, 8th ed.
    // 1903, p. 36, and Encyclopaedia Britannica, 11th ed., article Clock. Lunar day 24 h 50.47 min and mean
    // synodic month 29 d 12 h 44 min 2.9 s (29.530589 d): tide tables and almanacs, from memory. Tropical year 365
    // d 5 h 48 min 45 s: J. Meeus, Astronomical Algorithms, from memory. Each to half a unit of its last printed
    // digit, in days.
    @ParameterizedTest
    @CsvSource({
        "SIDEREAL_DAY, 0.99727, 0.000005",
        "LUNAR_DAY, 1.03504861, 0.0000035",
        "SYNODIC_MONTH, 29.530589, 0.0000005",
        "TROPICAL_YEAR, 365.2421875, 0.000006",
    })
    void a_cycle_has_its_published_length(KnownCycle cycle, double days, double halfUnit) {
        assertThat(cycle.seconds().divide(DAY).doubleValue()).isCloseTo(days, within(halfUnit));
    }

    // Beckett, p. 140: a moon wheel of 59 teeth moved by jumps twice a day is wrong by 44 minutes a month; printed
    // to whole minutes. A finger on the hour wheel is a driver of one tooth.
    @ParameterizedTest
    @CsvSource({"59, 1", "118, 2"})
    void a_moon_wheel_jumping_twice_a_day_gains_forty_four_minutes_a_month(int teeth, int moons) {
        DisplayError jumped = DisplayError.of(
                Display.of(KnownCycle.SYNODIC_MONTH, moons),
                DrivingArbor.HOUR_WHEEL,
                new DisplayTrain(List.of(1), List.of(teeth)));

        assertThat(jumped.secondsPerTurn())
                .isEqualTo(BigFraction.of(59 * moons, 2).multiply(DAY));
        assertThat(jumped.secondsACycle().divide(60).doubleValue()).isCloseTo(44, within(0.5));
    }

    // Encyclopaedia Britannica, 4th ed., article Clock, Ferguson's tide clock: 59 driven by 19 turning in 8 hours,
    // printed 24 h 50 1/2 min, so good to a quarter of a minute. That no other pair of as few driving teeth is
    // nearer is not printed; the search proves it.
    @Test
    void fergusons_tide_wheel_is_the_best_pair_from_his_arbor() {
        DrivingArbor eightHours = new DrivingArbor(BigFraction.of(1, 8), true);
        DisplayQuery query = query(Display.of(KnownCycle.LUNAR_DAY, 1), eightHours, 6, 19, 20, 100);

        DisplayOutcome outcome = DisplaySearch.nearest(query, () -> false);

        DisplayOption best = outcome.options().get(0);
        assertThat(outcome.proven()).isTrue();
        assertThat(best.trains()).containsExactly(new DisplayTrain(List.of(19), List.of(59)));
        double minutesPastDay = best.secondsPerTurn().subtract(DAY).divide(60).doubleValue();
        assertThat(minutesPastDay).isCloseTo(50.5, within(0.25));
    }

    // W. Derham, The Artificial Clock-Maker, 1696, chapter II.5 § 4: the annual wheel, 73/4, 40/4, 20/5 from the
    // wheel of twelve hours, 730 turns in a year of 365 days.
    @Test
    void derhams_annual_wheel_is_exact_for_a_year_of_365_days() {
        Display year = Display.of(Quantity.parse(Dimension.TIME, "365 d"), 1);
        DisplayQuery query = new DisplayQuery(
                year, DrivingArbor.HOUR_WHEEL, 3, new CountRange(4, 5), new CountRange(20, 73), 1, 10_000);

        DisplayOption exact = nearest(query);

        assertThat(query.arborTurns()).isEqualTo(BigFraction.of(730));
        assertThat(exact.error().secondsADay().isZero()).isTrue();
        assertThat(exact.error().daysUntil(new Resolution(Quantity.parse(Dimension.ANGLE, "1 deg"))))
                .isEmpty();
        assertThat(exact.trains()).contains(new DisplayTrain(List.of(5, 4, 4), List.of(73, 40, 20)));
    }

    // The rule of the Julian calendar: a year of 365 days is a day short after four of them, exactly.
    @Test
    void a_year_wheel_of_365_days_is_a_day_ahead_of_the_julian_year_after_four_turns() {
        Display julian = Display.of(Quantity.parse(Dimension.TIME, "365.25 d"), 1);
        DrivingArbor daily = new DrivingArbor(BigFraction.of(1, 24), true);
        DisplayError error = DisplayError.of(julian, daily, new DisplayTrain(List.of(1), List.of(365)));

        assertThat(error.daysUntil(new Resolution(Quantity.parse(Dimension.TIME, "1 d"))))
                .hasValue(BigFraction.of(4 * 365));
    }

    // Meton's rule: 235 months in 19 years, about two hours long (H. Spencer Jones, General Astronomy, from memory), so
    // between one hour and a half and two and a half.
    @Test
    void metons_rule_drives_the_year_from_the_moon_two_hours_wrong_in_nineteen_years() {
        BigFraction turnsPerHour = BigFraction.of(3600).divide(KnownCycle.SYNODIC_MONTH.seconds());
        DisplayQuery query =
                query(Display.of(KnownCycle.TROPICAL_YEAR, 1), new DrivingArbor(turnsPerHour, true), 8, 19, 60, 240);

        DisplayOption best = nearest(query);

        assertThat(best.trains()).containsExactly(new DisplayTrain(List.of(19), List.of(235)));
        double hours = best.error().secondsACycle().multiply(19).divide(3600).doubleValue();
        assertThat(hours).isCloseTo(-2, within(0.5));
    }

    private static DisplayQuery query(
            Display display, DrivingArbor arbor, int leastDriver, int mostDriver, int leastFollower, int mostFollower) {
        return new DisplayQuery(
                display,
                arbor,
                1,
                new CountRange(leastDriver, mostDriver),
                new CountRange(leastFollower, mostFollower),
                3,
                100);
    }

    private static DisplayOption nearest(DisplayQuery query) {
        return DisplaySearch.nearest(query, () -> false).options().get(0);
    }
}
