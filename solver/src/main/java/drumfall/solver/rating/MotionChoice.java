// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.rating;

import drumfall.solver.brief.Brief;
import drumfall.solver.ratio.CountRange;
import drumfall.solver.teeth.MeshLoss;
import drumfall.solver.teeth.MeshTeeth;
import drumfall.solver.teeth.form.BasicRack;
import drumfall.solver.teeth.form.InvoluteGear;
import drumfall.solver.teeth.form.InvolutePair;
import drumfall.solver.teeth.form.MeshPair;
import drumfall.solver.train.Mesh;
import drumfall.solver.train.MotionWork;
import drumfall.solver.train.MotionWorkSearch;
import drumfall.solver.train.SizedMotionWork;
import drumfall.solver.train.ToothModule;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The motion work of a brief: of all that give exactly twelve on one centre distance, with the brief's fewest leaves,
 * its modules, teeth that print and a wall around the centre arbor, the one of the smallest centre distance. The most leaves and the wheels of the brief
 * are choices for the going train: eight leaves alone give no two pairs on one centre distance.
 */
public final class MotionChoice {
    /** Twelve is three times four as a rule, two times six at most: beyond, the larger wheel takes all the room. */
    private static final int LARGEST_STEP = 6;

    /** One centre distance is found well below twice the fewest leaves: 32/8 goes with 30/10. */
    private static final int MOST_OVER_FEWEST = 2;

    /** Raters of one brief by the hundred ask for the same list while demands are waived in turn. */
    private static final Map<MotionWorkSearch, List<SizedMotionWork>> LISTED =
            Collections.synchronizedMap(new LinkedHashMap<>() {
                @Override
                protected boolean removeEldestEntry(Map.Entry<MotionWorkSearch, List<SizedMotionWork>> eldest) {
                    return size() > LISTS_KEPT;
                }
            });

    private static final int LISTS_KEPT = 8;

    private MotionChoice() {}

    /**
     * The motion work of a brief; empty if it asks for none, or none has teeth that print.
     *
     * @param brief the brief
     * @param teeth chooses the teeth
     */
    public static Optional<SizedMotionWork> of(Brief brief, MeshLoss teeth) {
        if (!brief.hands().motionWork()) {
            return Optional.empty();
        }
        int fewest = brief.teeth().leaves().from();
        int most = MOST_OVER_FEWEST * fewest;
        MotionWorkSearch search = new MotionWorkSearch(
                new CountRange(fewest, most),
                new CountRange(fewest, LARGEST_STEP * most),
                new BriefChoices(brief).modules());
        return LISTED.computeIfAbsent(search, MotionWorkSearch::all).stream()
                .filter(work -> prints(work, teeth) && bears(work, brief, teeth))
                .findFirst();
    }

    private static boolean prints(SizedMotionWork work, MeshLoss teeth) {
        return drawn(first(work), teeth).isPresent()
                && drawn(second(work), teeth).isPresent();
    }

    /** The cannon pinion has the brief's wall around the centre arbor, or its pipe would break through the leaves' roots. */
    private static boolean bears(SizedMotionWork work, Brief brief, MeshLoss teeth) {
        double root = pair(first(work), teeth).driver().flank().rootRadius()
                * work.cannonModule().metres();
        double bore = (brief.arbors().centre().diameter().si()
                        + brief.fit().clearance().si())
                / 2;
        return root >= bore + brief.parts().hubWall().si();
    }

    /** The mesh of minute wheel and cannon pinion. */
    public static Mesh first(SizedMotionWork work) {
        MotionWork counts = work.counts();
        return mesh(counts.minuteWheel(), counts.cannonPinion(), work.cannonModule());
    }

    /** The mesh of hour wheel and minute pinion. */
    public static Mesh second(SizedMotionWork work) {
        MotionWork counts = work.counts();
        return mesh(counts.hourWheel(), counts.minutePinion(), work.minuteModule());
    }

    /**
     * The teeth of a mesh of the motion work, at module 1: the pinion drives. They are those that the going train would
     * have, turned round; where these may only be driven, as lantern pinions, involute teeth without undercut.
     *
     * @param mesh the mesh
     * @param teeth chooses the teeth
     * @throws IllegalArgumentException if no teeth print
     */
    public static MeshPair pair(Mesh mesh, MeshLoss teeth) {
        MeshPair pair = drawn(mesh, teeth)
                .map(MeshTeeth::pair)
                .orElseThrow(() -> new IllegalArgumentException("The teeth (none) of mesh " + mesh
                        + " of the motion work must be ones that print. Maybe take a larger module."));
        if (pair.follower().mayDrive()) {
            return new MeshPair(/* driver= */ pair.follower(), /* follower= */ pair.driver(), pair.centreDistance());
        }
        double shift = Math.max(0, InvoluteGear.leastShift(BasicRack.ISO_53_A, mesh.leafCount()));
        return InvolutePair.of(BasicRack.ISO_53_A, mesh.leafCount(), mesh.toothCount(), shift, -shift)
                .mesh();
    }

    private static Optional<MeshTeeth> drawn(Mesh mesh, MeshLoss teeth) {
        return teeth.teeth(mesh.toothCount(), mesh.leafCount(), mesh.module());
    }

    private static Mesh mesh(int wheel, int pinion, ToothModule module) {
        return Mesh.of(wheel, pinion, module);
    }
}
