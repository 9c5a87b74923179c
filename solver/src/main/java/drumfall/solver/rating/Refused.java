// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.rating;

import drumfall.solver.train.Mesh;
import drumfall.solver.train.Reeving;
import drumfall.solver.train.Train;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Trains that the lists of halves take for good and that are not, found one by one: their arbors have no place, or their
 * weight runs the clocks of too few builders. Both can be asked of whole trains only. The argument holds for any such
 * question; "can be built" stands for a train that passes it.
 *
 * <p>Halves of refused trains are <em>distrusted</em>, whatever the teeth of their escape wheels: they may stand in trains,
 * but not in place of other halves. Let {@code t = (a, b)} be a train that can be built, and let {@code a} be left out of
 * a list because the half {@code a'} replaces it. Then {@code a'} is trusted, so {@code (a', b)} is not refused, and it is
 * nowhere worse than {@code t}. The same holds for {@code b}. Steps of this kind cannot go on for ever, since each leads to
 * a better cell or an earlier train, so they end at a train of listed halves that was not refused when the halves were
 * listed, or at one with a half that was left out because no train with it could change the front; the front, whose trains
 * can be built, is then as good as that train. Either a train of the front, which can be built, is as good as that one; or it can itself be built, and is in the
 * front; or it cannot, and is refused now. If nothing is refused in a whole round, the last case is out, and the front is
 * that of all trains that can be built.
 *
 * <p>Unmodifiable.
 */
public final class Refused {
    /** No train. */
    public static final Refused NONE = new Refused(Set.of(), Set.of(), Set.of());

    private final Set<Build> builds;
    private final Set<Above> above;
    private final Set<List<Mesh>> below;

    private record Build(Above above, List<Mesh> below, int escapeTeeth) {}

    private record Above(List<Mesh> meshes, BigFraction drumDiameter, Reeving reeving) {}

    private Refused(Set<Build> builds, Set<Above> above, Set<List<Mesh>> below) {
        this.builds = builds;
        this.above = above;
        this.below = below;
    }

    /**
     * These trains and some more.
     *
     * @param trains that cannot be built
     */
    public Refused and(List<Train> trains) {
        Set<Build> moreBuilds = new HashSet<>(builds);
        Set<Above> moreAbove = new HashSet<>(above);
        Set<List<Mesh>> moreBelow = new HashSet<>(below);
        for (Train train : trains) {
            Build build = build(train);
            moreBuilds.add(build);
            moreAbove.add(build.above);
            moreBelow.add(build.below);
        }
        return new Refused(moreBuilds, moreAbove, moreBelow);
    }

    private static Build build(Train train) {
        List<Mesh> meshes = train.meshes();
        int centre = train.meshesAbove();
        return new Build(
                new Above(List.copyOf(meshes.subList(0, centre)), train.drumDiameter(), train.reeving()),
                List.copyOf(meshes.subList(centre, meshes.size())),
                train.escapeTeeth());
    }

    /** Whether there is none. */
    public boolean isEmpty() {
        return builds.isEmpty();
    }

    /**
     * Whether a train is refused.
     *
     * @param train the train
     */
    public boolean holds(Train train) {
        return !builds.isEmpty() && builds.contains(build(train));
    }

    /**
     * Whether an upper half is part of a refused train.
     *
     * @param meshes from the drum to the centre
     * @param drumDiameter diameter of the bare drum, m
     * @param reeving how the line carries the weight
     */
    public boolean distrusts(List<Mesh> meshes, BigFraction drumDiameter, Reeving reeving) {
        return !above.isEmpty() && above.contains(new Above(meshes, drumDiameter, reeving));
    }

    /**
     * Whether a lower half is part of a refused train.
     *
     * @param meshes from the centre to the escape wheel
     */
    public boolean distrusts(List<Mesh> meshes) {
        return !below.isEmpty() && below.contains(meshes);
    }
}
