// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.making.part;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import drumfall.solver.making.Planes;
import drumfall.solver.making.solid.SizeLimitException;
import drumfall.solver.power.escape.Deadbeat;
import drumfall.solver.power.escape.DeadbeatForm;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.util.AffineTransformation;

/** Pallets and wheel as drawn, laid over each other through a whole beat. */
class PalletsTest {
    private static final PrintSizes PRINT = new PrintSizes(0.4e-3, 0.2e-3, 0.15e-3);
    private static final double RADIUS = 0.03;
    private static final double LIFT = Math.toRadians(2);
    private static final double LOCK = Math.toRadians(0.5);
    private static final double DROP = Math.toRadians(1.5);

    /** Swing the dead faces serve. */
    private static final double SWING = Math.toRadians(4);

    private static Deadbeat escapement(double span, int teeth) {
        return new DeadbeatForm(RADIUS, Math.toRadians(span), LIFT, LOCK, DROP, 0.15, 0, 0).with(teeth);
    }

    private static Pallets pallets(int teeth, boolean clockwise) {
        return new Pallets(escapement(115, teeth), SWING, 0.009, 0.003, 0.007, clockwise, PRINT);
    }

    private static EscapeWheel wheel(int teeth, boolean clockwise) {
        EscapeWheel.Tooth tooth = new EscapeWheel.Tooth(
                teeth, RADIUS, 0.0066, 0.4e-3, Math.toRadians(10), 0.55 * 2 * Math.PI * 0.0234 / teeth);
        return new EscapeWheel(tooth, Crossings.NONE, 0.006, 0.003, clockwise, PRINT);
    }

    @Test
    void nine_and_a_half_spaces_of_thirty_give_becketts_distances() {
        // E. Beckett, A Rudimentary Treatise on Clocks, Watches and Bells, 8th ed. 1903, p. 97: with 9 1/2 spaces of 30
        // between the dead faces the arbors stand 1.84 r apart and the pallets' radius is 1.54 r; printed to two
        // decimals.
        Pallets pallets = pallets(30, true);
        assertThat(pallets.escapement().halfSpan()).isCloseTo(Math.toRadians(57), within(1e-12));
        assertThat(pallets.centreDistance() / RADIUS).isCloseTo(1.84, within(0.005));
        assertThat(pallets.escapement().palletRadius() / RADIUS).isCloseTo(1.54, within(0.005));
    }

    /** A beat's stations: pallets' turn from the middle, and by how much the wheel has turned since the entry's release. */
    private enum Station {
        ENTRY_RELEASES((LIFT - LOCK) / 2, 0, 0),
        ENTRY_LETS_GO((LIFT - LOCK) / 2 - LIFT, 1, 0),
        EXIT_CATCHES((LIFT - LOCK) / 2 - LIFT, 1, 1),
        FAR_LEFT(-SWING, 1, 1),
        EXIT_RELEASES((LOCK - LIFT) / 2, 1, 1),
        EXIT_LETS_GO((LOCK + LIFT) / 2, 2, 1),
        ENTRY_CATCHES((LOCK + LIFT) / 2, 2, 2),
        FAR_RIGHT(SWING, 2, 2);

        private final double turn;
        private final int impulses;
        private final int drops;

        Station(double turn, int impulses, int drops) {
            this.turn = turn;
            this.impulses = impulses;
            this.drops = drops;
        }

        double wheelTurn(int teeth) {
            double working = Math.PI / teeth - DROP;
            return impulses * working + drops * DROP;
        }
    }

    @ParameterizedTest
    @CsvSource({
        "30, true",
        "30, false",
        "36, true",
        "24, false",
    })
    void pallets_and_wheel_touch_but_never_overlap_through_a_beat(int teeth, boolean clockwise) {
        Pallets pallets = pallets(teeth, clockwise);
        Geometry anchor = Planes.of(pallets.solid().slabs().get(0).region());
        Geometry wheel = Planes.of(wheel(teeth, clockwise).section());
        double hand = clockwise ? 1 : -1;
        double a = 1e3 * pallets.centreDistance();
        for (Station station : Station.values()) {
            // A tooth of the drawn wheel lies on the x axis; the entry's release finds one at 90 degrees plus half the
            // span.
            double tooth = Math.PI / 2 + pallets.escapement().halfSpan() - station.wheelTurn(teeth);
            Geometry turnedWheel = turned(wheel, clockwise ? tooth : Math.PI - tooth, 0);
            Geometry turnedAnchor = turned(anchor, hand * station.turn, a);
            // Polygons stay within 0.002 mm of the arcs, so that touching parts overlap by slivers of that width.
            assertThat(turnedWheel.intersection(turnedAnchor).getArea())
                    .as("overlap at %s", station)
                    .isLessThan(0.01);
            assertThat(turnedWheel.distance(turnedAnchor))
                    .as("touch at %s", station)
                    .isLessThan(0.003);
        }
    }

    @Test
    void a_tooth_lands_on_the_dead_face_by_the_lock_and_leaves_at_the_corner() {
        PalletShape shape = new PalletShape(escapement(115, 30));
        double middle = (LOCK - LIFT) / 2;
        double half = escapement(115, 30).halfSpan();
        // Seen from the pallet arbor, the entry tooth stands at pi + half the span; its corner is there at the release
        // and has passed it by the lock when the tooth lands.
        assertThat(shape.entryLocking() - middle - (Math.PI + half)).isCloseTo(0, within(1e-12));
        assertThat(shape.exitLocking() - middle + (LOCK - LIFT) + half).isCloseTo(0, within(1e-12));
    }

    @Test
    void the_wheel_is_the_same_after_a_tooth_s_pitch() {
        Geometry wheel = Planes.of(wheel(30, true).section());
        Geometry next = turned(wheel, 2 * Math.PI / 30, 0);
        // Slivers of polygon rounding along thirty teeth.
        assertThat(wheel.symDifference(next).getArea()).isLessThan(wheel.getArea() * 1e-4);
    }

    @Test
    void only_the_tips_of_the_wheel_reach_the_tip_circle_and_they_lead() {
        Geometry section = Planes.of(wheel(30, false).section());
        Coordinate acting = new Coordinate(30 - 1e-3, -1e-3);
        Coordinate ahead = new Coordinate(29, 0.3);
        GeometryFactory factory = section.getFactory();
        assertThat(section.buffer(0.01).contains(factory.createPoint(acting))).isTrue();
        assertThat(section.contains(factory.createPoint(ahead))).isFalse();
    }

    @Test
    void pallets_that_reach_below_the_roots_are_seen() {
        assertThat(pallets(30, true).reach()).isBetween(0.0, 0.0066 - 0.8e-3);
    }

    @Test
    void pallets_too_thin_to_print_are_refused() {
        assertThatThrownBy(() -> new Pallets(escapement(115, 90), SWING, 0.009, 0.003, 0.007, true, PRINT))
                .isInstanceOf(SizeLimitException.class)
                .hasMessageContaining("two extrusion widths");
    }

    @Test
    void dead_faces_that_would_meet_the_boss_are_refused() {
        assertThatThrownBy(() -> new Pallets(escapement(40, 30), Math.toRadians(12), 0.009, 0.003, 0.007, true, PRINT))
                .hasMessageMatching("The .+ must .+\\. Maybe .+\\.");
    }

    private static Geometry turned(Geometry geometry, double angle, double up) {
        return AffineTransformation.rotationInstance(angle)
                .compose(AffineTransformation.translationInstance(0, up))
                .transform(geometry);
    }
}
