// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.plugin.api.trial;

import drumfall.plugin.api.Handover;
import drumfall.plugin.api.Stability;
import drumfall.plugin.api.Stability.Level;
import drumfall.solver.brief.Brief;
import drumfall.solver.rating.TrainRater;
import drumfall.solver.rating.placing.TrainPlacing;
import drumfall.solver.train.Mesh;
import drumfall.solver.train.Reeving;
import drumfall.solver.train.ToothModule;
import drumfall.solver.train.Train;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Handovers to try an exporter on.
 *
 * @since 1.0
 */
@Stability(level = Level.EXPERIMENTAL, since = "1.0")
public final class TrialHandover {
    private TrialHandover() {}

    /**
     * An eight-day clock with a seconds pendulum: {@code 96/8 m1.5 | 64/8 m1 · 60/8 m1 · E30}, the weight on a pulley.
     *
     * <p>The counts below the centre are the ones every handbook gives for the seconds pendulum.
     */
    public static Handover eightDays() {
        return of(new Train(
                List.of(
                        Mesh.of(96, 8, ToothModule.ofMillimetres("1.5")),
                        Mesh.of(64, 8, ToothModule.ofMillimetres("1")),
                        Mesh.of(60, 8, ToothModule.ofMillimetres("1"))),
                1,
                BigFraction.of(52, 1000),
                Reeving.DOUBLE,
                30));
    }

    /**
     * Another train held against the same brief, and placed if it can be.
     *
     * @param train any train
     */
    public static Handover of(Train train) {
        Brief brief = TrialBrief.eightDays();
        TrainRater rater = new TrainRater(brief);
        return new Handover(
                brief,
                rater.rate(train),
                new TrainPlacing(rater).place(train, () -> false).found(),
                "0.0.0-trial");
    }
}
