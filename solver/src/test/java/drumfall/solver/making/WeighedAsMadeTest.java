// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.making;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import drumfall.solver.brief.Brief;
import drumfall.solver.brief.BundledBriefs;
import drumfall.solver.making.part.Crossings;
import drumfall.solver.making.part.EscapeWheel;
import drumfall.solver.making.part.PrintSizes;
import drumfall.solver.parts.EscapeToothSize;
import drumfall.solver.parts.PartStock;
import drumfall.solver.power.ArborRole;
import drumfall.solver.power.Movement;
import drumfall.solver.power.WeightWalk;
import drumfall.solver.power.books.LoadedArbor;
import drumfall.solver.power.books.LoadedClock;
import drumfall.solver.rating.TrainRater;
import drumfall.solver.samples.Briefs;
import drumfall.solver.samples.Trains;
import drumfall.solver.train.Mesh;
import drumfall.solver.train.Train;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** What the walk to the weight takes an arbor to weigh, against what is printed for it. */
class WeighedAsMadeTest {
    private static final List<PlacedMakes> MAKES = PlacedMakes.all().toList();
    private static final double MICROGRAMS = 1e9;

    static List<PlacedMakes> makes() {
        return MAKES;
    }

    static List<String> briefs() {
        return BundledBriefs.names();
    }

    /** Wheel, pinion and what else is printed to stand on an arbor between the plates or to wind it, µg. */
    private static double made(List<MovementPart> parts, int arbor) {
        return parts.stream()
                .filter(part -> part.mount().arbor().equals(OptionalInt.of(arbor)))
                .filter(part -> part.name().startsWith("arbor-") && !part.name().contains("spacer"))
                .mapToDouble(part -> part.count() * part.mass() * MICROGRAMS)
                .sum();
    }

    private static long weighed(Movement movement, Train train, int arbor) {
        PartStock stock = movement.parts();
        long wheel = arbor == train.meshes().size()
                ? stock.escapeWheelMass()
                : movement.wheelMass(train.meshes().get(arbor));
        long driven = arbor == 0
                ? stock.drumMass(train.drumDiameter().doubleValue())
                : movement.printedPinionMass(train.meshes().get(arbor - 1));
        return wheel + driven;
    }

    /** What leaves weigh by which a placed pinion is longer than from one plane to the next, µg; shrouds are as they were. */
    private static double reach(PlacedMakes made, Movement movement, int arbor) {
        if (arbor == 0 || movement.parts().shrouds().isPresent()) {
            return 0;
        }
        Mesh mesh = made.train().meshes().get(arbor - 1);
        double module = mesh.module().metres();
        double section =
                module * module * movement.pinion(mesh).area(movement.parts().thinning() / module);
        double longer =
                made.levels().stands().get(arbor).between() - movement.parts().leafLength();
        return movement.parts().density() * section * longer * MICROGRAMS;
    }

    /** What bores take off wheel and pinion of an arbor, µg. */
    private static double bores(TrainRater rater, Train train, int arbor) {
        return rater.loads().bores(WeightWalk.role(train, arbor)) * MICROGRAMS;
    }

    // 1.5 %: heights are whole layers, 0.2 mm of some 13; bores that run on their rods are wider, at most 0.8 %; the
    // tube between
    // some shrouds, 1.3 %, is left out.
    @ParameterizedTest
    @MethodSource("makes")
    void every_arbor_is_weighed_as_it_is_made_for_its_place(PlacedMakes made) {
        TrainRater rater = new TrainRater(made.brief());
        Movement movement = rater.movement();
        for (int arbor = 0; arbor <= made.train().meshes().size(); arbor++) {
            double weighed = weighed(movement, made.train(), arbor)
                    - bores(rater, made.train(), arbor)
                    + reach(made, movement, arbor);
            assertThat(made(made.parts(), arbor)).as("arbor %d", arbor + 1).isCloseTo(weighed, withinPercentage(1.5));
        }
    }

    private static double spacers(List<MovementPart> parts, int arbor) {
        return parts.stream()
                .filter(part -> part.mount().arbor().equals(OptionalInt.of(arbor)))
                .filter(part -> part.name().startsWith("arbor-") && part.name().contains("spacer"))
                .mapToDouble(part -> part.count() * part.mass())
                .sum();
    }

    @ParameterizedTest
    @MethodSource("makes")
    void no_spacers_are_heavier_than_they_count(PlacedMakes made) {
        TrainRater rater = new TrainRater(made.brief());
        for (int arbor = 0; arbor <= made.train().meshes().size(); arbor++) {
            assertThat(spacers(made.parts(), arbor))
                    .as("arbor %d", arbor + 1)
                    .isLessThanOrEqualTo(rater.loads().spacers(WeightWalk.role(made.train(), arbor)));
        }
    }

    private static List<MovementPart> dial(PlacedMakes made) {
        int centre = made.train().meshesAbove();
        return made.parts().stream()
                .filter(part -> part.mount().arbor().equals(OptionalInt.of(centre)))
                .filter(part -> !part.name().startsWith("arbor-"))
                .toList();
    }

    /** Moment of mass of a part about the middle of the front plate, kg m; slab by slab, from where it stands. */
    private static double moment(MovementPart part, double middle) {
        double bed = part.mount().stances().get(0).bed();
        return part.solid().slabs().stream()
                .mapToDouble(slab -> part.mass()
                        * slab.volume()
                        / part.solid().volume()
                        * (bed + 1e-3 * (slab.from() + slab.to()) / 2 - middle))
                .sum();
    }

    // Hundredths: teeth are drawn as lines, and leaves lean where they are thinned.
    @ParameterizedTest
    @MethodSource("makes")
    void motion_work_and_hands_are_weighed_as_they_are_made_and_where_they_stand(PlacedMakes made) {
        TrainRater rater = new TrainRater(made.brief());
        List<MovementPart> parts = dial(made);
        double mass = parts.stream().mapToDouble(MovementPart::mass).sum();
        double plate = made.brief().frame().plate().si();
        double middle = 1e-9 * made.layout().planes().innerDepth() + plate / 2;
        double moment = parts.stream().mapToDouble(part -> moment(part, middle)).sum();

        assertThat(parts).hasSize(5);
        assertThat(mass).isCloseTo(rater.loads().dialMass(), withinPercentage(0.02));
        assertThat(moment / mass).isCloseTo(rater.loads().dialOverhang(), within(1e-5));
    }

    // Spacers count as long as they can get: up to 1.3 % of these weights, the frame of the lantern's brief being twice
    // as deep
    // as its movement. Of what is weighed, pinions that reach over a plane are too short: less than 0.1 %.
    @ParameterizedTest
    @MethodSource("makes")
    void the_least_weight_is_that_of_the_parts_as_they_are_made(PlacedMakes made) {
        TrainRater rater = new TrainRater(made.brief());
        Train train = made.train();
        LoadedClock weighed = rater.loaded(train);
        LoadedClock clock = weighed;
        for (int arbor = 0; arbor <= train.meshes().size(); arbor++) {
            LoadedArbor running = weighed.running().arbors().get(arbor);
            LoadedArbor starting = weighed.starting().arbors().get(arbor);
            ArborRole role = WeightWalk.role(train, arbor);
            double off = made(made.parts(), arbor)
                    - weighed(rater.movement(), train, arbor)
                    + bores(rater, train, arbor)
                    + (spacers(made.parts(), arbor) - rater.loads().spacers(role)) * MICROGRAMS;
            long wheel = running.wheelMass() + Math.round(off);
            clock = clock.withArbor(arbor, running.withWheelMass(wheel), starting.withWheelMass(wheel));
        }

        assertThat(clock.leastWeight() / weighed.leastWeight()).isBetween(0.985, 1.001);
    }

    /*
     * Any train, however badly its wheels and pinions go together. Never more than a thousandth lighter than it is made, unless a
     * wide pinion leaves windows of less than 2 mm, which are not made: such a ring is a tenth of a small arbor. Never more than 2 %
     * heavier, since bores that run on their rods are wider, unless a small wheel is solid or filled to its rim and what its pinion
     * would fill is counted all the same.
     */
    @ParameterizedTest
    @MethodSource("briefs")
    void an_arbor_of_any_train_is_weighed_as_it_is_made_unless_its_pinion_closes_the_windows(String name) {
        Brief brief = BundledBriefs.load(name).orElseThrow();
        TrainRater rater = new TrainRater(brief);
        Movement movement = rater.movement();
        Random random = new Random(20261130);
        int compared = 0;
        int wanted = "full".equals(System.getProperty("drumfall.samples")) ? 60 : 8;
        for (int i = 0; i < wanted; i++) {
            Train train = Trains.random(brief, random);
            List<MovementPart> parts;
            try {
                parts = MovementParts.of(brief, rater.rate(train), movement, MakingSizes.customary())
                        .parts();
            } catch (IllegalArgumentException refused) {
                continue;
            }
            for (int arbor = 0; arbor <= train.meshes().size(); arbor++) {
                double weighed = weighed(movement, train, arbor) - bores(rater, train, arbor);
                double made = made(parts, arbor);
                boolean windows = keepsItsWindows(movement, train, arbor);
                assertThat(made / weighed)
                        .as("arbor %d of %s", arbor + 1, train)
                        .isBetween(windows ? 0.98 : 0.8, windows ? 1.001 : 1.1);
                compared += windows ? 1 : 0;
            }
        }
        assertThat(compared).isPositive();
    }

    /*
     * 3 mm of a seat drawn 21.95 mm around a bore of 2.05 mm, rounded up to 15 layers, are not taken off the weighed wheel any
     * more than bores are. Hubs of 4.8 mm instead of 12.2 mm would weigh a tenth less.
     */
    @Test
    void a_wheel_whose_hub_grows_around_a_seat_is_weighed_with_that_hub() {
        Brief brief = Briefs.demoWith("/arbors/intermediate/bearings = \"rear\" & /arbors/intermediate/bearing ="
                + " {\"outer\": \"22 mm\", \"width\": \"3 mm\"}");
        TrainRater rater = new TrainRater(brief);
        Train train = Trains.of("85/10 m1.5 | 83/12 m1 · 66/12 m1 · 55/12 m1 · E21", "36", 2);
        List<MovementPart> parts =
                MovementParts.of(rater, rater.rate(train), Optional.empty()).parts();
        double seat = 3e-9 * Math.PI / 4 * (21.95 * 21.95 - 2.05 * 2.05);
        double filled = made(parts, 2) + seat * brief.material().density().si() * MICROGRAMS;

        assertThat(filled).isCloseTo((double) weighed(rater.movement(), train, 2), withinPercentage(2));
    }

    private static boolean keepsItsWindows(Movement movement, Train train, int arbor) {
        PartStock stock = movement.parts();
        double foot = arbor == 0
                ? stock.drum().clickGround(train.drumDiameter().doubleValue())
                : movement.pinionTipRadius(train.meshes().get(arbor - 1));
        double room;
        if (arbor == train.meshes().size()) {
            room = stock.escapeTeeth().root(stock.escapeWheelRadius())
                    - stock.crossing().escapeRim();
        } else {
            Mesh mesh = train.meshes().get(arbor);
            double module = mesh.module().metres();
            room = module * movement.wheel(mesh).rootRadius() - stock.crossing().rim(module);
        }
        double hub = stock.crossing().hubRadius();
        return room - hub >= stock.crossing().leastWindow()
                && stock.crossing().cornerWithin(room - Math.max(hub, foot)) > 0;
    }

    // Trapezia against the drawn teeth, which lean and end in arcs: their feet are chords of arcs, whose bulge over all
    // teeth goes with the square of the pitch: 1 % of the disc at 15, besides 0.1 % for the lean.
    @ParameterizedTest
    @CsvSource({"15, 0.026, 1.1", "30, 0.026, 0.3", "30, 0.020, 0.3", "60, 0.040, 0.2"})
    void an_escape_wheel_has_the_area_that_it_is_weighed_by_whatever_its_count(
            int teeth, double radius, double percent) {
        EscapeToothSize size = EscapeToothSize.CUSTOMARY;
        EscapeWheel.Tooth tooth = new EscapeWheel.Tooth(
                teeth, radius, size.depth() * radius, 4e-4, size.frontLean(), size.foot(radius, teeth, 4e-4));
        EscapeWheel wheel =
                new EscapeWheel(tooth, Crossings.NONE, 5e-3, 2e-3, true, new PrintSizes(4e-4, 2e-4, 1.5e-4));
        double drawn = wheel.section().moments().area() + Math.PI;

        assertThat(1e6 * size.area(radius)).isCloseTo(drawn, withinPercentage(percent));
    }

    // The customary size: foot and tip take 0.65 of the root circle, 2 π 20.28 mm, so a foot of 30 is 2.361 mm wide.
    @Test
    void a_foot_is_what_the_tip_leaves_of_a_tooth_s_share() {
        assertThat(EscapeToothSize.CUSTOMARY.foot(0.026, 30, 4e-4)).isCloseTo(2.3608e-3, within(1e-7));
    }
}
