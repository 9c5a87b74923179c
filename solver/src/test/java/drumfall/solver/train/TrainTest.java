// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.train;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import drumfall.solver.ratio.WheelAndPinion;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TrainTest {
    private static final int SAMPLES = "full".equals(System.getProperty("drumfall.samples")) ? 100_000 : 2_000;
    private static final ToothModule ONE = ToothModule.ofMillimetres("1");
    private static final BigFraction DRUM = BigFraction.of(4, 100);

    // A quotient to 40 digits, then rounded once to a double: doubly rounded only if the 40 digits end on half a
    // unit in the last place, which quotients of such counts do not.
    @Test
    void floating_figures_are_the_exact_ones_rounded_once() {
        Random random = new Random(7);
        for (int i = 0; i < SAMPLES; i++) {
            Train train = random(random);
            for (int arbor = 0; arbor <= train.meshes().size(); arbor++) {
                BigFraction exact = train.going().hoursPerTurn(arbor);
                assertThat(train.hoursPerTurn(arbor)).isEqualTo(rounded(exact));
                assertThat(exact.doubleValue()).isEqualTo(rounded(exact));
            }
            assertThat(train.secondsPerBeat()).isEqualTo(rounded(train.going().secondsPerBeat()));
            assertThat(train.going().secondsPerBeat().doubleValue()).isEqualTo(train.secondsPerBeat());
        }
    }

    @Test
    void turns_between_two_arbors_are_reciprocal_both_ways() {
        Random random = new Random(8);
        for (int i = 0; i < SAMPLES / 10; i++) {
            GoingTrain train = random(random).going();
            int from = random.nextInt(train.escapeArbor() + 1);
            int to = random.nextInt(train.escapeArbor() + 1);
            assertThat(train.turns(from, to).multiply(train.turns(to, from))).isEqualTo(BigFraction.ONE);
        }
    }

    @Test
    void a_train_reads_in_one_line_with_its_centre_marked() {
        Train train = new Train(
                List.of(Mesh.of(96, 8, ToothModule.ofMillimetres("1.5")), Mesh.of(64, 8, ONE), Mesh.of(60, 8, ONE)),
                1,
                DRUM,
                Reeving.SINGLE,
                30);

        assertThat(train).hasToString("96/8 m1.5 | 64/8 m1 · 60/8 m1 · E30");
    }

    @ParameterizedTest
    @CsvSource({"-1, 30, meshesAbove", "2, 30, meshesAbove", "3, 30, meshesAbove", "1, 1, escapeTeeth"})
    void parts_that_do_not_fit_together_are_refused(int above, int escapeTeeth, String subject) {
        List<Mesh> meshes = List.of(Mesh.of(96, 8, ONE), Mesh.of(64, 8, ONE));

        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Train(meshes, above, DRUM, Reeving.SINGLE, escapeTeeth))
                .withMessageContaining(subject);
    }

    @Test
    void a_time_base_names_an_arbor_of_the_train_and_a_time() {
        List<WheelAndPinion> meshes = List.of(new WheelAndPinion(60, 8));

        assertThatIllegalArgumentException().isThrownBy(() -> new GoingTrain(meshes, TimeBase.hourly(2), 60));
        assertThatIllegalArgumentException().isThrownBy(() -> new GoingTrain(List.of(), TimeBase.hourly(0), 60));
        assertThatIllegalArgumentException().isThrownBy(() -> new GoingTrain(meshes, TimeBase.hourly(0), 0));
        assertThatIllegalArgumentException().isThrownBy(() -> TimeBase.hourly(-1));
        assertThatIllegalArgumentException().isThrownBy(() -> new TimeBase(0, BigFraction.ZERO));
    }

    private static Train random(Random random) {
        int above = random.nextInt(5);
        int count = above + 1 + random.nextInt(4);
        List<Mesh> meshes = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            meshes.add(Mesh.of(6 + random.nextInt(295), 5 + random.nextInt(56), ONE));
        }
        return new Train(meshes, above, DRUM, Reeving.SINGLE, 4 + random.nextInt(237));
    }

    private static double rounded(BigFraction fraction) {
        return new BigDecimal(fraction.getNumerator())
                .divide(new BigDecimal(fraction.getDenominator()), new MathContext(40))
                .doubleValue();
    }
}
