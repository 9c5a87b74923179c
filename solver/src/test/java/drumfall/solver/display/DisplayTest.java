// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.display;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import drumfall.solver.quantity.Dimension;
import drumfall.solver.quantity.Quantity;
import drumfall.solver.ratio.CountRange;
import drumfall.solver.ratio.RatioException;
import drumfall.solver.ratio.WheelAndPinion;
import drumfall.solver.train.GoingTrain;
import drumfall.solver.train.TimeBase;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DisplayTest {
    private static final CountRange DRIVERS = new CountRange(8, 12);
    private static final CountRange FOLLOWERS = new CountRange(24, 96);

    // Each mesh reverses the turn: common practice, no source.
    @ParameterizedTest
    @CsvSource({"1, true, false", "2, true, true", "3, true, false", "2, false, false", "3, false, true"})
    void an_even_number_of_meshes_keeps_the_sense_of_the_arbor(
            int meshCount, boolean arborClockwise, boolean displayClockwise) {
        DrivingArbor arbor = new DrivingArbor(BigFraction.ONE, arborClockwise);
        Display display =
                new Display(arbor.secondsPerTurn().multiply(BigFraction.of(5).pow(meshCount)), 1);
        DisplayQuery query = new DisplayQuery(display, arbor, meshCount, DRIVERS, FOLLOWERS, 1, 1);

        assertThat(query.clockwise()).isEqualTo(displayClockwise);
        DisplayTrain train = DisplaySearch.nearest(query, () -> false)
                .options()
                .get(0)
                .trains()
                .get(0);
        assertThat(train.reverses()).isEqualTo(arborClockwise != displayClockwise);
    }

    // E. Beckett, A Rudimentary Treatise on Clocks, Watches and Bells, 8th ed. 1903, pp. 22-23: arbors of 12 h, 1
    // h, 8 min (7.5 in the hour times 64/60) and 1 min.
    @ParameterizedTest
    @CsvSource({"0, 1/12, false", "1, 1/1, true", "2, 8/1, false", "3, 60/1, true"})
    void any_arbor_of_a_going_train_can_drive(int arbor, String turnsPerHour, boolean clockwise) {
        GoingTrain train = new GoingTrain(
                List.of(new WheelAndPinion(120, 10), new WheelAndPinion(64, 8), new WheelAndPinion(60, 8)),
                TimeBase.hourly(1),
                60);

        assertThat(DrivingArbor.of(train, arbor))
                .isEqualTo(new DrivingArbor(BigFraction.parse(turnsPerHour.replace("/", " / ")), clockwise));
    }

    // 360 degrees, 24 hours and 1440 minutes make the turn of a daily hand; a gain of one in a thousand is 86.4 s a
    // day.
    @ParameterizedTest
    @CsvSource({
        "TIME, 86.4 s, 1, 1",
        "TIME, 1 d, 1, 1000",
        "TIME, 1 min, 1, 25/36",
        "ANGLE, 1 deg, 1, 25/9",
        "ANGLE, 1 deg, 2, 50/9",
        "ANGLE, 360 deg, 1, 1000"
    })
    void an_error_shows_when_it_has_grown_to_the_resolution(
            Dimension dimension, String step, int cyclesPerTurn, String days) {
        Display daily = Display.of(Quantity.parse(Dimension.TIME, "1 d"), cyclesPerTurn);
        Resolution resolution = new Resolution(Quantity.parse(dimension, step));
        BigFraction expected = BigFraction.parse(days.contains("/") ? days.replace("/", " / ") : days);

        assertThat(new DisplayError(daily, BigFraction.of(1, 1000)).daysUntil(resolution))
                .hasValue(expected);
        assertThat(new DisplayError(daily, BigFraction.of(-1, 1000)).daysUntil(resolution))
                .hasValue(expected);
        assertThat(new DisplayError(daily, BigFraction.ZERO).daysUntil(resolution))
                .isEmpty();
    }

    @Test
    void a_disc_of_two_moons_turns_once_in_two_months() {
        assertThat(Display.of(KnownCycle.SYNODIC_MONTH, 2).secondsPerTurn())
                .isEqualTo(KnownCycle.SYNODIC_MONTH.seconds().multiply(2));
    }

    @Test
    void drivers_and_followers_are_listed_the_most_first_in_any_order() {
        DisplayTrain train = new DisplayTrain(List.of(8, 10), List.of(64, 90));

        assertThat(train).isEqualTo(new DisplayTrain(List.of(10, 8), List.of(90, 64)));
        assertThat(train.turns()).isEqualTo(BigFraction.of(80, 64 * 90));
        assertThat(train.largestCount()).isEqualTo(90);
        assertThatThrownBy(() -> new DisplayTrain(List.of(), List.of()))
                .isInstanceOf(RatioException.class)
                .hasMessageStartingWith("The number of wheels (0) must be at least 1.");
    }

    @ParameterizedTest
    @CsvSource({
        "0 s, 1, The length of the cycle (0 s) must be more than 0 s.",
        "-1 d, 1, The length of the cycle (-86400 s) must be more than 0 s.",
        "1 d, 0, The number of cycles in a turn (0) must lie from 1 to 100.",
        "1 d, 101, The number of cycles in a turn (101) must lie from 1 to 100."
    })
    void a_cycle_that_does_not_come_round_is_refused(String cycle, int cyclesPerTurn, String message) {
        Quantity length = Quantity.parse(Dimension.TIME, cycle);

        assertThatThrownBy(() -> Display.of(length, cyclesPerTurn))
                .isInstanceOf(RatioException.class)
                .hasMessageStartingWith(message);
    }

    @ParameterizedTest
    @CsvSource({
        "TIME, 0 s, be more than 0",
        "TIME, -1 d, be more than 0",
        "ANGLE, 0 deg, be more than 0",
        "LENGTH, 1 mm, be a time or an angle"
    })
    void a_resolution_that_nobody_can_read_is_refused(Dimension dimension, String step, String rule) {
        Quantity quantity = Quantity.parse(dimension, step);

        assertThatThrownBy(() -> new Resolution(quantity))
                .isInstanceOf(RatioException.class)
                .hasMessage("The resolution (%s) must %s. Maybe write 1 d or 1 deg.", step, rule);
    }

    @ParameterizedTest
    @CsvSource({"0, 0 turns an hour", "-1, -1 turns an hour"})
    void an_arbor_that_does_not_turn_is_refused(int turnsPerHour, String shown) {
        assertThatThrownBy(() -> new DrivingArbor(BigFraction.of(turnsPerHour), true))
                .isInstanceOf(RatioException.class)
                .hasMessage(
                        "The speed of the driving arbor (%s) must be more than 0 turns an hour."
                                + " Maybe take the centre arbor, which turns once.",
                        shown);
    }

    @ParameterizedTest
    @CsvSource(delimiter = ';', textBlock = """
            0; 24; 96; 1;     1;     The number of meshes (0) must lie from 1 to 4. Maybe drive from a slower arbor.
            5; 24; 96; 1;     1;     The number of meshes (5) must lie from 1 to 4. Maybe drive from a slower arbor.
            3; 24; 90; 0;     1;     The number of wanted ratios (0) must lie from 1 to 10000. Maybe ask for the best few.
            3; 24; 90; 1;     10001; The number of trains per ratio (10001) must lie from 1 to 10000. Maybe ask for the first few.
            4; 8; 500; 1;     1;     The range of followers (8 to 500) must leave at most 15000000 choices of 4 counts. Maybe narrow the range.
            2; 24; 96; 1;     1;     The number of turns of the arbor for one of the display (708.734) must lie from 4.00000 to 144.000, the reach of the counts in their meshes (2). Maybe change the number of meshes, the counts or the arbor.
            4; 96; 96; 1;     1;     The number of turns of the arbor for one of the display (708.734) must lie from 4096.00 to 20736.0, the reach of the counts in their meshes (4). Maybe change the number of meshes, the counts or the arbor.
            """)
    void a_query_that_cannot_be_searched_or_reached_is_refused(
            int meshCount, int leastFollower, int mostFollower, int wanted, int trainsPerSpeed, String message) {
        Display moon = Display.of(KnownCycle.SYNODIC_MONTH, 1);
        CountRange followers = new CountRange(leastFollower, mostFollower);

        assertThatThrownBy(() -> new DisplayQuery(
                        moon, DrivingArbor.CENTRE, meshCount, DRIVERS, followers, wanted, trainsPerSpeed))
                .isInstanceOf(RatioException.class)
                .hasMessage(message);
    }
}
