// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.kit;

import drumfall.solver.brief.Brief;
import drumfall.solver.brief.Brief.ArborBuild;
import drumfall.solver.brief.Brief.Arbors;
import drumfall.solver.brief.Brief.BearingPlaces;
import drumfall.solver.fitting.BriefFit;
import drumfall.solver.layout.Layout;
import drumfall.solver.making.HubRoom;
import drumfall.solver.power.ArborRole;
import drumfall.solver.power.WeightWalk;
import drumfall.solver.rating.TrainRater;
import drumfall.solver.train.Train;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * One train built with fewer or more rolling bearings, each way rated anew.
 *
 * <p>Arbors of one role have one build in a brief, so they get their bearings together. On a light arbor the drag of the
 * grease can cost more than rolling saves; nothing is taken for granted, each set of arbors is weighed.
 */
public final class Builds {
    /** Least share of the least weight for which bearings on another arbor are recommended; our own choice. */
    public static final double WORTH = 0.01;

    private final TrainRater rater;
    private final Train train;
    private final Optional<Layout> layout;
    private final Map<BuildWay, Build> builds = new EnumMap<>(BuildWay.class);

    private Builds(TrainRater rater, Train train, Optional<Layout> layout) {
        this.rater = rater;
        this.train = train;
        this.layout = layout;
    }

    /**
     * The four ways to build a train.
     *
     * @param rater rates against the brief, no demand waived
     * @param train any train, whether or not it meets the brief
     * @param layout where its arbors stand, if they have places; hubs are made as they stand there
     */
    public static Builds of(TrainRater rater, Train train, Optional<Layout> layout) {
        Builds all = new Builds(rater, train, layout);
        all.add(BuildWay.AS_GIVEN, rater);
        all.add(BuildWay.PLAIN, all.rolling(EnumSet.noneOf(ArborRole.class)));
        all.add(BuildWay.RECOMMENDED, all.rolling(all.worthwhile()));
        all.add(BuildWay.EVERYWHERE, all.rolling(EnumSet.allOf(ArborRole.class)));
        return all;
    }

    /** Every way, in the order of {@link BuildWay}. */
    public List<Build> all() {
        return List.copyOf(builds.values());
    }

    /**
     * The train built one way.
     *
     * @param way the way
     */
    public Build build(BuildWay way) {
        return builds.get(way);
    }

    /** The bearings that the brief asks for. */
    public List<BearingPlace> needed() {
        return build(BuildWay.AS_GIVEN).bearings();
    }

    /** The bearings that are recommended and not among those of the brief. */
    public List<BearingPlace> recommended() {
        return build(BuildWay.RECOMMENDED).bearings().stream()
                .flatMap(place -> beyond(place).stream())
                .toList();
    }

    private Optional<BearingPlace> beyond(BearingPlace place) {
        int more =
                place.count() - rater.build(role(place.arbor() - 1)).bearings().count();
        return more > 0 ? Optional.of(place.withCount(more)) : Optional.empty();
    }

    private void add(BuildWay way, TrainRater built) {
        BriefFit fit = new BriefFit(built.brief());
        HubRoom hubs = new HubRoom(built, train, layout);
        List<BearingPlace> bearings = IntStream.rangeClosed(0, train.meshes().size())
                .mapToObj(arbor -> BearingPlace.of(fit, hubs, arbor + 1, built.build(role(arbor))))
                .flatMap(Optional::stream)
                .toList();
        builds.put(way, new Build(way, built.brief(), built.rate(train), bearings));
    }

    private ArborRole role(int arbor) {
        return WeightWalk.role(train, arbor);
    }

    /**
     * The arbors whose bearings save most, one role after another as long as the next saves at least {@link #WORTH}. Where
     * no weight drives the train in plain bores, it begins with the fewest roles with which one does.
     */
    private Set<ArborRole> worthwhile() {
        Set<ArborRole> taken = fewest();
        double least = least(taken);
        while (true) {
            Optional<Weighed> next = lightest(ofSize(taken.size() + 1).stream()
                    .filter(roles -> roles.containsAll(taken))
                    .toList());
            if (next.isEmpty() || !(least - next.get().least() >= WORTH * least)) {
                return taken;
            }
            taken.addAll(next.get().roles());
            least = next.get().least();
        }
    }

    /** The fewest roles, and of as many the lightest, with which a weight drives the train; none if none does. */
    private Set<ArborRole> fewest() {
        for (int size = 0; size <= present().size(); size++) {
            Optional<Weighed> found = lightest(ofSize(size));
            if (found.isPresent()) {
                return found.get().roles();
            }
        }
        return EnumSet.noneOf(ArborRole.class);
    }

    private record Weighed(Set<ArborRole> roles, double least) {}

    /** Of equally light sets the first. */
    private Optional<Weighed> lightest(List<Set<ArborRole>> sets) {
        return sets.stream()
                .map(roles -> new Weighed(roles, least(roles)))
                .filter(weighed -> Double.isFinite(weighed.least()))
                .reduce((one, other) -> one.least() <= other.least() ? one : other);
    }

    private List<Set<ArborRole>> ofSize(int size) {
        List<ArborRole> roles = List.copyOf(present());
        return IntStream.range(0, 1 << roles.size())
                .filter(set -> Integer.bitCount(set) == size)
                .mapToObj(set -> subset(roles, set))
                .toList();
    }

    private static Set<ArborRole> subset(List<ArborRole> roles, int set) {
        Set<ArborRole> chosen = EnumSet.noneOf(ArborRole.class);
        for (int i = 0; i < roles.size(); i++) {
            if ((set >> i & 1) == 1) {
                chosen.add(roles.get(i));
            }
        }
        return chosen;
    }

    /** A train of two meshes has no intermediate arbor. */
    private Set<ArborRole> present() {
        Set<ArborRole> roles = EnumSet.noneOf(ArborRole.class);
        IntStream.rangeClosed(0, train.meshes().size()).forEach(arbor -> roles.add(role(arbor)));
        return roles;
    }

    private double least(Set<ArborRole> roles) {
        return rolling(roles).walk().weigh(train).leastWeight();
    }

    /** Teeth do not depend on the arbors, and choosing them anew would take long. */
    private TrainRater rolling(Set<ArborRole> roles) {
        Brief brief = rater.brief();
        return new TrainRater(
                brief.withArbors(rolling(brief.arbors(), roles)),
                Set.of(),
                rater.movement().teeth());
    }

    private static Arbors rolling(Arbors arbors, Set<ArborRole> roles) {
        return new Arbors(
                rolling(arbors.drum(), roles.contains(ArborRole.DRUM)),
                rolling(arbors.centre(), roles.contains(ArborRole.CENTRE)),
                rolling(arbors.intermediate(), roles.contains(ArborRole.INTERMEDIATE)),
                rolling(arbors.escape(), roles.contains(ArborRole.ESCAPE)),
                arbors.bearing());
    }

    private static ArborBuild rolling(ArborBuild build, boolean rolls) {
        return build.withBearings(rolls ? BearingPlaces.BOTH : BearingPlaces.NONE);
    }
}
