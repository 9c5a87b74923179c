// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.making;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import drumfall.solver.layout.Box;
import drumfall.solver.layout.Disc;
import drumfall.solver.layout.Part;
import drumfall.solver.layout.PartKind;
import drumfall.solver.layout.Place;
import drumfall.solver.layout.Span;
import drumfall.solver.layout.size.Face;
import drumfall.solver.layout.size.Side;
import drumfall.solver.making.solid.Slab;
import drumfall.solver.rating.TrainRater;
import drumfall.solver.teeth.outline.Point;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.util.AffineTransformation;

/** What is printed, put back to where it stands in the clock, against the layout that was planned and checked. */
class MadeAsPlannedTest {
    private static final List<PlacedMakes> MAKES = PlacedMakes.all().toList();

    /** Radii of layouts are whole nanometres; the polygons of a part follow its arcs this closely, mm. */
    private static final double ROUND = 1e-3;

    static List<PlacedMakes> makes() {
        return MAKES;
    }

    /** Heights are whole layers: a spacer and a part on it may each be off by half a layer, the frame by one more. */
    private static double rounding(PlacedMakes made) {
        return 1e3 * made.brief().printer().layer().si() + ROUND;
    }

    private static Place middle(PlacedMakes made) {
        Box frame = made.layout().frame();
        return new Place((frame.left() + frame.right()) / 2, (frame.bottom() + frame.top()) / 2);
    }

    /** Distance from a part's axis to its furthest corner in a slab, mm. */
    private static double radius(Slab slab) {
        return Stream.of(Planes.of(slab.region()).getCoordinates())
                .mapToDouble(corner -> Math.hypot(corner.x, corner.y))
                .max()
                .orElseThrow();
    }

    /** The range of a slab along the arbors, mm. */
    private static double[] range(MovementPart part, Mount.Stance stance, Slab slab) {
        double bed = 1e3 * stance.bed();
        return part.mount().up() == Face.FRONT
                ? new double[] {bed + slab.from(), bed + slab.to()}
                : new double[] {bed - slab.to(), bed - slab.from()};
    }

    /** Whether discs of the layout about an axis, as wide as a slab, cover its range without a break. */
    private static boolean covered(List<Disc> discs, double radius, double[] range, double rounding) {
        double reached = range[0] + rounding;
        for (int round = 0; round < discs.size(); round++) {
            for (Disc disc : discs) {
                Span span = disc.span();
                if (disc.radius() * 1e-6 >= radius - ROUND && span.from() * 1e-6 <= reached + ROUND) {
                    reached = Math.max(reached, span.to() * 1e-6);
                }
            }
        }
        return reached >= range[1] - rounding;
    }

    // The layout's check keeps these discs apart; what is printed inside them is kept apart with them.
    @ParameterizedTest
    @MethodSource("makes")
    void every_part_between_the_plates_and_in_the_motion_work_stays_within_what_the_layout_keeps_free(
            PlacedMakes made) {
        int compared = 0;
        for (MovementPart part : made.parts()) {
            if (part.name().contains("plate") || part.name().equals("pillar") || isBeforeTheDial(part)) {
                continue;
            }
            for (Mount.Stance stance : part.mount().stances()) {
                for (Slab slab : part.solid().slabs()) {
                    boolean click = part.name().endsWith("click");
                    double radius = click ? clickReach(made, part, stance) : radius(slab);
                    List<Disc> discs = discsAbout(
                            made,
                            click ? made.part("arbor-1-wheel").mount().stances().get(0) : stance);
                    assertThat(discs).as(part.name()).isNotEmpty();
                    boolean ratchet = click || part.name().endsWith("ratchet");
                    double[] range = behindTheHands(made, range(part, stance, slab));
                    assertThat(covered(ratchet ? withClickSpace(made, discs) : discs, radius, range, rounding(made)))
                            .as(
                                    "%s: radius %.3f from %.3f to %.3f mm in %s",
                                    part.name(), radius, range[0], range[1], discs)
                            .isTrue();
                    compared++;
                }
            }
        }
        assertThat(compared).isGreaterThan(25);
    }

    /** Pipes and the clutch go on before the motion work, where the hands are and nothing else stands. */
    private static double[] behindTheHands(PlacedMakes made, double[] range) {
        double motion = made.layout().planes().motion().get(1).to() * 1e-6;
        return new double[] {Math.min(range[0], motion), Math.min(range[1], motion)};
    }

    private static boolean isBeforeTheDial(MovementPart part) {
        return part.name().endsWith("hand") || part.name().equals("arbor-1-winding-square");
    }

    private static double clickReach(PlacedMakes made, MovementPart click, Mount.Stance stance) {
        double pivot = 1e3
                * Math.abs(stance.x()
                        - made.part("arbor-1-wheel").mount().stances().get(0).x());
        return pivot - click.solid().box().left();
    }

    /**
     * Ratchet and click stand between great wheel and drum, where a part of another arbor that is clear of the drum's disc is
     * clear of them.
     */
    private static List<Disc> withClickSpace(PlacedMakes made, List<Disc> discs) {
        Disc drum = discs.stream()
                .filter(disc -> disc.part().equals(new Part(PartKind.DRUM, 0)))
                .findFirst()
                .orElseThrow();
        Span great = made.layout().planes().ofWheel(0);
        Span all = new Span(
                Math.min(great.from(), drum.span().from()),
                Math.max(great.to(), drum.span().to()));
        return List.of(new Disc(drum.part(), drum.place(), drum.radius(), all));
    }

    /** The layout's discs about a part's axis; those before the plates go with the frame's depth. */
    private static List<Disc> discsAbout(PlacedMakes made, Mount.Stance stance) {
        Place middle = middle(made);
        return made.layout().discs().stream()
                .filter(disc -> Math.hypot(
                                disc.place().x() - middle.x() - 1e9 * stance.x(),
                                disc.place().y() - middle.y() - 1e9 * stance.y())
                        < 10)
                .toList();
    }

    @ParameterizedTest
    @MethodSource("makes")
    void a_wheel_stands_in_the_middle_of_its_plane_and_its_pinion_ends_with_its_own(PlacedMakes made) {
        int last = made.train().meshes().size();
        for (int arbor = 1; arbor <= last; arbor++) {
            String name = "arbor-" + (arbor + 1) + (arbor == last ? "-escape-wheel-and-pinion" : "-wheel-and-pinion");
            MovementPart part = made.part(name);
            Mount.Stance stance = part.mount().stances().get(0);
            double[] wheel = range(part, stance, wheel(made, part));
            Span plane = made.layout().planes().ofWheel(arbor);
            assertThat((wheel[0] + wheel[1]) / 2).isCloseTo((plane.from() + plane.to()) / 2e6, within(rounding(made)));
            boolean lantern = made.name().equals("lantern");
            MovementPart end = lantern ? made.part("arbor-" + (arbor + 1) + "-upper-shroud") : part;
            Mount.Stance at = end.mount().stances().get(0);
            Slab top = end.solid().slabs().get(end.solid().slabs().size() - 1);
            double[] pinion = range(end, at, top);
            Span driven = made.layout().planes().ofPinion(arbor);
            boolean front = part.mount().up() == Face.FRONT;
            assertThat(front ? pinion[1] : pinion[0])
                    .as(name)
                    .isCloseTo((front ? driven.to() : driven.from()) / 1e6, within(rounding(made)));
        }
    }

    // Beckett 1903, pp. 279-281, has the wheel run between the shrouds; it must not rub on either.
    @Test
    void a_wheel_clears_both_shrouds_of_its_lantern_pinion_by_gap_and_end_shake() {
        PlacedMakes made = MAKES.stream()
                .filter(one -> one.name().equals("lantern"))
                .findFirst()
                .orElseThrow();
        for (int arbor = 1; arbor < made.train().meshes().size(); arbor++) {
            MovementPart wheel = made.part("arbor-" + arbor + (arbor == 1 ? "-wheel" : "-wheel-and-pinion"));
            MovementPart pinion = made.part("arbor-" + (arbor + 1) + "-wheel-and-pinion");
            MovementPart shroud = made.part("arbor-" + (arbor + 1) + "-upper-shroud");
            double[] driving = range(
                    wheel, wheel.mount().stances().get(0), wheel.solid().slabs().get(0));
            double[] lower = range(
                    pinion,
                    pinion.mount().stances().get(0),
                    pinion.solid().slabs().get(1));
            double[] upper = range(
                    shroud,
                    shroud.mount().stances().get(0),
                    shroud.solid().slabs().get(0));
            double asked = 1e3
                    * (made.brief().parts().axialGap().si()
                            + made.brief().fit().endShake().high().si());
            assertThat(Math.max(driving[0] - lower[1], lower[0] - driving[1]))
                    .isGreaterThanOrEqualTo(asked - 2 * rounding(made));
            assertThat(Math.max(driving[0] - upper[1], upper[0] - driving[1]))
                    .isGreaterThanOrEqualTo(asked - 2 * rounding(made));
        }
    }

    @ParameterizedTest
    @MethodSource("makes")
    void the_escape_wheel_stays_on_the_pallets_at_either_end_of_both_shakes(PlacedMakes made) {
        MovementPart wheel = made.escapeWheel();
        MovementPart pallets = made.part("pallets");
        double[] teeth = range(
                wheel, wheel.mount().stances().get(0), wheel.solid().slabs().get(0));
        double[] faces = range(
                pallets,
                pallets.mount().stances().get(0),
                pallets.solid().slabs().get(0));
        double shake = 1e3 * made.brief().fit().endShake().high().si();
        assertThat(teeth[0] - faces[0]).isCloseTo(shake, within(rounding(made)));
        assertThat(faces[1] - teeth[1]).isCloseTo(shake, within(rounding(made)));
    }

    /** What a part's wheel takes of it: slabs from the bed on, more than one where it has a bearing's seat. */
    private static Slab wheel(PlacedMakes made, MovementPart part) {
        double thickness = 1e3 * made.brief().parts().wheelThickness().si();
        return new Slab(0, thickness, part.solid().slabs().get(0).region());
    }

    private static Geometry inElevation(MovementPart part, int slab) {
        // A part that faces the back has been turned over: what lay on the right stands on the left.
        int sign = part.mount().up() == Face.FRONT ? 1 : -1;
        return AffineTransformation.scaleInstance(sign, 1)
                .transform(Planes.of(part.solid().slabs().get(slab).region()));
    }

    private static boolean has(Geometry section, double radius, double angle) {
        return section.contains(
                section.getFactory().createPoint(new Coordinate(radius * Math.cos(angle), radius * Math.sin(angle))));
    }

    private static Coordinate furthest(Geometry section) {
        return Stream.of(section.getCoordinates())
                .max(Comparator.comparingDouble(corner -> Math.hypot(corner.x, corner.y)))
                .orElseThrow();
    }

    // The centre turns clockwise, and each mesh turns its follower the other way.
    private static boolean clockwise(int meshesAway) {
        return meshesAway % 2 == 0;
    }

    // Dead beat escape wheels are drawn with the tips of their teeth forward of the feet; from memory.
    @ParameterizedTest
    @MethodSource("makes")
    void the_teeth_of_the_escape_wheel_lean_the_way_it_turns_seen_from_the_dial(PlacedMakes made) {
        Geometry section = inElevation(made.escapeWheel(), 0);
        Coordinate tip = furthest(section);
        double radius = Math.hypot(tip.x, tip.y);
        double at = Math.atan2(tip.y, tip.x);
        double pitch = 2 * Math.PI / made.train().escapeTeeth();
        int before = 0;
        int behind = 0;
        boolean turnsClockwise =
                clockwise(made.train().meshes().size() - made.train().meshesAbove());
        for (int step = 1; step < 100; step++) {
            double aside = step * pitch / 2 / 100;
            double forward = turnsClockwise ? -aside : aside;
            before += has(section, radius - 2, at + forward) ? 1 : 0;
            behind += has(section, radius - 2, at - forward) ? 1 : 0;
        }
        assertThat(behind).isGreaterThan(before);
    }

    @Test
    void some_of_these_escape_wheels_face_the_dial_and_some_the_back_plate() {
        assertThat(MAKES).extracting(made -> made.escapeWheel().mount().up()).contains(Face.FRONT, Face.REAR);
        assertThat(MAKES)
                .extracting(made -> made.part("arbor-1-ratchet").mount().up())
                .contains(Face.FRONT, Face.REAR);
    }

    // The line pulls down its side of the drum; a steep face with material behind it pushes on the click.
    @ParameterizedTest
    @MethodSource("makes")
    void the_ratchet_drives_the_click_the_way_the_line_pulls(PlacedMakes made) {
        Geometry section = inElevation(made.part("arbor-1-ratchet"), 0);
        Coordinate tip = furthest(section);
        double at = Math.atan2(tip.y, tip.x);
        double radius = Math.hypot(tip.x, tip.y) - 0.5;
        boolean pulledClockwise = made.layout().side() == Side.RIGHT;
        double forward = pulledClockwise ? -0.01 : 0.01;
        assertThat(has(section, radius, at - forward)).isTrue();
        assertThat(has(section, radius, at + forward)).isFalse();
        assertThat(pulledClockwise).isEqualTo(clockwise(made.train().meshesAbove()));
    }

    // A tooth waits on the entry pallet's outer face: seen from the dial the entry pallet is where teeth come up from.
    @ParameterizedTest
    @MethodSource("makes")
    void the_pallets_are_drawn_for_the_sense_in_which_the_escape_wheel_turns(PlacedMakes made) {
        Geometry section = inElevation(made.part("pallets"), 0);
        boolean turnsClockwise =
                clockwise(made.train().meshes().size() - made.train().meshesAbove());
        Coordinate outermost = furthest(section);
        // Its furthest corner is the exit pallet's, on the side where teeth go down: the right if the wheel is
        // clockwise.
        assertThat(outermost.x > 0).isEqualTo(turnsClockwise);
    }

    // A plate's holes, put back, lie where the arbors are; the front plate was printed with its inner side up.
    @ParameterizedTest
    @MethodSource("makes")
    void both_plates_have_a_hole_at_every_arbor_of_the_train(PlacedMakes made) {
        for (String plate : List.of("front-plate", "back-plate")) {
            List<MovementPart> pieces = made.parts().stream()
                    .filter(part -> part.name().startsWith(plate))
                    .toList();
            for (int arbor = 0; arbor <= made.train().meshes().size(); arbor++) {
                Place place = made.layout().place(arbor).minus(middle(made));
                Coordinate at = new Coordinate(place.x() / 1e6, place.y() / 1e6);
                assertThat(pieces).noneMatch(piece -> {
                    Geometry section = inElevation(piece, 0);
                    return section.contains(section.getFactory().createPoint(at));
                });
            }
        }
    }

    @Test
    void turning_over_and_back_is_nothing() {
        Mount over = new Mount(OptionalInt.empty(), Face.REAR, List.of());
        Point point = new Point(3, 4);
        assertThat(over.turned(over.turned(point))).isEqualTo(point);
    }

    @ParameterizedTest
    @MethodSource("makes")
    void what_stands_on_an_arbor_is_counted_once_in_its_volume(PlacedMakes made) {
        TrainRater rater = new TrainRater(made.brief());
        MovementParts movement = MovementParts.of(rater, rater.rate(made.train()), Optional.of(made.layout()));
        double onArbors = movement.arborVolumes(made.parts()).stream()
                .mapToDouble(volume -> volume)
                .sum();
        double all = made.parts().stream()
                .filter(part -> part.name().startsWith("arbor-")
                        || part.name().startsWith("cannon")
                        || part.name().startsWith("hour")
                        || part.name().equals("minute-hand"))
                .mapToDouble(part -> part.count() * part.solid().volume() * 1e-9)
                .sum();
        assertThat(onArbors).isCloseTo(all, within(1e-15));
    }
}
