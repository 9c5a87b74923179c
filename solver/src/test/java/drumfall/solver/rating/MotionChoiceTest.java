// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.rating;

import static org.assertj.core.api.Assertions.assertThat;

import drumfall.solver.brief.Brief;
import drumfall.solver.brief.BundledBriefs;
import drumfall.solver.samples.Briefs;
import drumfall.solver.train.SizedMotionWork;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The motion work that a brief gets. */
class MotionChoiceTest {
    private static SizedMotionWork work(Brief brief) {
        return MotionChoice.of(brief, new TrainRater(brief).movement().teeth()).orElseThrow();
    }

    @ParameterizedTest
    @ValueSource(strings = {"weekly-wall-clock", "month-runner", "desk-clock"})
    void every_bundled_brief_has_one_of_twelve_with_a_wall_around_the_centre_arbor(String name) {
        Brief brief = BundledBriefs.load(name).orElseThrow();
        SizedMotionWork work = work(brief);
        double root = MotionChoice.pair(
                                MotionChoice.first(work),
                                new TrainRater(brief).movement().teeth())
                        .driver()
                        .flank()
                        .rootRadius()
                * work.cannonModule().metres();

        assertThat(work.counts().twelve()).isTrue();
        assertThat(2 * root)
                .isGreaterThanOrEqualTo(brief.arbors().centre().diameter().si()
                        + 2 * brief.parts().hubWall().si());
    }

    // 32/8 goes with 30/10: eight leaves alone give no two pairs on one centre distance.
    @Test
    void the_most_leaves_of_the_going_train_do_not_bind_it() {
        assertThat(work(Briefs.demoWith("/teeth/leaves = {\"from\": 8, \"to\": 8} & /teeth/modules = [\"1 mm\"]"))
                        .counts()
                        .twelve())
                .isTrue();
    }

    @Test
    void a_thicker_centre_arbor_gets_a_larger_cannon_pinion() {
        assertThat(pitch(work(Briefs.demoWith("/arbors/centre/diameter = \"5 mm\""))))
                .isGreaterThan(pitch(work(Briefs.demoWith(""))));
    }

    private static double pitch(SizedMotionWork work) {
        return work.counts().cannonPinion() * work.cannonModule().metres();
    }
}
