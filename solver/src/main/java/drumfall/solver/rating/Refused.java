// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.rating;

import drumfall.solver.train.Mesh;
import drumfall.solver.train.Reeving;
import drumfall.solver.train.Train;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Trains that the lists of halves take for good and that are not, found one by one: their arbors have no place, or their
 * weight runs the clocks of too few builders. Both can be asked of whole trains only. The argument holds for any such
 * question; "can be built" stands for a train that passes it.
 *
 * <p>A half that is to blame by itself is <em>hopeless</em>: no train with it can be built, so it is left out, and neither
 * stands in place of another half nor speaks against those it was joined to. If both halves are to blame together, both are
 * <em>distrusted</em>, the lower one whatever the teeth of its escape wheel: they may stand in trains, but not in place of
 * other halves. Let {@code t = (a, b)} be a train that can be built, and let {@code a} be left out of a list because the half
 * {@code a'} replaces it. Then {@code a'} is trusted, so {@code (a', b)} is not refused, and it is nowhere worse than
 * {@code t}. The same holds for {@code b}. Steps of this kind cannot go on for ever, since each leads to a better cell or an
 * earlier train, so they end at a train of listed halves that was not refused when the halves were listed, or at one with a
 * half that was left out because no train with it could change the front; the front, whose trains can be built, is then as
 * good as that train. Either a train of the front, which can be built, is as good as that one; or it can itself be built, and
 * is in the front; or it cannot, and is refused now. If nothing is refused in a whole round, the last case is out, and the
 * front is that of all trains that can be built. A replacing half may have become hopeless or distrusted since: all of that
 * is known before a round's lists are made, so it then replaces nothing in them.
 *
 * <p>Unmodifiable.
 */
public final class Refused {
    /** No train. */
    public static final Refused NONE = new Refused(new Sets());

    private final Sets sets;

    private record Build(Above above, List<Mesh> below, int escapeTeeth) {}

    private record Above(List<Mesh> meshes, BigFraction drumDiameter, Reeving reeving) {}

    private record HopelessAbove(Above above, int meshesBelow) {}

    private record HopelessBelow(List<Mesh> below, int escapeTeeth, int meshesAbove) {}

    /** What is known, while it grows. */
    private static final class Sets {
        private final Set<Build> builds = new HashSet<>();
        private final Set<Above> above = new HashSet<>();
        private final Set<List<Mesh>> below = new HashSet<>();
        private final Set<HopelessAbove> hopelessAbove = new HashSet<>();
        private final Set<HopelessBelow> hopelessBelow = new HashSet<>();

        void addAll(Sets other) {
            builds.addAll(other.builds);
            above.addAll(other.above);
            below.addAll(other.below);
            hopelessAbove.addAll(other.hopelessAbove);
            hopelessBelow.addAll(other.hopelessBelow);
        }

        void add(Train train, Blame blame) {
            Build build = build(train);
            switch (blame) {
                case ABOVE -> hopelessAbove.add(above(build));
                case BELOW -> hopelessBelow.add(below(build));
                case TOGETHER -> {
                    builds.add(build);
                    above.add(build.above);
                    below.add(build.below);
                }
            }
        }

        boolean isEmpty() {
            return builds.isEmpty() && hopelessAbove.isEmpty() && hopelessBelow.isEmpty();
        }

        boolean holds(Train train) {
            if (isEmpty()) {
                return false;
            }
            Build build = build(train);
            return builds.contains(build)
                    || hopelessAbove.contains(above(build))
                    || hopelessBelow.contains(below(build));
        }
    }

    private Refused(Sets sets) {
        this.sets = sets;
    }

    private static Build build(Train train) {
        List<Mesh> meshes = train.meshes();
        int centre = train.meshesAbove();
        return new Build(
                new Above(List.copyOf(meshes.subList(0, centre)), train.drumDiameter(), train.reeving()),
                List.copyOf(meshes.subList(centre, meshes.size())),
                train.escapeTeeth());
    }

    private static HopelessAbove above(Build build) {
        return new HopelessAbove(build.above, build.below.size());
    }

    private static HopelessBelow below(Build build) {
        return new HopelessBelow(build.below, build.escapeTeeth, build.above.meshes.size());
    }

    /**
     * These trains and some more.
     *
     * @param more what was refused since
     */
    public Refused and(Fresh more) {
        Sets both = new Sets();
        both.addAll(sets);
        both.addAll(more.sets);
        return new Refused(both);
    }

    /** Whether there is none. */
    public boolean isEmpty() {
        return sets.isEmpty();
    }

    /**
     * Whether a train is refused, by itself or for one of its halves.
     *
     * @param train the train
     */
    public boolean holds(Train train) {
        return sets.holds(train);
    }

    /**
     * What is known of an upper half.
     *
     * @param meshes from the drum to the centre
     * @param drumDiameter diameter of the bare drum, m
     * @param reeving how the line carries the weight
     * @param meshesBelow of the lower halves it is to be joined to
     */
    public Trust trust(List<Mesh> meshes, BigFraction drumDiameter, Reeving reeving, int meshesBelow) {
        Above half = new Above(meshes, drumDiameter, reeving);
        if (sets.hopelessAbove.contains(new HopelessAbove(half, meshesBelow))) {
            return Trust.HOPELESS;
        }
        return sets.above.contains(half) ? Trust.DISTRUSTED : Trust.TRUSTED;
    }

    /**
     * What is known of a lower half; one that is hopeless beside some numbers of meshes above the centre is distrusted beside
     * the others.
     *
     * @param meshes from the centre to the escape wheel
     * @param escapeTeeth of the escape wheel
     * @param meshesAbove of the upper halves it may be joined to
     */
    public Trust trust(List<Mesh> meshes, int escapeTeeth, Collection<Integer> meshesAbove) {
        long hopeless = meshesAbove.stream()
                .filter(above -> sets.hopelessBelow.contains(new HopelessBelow(meshes, escapeTeeth, above)))
                .count();
        if (hopeless == meshesAbove.size()) {
            return Trust.HOPELESS;
        }
        return hopeless > 0 || sets.below.contains(meshes) ? Trust.DISTRUSTED : Trust.TRUSTED;
    }

    /** Trains refused since; not safe for use by several threads at once. */
    public static final class Fresh {
        private final Sets sets = new Sets();

        /**
         * Takes a train in.
         *
         * @param train that cannot be built
         * @param blame what of it is to blame
         */
        public void add(Train train, Blame blame) {
            sets.add(train, blame);
        }

        /** Whether there is none. */
        public boolean isEmpty() {
            return sets.isEmpty();
        }

        /**
         * Whether a train is refused, by itself or for one of its halves.
         *
         * @param train the train
         */
        public boolean holds(Train train) {
            return sets.holds(train);
        }
    }
}
