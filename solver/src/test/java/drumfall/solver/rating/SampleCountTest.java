// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.rating;

import static org.assertj.core.api.Assertions.assertThat;

import drumfall.solver.brief.Brief;
import drumfall.solver.power.WeightWalk;
import drumfall.solver.samples.Briefs;
import drumfall.solver.samples.Trains;
import drumfall.solver.train.Train;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.IntToDoubleFunction;
import org.junit.jupiter.api.Test;

/** Counting without reckoning every place, against counting all of them. Counts are whole numbers and equal. */
class SampleCountTest {
    private static final boolean FULL = "full".equals(System.getProperty("drumfall.samples"));
    private static final List<BandPoint> POINTS = BandSample.of(400, 0.5);

    @Test
    void the_count_is_that_of_all_places_for_any_need_that_rises_with_roughness() {
        SampleCount count = new SampleCount(POINTS);
        Random random = new Random(5);
        for (int i = 0; i < (FULL ? 5_000 : 200); i++) {
            double[] shares = random.doubles(5, 0, 3).toArray();
            double[] least = count.points().stream()
                    .mapToDouble(point -> 1
                            + shares[0] * point.teeth()
                            + shares[1] * point.bores() * point.teeth()
                            + shares[2] * Math.pow(point.pallets(), 3)
                            + shares[3] * point.quality() / (1.1 - point.bores()))
                    .toArray();
            holdsAt(count, least, 1 + 3 * random.nextDouble());
            holdsAt(count, least, least[random.nextInt(least.length)]);
        }
    }

    // Every place needs the same to the last bit or one bit more: no place may speak for another.
    @Test
    void weights_that_differ_by_rounding_are_reckoned_one_by_one() {
        SampleCount count = new SampleCount(POINTS);
        Random random = new Random(6);
        double[] least = random.ints(POINTS.size(), 0, 3)
                .mapToDouble(i -> 2 + i * Math.ulp(2.0))
                .toArray();

        holdsAt(count, least, 2);
        holdsAt(count, least, 2 + Math.ulp(2.0));
    }

    @Test
    void the_count_is_that_of_all_places_for_random_trains() {
        SampleCount count = new SampleCount(POINTS);
        Brief brief = Briefs.demoWith("");
        TrainRater rater = new TrainRater(brief);
        Random random = new Random(7);
        for (int i = 0; i < (FULL ? 300 : 15); i++) {
            Train train = Trains.random(brief, random);
            double[] least = count.points().stream()
                    .mapToDouble(point ->
                            new WeightWalk(rater.movement(point)).weigh(train).leastWeight())
                    .toArray();
            for (double share : new double[] {0.02, 0.3, 0.5, 0.9, 0.99}) {
                double weight = Arrays.stream(least).sorted().toArray()[(int) (share * least.length)];
                if (Double.isFinite(weight)) {
                    holdsAt(count, least, weight);
                    holdsAt(count, least, weight * 1.01);
                }
            }
        }
    }

    @Test
    void few_places_are_reckoned_where_the_answer_is_not_close() {
        SampleCount count = new SampleCount(BandSample.of(BuilderLimits.TRIALS, 0.5));
        AtomicInteger asked = new AtomicInteger();
        IntToDoubleFunction least = i -> {
            asked.incrementAndGet();
            BandPoint point = count.points().get(i);
            return point.teeth() + 0.5 * point.quality() + 0.2 * point.bores() + 0.2 * point.pallets();
        };

        int[] ranked = count.ranked(least);
        int all = count.of(least, 1.3);
        asked.set(0);
        assertThat(count.atLeast(all + 100, ranked, least, 1.3)).isFalse();
        assertThat(count.atLeast(all - 100, ranked, least, 1.3)).isTrue();
        assertThat(asked.get()).isLessThan(BuilderLimits.TRIALS / 4);
    }

    private static void holdsAt(SampleCount count, double[] least, double weight) {
        int all = (int) Arrays.stream(least).filter(asked -> asked <= weight).count();
        assertThat(count.of(i -> least[i], weight)).isEqualTo(all);
        int[] ranked = count.ranked(i -> least[i]);
        int[] astray = count.ranked(i -> -least[i] * (1 + i % 3));
        for (int wanted : new int[] {1, all - 1, all, all + 1, least.length}) {
            if (wanted > 0 && wanted <= least.length) {
                assertThat(count.atLeast(wanted, ranked, i -> least[i], weight)).isEqualTo(all >= wanted);
                assertThat(count.atLeast(wanted, astray, i -> least[i], weight)).isEqualTo(all >= wanted);
            }
        }
    }
}
