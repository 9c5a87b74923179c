// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.train;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.util.Random;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DrumRunTest {
    private static final int SAMPLES = "full".equals(System.getProperty("drumfall.samples")) ? 20_000 : 500;

    /** &pi; to 30 decimals, from memory; independent of the bounds under test. */
    private static final BigFraction PI_TO_30_DECIMALS = decimal("3.141592653589793238462643383279");

    // Goodrich, The Modern Clock, 1905, ch. XV: working diameter is barrel and one cord, a turn takes π times that. His
    // π is 3.14156 and is not asserted. Barrel, cord and fall are chosen here: (40 + 1.5) mm · π into 1.25 m.
    @Test
    void the_working_diameter_is_the_drum_and_one_line() {
        DrumRun drum = run("1.25", "0.04", "0.0015", Reeving.SINGLE);

        assertThat(drum.effectiveDiameter()).isEqualTo(decimal("0.0415"));
        assertThat(drum.turnsTimesPi()).isEqualTo(BigFraction.of(1250).divide(decimal("41.5")));
        // One division and one product in double: a few units in the last place.
        assertThat(drum.turns()).isCloseTo(1.25 / (0.0415 * Math.PI), within(1e-14));
    }

    // Beckett, 8th ed. 1903, pp. 132-133, and Goodrich ch. XV: a double line runs twice the fall, so the same fall
    // gives
    // twice the turns, or the same turns on twice the diameter.
    @Test
    void a_double_line_doubles_the_turns_or_the_drum() {
        DrumRun single = run("1.2", "0.0385", "0.0015", Reeving.SINGLE);
        DrumRun sameDrum = run("1.2", "0.0385", "0.0015", Reeving.DOUBLE);
        DrumRun twiceTheDrum = run("1.2", "0.0785", "0.0015", Reeving.DOUBLE);

        assertThat(sameDrum.turnsTimesPi()).isEqualTo(single.turnsTimesPi().multiply(2));
        assertThat(twiceTheDrum.turnsTimesPi()).isEqualTo(single.turnsTimesPi());
    }

    // Goodrich ch. XV: turns of a smooth barrel are its length over the cord, in one layer. Two safety turns and the
    // line's
    // own breadth come on top: common practice, no source. 10 turns of a 2 mm line with spacing 1: (10 + 2) · 2 + 2 =
    // 26.
    @Test
    void one_layer_takes_the_turns_two_safety_turns_and_one_line() {
        // Fall of 10 turns: 10 π (38 + 2) mm, taken a little short of and a little over the true value.
        DrumRun justTen = new DrumRun(
                PiBounds.BELOW.multiply(decimal("0.4")), decimal("0.038"), decimal("0.002"), Reeving.SINGLE);

        BigFraction layer = justTen.layerLength(BigFraction.ONE);

        assertThat(layer).isEqualTo(decimal("0.026"));
        assertThat(justTen.layerLength(decimal("1.08"))).isEqualTo(decimal("0.02792"));
    }

    @Test
    void the_line_to_cut_holds_the_fall_the_lead_two_turns_and_the_knots() {
        DrumRun drum = run("1.25", "0.0385", "0.0015", Reeving.DOUBLE);

        // 2 (1.25 + 0.1) + 2 π 0.04 + 0.2, by hand: 2.7 + 0.2513274 + 0.2.
        assertThat(drum.lineLength(0.1, 0.2)).isCloseTo(3.1513274, within(5e-8));
    }

    @Test
    void the_true_duration_lies_between_its_two_bounds() {
        Random random = new Random(20);
        for (int i = 0; i < SAMPLES; i++) {
            DrumRun drum = new DrumRun(
                    BigFraction.of(1 + random.nextInt(5000), 1000),
                    BigFraction.of(100 + random.nextInt(2000), 10_000),
                    BigFraction.of(random.nextInt(400), 100_000),
                    random.nextBoolean() ? Reeving.SINGLE : Reeving.DOUBLE);
            BigFraction perTurn = BigFraction.of(1 + random.nextInt(300), 1 + random.nextInt(30));
            // π to 30 decimals cut off is below π by less than 1e-30: a true duration to that share.
            BigFraction nearly = perTurn.multiply(drum.turnsTimesPi()).divide(PI_TO_30_DECIMALS);

            BigFraction down = drum.hoursRoundedDown(perTurn);
            BigFraction up = drum.hoursRoundedUp(perTurn);

            assertThat(down).isLessThan(up);
            assertThat(down).isLessThan(nearly);
            assertThat(up.subtract(down).divide(up)).isLessThan(decimal("1e-50"));
            assertThat(nearly.subtract(down).divide(nearly)).isLessThan(decimal("1e-30"));
            assertThat(drum.turnsRoundedDown()).isLessThan(drum.turnsRoundedUp());
        }
    }

    // A limit that only the upper bound reaches is not reached for sure: the true duration is irrational, so a rational
    // limit is never met exactly, and rounding must not decide for the train.
    @ParameterizedTest
    @CsvSource({"12", "48/5", "96/7"})
    void an_exact_limit_is_never_accepted_by_rounding(String hoursPerTurn) {
        BigFraction perTurn = BigFraction.parse(hoursPerTurn.replace("/", " / "));
        DrumRun drum = run("1.25", "0.04", "0.0015", Reeving.SINGLE);
        BigFraction limit = drum.hoursRoundedUp(perTurn);

        assertThat(drum.hoursRoundedDown(perTurn)).isLessThan(limit);
        // In double both bounds are the same number; only exact arithmetic tells them apart.
        assertThat(drum.hoursRoundedDown(perTurn).doubleValue()).isEqualTo(limit.doubleValue());
    }

    @ParameterizedTest
    @CsvSource({"0, 0.04, 0.001", "-1, 0.04, 0.001", "1, 0, 0.001", "1, 0.04, -0.001"})
    void lengths_that_cannot_be_are_refused(String fall, String drum, String line) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> run(fall, drum, line, Reeving.SINGLE))
                .withMessageContaining("must be more than 0");
    }

    @Test
    void a_reeving_is_known_by_its_falls() {
        assertThat(Reeving.of(1)).hasValue(Reeving.SINGLE);
        assertThat(Reeving.of(2)).hasValue(Reeving.DOUBLE);
        assertThat(Reeving.of(3)).isEmpty();
    }

    private static DrumRun run(String fall, String drum, String line, Reeving reeving) {
        return new DrumRun(decimal(fall), decimal(drum), decimal(line), reeving);
    }

    private static BigFraction decimal(String text) {
        BigDecimal decimal = new BigDecimal(text);
        BigFraction unscaled = BigFraction.of(decimal.unscaledValue());
        return decimal.scale() >= 0
                ? unscaled.divide(BigFraction.of(java.math.BigInteger.TEN.pow(decimal.scale())))
                : unscaled.multiply(BigFraction.of(java.math.BigInteger.TEN.pow(-decimal.scale())));
    }
}
