// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.power.pendulum;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import drumfall.solver.power.pendulum.RingDown.Reading;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresBuilder;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresOptimizer.Optimum;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LevenbergMarquardtOptimizer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RingDownTest {
    // Q = (π / ln 2) N for N periods to half the arc, 4.5324 N (standard result, four decimals). An experimenter's 135
    // periods to lose the energy to 1/e (watchandclockforum.com): 848.2, the arc then falling to e^(-1/2).
    @ParameterizedTest
    @CsvSource({"100, 2, 453.24, 0.005", "135, 1.6487212707, 848.23, 0.005", "135, 1.6487212707, 850, 5"})
    void two_arcs_give_the_quality(double periods, double ratio, double quality, double tolerance) {
        assertThat(RingDown.quality(periods, 0.08, 0.08 / ratio)).isCloseTo(quality, within(tolerance));
    }

    // A forum's rule, mended: the energy definition of Q makes the arc fall to e^-π/2 = 20.8 % in Q/2 periods, so Q is
    // twice the count to about 21 % (not "by 21 %").
    @Test
    void twice_the_periods_to_a_fifth_of_the_arc_are_the_quality() {
        assertThat(RingDown.quality(400, 1, 0.21)).isCloseTo(800, withinPercentage(1));
    }

    @ParameterizedTest
    @CsvSource({"400, 0", "400, 1e-5", "2000, 3e-6", "150, 1e-4", "1e9, 1e-4"})
    void exact_readings_give_back_both_decays(double quality, double coulomb) {
        RingDownFit fit = new RingDown(readings(quality, coulomb, 0, new Random(1))).fit();

        // Half of the digits survive the normal equations.
        assertThat(fit.viscousDecay()).isCloseTo(Math.PI / quality, within(1e-9));
        assertThat(fit.coulombDecay()).isCloseTo(coulomb, within(1e-10));
        assertThat(fit.startArc()).isCloseTo(0.08, within(1e-9));
    }

    // The reference library's Levenberg-Marquardt on the same readings: the same values to its own tolerance of 1e-10,
    // the same standard deviations.
    @ParameterizedTest
    @CsvSource({"400, 2e-5, 3", "800, 0, 4", "250, 1e-4, 5"})
    void the_fit_is_that_of_the_reference_library(double quality, double coulomb, long seed) {
        List<Reading> readings = readings(quality, coulomb, 1e-4, new Random(seed));
        RingDownFit fit = new RingDown(readings).fit();
        Optimum optimum = reference(readings);
        double variance = optimum.getCost() * optimum.getCost() / (readings.size() - 3);
        double[][] covariances = optimum.getCovariances(1e-30).getData();

        assertThat(fit.startArc()).isCloseTo(optimum.getPoint().getEntry(0), withinPercentage(1e-5));
        assertThat(fit.viscousDecay()).isCloseTo(optimum.getPoint().getEntry(1), withinPercentage(1e-3));
        assertThat(fit.coulombDecay()).isCloseTo(optimum.getPoint().getEntry(2), within(1e-9));
        assertThat(fit.viscousDeviation()).isCloseTo(Math.sqrt(variance * covariances[1][1]), withinPercentage(1e-2));
        assertThat(fit.coulombDeviation()).isCloseTo(Math.sqrt(variance * covariances[2][2]), withinPercentage(1e-2));
        assertThat(fit.scatter()).isCloseTo(Math.sqrt(variance), withinPercentage(1e-3));
    }

    // Of 200 noisy ring-downs about 95 in 100 must hold the true value within two deviations; 180 of 200 is three
    // standard deviations of that count below.
    @Test
    void the_uncertainty_covers_the_truth_as_often_as_it_should() {
        Random random = new Random(6);
        int covered = 0;
        for (int i = 0; i < 200; i++) {
            RingDownFit fit = new RingDown(readings(400, 2e-5, 2e-4, random)).fit();
            covered += Math.abs(fit.viscousDecay() - Math.PI / 400) < 2 * fit.viscousDeviation() ? 1 : 0;
        }
        assertThat(covered).isBetween(180, 200);
    }

    @Test
    void a_decay_that_is_not_there_is_not_seen() {
        RingDownFit viscous = new RingDown(readings(400, 0, 1e-4, new Random(8))).fit();
        RingDownFit straight = new RingDown(readings(1e12, 2e-4, 1e-4, new Random(8))).fit();

        assertThat(viscous.viscousSeen()).isTrue();
        assertThat(viscous.coulombSeen()).isFalse();
        assertThat(straight.viscousSeen()).isFalse();
        assertThat(straight.coulombSeen()).isTrue();
    }

    @Test
    void the_deviation_of_the_quality_is_relative_like_that_of_the_decay() {
        RingDownFit fit = new RingDownFit(0.08, 0.01, 0.001, 4e-5, 1e-5, 1e-4);

        assertThat(fit.quality()).hasValueCloseTo(314.159, within(0.001));
        assertThat(fit.qualityDeviation()).hasValueCloseTo(31.4159, within(0.0001));
        assertThat(fit.coulombTorque(0.4)).isCloseTo(4e-6, within(1e-15));
        assertThat(fit.coulombTorqueDeviation(0.4)).isCloseTo(1e-6, within(1e-15));
        assertThat(new RingDownFit(0.08, -0.01, 0.001, 4e-5, 1e-5, 1e-4).quality())
                .isEmpty();
    }

    @Test
    void readings_that_are_no_ring_down_are_refused() {
        Reading first = new Reading(0, 0.08);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new RingDown(List.of(first, new Reading(10, 0.07), new Reading(20, 0.06))))
                .withMessageContaining("at least 4");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new RingDown(
                        List.of(first, new Reading(10, 0.07), new Reading(10, 0.06), new Reading(30, 0.05))))
                .withMessageContaining("reading (3)");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new RingDown(
                        List.of(first, new Reading(10, 0.09), new Reading(20, 0.10), new Reading(30, 0.11))))
                .withMessageContaining("last arc");
        assertThatIllegalArgumentException().isThrownBy(() -> new Reading(3, 0));
        assertThatIllegalArgumentException().isThrownBy(() -> new Reading(Double.NaN, 0.1));
    }

    /** Twenty readings over about two thirds of the way down, by the differential equation's own solution. */
    private static List<Reading> readings(double quality, double coulomb, double noise, Random random) {
        double decay = Math.PI / quality;
        double perPeriod = 0.08 * decay + coulomb;
        double span = 0.08 / perPeriod;
        List<Reading> readings = new ArrayList<>();
        for (int i = 0; i < 20; i++) {
            double periods = i * span / 24;
            double arc = 0.08 * Math.exp(-decay * periods) + coulomb * Math.expm1(-decay * periods) / decay;
            readings.add(new Reading(periods, arc + noise * random.nextGaussian()));
        }
        return readings;
    }

    private static Optimum reference(List<Reading> readings) {
        double[] arcs = readings.stream().mapToDouble(Reading::semiArc).toArray();
        return new LevenbergMarquardtOptimizer()
                .withCostRelativeTolerance(1e-14)
                .withParameterRelativeTolerance(1e-13)
                .withOrthoTolerance(1e-14)
                .optimize(new LeastSquaresBuilder()
                        .start(new double[] {arcs[0], 0.005, 1e-5})
                        .target(arcs)
                        .weight(org.hipparchus.linear.MatrixUtils.createRealIdentityMatrix(arcs.length))
                        .maxEvaluations(1000)
                        .maxIterations(1000)
                        .model(point -> model(point, readings), point -> slopes(point, readings))
                        .build());
    }

    private static double[] model(double[] p, List<Reading> readings) {
        return readings.stream()
                .mapToDouble(r -> p[0] * Math.exp(-p[1] * r.periods()) + p[2] * Math.expm1(-p[1] * r.periods()) / p[1])
                .toArray();
    }

    /** By central differences, so that nothing of the fit's own derivatives is shared. */
    private static double[][] slopes(double[] p, List<Reading> readings) {
        double[][] slopes = new double[readings.size()][3];
        for (int j = 0; j < 3; j++) {
            double step = 1e-6 * Math.max(Math.abs(p[j]), 1e-4);
            double[] above = p.clone();
            double[] below = p.clone();
            above[j] += step;
            below[j] -= step;
            double[] difference = new ArrayRealVector(model(above, readings))
                    .subtract(new ArrayRealVector(model(below, readings)))
                    .toArray();
            for (int i = 0; i < difference.length; i++) {
                slopes[i][j] = difference[i] / (2 * step);
            }
        }
        return slopes;
    }
}
