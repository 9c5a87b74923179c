// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.teeth;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class InvoluteClosedFormTest {
    private static final int SAMPLES = "full".equals(System.getProperty("drumfall.samples")) ? 20_000 : 1_000;

    // Plane statics: axes on the x axis, the line of action through the pitch point, the normal force turned against
    // the
    // sliding by its friction, and cross products for the moments. Nothing of the closed form but the figure is used.
    @Test
    void the_efficiency_is_that_of_moments_in_the_plane() {
        Random random = new Random(1);
        for (int i = 0; i < SAMPLES; i++) {
            Mesh mesh = Mesh.random(random);
            assertThat(mesh.form().efficiency(mesh.wheel, mesh.leaves, mesh.friction, mesh.place))
                    .as("%s", mesh)
                    .isCloseTo(mesh.byMoments(), within(1e-10));
        }
    }

    // Work in over a short turn is work out and the work of friction over the way that the flanks slide on each other.
    @Test
    void what_goes_in_comes_out_or_rubs_away() {
        Random random = new Random(2);
        for (int i = 0; i < SAMPLES; i++) {
            Mesh mesh = Mesh.random(random);
            double alpha = mesh.pressureAngle;
            double sign = Math.signum(mesh.place) * mesh.friction;
            double in = mesh.wheel / 2.0 * Math.cos(alpha) + sign * (mesh.wheel / 2.0 * Math.sin(alpha) + mesh.place);
            // Unit normal force, unit turn of the wheel; the pinion turns z/p, and the flanks slide (1 + z/p) s.
            double slid = (1 + (double) mesh.wheel / mesh.leaves) * Math.abs(mesh.place);
            double out = in * mesh.form().efficiency(mesh.wheel, mesh.leaves, mesh.friction, mesh.place);

            assertThat(out + mesh.friction * slid).isCloseTo(in, within(1e-9 * in));
        }
    }

    @Test
    void without_friction_everything_passes() {
        for (int teeth = 6; teeth <= 300; teeth += 7) {
            for (int leaves = 5; leaves <= 60; leaves += 3) {
                EfficiencyCurve curve = new InvoluteClosedForm(Math.toRadians(20)).curve(teeth, leaves, 0);

                assertThat(curve.worst()).isEqualTo(1);
                assertThat(curve.mean()).isEqualTo(1);
            }
        }
    }

    @Test
    void more_friction_never_passes_more() {
        InvoluteClosedForm form = new InvoluteClosedForm(Math.toRadians(20));
        Random random = new Random(4);
        for (int i = 0; i < SAMPLES / 20; i++) {
            int teeth = 6 + random.nextInt(200);
            int leaves = 5 + random.nextInt(20);
            EfficiencyCurve before = form.curve(teeth, leaves, 0);
            for (double friction = 0.05; friction < 2; friction += 0.1) {
                EfficiencyCurve after = form.curve(teeth, leaves, friction);
                for (int sample = 0; sample < after.size(); sample++) {
                    assertThat(after.at(sample)).isLessThanOrEqualTo(before.at(sample));
                }
                before = after;
            }
        }
    }

    // The turn of the driver runs from approach, where friction costs more, to recess: the worst phase comes first.
    @Test
    void the_curve_runs_from_approach_to_recess() {
        EfficiencyCurve curve = new InvoluteClosedForm(Math.toRadians(20)).curve(64, 8, 0.25);

        assertThat(curve.at(0)).isEqualTo(curve.worst());
        assertThat(curve.at(curve.size() - 1)).isGreaterThan(curve.at(0));
        int nearestPitchPoint = (int) Math.round(curve.size() * (1 - 8 / 2.0 * 0.34202 / (Math.PI * 0.93969)));
        assertThat(curve.at(nearestPitchPoint)).isCloseTo(1, within(0.01));
    }

    // The chapter on teeth: 60 teeth on 8 leaves at 20°, shifted by ±0.53, µ 0.3: about 0.73 at the worst phase, first
    // contact at the pinion's tip of 4 + 1 + 0.53 modules; without shift, at 4 + 1, about 0.81 (worked here: the
    // printed
    // 0.81 is for a contact ratio cut to 1.1, which the unshifted pair has: 1.117).
    @ParameterizedTest
    @CsvSource({"5.53, 0.73", "5, 0.81"})
    void sixty_teeth_on_eight_leaves_lose_what_the_chapter_on_teeth_says(double pinionTip, double worst) {
        double base = 4 * Math.cos(Math.toRadians(20));
        double approach = Math.sqrt(pinionTip * pinionTip - base * base) - 4 * Math.sin(Math.toRadians(20));

        double efficiency = new InvoluteClosedForm(Math.toRadians(20)).efficiency(60, 8, 0.3, -approach);

        assertThat(efficiency).isCloseTo(worst, within(0.006));
    }

    // ISO 53 type A, addendum of one module (from memory); base radius by the cosine of the pressure angle.
    @Test
    void sizes_are_those_of_the_standard_rack() {
        InvoluteClosedForm form = new InvoluteClosedForm(Math.toRadians(20));

        MeshTeeth teeth = form.atAnyModule(60, 8).orElseThrow();
        assertThat(teeth.wheel().tipRadius()).isEqualTo(31);
        assertThat(teeth.pinion().tipRadius()).isEqualTo(5);
        assertThat(teeth.wheel().forceArm()).isCloseTo(28.19078, within(5e-6));
        assertThat(form.label()).contains("closed form").contains("without undercut");
    }

    @ParameterizedTest
    @ValueSource(doubles = {9, 36, 90, -20, Double.NaN})
    void a_pressure_angle_no_one_cuts_is_refused(double degrees) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new InvoluteClosedForm(Math.toRadians(degrees)))
                .withMessageContaining("10 to 35 degrees");
    }

    /** One contact of one pair, module 1. */
    private record Mesh(int wheel, int leaves, double pressureAngle, double friction, double place) {
        static Mesh random(Random random) {
            int leaves = 5 + random.nextInt(20);
            double angle = Math.toRadians(14 + random.nextDouble() * 16);
            double reach = leaves / 2.0 * Math.sin(angle);
            return new Mesh(
                    30 + random.nextInt(120),
                    leaves,
                    angle,
                    random.nextDouble() * 0.5,
                    (2 * random.nextDouble() - 1) * reach);
        }

        InvoluteClosedForm form() {
            return new InvoluteClosedForm(pressureAngle);
        }

        double byMoments() {
            double wheelRadius = wheel / 2.0;
            double pinionRadius = leaves / 2.0;
            double distance = wheelRadius + pinionRadius;
            // Wheel at the origin turning anticlockwise, pinion at (a, 0); the wheel's flank pushes along (sin α, cos
            // α).
            double[] along = {Math.sin(pressureAngle), Math.cos(pressureAngle)};
            double[] point = {wheelRadius + place * along[0], place * along[1]};
            double pinionTurn = -wheelRadius / pinionRadius;
            // Velocity of the wheel's flank over the pinion's, ω × r for both.
            double[] sliding = {-point[1] - pinionTurn * -point[1], point[0] - pinionTurn * (point[0] - distance)};
            double speed = Math.hypot(sliding[0], sliding[1]);
            double[] onPinion = {along[0] + friction * sliding[0] / speed, along[1] + friction * sliding[1] / speed};
            double onPinionMoment = cross(point[0] - distance, point[1], onPinion);
            double handedIn = cross(point[0], point[1], onPinion);
            return onPinionMoment * pinionTurn / handedIn;
        }

        private static double cross(double x, double y, double[] force) {
            return x * force[1] - y * force[0];
        }
    }
}
