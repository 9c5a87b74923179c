// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.power.escape;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.Random;
import org.junit.jupiter.api.Test;

class DeadbeatBalanceTest {
    private static final int SAMPLES = "full".equals(System.getProperty("drumfall.samples")) ? 5000 : 300;

    // One identity, relative 1e-9: what the wheel turns through against its torque is all accounted for.
    @Test
    void the_books_of_a_beat_balance() {
        Random random = new Random(31);
        for (int i = 0; i < SAMPLES; i++) {
            DeadbeatBalance balance = random(random);
            BeatBooks books = balance.books(arc(balance, random));

            assertThat(books.spent()).isCloseTo(books.wheel(), withinPercentage(1e-7));
            assertThat(books.efficiency()).isStrictlyBetween(0.0, 1.0);
        }
    }

    // There and back; near saturation the torque grows without end, so the arc is the better figure to compare: 1e-9.
    @Test
    void the_torque_of_an_arc_keeps_that_arc() {
        Random random = new Random(32);
        for (int i = 0; i < SAMPLES; i++) {
            DeadbeatBalance balance = random(random);
            double arc = arc(balance, random);

            assertThat(balance.arcFor(balance.torqueFor(arc))).hasValueCloseTo(arc, within(1e-9));
        }
    }

    @Test
    void more_torque_swings_wider_but_never_to_saturation() {
        Random random = new Random(33);
        for (int i = 0; i < SAMPLES; i++) {
            DeadbeatBalance balance = random(random);
            double torque = balance.torqueFor(arc(balance, random));
            double arc = balance.arcFor(torque).orElseThrow();

            assertThat(balance.arcFor(torque * 1.1).orElseThrow()).isGreaterThan(arc);
            assertThat(balance.arcFor(torque * 1e9).orElseThrow()).isLessThanOrEqualTo(balance.greatestArc());
        }
    }

    @Test
    void a_torque_too_small_lets_the_clock_stand() {
        DeadbeatBalance balance = random(new Random(34));
        double least = balance.leastTorque(0);

        assertThat(balance.arcFor(least * 0.99)).isEmpty();
        assertThat(balance.arcFor(least * 1.01)).isPresent();
        assertThat(balance.arcFor(0)).isEmpty();
    }

    // The need worked out for the walk to the weight is the same balance.
    @Test
    void the_held_arc_needs_the_same_torque() {
        Random random = new Random(35);
        DeadbeatBalance balance = random(random);
        var pendulum = new drumfall.solver.power.pendulum.Pendulum(0.3, 0.05, balance.quality(), 9.81);
        EscapeNeed need = new HeldArc(balance.escapement(), pendulum, 0.01).need(0.5);
        DeadbeatBalance same = new DeadbeatBalance(
                balance.escapement(), pendulum.massMoment(need.equivalentLength()) * 9.81, balance.quality());

        assertThat(same.leastTorque(0.01)).isCloseTo(need.torque(), withinPercentage(1e-10));
        assertThat(same.arcFor(need.torque())).hasValueCloseTo(need.semiArc(), within(1e-9));
    }

    @Test
    void an_arc_that_the_pallets_do_not_allow_is_refused() {
        DeadbeatBalance balance = random(new Random(36));

        assertThatIllegalArgumentException()
                .isThrownBy(() -> balance.torqueFor(balance.leastArc() * 0.999))
                .withMessageContaining("where a tooth escapes");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> balance.torqueFor(balance.greatestArc()))
                .withMessageContaining("which no weight exceeds");
    }

    @Test
    void a_balance_of_nothing_is_refused() {
        Deadbeat escapement = random(new Random(37)).escapement();
        Deadbeat none = new DeadbeatForm(0.03, 1.6, 0.07, 0.02, 0.2, 0.2, 0, 0).with(30);

        assertThatIllegalArgumentException().isThrownBy(() -> new DeadbeatBalance(none, 0.1, 400));
        assertThatIllegalArgumentException().isThrownBy(() -> new DeadbeatBalance(escapement, 0, 400));
        assertThatIllegalArgumentException().isThrownBy(() -> new DeadbeatBalance(escapement, 0.1, 0.9));
    }

    private static double arc(DeadbeatBalance balance, Random random) {
        double share = 0.9 * random.nextDouble();
        return balance.leastArc() + share * (balance.greatestArc() - balance.leastArc());
    }

    private static DeadbeatBalance random(Random random) {
        while (true) {
            Deadbeat escapement = new DeadbeatForm(
                            0.01 + random.nextDouble() * 0.04,
                            1 + random.nextDouble(),
                            Math.toRadians(1 + random.nextDouble() * 5),
                            Math.toRadians(random.nextDouble() * 2),
                            Math.toRadians(random.nextDouble() * 3),
                            0.05 + random.nextDouble() * 0.3,
                            random.nextDouble() * 1e-5,
                            random.nextDouble() * 0.2)
                    .with(12 + random.nextInt(25));
            if (escapement.exists()) {
                DeadbeatBalance balance =
                        new DeadbeatBalance(escapement, 0.1 + random.nextDouble(), 150 + 2000 * random.nextDouble());
                if (balance.canRun()) {
                    return balance;
                }
            }
        }
    }
}
