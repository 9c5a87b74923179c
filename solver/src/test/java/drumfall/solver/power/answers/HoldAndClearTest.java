// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.power.answers;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import drumfall.solver.power.answers.BobClearance.Bob;
import drumfall.solver.power.answers.BobClearance.Weight;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Click and ratchet, and the weight beside the bob. Tolerances are rounding unless said otherwise. */
class HoldAndClearTest {
    private static final int SAMPLES = "full".equals(System.getProperty("drumfall.samples")) ? 2_000 : 100;

    // By hand: 30 N at 21 mm against a tooth at 14 mm: 45 N. Root: 6 · 45 · 3 mm / (5 mm · 16 mm²) = 10.125 MPa.
    // Pin of 3 mm: 180 / (π · 9e-6) = 6.3662 MPa.
    @Test
    void a_ratchet_tooth_and_its_click_bear_the_whole_pull() {
        RatchetHold hold = new RatchetHold(30, 0.021, 0.014, 0.003, 0.004, 0.005, 0.003);

        assertThat(hold.force()).isCloseTo(45, within(1e-12));
        assertThat(hold.toothBending()).isCloseTo(10.125e6, within(1e-6));
        assertThat(hold.pinShear()).isCloseTo(6.3662e6, withinPercentage(0.001));
    }

    // Shigley, Mechanical Engineering Design, ch. 14 (from memory): with Y = t² / (6 h m) the beam is the Lewis
    // equation
    // σ = F / (b m Y), whatever the module.
    @ParameterizedTest
    @CsvSource({"0.001", "0.002", "0.0125"})
    void the_beam_is_the_lewis_equation(double module) {
        RatchetHold hold = new RatchetHold(30, 0.021, 0.014, 0.003, 0.004, 0.005, 0.003);
        double form = 0.004 * 0.004 / (6 * 0.003 * module);

        assertThat(hold.toothBending()).isCloseTo(45 / (0.005 * module * form), within(1e-6));
    }

    @Test
    void the_least_root_bears_just_the_stress_allowed() {
        RatchetHold thin = new RatchetHold(30, 0.021, 0.014, 0.003, 0.001, 0.005, 0.003);
        double least = thin.leastRootThickness(8e6);
        RatchetHold enough = new RatchetHold(30, 0.021, 0.014, 0.003, least, 0.005, 0.003);

        assertThat(thin.toothBending()).isGreaterThan(8e6);
        assertThat(enough.toothBending()).isCloseTo(8e6, within(1e-6));
    }

    @Test
    void a_ratchet_of_no_size_is_refused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new RatchetHold(30, 0.021, 0.014, 0.003, 0, 0.005, 0.003))
                .withMessage("The rootThickness (0.0 m) of a ratchet tooth must be more than 0.0 m. Maybe 1.0E-6 m.");
    }

    @Test
    void no_root_bears_a_stress_of_nothing() {
        RatchetHold hold = new RatchetHold(30, 0.021, 0.014, 0.003, 0.004, 0.005, 0.003);

        assertThatIllegalArgumentException()
                .isThrownBy(() -> hold.leastRootThickness(0))
                .withMessageStartingWith("The allowable (0.0 Pa) of the ratchet must be more than 0.0 Pa.");
    }

    // By hand: bob of 40 mm radius, 20 mm thick, 250 mm down, swinging 3°: it reaches 250 sin 3° + 40 = 53.084 mm
    // aside.
    // A weight of 25 mm radius 90 mm aside is 65 - 53.084 = 11.916 mm off; 40 mm before the plane 40 - 25 - 10 = 5 mm.
    // One 60 mm high that ends its fall of 100 mm from 20 mm down stands at 180 mm; the bob's top is highest at the
    // ends
    // of its swing, 250 cos 3° - 40 = 209.657 mm: 29.657 mm over it.
    @ParameterizedTest
    @CsvSource({"0.09, 0, 1, 0.011916", "-0.09, 0, 1, 0.011916", "0.02, -0.04, 1, 0.005", "0, 0, 0.1, 0.029657"})
    void a_weight_clears_the_bob_aside_across_or_above(double aside, double before, double fall, double gap) {
        assertThat(clearance(aside, before, fall).gap()).isCloseTo(gap, within(1e-6));
        assertThat(clearance(aside, before, fall).furtherAside(0.004)).isZero();
    }

    @Test
    void a_weight_that_may_meet_the_bob_is_told_how_much_further_to_hang() {
        BobClearance meets = clearance(0.06, 0, 1);
        double further = meets.furtherAside(0.005);

        assertThat(meets.gap()).isNegative();
        assertThat(clearance(0.06 + further, 0, 1).gap()).isCloseTo(0.005, within(1e-12));
    }

    // Points of both bodies wherever they may be, found apart from the boxes: none nearer than the gap says.
    @Test
    void bodies_never_come_nearer_than_the_gap() {
        Random random = new Random(41);
        int clear = 0;
        for (int i = 0; i < SAMPLES; i++) {
            BobClearance clearance = new BobClearance(
                    new Bob(0.2 + 0.2 * random.nextDouble(), 0.03, 0.02),
                    0.1 * random.nextDouble(),
                    new Weight(
                            0.2 * random.nextDouble(),
                            0.1 * random.nextDouble(),
                            0.02,
                            0.06,
                            0.1,
                            random.nextDouble()));
            if (clearance.gap() > 0) {
                clear++;
                for (int j = 0; j < 200; j++) {
                    assertThat(distance(clearance, random)).isGreaterThanOrEqualTo(clearance.gap() - 1e-12);
                }
            }
        }
        assertThat(clear).isGreaterThan(SAMPLES / 4);
    }

    /** Distance of a random place of the bob, as a disc, from a random place of the weight, as a cylinder. */
    private static double distance(BobClearance of, Random random) {
        double swing = of.semiArc() * (2 * random.nextDouble() - 1);
        double turn = 2 * Math.PI * random.nextDouble();
        double x = of.bob().distance() * Math.sin(swing) + of.bob().radius() * Math.cos(turn);
        double down = of.bob().distance() * Math.cos(swing) + of.bob().radius() * Math.sin(turn);
        double z = of.bob().thickness() * (random.nextDouble() - 0.5);
        double round = 2 * Math.PI * random.nextDouble();
        Weight weight = of.weight();
        double weightDown =
                weight.highestTop() + weight.fall() * random.nextDouble() + weight.height() * random.nextDouble();
        return Math.sqrt(Math.pow(x - weight.aside() - weight.radius() * Math.cos(round), 2)
                + Math.pow(z - weight.before() - weight.radius() * Math.sin(round), 2)
                + Math.pow(down - weightDown, 2));
    }

    private static BobClearance clearance(double aside, double before, double fall) {
        return new BobClearance(
                new Bob(0.25, 0.04, 0.02), Math.toRadians(3), new Weight(aside, before, 0.025, 0.06, 0.02, fall));
    }
}
