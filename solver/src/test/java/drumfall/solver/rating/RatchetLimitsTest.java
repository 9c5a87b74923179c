// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.rating;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import drumfall.solver.power.answers.RatchetHold;
import drumfall.solver.samples.Briefs;
import drumfall.solver.samples.DemoTrain;
import drumfall.solver.train.Reeving;
import drumfall.solver.train.Train;
import java.util.EnumSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The ratchet of the demonstration brief: rod 4 mm, tube 2.4 mm, nozzle 0.4 mm, so roots at 9 mm and the click at 9.8 mm. */
class RatchetLimitsTest {
    private static final String WEAK =
            "/drum/ratchet = {\"teeth\": 24, \"toothDepth\": \"2.5 mm\", \"thickness\": \"5 mm\"}";

    private static RatchetLimits limits(String edits) {
        return new TrainRater(Briefs.demoWith(edits)).limits().ratchet();
    }

    // 8 MPa on a tooth 18.4 sin 7.5° = 2.4017 mm thick and 5 mm wide, bent at 0.8 mm: 8 · 5 · 5.7681 / 4.8 = 48.067 N
    // at
    // 10 mm; a line on 18.75 mm pulls with 25.636 N, two falls hold 51.272 N: 5.2283 kg.
    @Test
    void the_heaviest_weight_is_the_one_worked_by_hand() {
        assertThat(limits(WEAK).heaviest(0.01875, Reeving.DOUBLE)).isCloseTo(5.2283, within(1e-4));
        assertThat(limits(WEAK).heaviest(0.01875, Reeving.SINGLE)).isCloseTo(2.6141, within(1e-4));
    }

    @ParameterizedTest
    @CsvSource({"SINGLE, 0.0125", "SINGLE, 0.024", "DOUBLE, 0.01875"})
    void the_heaviest_weight_bends_a_tooth_just_as_much_as_may_be(Reeving reeving, double arm) {
        RatchetLimits limits = limits("");
        double heaviest = limits.heaviest(arm, reeving);
        RatchetHold hold = limits.hold(heaviest, arm, reeving).orElseThrow();

        assertThat(hold.toothBending()).isCloseTo(8e6, withinPercentage(1e-10));
        assertThat(hold.force()).isCloseTo(limits.force(heaviest, arm, reeving), withinPercentage(1e-10));
        assertThat(limits.stress(heaviest, arm, reeving)).isEqualTo(8e6);
        assertThat(limits.holds(heaviest, arm, reeving)).isTrue();
        assertThat(limits.holds(Math.nextUp(heaviest), arm, reeving)).isFalse();
    }

    @Test
    void a_click_that_does_not_rest_on_the_teeth_holds_no_weight() {
        // Nozzle 1.3 mm: the nose bears 2.6 mm above the root, beyond tips 2.5 mm high.
        RatchetLimits limits = limits("/printer/nozzle = \"1.3 mm\"");

        assertThat(limits.heaviest(0.01875, Reeving.SINGLE)).isZero();
        assertThat(limits.stress(1, 0.01875, Reeving.SINGLE)).isInfinite();
        assertThat(limits.hold(1, 0.01875, Reeving.SINGLE)).isEmpty();
        assertThat(limits.holds(1, 0.01875, Reeving.SINGLE)).isFalse();
    }

    @Test
    void a_waived_ratchet_holds_whatever_hangs() {
        Train train = DemoTrain.train();
        TrainRater rater = new TrainRater(Briefs.demoWith(WEAK), EnumSet.of(Demand.RATCHET));

        assertThat(rater.limits().carried(train, 6)).isTrue();
        assertThat(new TrainRater(Briefs.demoWith(WEAK)).limits().carried(train, 6))
                .isFalse();
    }

    @Test
    void no_weight_allowed_is_heavier_than_some_drum_and_line_carry() {
        // With teeth this thin the ratchet carries less than the line.
        TrainRater rater =
                new TrainRater(Briefs.demoWith(WEAK.replace("\"5 mm\"", "\"4 mm\"") + " & /weight/limit = \"400 kg\""));
        // The smallest drum with two falls: 24 mm and the line's 1.5 mm give an arm of 12.75 mm.
        double most = rater.limits().ratchet().heaviest(0.01275, Reeving.DOUBLE);

        assertThat(rater.limits().heaviestRecommendedWeight()).isCloseTo(most, withinPercentage(1e-10));
    }
}
