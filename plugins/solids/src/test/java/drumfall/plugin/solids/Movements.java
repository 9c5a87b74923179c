// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.plugin.solids;

import drumfall.plugin.api.Handover;
import drumfall.plugin.api.trial.TrialHandover;
import drumfall.solver.layout.size.Face;
import drumfall.solver.making.FramePlaces;
import drumfall.solver.making.Levels;
import drumfall.solver.making.MakingSizes;
import drumfall.solver.making.MotionTeeth;
import drumfall.solver.making.MovementPart;
import drumfall.solver.making.MovementParts;
import drumfall.solver.rating.TrainRater;
import drumfall.solver.teeth.form.BasicRack;
import drumfall.solver.teeth.form.InvolutePair;
import drumfall.solver.train.MotionWork;
import drumfall.solver.train.ToothModule;
import java.util.List;

/** All parts of the trial clock, motion work, plates and spacers included. */
final class Movements {
    private Movements() {}

    static List<MovementPart> eightDays() {
        Handover handover = TrialHandover.eightDays();
        return MovementParts.of(
                        handover.brief(),
                        handover.rating(),
                        new TrainRater(handover.brief()).movement(),
                        MakingSizes.customary())
                .with(motion())
                .with(places())
                .parts();
    }

    private static MotionTeeth motion() {
        InvolutePair first = InvolutePair.of(BasicRack.ISO_53_A, 12, 36, 0.5, -0.5);
        InvolutePair second = InvolutePair.of(BasicRack.ISO_53_A, 12, 48, 0.5, -0.5);
        return new MotionTeeth(
                new MotionWork(12, 36, 12, 48),
                first.mesh(),
                ToothModule.ofMillimetres("1.25"),
                second.mesh(),
                ToothModule.ofMillimetres("1"));
    }

    private static Levels levels() {
        double leaves = TrialHandover.eightDays().brief().parts().pinionLength().si();
        Levels.Stand drum = new Levels.Stand(1e-3, 56e-3, 6e-3, Face.FRONT);
        Levels.Stand other = new Levels.Stand(1e-3, leaves + 5e-3, leaves, Face.FRONT);
        return new Levels(List.of(drum, other, other, other), 1e-3, List.of(0.082, 0.089), 0.1);
    }

    private static FramePlaces places() {
        FramePlaces.Support seat = new FramePlaces.Support(8e-3, 13e-3, 4e-3);
        return new FramePlaces(
                0.2,
                0.32,
                TrialHandover.eightDays().brief().frame().depth().si(),
                levels(),
                List.of(
                        new FramePlaces.Arbor("arbor 1", 0, -0.1, seat, seat),
                        new FramePlaces.Arbor("arbor 2", 0, -0.022, seat, seat),
                        new FramePlaces.Arbor("arbor 3", 0, 0.04, seat, seat)),
                List.of(
                        new FramePlaces.Pillar(-0.09, -0.14),
                        new FramePlaces.Pillar(0.09, -0.14),
                        new FramePlaces.Pillar(-0.09, 0.14),
                        new FramePlaces.Pillar(0.09, 0.14)),
                List.of(new FramePlaces.Ring(1, 4e-3, List.of(0.0, 0.06))));
    }
}
