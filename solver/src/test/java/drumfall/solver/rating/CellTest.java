// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.rating;

import static org.assertj.core.api.Assertions.assertThat;

import drumfall.solver.brief.Brief;
import drumfall.solver.brief.Objective;
import drumfall.solver.brief.ObjectiveFigure;
import drumfall.solver.samples.Briefs;
import drumfall.solver.samples.SmallBriefs;
import drumfall.solver.samples.Trains;
import drumfall.solver.train.Train;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CellTest {
    private static final int SAMPLES = "full".equals(System.getProperty("drumfall.samples")) ? 200 : 20;

    // floor(value / resolution), by hand; SI values, so 12 g is 0.012.
    @ParameterizedTest
    @CsvSource({
        "filament-mass, 1 g, 0, 0",
        "filament-mass, 1 g, 0.0009999, 0",
        "filament-mass, 1 g, 0.001, 1",
        "filament-mass, 1 g, 0.0124, 12",
        "largest-wheel, 0.5 mm, 0.0704, 140",
        "duration-error, 1 h, 3599.99, 0",
        "duration-error, 1 h, 3600, 1",
        "recommended-weight, 20 g, Infinity, 9223372036854775807",
    })
    void a_cell_is_so_many_resolutions(String figure, String resolution, double value, long number) {
        assertThat(Cell.number(objective(figure, resolution), value)).isEqualTo(number);
    }

    // floor(ln value / ln 1.01): 1 kg opens cell 0, 1.01 kg cell 1, half a kilogram lies 69.66 shares below, 2 kg
    // above.
    @ParameterizedTest
    @CsvSource({"1, 0", "1.0099, 0", "1.0101, 1", "0.5, -70", "2, 69", "0.9999, -1", "Infinity, 9223372036854775807"})
    void a_resolution_by_share_makes_cells_that_grow(double value, long number) {
        assertThat(Cell.number(objective("recommended-weight", "1 %"), value)).isEqualTo(number);
    }

    @Test
    void a_cell_number_never_falls_while_the_value_rises() {
        Random random = new Random(1);
        for (String resolution : List.of("1 %", "0.1 %", "7 g", "1 g")) {
            Objective objective = objective("recommended-weight", resolution);
            double value = 1e-6;
            long before = Cell.number(objective, value);
            for (int i = 0; i < 20_000; i++) {
                value = random.nextBoolean() ? Math.nextUp(value) : value * (1 + random.nextDouble() * 1e-3);
                long number = Cell.number(objective, value);
                assertThat(number).isGreaterThanOrEqualTo(before);
                before = number;
            }
        }
    }

    @Test
    void counts_are_their_own_cells() {
        Objective meshes = Briefs.demoWith("/objectives = [{\"figure\": \"meshes\"}]")
                .objectives()
                .get(0);

        assertThat(meshes.figure()).isEqualTo(ObjectiveFigure.MESHES);
        assertThat(Cell.number(meshes, 4)).isEqualTo(4);
    }

    @ParameterizedTest
    @CsvSource({"1 2, 1 2, false", "1 2, 1 3, true", "1 3, 1 2, false", "0 3, 1 2, false", "0 0, 1 1, true"})
    void a_cell_dominates_where_it_is_nowhere_worse_and_somewhere_better(
            String first, String second, boolean dominates) {
        assertThat(cell(first).dominates(cell(second))).isEqualTo(dominates);
        assertThat(cell(first).isNowhereWorseThan(cell(first))).isTrue();
    }

    // Against the definition: a rating stands for a non-dominated cell if no other one in its cell comes before it.
    @Test
    void a_front_is_the_non_dominated_set_whatever_the_order_of_coming() {
        for (int seed = 1; seed <= SAMPLES; seed++) {
            Brief brief = SmallBriefs.some(1, 40L * seed).get(0);
            List<Rating> ratings = ratings(brief, seed, 150);
            Set<Train> expected = naive(ratings);
            for (int shuffle = 0; shuffle < 3; shuffle++) {
                Collections.shuffle(ratings, new Random(shuffle));
                CellFront front = new CellFront(brief.objectives());
                for (Rating rating : ratings) {
                    double[] values = values(rating);
                    boolean mayImprove = front.mayImprove(values, rating.recommendedWeight());
                    boolean changed = front.add(rating);
                    // Asking must never turn away what then changes the front.
                    assertThat(mayImprove || !changed).isTrue();
                }
                assertThat(front.ratings().stream().map(Rating::train)).containsExactlyInAnyOrderElementsOf(expected);
                assertThat(front.size()).isEqualTo(expected.size());
                assertThat(front.ratings().get(0).cell().numbers().get(0))
                        .isEqualTo(front.ratings().stream()
                                .mapToLong(rating -> rating.cell().numbers().get(0))
                                .min()
                                .orElseThrow());
            }
        }
    }

    @Test
    void the_stated_order_is_a_total_order() {
        TrainOrder order = new TrainOrder();
        for (int seed = 1; seed <= SAMPLES; seed++) {
            Brief brief = SmallBriefs.some(1, 70L * seed).get(0);
            List<Rating> ratings = ratings(brief, seed, 25);
            for (Rating a : ratings) {
                for (Rating b : ratings) {
                    int compared = Integer.signum(order.compare(a, b));
                    assertThat(compared).isEqualTo(-Integer.signum(order.compare(b, a)));
                    assertThat(compared == 0).isEqualTo(a.train().equals(b.train()));
                    for (Rating c : ratings) {
                        if (compared <= 0 && order.compare(b, c) <= 0) {
                            assertThat(order.compare(a, c)).isLessThanOrEqualTo(0);
                        }
                    }
                }
            }
        }
    }

    // The order as it is stated: shape, then the meshes above, drum and falls, then the meshes below and the escape
    // wheel.
    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "60/8 m1 | 60/8 m1 · E30; 60/8 m1 · 60/8 m1 | 60/8 m1 · E15; 36; 36",
                "60/8 m1 | 60/8 m1 · E30; 60/8 m1 | 60/8 m1 · 60/8 m1 · E15; 36; 30",
                "60/8 m1 | 61/8 m1 · E30; 61/8 m1 | 60/8 m1 · E15; 36; 30",
                "60/8 m1 | 61/8 m1 · E30; 60/8 m1.25 | 60/8 m1 · E15; 36; 30",
                "60/8 m1 | 61/8 m1 · E30; 60/8 m1 | 60/8 m1 · E15; 30; 36",
                "60/8 m1 | 60/8 m1 · E30; 60/8 m1 | 60/9 m1 · E15; 36; 36",
                "60/8 m1 | 60/8 m1 · E15; 60/8 m1 | 60/8 m1 · E16; 36; 36",
            })
    void counts_are_compared_from_the_drum_downwards(String first, String second, String firstDrum, String secondDrum) {
        Train earlier = Trains.of(first, firstDrum, 1);
        Train later = Trains.of(second, secondDrum, 1);

        assertThat(TrainOrder.byCounts(earlier, later)).isNegative();
        assertThat(TrainOrder.byCounts(later, earlier)).isPositive();
    }

    private static Set<Train> naive(List<Rating> ratings) {
        TrainOrder order = new TrainOrder();
        Set<Train> front = new HashSet<>();
        for (Rating rating : ratings) {
            boolean beaten = ratings.stream().anyMatch(other -> other.cell().dominates(rating.cell()));
            boolean preceded = ratings.stream()
                    .anyMatch(other -> other.cell().equals(rating.cell()) && order.compare(other, rating) < 0);
            if (!beaten && !preceded) {
                front.add(rating.train());
            }
        }
        return front;
    }

    private static List<Rating> ratings(Brief brief, long seed, int count) {
        Random random = new Random(seed);
        TrainRater rater = new TrainRater(brief);
        List<Rating> ratings = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            ratings.add(rater.rate(Trains.random(brief, random)));
        }
        return ratings;
    }

    private static double[] values(Rating rating) {
        return rating.objectiveValues().stream().mapToDouble(value -> value).toArray();
    }

    private static Objective objective(String figure, String resolution) {
        return Briefs.demoWith(
                        "/objectives = [{\"figure\": \"%s\", \"resolution\": \"%s\"}]".formatted(figure, resolution))
                .objectives()
                .get(0);
    }

    private static Cell cell(String numbers) {
        return new Cell(
                java.util.Arrays.stream(numbers.split(" ")).map(Long::valueOf).toList());
    }

    // The heaviest weight is the border between weights that may change a front and weights that may not.
    @Test
    void lighter_than_the_heaviest_weight_may_change_a_front_and_heavier_may_not() {
        int lighter = 0;
        int heavier = 0;
        for (Brief brief : SmallBriefs.some(SAMPLES, 900)) {
            List<Objective> asked = brief.objectives();
            List<Rating> ratings = ratings(brief, 9, 40);
            CellFront front = new CellFront(asked);
            ratings.subList(0, 20).forEach(front::add);
            for (Rating rating : ratings) {
                double[] values = values(rating);
                double heaviest = front.heaviest(values);
                for (double share : new double[] {0.5, 0.98, 1 - 1e-6, 1 + 1e-6, 1.02, 2}) {
                    double weight = Double.isInfinite(heaviest) ? share : heaviest * share;
                    boolean may = front.mayImprove(weighing(asked, values, weight), weight);
                    assertThat(may).isEqualTo(weight <= heaviest);
                    lighter += may ? 1 : 0;
                    heavier += may ? 0 : 1;
                }
            }
        }
        assertThat(lighter).isGreaterThan(100);
        assertThat(heavier).isGreaterThan(100);
    }

    private static double[] weighing(List<Objective> asked, double[] values, double weight) {
        double[] weighing = values.clone();
        for (int i = 0; i < weighing.length; i++) {
            if (asked.get(i).figure() == ObjectiveFigure.RECOMMENDED_WEIGHT) {
                weighing[i] = weight;
            }
        }
        return weighing;
    }
}
