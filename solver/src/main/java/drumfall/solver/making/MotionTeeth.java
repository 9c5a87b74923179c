// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.making;

import drumfall.solver.power.Movement;
import drumfall.solver.rating.MotionChoice;
import drumfall.solver.teeth.form.MeshPair;
import drumfall.solver.train.MotionWork;
import drumfall.solver.train.SizedMotionWork;
import drumfall.solver.train.ToothModule;
import java.util.Locale;

/**
 * A motion work with its teeth.
 *
 * @param counts the counts
 * @param first cannon pinion driving the minute wheel, at module 1
 * @param firstModule module of that mesh
 * @param second minute pinion driving the hour wheel, at module 1
 * @param secondModule module of that mesh
 */
public record MotionTeeth(
        MotionWork counts, MeshPair first, ToothModule firstModule, MeshPair second, ToothModule secondModule) {
    /** Centre distances that differ by less than this, m, are one; a micrometre is beyond any printer. */
    private static final double SAME = 1e-6;

    /**
     * Checks the teeth against the counts and the two centre distances against each other.
     *
     * @throws IllegalArgumentException if they differ
     */
    public MotionTeeth {
        check("cannonPinion", counts.cannonPinion(), first.driver().toothCount());
        check("minuteWheel", counts.minuteWheel(), first.follower().toothCount());
        check("minutePinion", counts.minutePinion(), second.driver().toothCount());
        check("hourWheel", counts.hourWheel(), second.follower().toothCount());
        double one = first.centreDistance() * firstModule.metres();
        double other = second.centreDistance() * secondModule.metres();
        if (!(Math.abs(one - other) < SAME)) {
            throw new IllegalArgumentException(String.format(
                    Locale.ROOT,
                    "The centre distance (%.3f mm) of minute pinion and hour wheel must be that of cannon pinion and"
                            + " minute wheel, %.3f mm. Maybe choose other modules or shifts.",
                    1e3 * other,
                    1e3 * one));
        }
    }

    /**
     * A chosen motion work with its teeth.
     *
     * @param work its counts and modules
     * @param movement chooses the teeth
     * @throws IllegalArgumentException if one of its meshes has no teeth that print
     */
    public static MotionTeeth of(SizedMotionWork work, Movement movement) {
        return new MotionTeeth(
                work.counts(),
                MotionChoice.pair(MotionChoice.first(work), movement.teeth()),
                work.cannonModule(),
                MotionChoice.pair(MotionChoice.second(work), movement.teeth()),
                work.minuteModule());
    }

    private static void check(String name, int count, int drawn) {
        if (count != drawn) {
            throw new IllegalArgumentException("The " + name + " (" + drawn
                    + " teeth drawn) of a motion work must have " + count + ". Maybe choose its teeth anew.");
        }
    }
}
