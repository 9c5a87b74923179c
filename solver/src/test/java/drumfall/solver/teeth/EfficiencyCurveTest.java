// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.teeth;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class EfficiencyCurveTest {
    private static final int SAMPLES = "full".equals(System.getProperty("drumfall.samples")) ? 5_000 : 200;

    @Test
    void a_curve_knows_its_worst_its_mean_and_its_samples() {
        EfficiencyCurve curve = EfficiencyCurve.of(0.9, 0.6, 0.75, 0.75);

        assertThat(curve.worst()).isEqualTo(0.6);
        assertThat(curve.mean()).isEqualTo(0.75);
        assertThat(curve.size()).isEqualTo(4);
        assertThat(curve.at(1)).isEqualTo(0.6);
    }

    @ParameterizedTest
    @ValueSource(doubles = {-0.01, 1.01, Double.NaN, Double.POSITIVE_INFINITY})
    void an_efficiency_outside_nought_to_one_is_refused(double sample) {
        assertThatIllegalArgumentException().isThrownBy(() -> EfficiencyCurve.of(0.5, sample));
    }

    @Test
    void a_curve_without_samples_is_refused() {
        assertThatIllegalArgumentException().isThrownBy(EfficiencyCurve::of);
    }

    // Limits of the kernel e^(-s/τ)/τ: a point, and the whole past evenly. At 1e-4 pitches a sample's neighbour counts
    // less
    // than 1e-90; at 1e7 pitches the ripple left is below 1e-7.
    @Test
    void no_memory_feels_the_worst_and_endless_memory_the_mean() {
        Random random = new Random(1);
        for (int i = 0; i < SAMPLES; i++) {
            EfficiencyCurve curve = random(random);

            assertThat(curve.felt(0)).isEqualTo(curve.worst());
            assertThat(curve.felt(1e-4)).isCloseTo(curve.worst(), within(1e-12));
            assertThat(curve.felt(1e7)).isCloseTo(curve.mean(), within(1e-7));
            assertThat(curve.felt(1e7)).isLessThanOrEqualTo(curve.mean());
        }
    }

    @Test
    void a_longer_memory_never_feels_less() {
        Random random = new Random(2);
        for (int i = 0; i < SAMPLES; i++) {
            EfficiencyCurve curve = random(random);
            double before = curve.worst();
            for (double memory = 1e-3; memory < 1e4; memory *= 1 + random.nextDouble()) {
                double felt = curve.felt(memory);
                // Rounding of an average of a few dozen samples.
                assertThat(felt).isGreaterThanOrEqualTo(before - 1e-13).isLessThanOrEqualTo(curve.mean());
                before = felt;
            }
        }
    }

    // The kernel itself: for every phase the integral over the whole past, each sample held for its share of a pitch,
    // the
    // weight of a piece from s to s + d being e^(-s/τ) - e^(-(s+d)/τ). The past is cut where less than 1e-15 is left.
    @Test
    void what_is_felt_is_the_least_exponential_average_over_the_past() {
        Random random = new Random(3);
        for (int i = 0; i < SAMPLES / 4; i++) {
            EfficiencyCurve curve = random(random);
            double memory = Math.exp(random.nextDouble() * 6 - 3);

            assertThat(curve.felt(memory)).isCloseTo(leastAverage(curve, memory), within(1e-12));
        }
    }

    private static double leastAverage(EfficiencyCurve curve, double memory) {
        double least = 1;
        double step = 1.0 / curve.size();
        for (int phase = 0; phase < curve.size(); phase++) {
            double sum = 0;
            int pieces = (int) Math.ceil(36 * memory / step);
            for (int back = 0; back < pieces; back++) {
                double weight = Math.exp(-back * step / memory) - Math.exp(-(back + 1) * step / memory);
                sum += weight * curve.at(Math.floorMod(phase - back, curve.size()));
            }
            least = Math.min(least, sum);
        }
        return least;
    }

    private static EfficiencyCurve random(Random random) {
        double[] samples = new double[1 + random.nextInt(40)];
        for (int i = 0; i < samples.length; i++) {
            samples[i] = random.nextDouble();
        }
        return EfficiencyCurve.of(samples);
    }
}
