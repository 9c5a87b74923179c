// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.making;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import drumfall.solver.brief.Brief;
import drumfall.solver.brief.BundledBriefs;
import drumfall.solver.layout.size.Face;
import drumfall.solver.making.part.PrintSizes;
import drumfall.solver.making.part.Spacer;
import drumfall.solver.making.solid.SizeLimitException;
import drumfall.solver.making.solid.Solid;
import drumfall.solver.parts.RatchetForm;
import drumfall.solver.power.Movement;
import drumfall.solver.rating.TrainRater;
import drumfall.solver.samples.Briefs;
import drumfall.solver.samples.Trains;
import drumfall.solver.teeth.form.BasicRack;
import drumfall.solver.teeth.form.InvolutePair;
import drumfall.solver.train.MotionWork;
import drumfall.solver.train.ToothModule;
import drumfall.solver.train.Train;
import java.util.List;
import java.util.Random;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class MovementPartsTest {
    private static final Train TRAIN = Trains.of("68/8 m1.5 | 58/9 m1.5 · 45/10 m1.25 · 48/8 m1.25 · E21", "36", 2);

    private static MovementParts movement(Brief brief, Train train) {
        TrainRater rater = new TrainRater(brief);
        return MovementParts.of(brief, rater.rate(train), rater.movement(), MakingSizes.customary());
    }

    private static MotionTeeth motion() {
        // 12 drives 36, 12 drives 48 at four fifths of the module: both 24 modules of 1 mm apart.
        InvolutePair first = InvolutePair.of(BasicRack.ISO_53_A, 12, 36, 0.5, -0.5);
        InvolutePair second = InvolutePair.of(BasicRack.ISO_53_A, 12, 48, 0.5, -0.5);
        return new MotionTeeth(
                new MotionWork(12, 36, 12, 48),
                first.mesh(),
                ToothModule.ofMillimetres("1.25"),
                second.mesh(),
                ToothModule.ofMillimetres("1"));
    }

    private static Levels levels() {
        Levels.Stand drum = new Levels.Stand(1e-3, 56e-3, 6e-3, Face.FRONT);
        Levels.Stand other = new Levels.Stand(1e-3, 13e-3, 8e-3, Face.FRONT);
        return new Levels(List.of(drum, other, other, other, other), 1e-3, List.of(0.082, 0.089), 0.1);
    }

    private static FramePlaces places() {
        FramePlaces.Support plain = FramePlaces.Support.plain(3e-3);
        FramePlaces.Support seat = new FramePlaces.Support(5e-3, 13e-3, 4e-3);
        return new FramePlaces(
                0.18,
                0.3,
                0.075,
                levels(),
                List.of(
                        new FramePlaces.Arbor("arbor 1", 0, -0.1, seat, seat),
                        new FramePlaces.Arbor("arbor 2", 0.01, -0.04, plain, plain)),
                List.of(
                        new FramePlaces.Pillar(-0.07, -0.13),
                        new FramePlaces.Pillar(0.07, -0.13),
                        new FramePlaces.Pillar(0, 0.13)),
                List.of(new FramePlaces.Ring(1, 4e-3, List.of(0.0, 0.06))));
    }

    @Test
    void a_movement_has_a_part_for_every_arbor_and_what_goes_with_it() {
        List<MovementPart> parts = movement(Briefs.demoWith(""), TRAIN).parts();
        assertThat(parts)
                .extracting(MovementPart::name)
                .containsExactly(
                        "arbor-1-drum",
                        "arbor-1-drum-flange",
                        "arbor-1-ratchet",
                        "arbor-1-click",
                        "arbor-1-winding-square",
                        "winding-key",
                        "arbor-1-wheel",
                        "arbor-2-wheel-and-pinion",
                        "arbor-3-wheel-and-pinion",
                        "arbor-4-wheel-and-pinion",
                        "arbor-5-escape-wheel-and-pinion",
                        "pallets",
                        "weight-shell",
                        "weight-lid",
                        "weight-pulley",
                        "pendulum-bob-half",
                        "rating-nut",
                        "pendulum-rod-head-half");
        assertThat(parts.get(8).teeth())
                .containsExactly(
                        new MovementPart.Toothing(45, ToothModule.ofMillimetres("1.25")),
                        new MovementPart.Toothing(9, ToothModule.ofMillimetres("1.5")));
        assertThat(parts).allMatch(part -> part.material().equals("PLA"));
    }

    @Test
    void a_line_that_hangs_straight_has_no_pulley() {
        Train straight = Trains.of("68/8 m1.5 | 58/9 m1.5 · 45/10 m1.25 · 48/8 m1.25 · E21", "36", 1);
        assertThat(movement(Briefs.demoWith(""), straight).parts())
                .extracting(MovementPart::name)
                .doesNotContain("weight-pulley");
    }

    @Test
    void motion_work_and_plates_come_with_what_they_are_made_from() {
        List<MovementPart> parts = movement(Briefs.demoWith(""), TRAIN)
                .with(motion())
                .with(places())
                .parts();
        assertThat(parts)
                .extracting(MovementPart::name)
                .contains(
                        "cannon-pinion",
                        "minute-wheel-and-pinion",
                        "hour-wheel",
                        "minute-hand",
                        "hour-hand",
                        "front-plate-1-of-2",
                        "front-plate-2-of-2",
                        "back-plate-1-of-2",
                        "pillar",
                        "arbor-2-spacer-4000-um");
        assertThat(parts)
                .filteredOn(part -> part.name().equals("pillar"))
                .singleElement()
                .satisfies(pillar -> {
                    assertThat(pillar.count()).isEqualTo(3);
                    // 75 mm between the plates and a pocket of 3 mm in each.
                    assertThat(pillar.solid().height()).isCloseTo(81, within(1e-9));
                });
    }

    @Test
    void a_front_plate_lies_on_its_face_and_so_mirrors_the_back_plate() {
        List<MovementPart> parts =
                movement(Briefs.demoWith(""), TRAIN).with(places()).parts();
        var front = section(parts, "front-plate-1-of-2");
        var back = section(parts, "back-plate-1-of-2");
        var mirrored = org.locationtech.jts.geom.util.AffineTransformation.reflectionInstance(0, 0, 0, 1)
                .transform(front);
        assertThat(mirrored.symDifference(back).getArea()).isLessThan(1e-6);
        assertThat(front.symDifference(back).getArea()).isGreaterThan(1);
    }

    private static org.locationtech.jts.geom.Geometry section(List<MovementPart> parts, String name) {
        MovementPart part =
                parts.stream().filter(p -> p.name().equals(name)).findFirst().orElseThrow();
        return Planes.of(part.solid().slabs().get(0).region());
    }

    @ParameterizedTest
    @CsvSource({
        "involute, 1.5, 18",
        "cycloidal, 1.5, 18",
        // Each of the four pinions has a second shroud.
        "lantern, 1.5, 22"
    })
    void every_form_of_teeth_can_be_made(String form, String module, int count) {
        Brief brief = Briefs.demoWith(
                "/teeth/form = \"" + form + "\" & /teeth/pressureAngle = remove & /printer/nozzle = \"0.25 mm\"");
        Train train = Trains.of("68/8 m%1$s | 58/9 m%1$s · 45/10 m%1$s · 48/8 m%1$s · E21".formatted(module), "36", 2);
        List<MovementPart> parts = movement(brief, train).parts();
        assertThat(parts).hasSize(count);
        assertThat(parts)
                .allSatisfy(part -> assertThat(Planes.overhang(part.solid(), 0.21))
                        .as(part.name())
                        .isLessThan(0.01));
    }

    @Test
    void the_shell_takes_the_shot_of_the_recommended_weight() {
        Brief brief = Briefs.demoWith("");
        MovementParts movement = movement(brief, TRAIN);
        MovementPart shell = movement.parts().stream()
                .filter(part -> part.name().equals("weight-shell"))
                .findFirst()
                .orElseThrow();
        double height = shell.solid().height() / 1e3 - 2 * 0.0024;
        double radius = shell.solid().box().right() / 1e3;
        // As wide as the layout leaves room for.
        assertThat(radius).isCloseTo(0.04, within(1e-9));
        double area = Math.PI * ((radius - 0.0024) * (radius - 0.0024) - 0.0054 * 0.0054);
        double shot = area * height * 0.6 * 7750;
        // The shell's height is a whole number of layers, at most one more than needed.
        assertThat(shot).isBetween(movement.weight(), movement.weight() + area * 0.0002 * 0.6 * 7750 + 1e-9);
    }

    private static RatchetForm ratchetRated(TrainRater rater) {
        double lineArm = rater.movement().lineArm(TRAIN.drumDiameter().doubleValue());
        return rater.limits().ratchet().form(lineArm);
    }

    @ParameterizedTest
    @ValueSource(strings = {"both", "none"})
    void the_ratchet_is_made_as_it_was_rated(String bearings) {
        Brief brief = Briefs.demoWith("/arbors/drum/bearings = \"%s\"".formatted(bearings));
        RatchetForm rated = ratchetRated(new TrainRater(brief));
        MovementPart ratchet = movement(brief, TRAIN).parts().stream()
                .filter(part -> part.name().equals("arbor-1-ratchet"))
                .findFirst()
                .orElseThrow();
        double tips = ratchet.solid().box().right() / 1e3;

        assertThat(ratchet.solid().slabs().get(0).height() / 1e3)
                .isCloseTo(rated.size().thickness(), within(1e-12));
        assertThat(tips).isCloseTo(rated.tipRadius(), within(1e-9));
    }

    @Test
    void ratchet_and_bob_are_made_as_the_brief_has_them() {
        Brief brief = Briefs.demoWith(
                "/drum/ratchet = {\"teeth\": 12, \"toothDepth\": \"3 mm\", \"thickness\": \"4 mm\"}"
                        + " & /pendulum/bob = {\"diameter\": \"70 mm\", \"thickness\": \"16 mm\", \"behindPlate\": \"40 mm\"}");
        List<MovementPart> parts = movement(brief, TRAIN).parts();
        MovementPart bob = parts.stream()
                .filter(part -> part.name().equals("pendulum-bob-half"))
                .findFirst()
                .orElseThrow();
        MovementPart ratchet = parts.stream()
                .filter(part -> part.name().equals("arbor-1-ratchet"))
                .findFirst()
                .orElseThrow();

        assertThat(bob.solid().box().width()).isCloseTo(70, within(1e-6));
        assertThat(bob.solid().height()).isCloseTo(8, within(1e-6));
        // The boss upon the teeth fills what is left of the room of 6 mm beside the great wheel's plane, 8 mm thick, in
        // which
        // the wheel of 5 mm leaves another 1.5 mm.
        assertThat(ratchet.solid().slabs().get(0).height()).isCloseTo(4, within(1e-9));
        assertThat(ratchet.solid().height()).isCloseTo(7.5, within(1e-9));
        // Roots at 9.2 mm, as by hand in the ratchet's own test, and 3 mm of teeth.
        assertThat(ratchet.solid().box().right()).isCloseTo(12.2, within(1e-6));
    }

    @Test
    void a_part_larger_than_the_bed_is_refused() {
        Brief small = Briefs.demoWith("/printer/bedWidth = \"90 mm\" & /printer/bedDepth = \"100 mm\"");
        assertThatThrownBy(() -> movement(small, TRAIN).parts())
                .isInstanceOf(SizeLimitException.class)
                .hasMessageMatching("The (longer|shorter) side of the .+ \\(.+ mm\\) must be at most (90|100) mm, the"
                        + " printer's bed, since it cannot be split. Maybe take (90|100) mm.");
    }

    @Test
    void teeth_that_do_not_print_are_named_with_their_mesh() {
        Brief coarse = Briefs.demoWith("/printer/nozzle = \"1.2 mm\"");
        assertThatThrownBy(() -> movement(coarse, TRAIN).parts()).hasMessageMatching("The .+ must .+ Maybe .+\\.");
    }

    static List<String> briefs() {
        return BundledBriefs.names();
    }

    @ParameterizedTest
    @MethodSource("briefs")
    void any_train_of_a_brief_is_made_unsupported_and_on_the_bed_or_refused_in_one_sentence(String name) {
        Brief brief = BundledBriefs.load(name).orElseThrow();
        TrainRater rater = new TrainRater(brief);
        Movement movement = rater.movement();
        Random random = new Random(20261125);
        int made = 0;
        int wanted = "full".equals(System.getProperty("drumfall.samples")) ? 60 : 6;
        for (int i = 0; i < wanted; i++) {
            Train train = Trains.random(brief, random);
            try {
                List<MovementPart> parts = MovementParts.of(brief, rater.rate(train), movement, MakingSizes.customary())
                        .parts();
                parts.forEach(part -> assertThat(Planes.overhang(part.solid(), 0.21))
                        .as("%s of %s", part.name(), train)
                        .isLessThan(0.01));
                made++;
            } catch (IllegalArgumentException refused) {
                assertThat(refused).hasMessageMatching("The .+ must .+ Maybe .+\\.");
            }
        }
        assertThat(made).as("trains made").isPositive();
    }

    @ParameterizedTest
    @CsvSource({"arbor-2-wheel, true", "Arbor 2, false", "arbor/2, false", "'', false", "nul, false"})
    void a_part_has_a_name_that_serves_as_a_file_s_on_every_system(String partName, boolean good) {
        Solid solid = new Spacer(3e-3, 9e-3, 4e-3, new PrintSizes(4e-4, 2e-4, 0)).solid();
        ThrowingCallable made = () -> new MovementPart(partName, 1, "PLA", 1240, List.of(), solid, Mount.LOOSE);
        if (good) {
            assertThatCode(made).doesNotThrowAnyException();
        } else {
            assertThatThrownBy(made).hasMessageMatching("The name .+ must .+ Maybe .+\\.");
        }
    }

    @Test
    void a_motion_work_whose_meshes_stand_at_two_distances_is_refused() {
        InvolutePair first = InvolutePair.of(BasicRack.ISO_53_A, 12, 36, 0, 0);
        InvolutePair second = InvolutePair.of(BasicRack.ISO_53_A, 10, 40, 0, 0);
        ToothModule one = ToothModule.ofMillimetres("1");
        // W. L. Goodrich, The Modern Clock, 1905, ch. XVI: 12, 36, 10, 40; 48 is not 50, so one module does not serve.
        assertThatThrownBy(() -> new MotionTeeth(new MotionWork(12, 36, 10, 40), first.mesh(), one, second.mesh(), one))
                .hasMessageContaining("The centre distance (25.000 mm)")
                .hasMessageContaining("24.000 mm");
    }
}
