// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.rating.placing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import drumfall.solver.layout.Layout;
import drumfall.solver.layout.LayoutNeed;
import drumfall.solver.layout.Place;
import drumfall.solver.power.books.LoadedArbor;
import drumfall.solver.power.statics.PlacedArbor;
import drumfall.solver.power.statics.PlacedArbor.MeshForce;
import drumfall.solver.power.statics.PlacedWalk;
import drumfall.solver.rating.TrainRater;
import drumfall.solver.samples.Briefs;
import drumfall.solver.samples.Trains;
import drumfall.solver.train.Train;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Forces of placed trains. */
class PlacedPowerTest {
    private static final String TRAIN = "85/10 m1.25 | 66/12 m1.25 · 76/12 m1 · 55/12 m1 · E21";

    private record Standing(TrainRater rater, Train train, Layout layout) {
        PlacedWalk walk() {
            return PlacedPower.walk(rater, train, layout);
        }
    }

    private static Standing placed(String edits, String text) {
        Train train = Trains.of(text, "36", 2);
        TrainRater rater = new TrainRater(Briefs.demoWith(edits));
        return new Standing(
                rater,
                train,
                new TrainPlacing(rater).place(train, () -> false).found().orElseThrow());
    }

    // A sum of vectors is no longer than the sum of their lengths; 1e-12 for rounding.
    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "/frame/arrangement = \"upright\"; " + TRAIN,
                "/frame/arrangement = \"compact\"; " + TRAIN,
                "/frame/arrangement = \"shallow\"; 85/10 m1.5 | 83/12 m1 · 66/12 m1 · 55/12 m1 · E21",
                "/arbors/centre/bearings = \"front\" & /arbors/intermediate/bearings = \"rear\"; " + TRAIN,
                "/arbors/drum/bearings = \"rear\" & /arbors/centre/kind = \"fixed\"; " + TRAIN
            })
    void a_placed_train_never_needs_more_than_an_unplaced_one(String edits, String text) {
        Standing standing = placed(edits, text);

        double unplaced = standing.rater().loaded(standing.train()).leastWeight();
        double needed = standing.walk().leastWeight();

        assertThat(needed).isLessThanOrEqualTo(unplaced * (1 + 1e-12));
        // Nor does placing do away with friction: teeth and pallets have their share of it.
        assertThat(needed).isGreaterThan(0.5 * unplaced);
    }

    // Moments of the force on a pinion: about its own axis it drives against the wheel's sense with its arm, about the
    // wheel's it turns with the wheel's sense and arm; both differ by the moment of the force at the line of centres.
    @Test
    void a_wheel_pushes_its_pinion_along_their_common_normal_in_its_own_sense() {
        Standing standing = placed("/frame/arrangement = \"compact\"", TRAIN);
        List<PlacedArbor> arbors = standing.walk().running();
        // One mesh above the centre: the fall hangs at the left and the drum turns anticlockwise.
        int sense = 1;
        for (int mesh = 0; mesh < standing.train().meshes().size(); mesh++) {
            Place centres =
                    standing.layout().place(mesh + 1).minus(standing.layout().place(mesh));
            MeshForce push = arbors.get(mesh + 1).driven();
            double moment =
                    1e-9 * (centres.x() * Math.sin(push.direction()) - centres.y() * Math.cos(push.direction()));
            double arms = arbors.get(mesh).wheel().arm() + push.arm();

            assertThat(moment * sense).isCloseTo(arms, within(1e-9));
            // Both press away from one another.
            assertThat(centres.x() * Math.cos(push.direction()) + centres.y() * Math.sin(push.direction()))
                    .isPositive();
            // What the wheel feels is the opposite.
            assertThat(Math.cos(arbors.get(mesh).wheel().direction() - push.direction()))
                    .isCloseTo(-1, within(1e-12));
            assertThat(arbors.get(mesh).wheel().place()).isFinite();
            sense = -sense;
        }
    }

    @Test
    void a_train_seen_in_a_mirror_needs_the_same_weight() {
        Standing standing = placed("/frame/arrangement = \"compact\"", TRAIN);
        Layout layout = standing.layout();
        LayoutNeed need = layout.need();
        LayoutNeed mirroredNeed = new LayoutNeed(
                need.parts(),
                need.line().mirrored(),
                need.gaps(),
                need.envelope(),
                need.locks(),
                need.preference(),
                need.grid());
        Layout mirrored = new Layout(
                mirroredNeed,
                layout.places().stream().map(Place::mirrored).toList(),
                layout.frameCorner(),
                layout.planes());

        double weight =
                PlacedPower.walk(standing.rater(), standing.train(), mirrored).leastWeight();

        // The exit pallet becomes the entry pallet; the worse of both counts either way.
        assertThat(weight).isCloseTo(standing.walk().leastWeight(), withinPercentage(1e-9));
    }

    // The unplaced figure takes the worse end of every arbor and so does not see one bearing; moment balance does.
    @Test
    void one_bearing_relieves_a_placed_arbor() {
        double plain = placed("/arbors/drum/bearings = \"none\"", TRAIN).walk().leastWeight();
        double one = placed("/arbors/drum/bearings = \"front\"", TRAIN).walk().leastWeight();
        double both = placed("/arbors/drum/bearings = \"both\"", TRAIN).walk().leastWeight();

        assertThat(one).isLessThan(0.995 * plain);
        assertThat(both).isLessThan(0.995 * one);
    }

    // By hand: the drum's arbor carries its line straight down; a great wheel whose pinion stands right above is pushed
    // to the right and down, or to the left and down, by what it hands on over its arm.
    @Test
    void reactions_carry_the_forces_and_weights_of_an_arbor() {
        Standing standing = placed("/frame/arrangement = \"upright\"", TRAIN);
        PlacedArbor drum = standing.walk().running().get(0);
        LoadedArbor loaded =
                standing.rater().loaded(standing.train()).running().arbors().get(0);
        double given = 0.25;
        double out = 0.24;

        double up = drum.reactions(given, out).front().up()
                + drum.reactions(given, out).rear().up();
        double across = drum.reactions(given, out).front().across()
                + drum.reactions(given, out).rear().across();

        double push = out / loaded.wheelArm();
        double cosine = (loaded.wheelArm()
                        + standing.rater()
                                .loaded(standing.train())
                                .running()
                                .arbors()
                                .get(1)
                                .drivenArm())
                / (1e-9 * standing.layout().need().parts().meshes().get(0).centreDistance());
        double sine = Math.sqrt(1 - cosine * cosine);
        assertThat(up)
                .isCloseTo(
                        given / loaded.drivenArm() + loaded.wheelWeight() + loaded.drivenWeight() + push * sine,
                        within(1e-9));
        assertThat(across).isCloseTo(-push * cosine, within(1e-9));
    }
}
