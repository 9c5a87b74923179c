// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.plugin.outlines;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class GearTest {
    private static final double TWENTY = Math.toRadians(20);

    /** Involute function to seven decimals, as every gear handbook tabulates it (values recomputed from tan a - a). */
    @ParameterizedTest
    @CsvSource({"14.5, 0.0055448", "20, 0.0149044", "22.5, 0.0215145", "25, 0.0299753", "30, 0.0537515"})
    void the_involute_function_is_the_tabulated_one(double degrees, double involute) {
        assertThat(Gear.involute(Math.toRadians(degrees))).isCloseTo(involute, within(5e-8));
    }

    /** m 3, 20 degrees, 12 and 24 teeth: base circles of KHK, <i>Gear Technical Reference</i>, positive-shifted gear. */
    @ParameterizedTest
    @CsvSource({"12, 36, 33.8289", "24, 72, 67.6579"})
    void pitch_and_base_diameter_are_those_of_the_worked_example(int count, double pitch, double base) {
        Gear gear = new Gear(count, 3, TWENTY);
        assertThat(2 * gear.pitchRadius()).isEqualTo(pitch);
        assertThat(2 * gear.baseRadius()).isCloseTo(base, within(5e-5));
    }

    /**
     * Span over k teeth, W = m cos a ((k - 1/2) pi + z inv a): m 2, z 20 gives 15.3209 over 3 teeth ("Mot Spur Gear" tables).
     * A tangent of the base circle crosses both outer flanks at right angles, so the outline is measured along it; each
     * crossing is off by at most the chord error.
     */
    @ParameterizedTest
    @CsvSource({"20, 2, 3, 15.3209", "20, 2, 1, 3.5124"})
    void the_span_over_teeth_measured_on_the_outline_is_the_tabulated_one(
            int count, double module, int k, double span) {
        Gear gear = new Gear(count, module, TWENTY);
        List<Double> crossings = crossings(gear.outline(), gear.baseRadius());
        int middle = crossings.size() / 2;
        double measured = crossings.get(middle + k - 1) - crossings.get(middle - k);
        assertThat(measured).isCloseTo(span, within(2 * Gear.CHORD_ERROR));
    }

    /** Places, sorted, at which the outline crosses the line x = distance near the tooth on the x axis. */
    private static List<Double> crossings(List<Point> outline, double distance) {
        List<Double> crossings = new ArrayList<>();
        for (int i = 0; i < outline.size(); i++) {
            Point from = outline.get(i);
            Point to = outline.get((i + 1) % outline.size());
            if ((from.x() - distance) * (to.x() - distance) < 0) {
                double share = (distance - from.x()) / (to.x() - from.x());
                crossings.add(from.y() + share * (to.y() - from.y()));
            }
        }
        crossings.sort(null);
        return crossings;
    }

    @ParameterizedTest
    @CsvSource({
        "5, 1, 20",
        "8, 1.5, 20",
        "12, 1, 14.5",
        "64, 1, 20",
        "96, 1.5, 20",
        "300, 0.5, 20",
        "30, 1, 35",
        "6, 2, 35"
    })
    void every_tooth_is_on_the_outline_and_nothing_leaves_the_tip_and_root_circles(
            int count, double module, double degrees) {
        Gear gear = new Gear(count, module, Math.toRadians(degrees));
        List<Point> outline = gear.outline();
        assertThat(OutlineMeasure.teeth(outline)).isEqualTo(count);
        assertThat(outline)
                .allSatisfy(point -> assertThat(Math.hypot(point.x(), point.y()))
                        .isBetween(gear.rootRadius() - 1e-9, gear.tipRadius() + 1e-9));
        assertThat(OutlineMeasure.crossesItself(outline)).isFalse();
        assertThat(OutlineMeasure.area(outline)).as("counter-clockwise").isPositive();
    }

    /** Half of the pitch circle is tooth, half is gap: thickness pi m / 2 (4.7124 mm at m 3, SDP table 10-2). */
    @Test
    void a_tooth_is_half_a_pitch_thick_at_the_pitch_circle() {
        Gear gear = new Gear(24, 3, TWENTY);
        assertThat(2 * gear.halfAngle(gear.pitchRadius()) * gear.pitchRadius()).isCloseTo(4.7124, within(5e-5));
    }

    /** Each chord's middle lies nearer to the true flank than the stated error; the flank itself is walked in small steps. */
    @ParameterizedTest
    @CsvSource({"8, 1.5", "96, 1.5", "120, 4"})
    void a_flank_keeps_within_the_chord_error(int count, double module) {
        Gear gear = new Gear(count, module, TWENTY);
        List<Point> outline = gear.outline();
        for (int i = 0; i + 1 < outline.size() / count; i++) {
            Point middle = new Point(
                    (outline.get(i).x() + outline.get(i + 1).x()) / 2,
                    (outline.get(i).y() + outline.get(i + 1).y()) / 2);
            assertThat(distanceToTrueTooth(gear, middle)).isLessThanOrEqualTo(Gear.CHORD_ERROR);
        }
    }

    private static double distanceToTrueTooth(Gear gear, Point point) {
        double radius = Math.hypot(point.x(), point.y());
        double toCircles = Math.min(Math.abs(radius - gear.tipRadius()), Math.abs(radius - gear.rootRadius()));
        double nearest = toCircles;
        int steps = 20_000;
        for (int i = 0; i <= steps; i++) {
            double at = gear.rootRadius() + (gear.tipRadius() - gear.rootRadius()) * i / steps;
            nearest = Math.min(nearest, Point.polar(at, gear.halfAngle(at)).distanceTo(point));
            nearest = Math.min(nearest, Point.polar(at, -gear.halfAngle(at)).distanceTo(point));
        }
        return nearest;
    }

    @Test
    void a_tooth_of_few_leaves_and_a_wide_angle_ends_in_a_point_below_the_tip_circle() {
        Gear pointed = new Gear(5, 1, Math.toRadians(35));
        assertThat(pointed.crestRadius()).isBetween(pointed.pitchRadius(), pointed.tipRadius() - 0.01);
        assertThat(pointed.halfAngle(pointed.crestRadius())).isCloseTo(0, within(1e-9));
        assertThat(OutlineMeasure.teeth(pointed.outline())).isEqualTo(5);
    }

    @Test
    void fewer_than_four_teeth_have_no_outline() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Gear(3, 1, TWENTY))
                .withMessageContaining("(3)")
                .withMessageContaining("Maybe");
        assertThat(new Gear(4, 1, TWENTY).outline()).isNotEmpty();
    }
}
