// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.fit.shake;

import static drumfall.solver.fit.shake.Direction.FILLS;
import static drumfall.solver.fit.shake.Direction.OPENS;
import static drumfall.solver.fit.shake.Stacks.layered;
import static drumfall.solver.fit.shake.Stacks.part;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;

class EndShakesTest {
    private static final Temperatures STEADY = Temperatures.steady(20);
    private static final Sampling SAMPLING = new Sampling(42, 2000, true);
    private static final long LAYER = 200_000;

    @Test
    void arbors_stand_in_the_order_of_their_chance_to_miss_the_band() {
        EndShakes shakes = EndShakes.of(
                List.of(withGap("safe", 500_000), withGap("jammed", -300_000), withGap("tight", 50_000)),
                ShakeBand.COMMON,
                STEADY,
                SAMPLING);

        assertThat(shakes.ranked())
                .extracting(shake -> shake.stack().arbor())
                .containsExactly("jammed", "tight", "safe");
        assertThat(shakes.ranked()).extracting(shake -> shake.chance().exact()).containsOnly(true);
        // Two errors of ±0.1 mm make a triangle of ±0.2 mm: below 0 with a mean of 0.05 mm lies 0.15²/(2·0.2²).
        assertThat(shakes.ranked().get(1).chance().outside()).isCloseTo(0.28125, within(1e-15));
        assertThat(shakes.bestChange().orElseThrow())
                .isEqualTo(new LayerChange("jammed", "spacer", -3, -3 * LAYER, 1, 0));
    }

    @Test
    void an_arbor_that_is_safe_needs_no_change() {
        EndShake safe = EndShake.of(withGap("safe", 500_000), ShakeBand.COMMON, STEADY, SAMPLING);

        assertThat(safe.chance().outside()).isZero();
        assertThat(safe.change()).isEmpty();
    }

    @Test
    void a_part_that_cannot_be_changed_gets_no_advice() {
        ArborStack fixed = new ArborStack(
                "fixed",
                List.of(part("pillar", OPENS, 20_000_000, 100_000), part("wheel", FILLS, 20_000_000, 100_000)));

        assertThat(EndShake.of(fixed, ShakeBand.COMMON, STEADY, SAMPLING).change())
                .isEmpty();
    }

    // Every part with every number of layers its range allows is tried, by the exact distribution.
    @Test
    void no_other_change_of_one_part_is_better() {
        SplittableRandom random = new SplittableRandom(9);
        int advised = 0;
        for (int i = 0; i < 40; i++) {
            ArborStack stack = randomStack(random);
            Temperatures room = new Temperatures(20, random.nextDouble(0, 20), random.nextDouble(20, 40));
            EndShake shake = EndShake.of(stack, ShakeBand.COMMON, room, SAMPLING);
            double best = leastByTrial(shake);

            assertThat(shake.change()
                            .map(LayerChange::after)
                            .orElse(shake.chance().outside()))
                    .isEqualTo(best);
            shake.change().ifPresent(change -> assertThat(change.gain()).isPositive());
            advised += shake.change().isPresent() ? 1 : 0;
        }
        assertThat(advised).isGreaterThan(20);
    }

    @Test
    void the_worst_temperature_is_an_end_of_the_range() {
        SplittableRandom random = new SplittableRandom(10);
        for (int i = 0; i < 20; i++) {
            EndShake shake =
                    EndShake.of(randomStack(random), ShakeBand.COMMON, new Temperatures(20, -20, 60), SAMPLING);
            double scanned = DoubleStream.iterate(-20, t -> t <= 60, t -> t + 2)
                    .map(t -> shake.chanceAt(t).outside())
                    .max()
                    .orElseThrow();

            assertThat(shake.chance().outside()).isEqualTo(scanned);
        }
    }

    @Test
    void heat_widens_the_worst_case_by_drift_times_kelvin() {
        Contribution pillar =
                new Contribution("pillar", OPENS, 50_000_000, 0, 0, 1, 40e-6, ErrorShape.UNIFORM, Optional.empty());
        ArborStack stack = new ArborStack("arbor", List.of(pillar, part("arbor", FILLS, 49_500_000, 0)));
        EndShake shake = EndShake.of(stack, ShakeBand.COMMON, new Temperatures(20, 10, 35), SAMPLING);

        assertThat(shake.least()).isCloseTo(500_000 - 20_000, within(1e-6)); // 50 mm · 40e-6/K · 10 K; rounding
        assertThat(shake.most()).isCloseTo(500_000 + 30_000, within(1e-6));
    }

    @Test
    void normal_errors_are_answered_by_the_sample() {
        ArborStack stack = new ArborStack(
                "arbor",
                List.of(
                        part("pillar", OPENS, 20_000_000, 300_000, 1, ErrorShape.TRUNCATED_NORMAL),
                        layered("spacer", FILLS, 20_000_000, 0, LAYER)));
        EndShake shake = EndShake.of(stack, ShakeBand.COMMON, STEADY, SAMPLING);

        assertThat(shake.chance().exact()).isFalse();
        assertThat(shake.chance().outside()).isCloseTo(0.5, within(0.05)); // half by symmetry; 4 errors of 1000 pairs
        assertThat(shake.change().orElseThrow().layers()).isBetween(-4, -1);
    }

    @Test
    void a_height_that_could_fall_below_its_own_error_is_refused() {
        Optional<LayerRange> range = Optional.of(new LayerRange(LAYER, LAYER, 2_000_000));

        assertThatThrownBy(
                        () -> new Contribution("spacer", FILLS, 1_000_000, 300_000, 0, 1, 0, ErrorShape.UNIFORM, range))
                .hasMessage(
                        "The least height (0.2 mm) of part (spacer) must lie from 0.3 mm to 1 mm. Maybe take 0.3 mm.");
        assertThatThrownBy(() -> new Contribution("spacer", FILLS, 100_000, 0, 0, 1, 0, ErrorShape.UNIFORM, range))
                .hasMessageContaining("The nominal length (0.1 mm) of part (spacer) must lie from 0.2 mm");
        assertThatThrownBy(() -> new LayerRange(19_999, 1, 2)).hasMessageContaining("layerHeight (0.019999 mm)");
    }

    @Test
    void a_movement_without_arbors_is_refused() {
        assertThatThrownBy(() -> new EndShakes(List.of()))
                .hasMessageStartingWith("The number of arbors (0) of the movement");
    }

    private static ArborStack withGap(String arbor, long gap) {
        return new ArborStack(
                arbor,
                List.of(
                        part("pillar", OPENS, 20_000_000 + gap, 100_000),
                        layered("spacer", FILLS, 5_000_000, 100_000, LAYER),
                        part("wheel", FILLS, 15_000_000, 0)));
    }

    private static ArborStack randomStack(SplittableRandom random) {
        LayerRange wheel = new LayerRange(LAYER, 4_000_000, 6_000_000);
        LayerRange spacers = new LayerRange(LAYER, 600_000, 1_400_000);
        long gap = random.nextLong(-400_000, 1_600_000);
        long error = random.nextLong(20_000, 250_000);
        return new ArborStack(
                "arbor",
                List.of(
                        new Contribution(
                                "pillar",
                                OPENS,
                                17_000_000 + gap,
                                error,
                                error,
                                1,
                                41e-6,
                                ErrorShape.UNIFORM,
                                Optional.empty()),
                        part("steel", FILLS, 10_000_000, 50_000),
                        new Contribution(
                                "wheel",
                                FILLS,
                                5_000_000,
                                80_000,
                                120_000,
                                1,
                                41e-6,
                                ErrorShape.TRIANGULAR,
                                Optional.of(wheel)),
                        new Contribution(
                                "spacer",
                                FILLS,
                                1_000_000,
                                30_000,
                                60_000,
                                2,
                                41e-6,
                                ErrorShape.UNIFORM,
                                Optional.of(spacers))));
    }

    private static double leastByTrial(EndShake shake) {
        double best = shake.chance().outside();
        List<Contribution> parts = shake.stack().contributions();
        for (int part = 0; part < parts.size(); part++) {
            Optional<LayerRange> range = parts.get(part).range();
            for (int layers = -30; range.isPresent() && layers <= 30; layers++) {
                long height = parts.get(part).nominal() + layers * LAYER;
                if (height >= range.get().least() && height <= range.get().most()) {
                    ArborStack changed = shake.stack().withLayers(part, layers);
                    best = Math.min(best, shake.withStack(changed).chance().outside());
                }
            }
        }
        return best;
    }
}
