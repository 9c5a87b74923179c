// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.fit.bore;

import drumfall.solver.fit.FitException;
import drumfall.solver.fit.Nanometres;

/**
 * A printed hole that a drill brings to size, with everything its sizes follow from.
 *
 * @param name its place, such as {@code third arbor, front plate}
 * @param fitted diameter of the arbor or bearing that goes in, nm, positive
 * @param clearance least clearance on the diameter, nm; negative for a press fit
 * @param drill the finishing drill, not below fitted plus clearance
 * @param skim what the drill cuts off the diameter, nm
 * @param shrinkage how much smaller than drawn the printer makes it, nm
 */
public record FinishedHole(String name, long fitted, long clearance, Drill drill, long skim, long shrinkage) {
    private static final long TIGHTEST = -Nanometres.MILLIMETRE / 2;

    /**
     * Checks that the sizes belong together.
     *
     * @throws FitException if a size is out of range or the drill too small
     */
    public FinishedHole {
        String owner = "hole (" + name + ")";
        FitException.requireName("a hole", name);
        FitException.requireLength("fitted diameter", owner, fitted, 1, 100 * Nanometres.MILLIMETRE);
        FitException.requireLength("clearance", owner, clearance, TIGHTEST, Nanometres.MILLIMETRE);
        FitException.requireLength("skim", owner, skim, Finish.LEAST_SKIM, Finish.MOST_SKIM);
        FitException.requireLength("drill", owner, drill.diameter(), fitted + clearance, 100 * Nanometres.MILLIMETRE);
        FitException.requireLength(
                "drawn diameter", owner, drill.diameter() - skim + shrinkage, 1, 100 * Nanometres.MILLIMETRE);
    }

    /**
     * A bore for an arbor to run in.
     *
     * @param name its place
     * @param arbor diameter of the arbor, nm
     * @param runningClearance nm, 0 to 1 mm; about 0.1 mm on a thin steel arbor (common practice, no source)
     * @param finish drills, skim and shrinkage
     * @throws FitException if a size is out of range or no drill is large enough
     */
    public static FinishedHole bore(String name, long arbor, long runningClearance, Finish finish) {
        FitException.requireLength(
                "runningClearance", "bore (" + name + ")", runningClearance, 0, Nanometres.MILLIMETRE);
        return finished(name, arbor, runningClearance, finish);
    }

    /**
     * A seat for a bearing's outer ring.
     *
     * @param name its place
     * @param bearing the bearing
     * @param clearance on the diameter, nm, −0.5 to 1 mm, negative for a press fit
     * @param finish drills, skim and shrinkage
     * @throws FitException if a size is out of range or no drill is large enough
     */
    public static FinishedHole seat(String name, Bearing bearing, long clearance, Finish finish) {
        return finished(name, bearing.outer(), clearance, finish);
    }

    private static FinishedHole finished(String name, long fitted, long clearance, Finish finish) {
        long asked = fitted + clearance;
        Drill drill = finish.rack().nearestAtLeast(asked).orElseThrow(() -> tooLarge(name, asked, finish.rack()));
        return new FinishedHole(name, fitted, clearance, drill, finish.skim(), finish.shrinkage());
    }

    private static FitException tooLarge(String name, long asked, DrillRack rack) {
        String rule =
                "be at most the largest drill of the rack, " + rack.largest().label();
        String maybe = "add a drill of " + Nanometres.text(asked);
        return FitException.refused("bored diameter", Nanometres.text(asked), "hole (" + name + ")", rule, maybe);
    }

    /** Diameter to draw, nm: {@code drill − skim + shrinkage}. */
    public long drawn() {
        return drill.diameter() - skim + shrinkage;
    }

    /** Diameter expected from the printer, nm: {@code drill − skim}. */
    public long printed() {
        return drill.diameter() - skim;
    }

    /** Play on the diameter after drilling, nm; negative if pressed in. */
    public long play() {
        return drill.diameter() - fitted;
    }

    /** How much more play the drill leaves than was asked for, nm, not negative. */
    public long excess() {
        return play() - clearance;
    }
}
