// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.power.escape;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import drumfall.solver.teeth.outline.Point;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class PalletDrawingTest {
    private static final int SAMPLES = "full".equals(System.getProperty("drumfall.samples")) ? 2000 : 100;

    // Beckett, 8th ed. 1903, p. 97: nine and a half spaces of thirty between the dead faces; arbors 1.84 and dead faces
    // 1.54 of the wheel's radius apart, to half of the last digit.
    @Test
    void pallets_over_nine_and_a_half_spaces_of_thirty_are_becketts() {
        PalletDrawing drawing = new PalletDrawing(form(1, 114, 4, 1, 1.5).with(30));

        assertThat(drawing.spacesEmbraced()).isEqualTo(9.5);
        assertThat(drawing.centreDistance()).isCloseTo(1.84, within(0.005));
        assertThat(drawing.entry().lockingRadius()).isCloseTo(1.54, within(0.005));
    }

    // The definition itself: a locking face stands upright on the tooth's path, and both lie on one circle about the
    // arbor.
    @ParameterizedTest
    @EnumSource(Pallet.Side.class)
    void the_locking_face_is_an_arc_about_the_pallet_arbor(Pallet.Side side) {
        PalletDrawing drawing = new PalletDrawing(form(0.026, 95, 4, 1, 1.5).with(30));
        Pallet pallet = new Pallet(drawing, side);
        var face = pallet.lockingFace(0.06);

        assertThat(face.centre()).isEqualTo(drawing.palletArbor());
        assertThat(face.radius()).isCloseTo(drawing.escapement().palletRadius(), within(1e-15));
        assertThat(face.end().distance(drawing.palletArbor())).isCloseTo(face.radius(), within(1e-15));
        // As long as the swing beyond the corner's unlocking: A less e - ℓ, here 0.06 - 1.5°.
        assertThat(Math.abs(face.sweep())).isCloseTo(0.06 - Math.toRadians(1.5), within(1e-12));
    }

    // With the pendulum at the escape angle the discharging corner lies on the wheel's circle, the working turn from
    // the
    // locking circle; at the unlocking angle the locking corner lies on it.
    @Test
    void each_corner_meets_the_tooth_at_its_own_angle_of_the_pendulum() {
        Random random = new Random(21);
        for (int i = 0; i < SAMPLES; i++) {
            PalletDrawing drawing = random(random);
            DeadbeatForm form = drawing.escapement().form();
            for (Pallet.Side side : Pallet.Side.values()) {
                Pallet pallet = new Pallet(drawing, side);
                double lifted = side == Pallet.Side.ENTRY ? -1 : 1;
                Point unlocking = about(
                        drawing.palletArbor(), pallet.lockingCorner(), -lifted * (form.escapeAngle() - form.lock()));
                Point escaping = about(drawing.palletArbor(), pallet.dischargingCorner(), lifted * form.escapeAngle());

                assertThat(Math.hypot(unlocking.x(), unlocking.y())).isCloseTo(form.wheelRadius(), within(1e-14));
                assertThat(Math.hypot(escaping.x(), escaping.y())).isCloseTo(form.wheelRadius(), within(1e-14));
                assertThat(Math.abs(Math.atan2(escaping.x(), escaping.y()) - Math.atan2(unlocking.x(), unlocking.y())))
                        .isCloseTo(drawing.escapement().workingTurn(), within(1e-12));
            }
        }
    }

    // A tooth let go by one pallet leaves another half a space short of the other pallet's face; the working turn done,
    // the drop is left.
    @Test
    void what_is_left_of_half_a_tooth_space_is_the_drop() {
        Random random = new Random(22);
        for (int i = 0; i < SAMPLES; i++) {
            PalletDrawing drawing = random(random);
            double pitch = 2 * Math.PI / drawing.escapement().teeth();
            double span = 2 * drawing.escapement().halfSpan();

            assertThat(span / pitch).isCloseTo(drawing.spacesEmbraced(), within(1e-12));
            assertThat(pitch / 2 - drawing.escapement().workingTurn())
                    .isCloseTo(drawing.escapement().form().drop(), within(1e-15));
        }
    }

    @Test
    void a_wider_swing_reaches_deeper_into_the_wheel() {
        PalletDrawing drawing = new PalletDrawing(form(0.026, 95, 4, 1, 1.5).with(30));

        assertThat(drawing.reach(0.05)).isPositive();
        assertThat(drawing.reach(0.08)).isGreaterThan(drawing.reach(0.05));
    }

    @Test
    void the_drawn_wedge_is_the_balances_wedge_for_a_small_lift() {
        Deadbeat small = form(0.026, 95, 0.02, 0.01, 5.98).with(30);
        double wedge = Math.atan(
                small.palletRadius() * small.form().lift() / (small.form().wheelRadius() * small.workingTurn()));
        PalletDrawing drawing = new PalletDrawing(small);

        // Both angles are of first order in lift and turn, what is left out of second: 4e-4 rad here.
        assertThat(drawing.entry().wedge()).isCloseTo(wedge, within(5e-4));
        assertThat(drawing.exit().wedge()).isCloseTo(wedge, within(5e-4));
    }

    // Without friction nothing can be lost on a face: work in is work out, at every place and over the whole.
    @Test
    void a_smooth_face_passes_on_all_of_the_work() {
        Random random = new Random(23);
        for (int i = 0; i < SAMPLES; i++) {
            PalletDrawing drawing = random(random);
            for (Pallet.Side side : Pallet.Side.values()) {
                ImpulseTrace trace = new ImpulseTrace(new Pallet(drawing, side));
                double turn = random.nextDouble() * drawing.escapement().workingTurn();

                assertThat(trace.torqueRatio(turn, 0) * trace.turnRatio(turn)).isCloseTo(1, within(1e-11));
                assertThat(trace.efficiency(0)).isCloseTo(1, within(1e-11));
            }
        }
    }

    @Test
    void the_impulse_runs_from_the_unlocking_to_the_escape_angle() {
        Random random = new Random(24);
        for (int i = 0; i < SAMPLES; i++) {
            PalletDrawing drawing = random(random);
            DeadbeatForm form = drawing.escapement().form();
            for (Pallet.Side side : Pallet.Side.values()) {
                ImpulseTrace trace = new ImpulseTrace(new Pallet(drawing, side));
                double step = 1e-5;
                double middle = drawing.escapement().workingTurn() / 2;

                assertThat(trace.palletAngle(0)).isCloseTo(form.lock() - form.escapeAngle(), within(1e-10));
                assertThat(trace.palletAngle(2 * middle)).isCloseTo(form.escapeAngle(), within(1e-10));
                // The exact turn ratio against the difference of two angles; its own error is about 1e-8.
                assertThat(trace.turnRatio(middle))
                        .isCloseTo(
                                (trace.palletAngle(middle + step) - trace.palletAngle(middle - step)) / (2 * step),
                                within(1e-6));
            }
        }
    }

    // The drawing keeps what the balance leaves out; how far apart the two are is shown by the bench, not held here.
    // Friction always costs, and the mean of both pallets lies within a tenth of the wedge's share for a usual form.
    @Test
    void the_drawn_faces_pass_on_about_what_the_wedge_does() {
        Deadbeat escapement = form(0.026, 95, 4, 1, 1.5).with(30);
        PalletDrawing drawing = new PalletDrawing(escapement);
        double entry = new ImpulseTrace(drawing.entry()).efficiency(0.2);
        double exit = new ImpulseTrace(drawing.exit()).efficiency(0.2);

        assertThat(entry).isStrictlyBetween(0.0, 1.0);
        assertThat(exit).isStrictlyBetween(0.0, 1.0);
        assertThat((entry + exit) / 2).isCloseTo(escapement.impulseEfficiency(), within(0.1));
    }

    @Test
    void an_escapement_that_does_not_exist_cannot_be_drawn() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new PalletDrawing(form(1, 95, 4, 1, 6.5).with(30)));
    }

    private static Point about(Point centre, Point place, double angle) {
        Point turned = new Point(place.x() - centre.x(), place.y() - centre.y()).turned(angle);
        return new Point(turned.x() + centre.x(), turned.y() + centre.y());
    }

    private static PalletDrawing random(Random random) {
        while (true) {
            Deadbeat escapement = form(
                            0.01 + random.nextDouble() * 0.04,
                            60 + random.nextDouble() * 60,
                            1 + random.nextDouble() * 5,
                            random.nextDouble() * 2,
                            random.nextDouble() * 3)
                    .with(12 + random.nextInt(25));
            if (escapement.exists()) {
                return new PalletDrawing(escapement);
            }
        }
    }

    private static DeadbeatForm form(double wheelRadius, double span, double lift, double lock, double drop) {
        return new DeadbeatForm(
                wheelRadius,
                Math.toRadians(span),
                Math.toRadians(lift),
                Math.toRadians(lock),
                Math.toRadians(drop),
                0.2,
                1e-6,
                0.03);
    }
}
