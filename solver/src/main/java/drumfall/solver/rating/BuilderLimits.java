// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.rating;

import drumfall.solver.brief.Brief;
import drumfall.solver.power.WeightWalk;
import drumfall.solver.quantity.Quantity;
import drumfall.solver.teeth.MeshLoss;
import drumfall.solver.train.Train;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.IntToDoubleFunction;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * The demand that the recommended weight runs the clocks of so many builders, each with friction and quality of their own.
 *
 * <p>The builders are {@value #TRIALS} places of {@link BandSample}; those are served whose least weight is not above the
 * recommended one. Nobody is served by a train that no weight drives in the middle of all bands. May be shared between
 * threads; without the demand in the brief nothing is reckoned.
 */
public final class BuilderLimits {
    /** Builders asked: so many that a share of 95 in 100 is known to half a percent, one standard error. */
    public static final int TRIALS = 2_000;

    private final Brief brief;
    private final MeshLoss teeth;
    private final ArborLoads loads;
    private final boolean waived;
    private final int needed;
    private volatile Builders builders;
    private volatile int[] ranked;

    /** The builders ready to be asked, each with the walk to the weight. */
    private record Builders(List<WeightWalk> walks, WeightWalk roughest) {}

    /** The places, which no brief changes. */
    private static final class Places {
        static final SampleCount COUNT = new SampleCount(BandSample.of(TRIALS, 0.5));
    }

    /**
     * How many are served.
     *
     * @param share of all builders, from 0 to 1
     * @param enough whether they are as many as are asked for
     */
    record Served(double share, boolean enough) {}

    BuilderLimits(Brief brief, MeshLoss teeth, ArborLoads loads, Set<Demand> waived) {
        this.brief = brief;
        this.teeth = teeth;
        this.loads = loads;
        this.waived = waived.contains(Demand.BUILDERS);
        this.needed = brief.weight().builders().map(BuilderLimits::needed).orElse(0);
    }

    /** The fewest builders who are at least the share asked for. */
    private static int needed(Quantity share) {
        BigFraction exact = share.exact().multiply(TRIALS);
        int whole = exact.intValue();
        return exact.compareTo(BigFraction.of(whole)) > 0 ? whole + 1 : whole;
    }

    /** The share of builders asked for, if there is such a demand. */
    public OptionalDouble asked() {
        return brief.weight()
                .builders()
                .map(Quantity::si)
                .map(OptionalDouble::of)
                .orElse(OptionalDouble.empty());
    }

    /** Whether a train can miss the demand at all. */
    public boolean decides() {
        return needed > 0 && !waived;
    }

    /**
     * The weight runs the clocks of as many builders as are asked for.
     *
     * @param train the train
     * @param recommendedWeight kg
     */
    public boolean served(Train train, double recommendedWeight) {
        return !decides() || atLeast(needed, train, recommendedWeight);
    }

    private boolean atLeast(int count, Train train, double weight) {
        if (Double.isInfinite(weight)) {
            return false;
        }
        Builders asked = builders();
        return SampleCount.sparesAll(weight, asked.roughest.weigh(train).leastWeight())
                || Places.COUNT.atLeast(count, ranked(asked, train), least(asked, train), weight);
    }

    /**
     * How many builders' clocks a weight runs.
     *
     * @param train the train
     * @param recommendedWeight kg
     */
    Served share(Train train, double recommendedWeight) {
        int count = Double.isInfinite(recommendedWeight) ? 0 : count(train, recommendedWeight);
        return new Served((double) count / TRIALS, waived || count >= needed);
    }

    private int count(Train train, double weight) {
        Builders asked = builders();
        return SampleCount.sparesAll(weight, asked.roughest.weigh(train).leastWeight())
                ? TRIALS
                : Places.COUNT.of(least(asked, train), weight);
    }

    /** By the first train that is asked about; two threads at once may both rank, and either will do. */
    private int[] ranked(Builders asked, Train train) {
        int[] known = ranked;
        if (known == null) {
            known = Places.COUNT.ranked(least(asked, train));
            ranked = known;
        }
        return known;
    }

    private static IntToDoubleFunction least(Builders asked, Train train) {
        return i -> asked.walks.get(i).weigh(train).leastWeight();
    }

    private Builders builders() {
        Builders known = builders;
        if (known == null) {
            synchronized (this) {
                known = builders;
                if (known == null) {
                    List<WeightWalk> walks =
                            Places.COUNT.points().stream().map(this::walk).toList();
                    known = new Builders(walks, walk(Expectation.ROUGHEST.point()));
                    builders = known;
                }
            }
        }
        return known;
    }

    private WeightWalk walk(BandPoint point) {
        return new WeightWalk(new BriefMovement(brief, teeth, loads, point).movement());
    }
}
