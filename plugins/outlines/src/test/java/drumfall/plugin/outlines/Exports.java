// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.plugin.outlines;

import drumfall.plugin.api.ExportProgress;
import drumfall.plugin.api.Handover;
import drumfall.plugin.api.trial.TrialFolder;
import drumfall.solver.brief.BundledBriefs;
import drumfall.solver.rating.TrainRater;
import drumfall.solver.rating.placing.TrainPlacing;
import drumfall.solver.train.Mesh;
import drumfall.solver.train.Reeving;
import drumfall.solver.train.ToothModule;
import drumfall.solver.train.Train;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;

/** The demo brief's outlines in memory, for 85/10 m1.5 | 83/12 m1 · 66/12 m1 · 55/12 m1 · E21 on a drum of 36 mm. */
final class Exports {
    static final Handover PLACED = handover();
    static final TrialFolder FILES = files(PLACED);

    private Exports() {}

    private static Handover handover() {
        TrainRater rater = new TrainRater(BundledBriefs.demo());
        ToothModule one = ToothModule.ofMillimetres("1");
        Train train = new Train(
                List.of(
                        Mesh.of(85, 10, ToothModule.ofMillimetres("1.5")),
                        Mesh.of(83, 12, one),
                        Mesh.of(66, 12, one),
                        Mesh.of(55, 12, one)),
                1,
                BigFraction.of(36, 1000),
                Reeving.DOUBLE,
                21);
        return new Handover(
                rater.brief(),
                rater.rate(train),
                new TrainPlacing(rater).place(train, () -> false).found(),
                "0.0.0-trial");
    }

    static TrialFolder files(Handover handover) {
        TrialFolder folder = new TrialFolder();
        try {
            new OutlinesExporter().export(handover, folder, ExportProgress.unwatched());
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
        return folder;
    }
}
