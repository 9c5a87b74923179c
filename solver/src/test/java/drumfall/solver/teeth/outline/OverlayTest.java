// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.teeth.outline;

import static org.assertj.core.api.Assertions.assertThat;

import drumfall.solver.teeth.contact.Contact;
import drumfall.solver.teeth.contact.ContactPath;
import drumfall.solver.teeth.contact.ContactSample;
import drumfall.solver.teeth.contact.MeshConditions;
import drumfall.solver.teeth.contact.MeshTracer;
import drumfall.solver.teeth.contact.Sampling;
import drumfall.solver.teeth.contact.SeededMeshes;
import drumfall.solver.teeth.form.LanternPinion;
import drumfall.solver.teeth.form.ToothForm;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.util.AffineTransformation;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

/** The contact analysis against polygons of the drawn outlines, laid over each other. */
class OverlayTest {
    /** Module 1 mm, arcs within 0.2 micrometres of the flank and chords within 0.2 micrometres of the arcs. */
    private static final double ERROR = 2e-4;

    /** Both polygons' errors, twice each: how deep they may seem to overlap. */
    private static final double DEPTH = 4 * ERROR;

    private static final double APART = 5e-3;
    private static final double THINNING = 0.15;

    static Stream<SeededMeshes.Case> seededPairs() {
        return SeededMeshes.of(10, 200);
    }

    @ParameterizedTest
    @MethodSource("seededPairs")
    void the_flanks_touch_without_overlap_through_the_pitch(SeededMeshes.Case c) {
        MeshConditions thinned = new MeshConditions(
                c.conditions().centreError(), THINNING, c.pair().follower() instanceof LanternPinion ? 0 : THINNING);
        ContactPath path = MeshTracer.trace(c.pair(), thinned, Sampling.SWIFT);
        assertThat(path.clearances().leastBacklash()).isPositive();
        Geometry driver = gear(c.pair().driver());
        Geometry follower = gear(c.pair().follower());
        double a = c.pair().centreDistance() + thinned.centreError();
        for (ContactSample sample : path.withFriction(0).samples()) {
            Contact touch = sample.contacts().get(0);
            for (int hand = -1; hand <= 1; hand += 2) {
                Geometry turned = near(turn(driver, hand * touch.driverAngle(), 0), a, c);
                // The follower's angle counts clockwise from the line to the driver's centre.
                double angle = Math.PI - touch.followerAngle();
                Geometry held = near(turn(follower, hand * angle, a), a, c);
                assertThat(held.distance(turned)).isLessThan(APART);
                double ahead = DEPTH / c.pair().follower().pitchRadius();
                Geometry clear = near(turn(follower, hand * (angle - 2 * ahead), a), a, c);
                assertThat(OverlayNGRobust.overlay(turned, clear, OverlayNG.INTERSECTION)
                                .getArea())
                        .isLessThan(DEPTH * DEPTH);
            }
        }
    }

    /** The part of a gear in reach of the other: a square about the pitch point, where all contact lies. */
    private static Geometry near(Geometry gear, double a, SeededMeshes.Case c) {
        double middle = a - c.pair().follower().pitchRadius();
        Envelope window = new Envelope(middle - 4, middle + 4, -6, 6);
        return OverlayNGRobust.overlay(gear, new GeometryFactory().toGeometry(window), OverlayNG.INTERSECTION);
    }

    private static Geometry gear(ToothForm form) {
        if (form instanceof LanternPinion pins) {
            Polygon[] circles = new Polygon[pins.leafCount()];
            for (int i = 0; i < circles.length; i++) {
                Point centre = Point.polar(pins.pitchRadius(), i * pins.pitchAngle());
                circles[i] = OutlineTest.polygon(Ring.circle(centre, pins.pinDiameter() / 2), ERROR);
            }
            return new GeometryFactory().createMultiPolygon(circles);
        }
        return OutlineTest.polygon(ToothRing.of(form, 1, THINNING, ERROR), ERROR);
    }

    private static Geometry turn(Geometry gear, double angle, double x) {
        return AffineTransformation.rotationInstance(angle)
                .compose(AffineTransformation.translationInstance(x, 0))
                .transform(gear);
    }
}
