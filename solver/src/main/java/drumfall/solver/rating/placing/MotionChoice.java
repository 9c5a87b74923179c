// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.rating.placing;

import drumfall.solver.brief.Brief;
import drumfall.solver.power.Movement;
import drumfall.solver.rating.BriefChoices;
import drumfall.solver.ratio.CountRange;
import drumfall.solver.train.Mesh;
import drumfall.solver.train.MotionWork;
import drumfall.solver.train.MotionWorkSearch;
import drumfall.solver.train.SizedMotionWork;
import drumfall.solver.train.ToothModule;
import java.util.Optional;

/**
 * The motion work of a brief: of all that give exactly twelve on one centre distance, with the brief's leaves and modules
 * and with teeth that print, the one of the smallest centre distance.
 */
public final class MotionChoice {
    private MotionChoice() {}

    /**
     * The motion work of a brief; empty if it asks for none, or none has teeth that print.
     *
     * @param brief the brief
     * @param movement its movement, which chooses the teeth
     */
    public static Optional<SizedMotionWork> of(Brief brief, Movement movement) {
        if (!brief.hands().motionWork()) {
            return Optional.empty();
        }
        int fewest = brief.teeth().leaves().from();
        return new MotionWorkSearch(
                        new CountRange(fewest, brief.teeth().leaves().to()),
                        new CountRange(fewest, brief.teeth().wheelTeeth().to()),
                        new BriefChoices(brief).modules())
                .all().stream().filter(work -> prints(work, movement)).findFirst();
    }

    private static boolean prints(SizedMotionWork work, Movement movement) {
        return movement.teeth(first(work)).isPresent()
                && movement.teeth(second(work)).isPresent();
    }

    /** Minute wheel and cannon pinion. */
    static Mesh first(SizedMotionWork work) {
        MotionWork counts = work.counts();
        return mesh(counts.minuteWheel(), counts.cannonPinion(), work.cannonModule());
    }

    /** Hour wheel and minute pinion. */
    static Mesh second(SizedMotionWork work) {
        MotionWork counts = work.counts();
        return mesh(counts.hourWheel(), counts.minutePinion(), work.minuteModule());
    }

    private static Mesh mesh(int wheel, int pinion, ToothModule module) {
        return Mesh.of(wheel, pinion, module);
    }
}
