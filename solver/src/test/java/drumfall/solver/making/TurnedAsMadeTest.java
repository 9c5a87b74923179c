// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.making;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import drumfall.solver.parts.PartInertia;
import drumfall.solver.parts.RatchetForm;
import drumfall.solver.parts.Shrouds;
import drumfall.solver.power.Movement;
import drumfall.solver.power.answers.ArborInertia;
import drumfall.solver.rating.TrainRater;
import drumfall.solver.teeth.GearFigures;
import drumfall.solver.train.Mesh;
import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.util.AffineTransformation;

/**
 * How the parts of an arbor resist being turned, against the outlines that are drawn, as polygons of an independent library and
 * summed corner by corner.
 */
class TurnedAsMadeTest {
    private static final double TO_THE_FIFTH = 1e-15;

    static List<PlacedMakes> makes() {
        return PlacedMakes.all().toList();
    }

    /** Triangles from the axis to each side; the sum over their corners is a sixth of what their areas weigh. */
    private static double ring(LineString ring) {
        Coordinate[] c = ring.getCoordinates();
        double sum = 0;
        for (int i = 1; i < c.length; i++) {
            double cross = c[i - 1].x * c[i].y - c[i].x * c[i - 1].y;
            sum += cross * (c[i - 1].x * c[i - 1].x + c[i - 1].x * c[i].x + c[i].x * c[i].x);
            sum += cross * (c[i - 1].y * c[i - 1].y + c[i - 1].y * c[i].y + c[i].y * c[i].y);
        }
        return Math.abs(sum) / 12;
    }

    private static double polar(Geometry figure) {
        double sum = 0;
        for (int i = 0; i < figure.getNumGeometries(); i++) {
            Polygon polygon = (Polygon) figure.getGeometryN(i);
            sum += ring(polygon.getExteriorRing());
            for (int hole = 0; hole < polygon.getNumInteriorRing(); hole++) {
                sum -= ring(polygon.getInteriorRingN(hole));
            }
        }
        return sum;
    }

    /** Of one part, about the arbor's axis once it is moved from where it lies on the bed. */
    private static double inertia(MovementPart part, AffineTransformation moved) {
        return part.density()
                * TO_THE_FIFTH
                * part.solid().slabs().stream()
                        .mapToDouble(slab -> slab.height() * polar(moved.transform(Planes.of(slab.region()))))
                        .sum();
    }

    /** The click lies with its pivot on the origin and its nose on the x axis; it stands beside the ratchet's root, nose on it. */
    private static AffineTransformation beside(RatchetForm ratchet, double gap) {
        double reach = 1e3 * ratchet.contactRadius();
        double pivot = 1e3 * ratchet.clickPivot(gap);
        return AffineTransformation.rotationInstance(-Math.PI / 2)
                .translate(reach, Math.sqrt(pivot * pivot - reach * reach));
    }

    private static double drawn(PlacedMakes made, Movement movement, int arbor) {
        TrainRater rater = new TrainRater(made.brief());
        RatchetForm ratchet =
                movement.parts().drum().ratchet(made.train().drumDiameter().doubleValue());
        double gap = made.brief().parts().gap().si();
        return MovementParts.of(made.brief(), rater.rate(made.train()), movement, MakingSizes.customary())
                .parts()
                .stream()
                .filter(part -> part.mount().arbor().equals(OptionalInt.of(arbor)))
                .filter(part -> part.name().startsWith("arbor-"))
                .mapToDouble(part -> part.count()
                        * inertia(
                                part,
                                part.name().endsWith("click") ? beside(ratchet, gap) : new AffineTransformation()))
                .sum();
    }

    /** Steel pins on the pitch circle, which are bought and not printed, kg m². */
    private static double pins(PlacedMakes made, Movement movement, int arbor) {
        if (arbor == 0 || movement.parts().shrouds().isEmpty()) {
            return 0;
        }
        Mesh mesh = made.train().meshes().get(arbor - 1);
        double module = mesh.module().metres();
        double radius = module * mesh.leafCount() / 2;
        double pin = module * (2 * movement.pinion(mesh).tipRadius() - mesh.leafCount());
        double mass = Shrouds.pinMass(mesh.leafCount(), pin, movement.parts().leafLength());
        return mass * (radius * radius + pin * pin / 8);
    }

    // A thousandth: bores are left out, and rounded leaves end where their thinned flanks cross.
    @ParameterizedTest
    @MethodSource("makes")
    void an_arbor_resists_being_turned_as_its_parts_are_drawn(PlacedMakes made) {
        Movement movement = new TrainRater(made.brief()).movement();
        ArborInertia inertia = new ArborInertia(movement, made.train());
        for (int arbor = 0; arbor <= made.train().meshes().size(); arbor++) {
            double reckoned = inertia.wheel(arbor) + inertia.driven(arbor) - pins(made, movement, arbor);

            assertThat(drawn(made, movement, arbor))
                    .as("arbor %d", arbor + 1)
                    .isCloseTo(reckoned, withinPercentage(0.1));
        }
    }

    // By hand: a lantern's ten pins of 1.5 mm and 20 mm on 10 mm weigh 2.7391 g: 2.7391e-3 (5e-3² + 1.5e-3²/8) =
    // 6.925e-8; two
    // shrouds of 2.5 mm and 6.625 mm less ten holes of 1.65 mm: 1250 · 5e-3 (π 6.625e-3⁴/2 - 10 π 0.825e-3²
    // (0.825e-3²/2 + 5e-3²))
    // = 6.25 (3.0259e-9 - 5.418e-10) = 1.5526e-8. Four figures.
    @Test
    void a_lantern_is_two_shrouds_and_steel_pins() {
        GearFigures pins = new GearFigures(5.75, 5, Double.POSITIVE_INFINITY, 4.25, 0);

        assertThat(PartInertia.lantern(new Shrouds(0.0025, 0.0008), 1250, 0.020, 10, pins, 0.001))
                .isCloseTo(8.478e-8, within(0.003e-8));
    }
}
