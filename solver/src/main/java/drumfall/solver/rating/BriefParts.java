// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.rating;

import drumfall.solver.brief.BobShell;
import drumfall.solver.brief.Brief;
import drumfall.solver.brief.Ratchet;
import drumfall.solver.parts.BobSize;
import drumfall.solver.parts.Crossing;
import drumfall.solver.parts.RatchetSize;
import drumfall.solver.quantity.Quantity;
import java.util.stream.Stream;

/** Sizes of parts that a brief may give and that are made in a customary size if it does not. */
public final class BriefParts {
    private BriefParts() {}

    /**
     * The ratchet and its click.
     *
     * @param brief the brief
     */
    public static RatchetSize ratchet(Brief brief) {
        return brief.drum().ratchet().map(BriefParts::size).orElseGet(() -> customary(brief));
    }

    /** Thinner than customary where the room beside the great wheel, less a layer of play, is less. */
    private static RatchetSize customary(Brief brief) {
        RatchetSize size = RatchetSize.CUSTOMARY;
        double room = brief.drum().clickSpace().si() - brief.printer().layer().si();
        return new RatchetSize(size.teeth(), size.toothDepth(), Math.min(size.thickness(), room), size.pin());
    }

    private static RatchetSize size(Ratchet ratchet) {
        return new RatchetSize(
                ratchet.teeth(), ratchet.toothDepth().si(), ratchet.thickness().si(), RatchetSize.CUSTOMARY.pin());
    }

    /**
     * How wheels are crossed out: hubs take the thickest of the rods, and the widest of the bearings that sit in what turns on
     * a rod that stands still. Which end of an arbor is its wheel's is known only where the arbors have places, so a bearing at
     * either end counts.
     *
     * @param brief the brief
     */
    public static Crossing crossing(Brief brief) {
        double thickest = Stream.of(
                        brief.arbors().drum(),
                        brief.arbors().centre(),
                        brief.arbors().intermediate(),
                        brief.arbors().escape())
                .map(BriefParts::inHub)
                .mapToDouble(Quantity::si)
                .max()
                .orElseThrow();
        return Crossing.of(
                new AxialSizes(brief).wall(), thickest, brief.parts().hubWall().si());
    }

    /** Whether rolling bearings sit in the hub, and are of a size that the brief gives. */
    public static boolean seatsInHub(Brief.ArborBuild build) {
        return build.kind() == Brief.ArborKind.FIXED
                && build.bearings().count() > 0
                && build.bearing().isPresent();
    }

    /**
     * Diameter of what a hub goes around: a rod, or the bearings that sit in the hub.
     *
     * @param build how the arbor is built
     */
    public static Quantity inHub(Brief.ArborBuild build) {
        return seatsInHub(build) ? build.bearing().orElseThrow().outer() : build.diameter();
    }

    /**
     * What is taken off each tooth along the pitch circle as parts are drawn and weighed: the middle of the brief's band, m.
     *
     * @param brief the brief
     */
    public static double thinning(Brief brief) {
        return (brief.teeth().thinning().low().si()
                        + brief.teeth().thinning().high().si())
                / 2;
    }

    /**
     * The bob's shell; room for any that may be made if the brief does not say.
     *
     * @param brief the brief
     */
    public static BobSize bob(Brief brief) {
        return brief.pendulum()
                .bob()
                .map(BriefParts::size)
                .orElseGet(() -> BobSize.roomFor(brief.pendulum().bobMass().si()));
    }

    private static BobSize size(BobShell shell) {
        return new BobSize(shell.diameter().si(), shell.thickness().si());
    }
}
