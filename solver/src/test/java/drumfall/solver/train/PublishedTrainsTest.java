// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.train;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import drumfall.solver.ratio.WheelAndPinion;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Complete trains as printed, rated from their counts. Whatever holds no &pi; is compared exactly.
 *
 * <p>Sources: W. Derham, <i>The Artificial Clock-Maker</i>, London 1696 (D); E. Beckett, <i>A Rudimentary Treatise on
 * Clocks, Watches and Bells</i>, 8th ed., London 1903 (B); W. L. Goodrich, <i>The Modern Clock</i>, Chicago 1905 (G);
 * <i>Encyclopaedia Britannica</i>, 4th ed., article Clock (E).
 */
class PublishedTrainsTest {
    // Columns: meshes from the drum, arbor that keeps time, its hours a turn, beats in an escape turn, hours a
    // drum turn, beats an hour.
    @ParameterizedTest(name = "{0} with {3} beats")
    @CsvSource({
        // D X § 2 pp. 111-112, eight days, great wheel 12 hours, seconds pendulum.
        "96/8 60/8 56/7, 1, 1, 60, 12, 3600",
        // D X § 3 p. 112, thirty-two days.
        "96/16 72/9 60/8 56/7, 2, 1, 60, 48, 3600",
        // D X § 4 pp. 113-114, printed 64 days, and its variant.
        "90/9 76/8 60/8 56/7, 2, 1, 60, 95, 3600",
        "80/8 76/8 60/8 56/7, 2, 1, 60, 95, 3600",
        // D X § 7 p. 115, a year piece.
        "108/12 72/9 64/8 60/8 56/7, 3, 1, 60, 576, 3600",
        // D X § 8 p. 115, thirty hours; the pinion of report of 12 under a dial wheel of 48 makes the great wheel 3
        // hours.
        "78/6 60/6 42/6, 0, 3, 30, 3, 9100",
        // D X § 9 p. 116, eight days with a six-inch pendulum.
        "96/8 64/8 60/8 40/8, 1, 1, 30, 12, 9000",
        // D X § 11 p. 117, 384 days without a minute hand; report 36 over dial wheel 9 makes the second wheel 48 hours.
        "96/8 72/6 66/6 60/6 54/6, 1, 48, 38, 576, 9405",
        // D II.2 § 11, the worked eight-day seconds train.
        "96/8 64/8 60/8, 1, 1, 60, 12, 3600",
        // D II.2 § 10, the worked eight-day train with a six-inch pendulum.
        "108/9 64/8 60/8 40/8, 1, 1, 30, 12, 9000",
        // B pp. 22-23, the common house clock.
        "120/10 64/8 60/8, 1, 1, 60, 12, 3600",
        // B p. 138, the year clock of 380 days on 16 turns.
        "100/12 90/10 76/10 64/8 60/8, 3, 1, 60, 570, 3600",
        // B p. 185, a turret clock with a double three-legged gravity escapement: six beats a turn of one and a half
        // seconds, great wheel 3 hours.
        "120/10 100/10 90/9, 0, 3, 6, 3, 2400",
        // E, Franklin's clock: three wheels, no arbor of one hour.
        "160/10 120/8, 0, 4, 60, 4, 3600",
        // Timex service manual (model 61), a worked count; the drum is left out, the first arbor turns hourly.
        "80/12 72/8, 0, 1, 60, 1, 3600",
        // D X § 1 p. 110, the twelve-hour house watch; report 4 under dial wheel 48 makes the great wheel hourly.
        "56/7 54/6, 0, 1, 38, 1, 2736",
    })
    void a_published_train_keeps_its_published_time(
            String meshes, int arbor, int hours, int beatsPerTurn, int hoursPerDrumTurn, int beatsPerHour) {
        GoingTrain train = new GoingTrain(meshes(meshes), new TimeBase(arbor, BigFraction.of(hours)), beatsPerTurn);

        assertThat(train.hoursPerTurn(0)).isEqualTo(BigFraction.of(hoursPerDrumTurn));
        assertThat(train.beatsPerHour()).isEqualTo(BigFraction.of(beatsPerHour));
        assertThat(train.secondsPerBeat()).isEqualTo(BigFraction.of(3600, beatsPerHour));
    }

    // The same sources: D X § 2, 3, 7, 9, 11; D II.2 § 11; B p. 133 (sixteen coils) and p. 138; D X § 4 prints 64 days,
    // which are 63 1/3.
    @ParameterizedTest(name = "{0}")
    @CsvSource({
        "96/8 60/8 56/7, 1, 1, 8",
        "96/16 72/9 60/8 56/7, 2, 1, 32",
        "90/9 76/8 60/8 56/7, 2, 1, 190/3",
        "108/12 72/9 64/8 60/8 56/7, 3, 1, 384",
        "96/8 64/8 60/8 40/8, 1, 1, 8",
        "96/8 72/6 66/6 60/6 54/6, 1, 48, 384",
        "96/8 64/8 60/8, 1, 1, 8",
        "100/12 90/10 76/10 64/8 60/8, 3, 1, 380",
    })
    void sixteen_turns_of_the_drum_last_the_published_days(String meshes, int arbor, int hours, String days) {
        GoingTrain train = new GoingTrain(meshes(meshes), new TimeBase(arbor, BigFraction.of(hours)), 60);

        BigFraction run = train.hoursPerTurn(0).multiply(16).divide(24);

        assertThat(run).isEqualTo(BigFraction.parse(days.replace("/", " / ")));
    }

    // Derham prints 64 days (chapter X § 4); 95 hours a turn give 1520 hours, 1.04 % short.
    @ParameterizedTest
    @CsvSource({"90/9 76/8 60/8 56/7", "80/8 76/8 60/8 56/7"})
    void the_sixty_four_day_train_does_not_run_sixty_four_days(String meshes) {
        GoingTrain train = new GoingTrain(meshes(meshes), TimeBase.hourly(2), 60);

        assertThat(train.hoursPerTurn(0).multiply(16)).isEqualTo(BigFraction.of(1520));
        assertThat(train.hoursPerTurn(0).multiply(16)).isLessThan(BigFraction.of(64 * 24));
    }

    // Periods of single arbors. D X § 2: seconds wheel; B pp. 22-23: 8 minutes and 1 minute; B p. 185: 15 minutes, a
    // minute and a half, 9 seconds; E: 15 minutes and 1 minute; D X § 9: seconds wheel 60 turns an hour; D X § 11.
    @ParameterizedTest(name = "arbor {3} of {0}")
    @CsvSource({
        "96/8 60/8 56/7, 1, 1, 3, 1/60",
        "120/10 64/8 60/8, 1, 1, 2, 8/64",
        "120/10 64/8 60/8, 1, 1, 3, 1/60",
        "120/10 100/10 90/9, 0, 3, 1, 1/4",
        "120/10 100/10 90/9, 0, 3, 2, 1/40",
        "120/10 100/10 90/9, 0, 3, 3, 9/3600",
        "160/10 120/8, 0, 4, 1, 1/4",
        "160/10 120/8, 0, 4, 2, 1/60",
        "96/8 64/8 60/8 40/8, 1, 1, 3, 1/60",
        "96/8 72/6 66/6 60/6 54/6, 1, 48, 1, 48/1",
    })
    void an_arbor_turns_in_its_published_time(String meshes, int base, int hours, int arbor, String expected) {
        GoingTrain train = new GoingTrain(meshes(meshes), new TimeBase(base, BigFraction.of(hours)), 60);

        assertThat(train.hoursPerTurn(arbor)).isEqualTo(BigFraction.parse(expected.replace("/", " / ")));
    }

    // D X § 8 (12 over 48: 3 hours), § 1 (4 over 48: 1 hour), § 11 (36 over 9: 48 hours).
    @ParameterizedTest
    @CsvSource({"12, 48, 3", "4, 48, 1", "36, 9, 48"})
    void a_pinion_of_report_sets_the_hours_of_its_arbor(int report, int dialWheel, int hours) {
        TimeBase base = TimeBase.twelveHourDial(0, new WheelAndPinion(report, dialWheel));

        assertThat(base.hoursPerTurn()).isEqualTo(BigFraction.of(hours));
    }

    // The printed clocks that carry a seconds hand (D X § 2, 9; B pp. 22-23) and those that cannot: no arbor of a
    // minute (D X § 8, hours only), no arbor of an hour (E; D X § 11).
    @ParameterizedTest(name = "{0}")
    @CsvSource({
        "96/8 60/8 56/7, 1, 1, 3",
        "96/8 64/8 60/8 40/8, 1, 1, 3",
        "120/10 64/8 60/8, 1, 1, 3",
        "78/6 60/6 42/6, 0, 3, none",
        "160/10 120/8, 0, 4, none",
        "96/8 72/6 66/6 60/6 54/6, 1, 48, none",
        // Not printed: a single mesh of sixty turns the wrong way.
        "96/8 480/8 40/8, 1, 1, none",
    })
    void a_seconds_hand_finds_its_arbor_or_none(String meshes, int base, int hours, String arbor) {
        GoingTrain train = new GoingTrain(meshes(meshes), new TimeBase(base, BigFraction.of(hours)), 60);

        Optional<String> found =
                train.secondsArbor().stream().mapToObj(Integer::toString).findFirst();

        assertThat(found.orElse("none")).isEqualTo(arbor);
    }

    // Every mesh reverses the turn and the centre turns clockwise: common practice, no source. A drum that turns
    // clockwise seen from the dial pays out on the right.
    @ParameterizedTest(name = "{0}")
    @CsvSource({
        "96/8 60/8 56/7, 1, false",
        "96/16 72/9 60/8 56/7, 2, true",
        "108/12 72/9 64/8 60/8 56/7, 3, false",
        "56/7 54/6, 0, true",
    })
    void the_line_hangs_on_the_right_with_an_even_number_of_meshes_above(String meshes, int centre, boolean right) {
        GoingTrain train = new GoingTrain(meshes(meshes), TimeBase.hourly(centre), 60);

        assertThat(train.clockwise(centre)).isTrue();
        assertThat(train.clockwise(centre + 1)).isFalse();
        assertThat(train.clockwise(centre + 2)).isTrue();
        assertThat(train.lineOnTheRight()).isEqualTo(right);
    }

    // D II.2 § 6: 26928 beats a turn of the great wheel, 20196 beats an hour, 16 hours on 12 turns, quotient of report
    // 9.
    @ParameterizedTest
    @CsvSource("26928, 20196, 16, 12, 9")
    void derhams_rule_of_three_relates_turns_beats_and_hours(
            int beatsPerTurn, int beatsPerHour, int hours, int turns, int quotient) {
        BigFraction hoursPerTurn = BigFraction.of(hours, turns);
        GoingTrain train =
                new GoingTrain(List.of(new WheelAndPinion(1, 1)), new TimeBase(0, hoursPerTurn), beatsPerTurn);

        assertThat(train.beatsPerHour()).isEqualTo(BigFraction.of(beatsPerHour));
        assertThat(train.beatsPerHour().multiply(hours).divide(turns)).isEqualTo(BigFraction.of(beatsPerTurn));
        assertThat(BigFraction.of(12).divide(hoursPerTurn)).isEqualTo(BigFraction.of(quotient));
    }

    // A drum that turns hourly itself, as in the 30-hour clocks of D X § 1: rated like any other.
    @ParameterizedTest
    @CsvSource("56/7 54/6, 19, 2736")
    void a_train_may_hang_on_an_hourly_drum(String meshes, int escapeTeeth, int beatsPerHour) {
        ToothModule module = ToothModule.ofMillimetres("1");
        Train train = new Train(
                meshes(meshes).stream().map(counts -> new Mesh(counts, module)).toList(),
                0,
                BigFraction.of(1, 25),
                Reeving.SINGLE,
                escapeTeeth);

        assertThat(train.going().beatsPerHour()).isEqualTo(BigFraction.of(beatsPerHour));
        assertThat(train.going().hourlyArbor()).hasValue(0);
        assertThat(train.hoursPerTurn(0)).isEqualTo(1);
        assertThat(train.above()).isEmpty();
        // Correctly rounded, so no further tolerance than half a unit in the last place.
        assertThat(train.secondsPerBeat()).isCloseTo(3600.0 / beatsPerHour, within(Math.ulp(1.3) / 2));
    }

    static List<WheelAndPinion> meshes(String text) {
        return Arrays.stream(text.split(" "))
                .map(mesh -> mesh.split("/"))
                .map(mesh -> new WheelAndPinion(Integer.parseInt(mesh[0]), Integer.parseInt(mesh[1])))
                .toList();
    }
}
