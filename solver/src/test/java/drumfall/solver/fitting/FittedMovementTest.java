// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.fitting;

import static org.assertj.core.api.Assertions.assertThat;

import drumfall.solver.fit.layer.LayerGrid;
import drumfall.solver.fitting.FittedArbor.Standing;
import drumfall.solver.fitting.PlateHole.Use;
import drumfall.solver.layout.Layout;
import drumfall.solver.making.MakingSizes;
import drumfall.solver.making.MovementPart;
import drumfall.solver.making.MovementParts;
import drumfall.solver.rating.TrainRater;
import drumfall.solver.rating.placing.TrainPlacing;
import drumfall.solver.samples.Briefs;
import drumfall.solver.samples.Trains;
import drumfall.solver.train.Train;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Rods, holes, spacers and end shakes of a placed train. */
class FittedMovementTest {
    private static final Train TRAIN = Trains.of("85/10 m1.5 | 83/12 m1 · 66/12 m1 · 55/12 m1 · E21", "36", 2);
    private static final Placed DEMO = Placed.of("");

    private record Placed(TrainRater rater, Layout layout) {
        static Placed of(String edits) {
            TrainRater rater = new TrainRater(Briefs.demoWith(edits));
            return new Placed(
                    rater,
                    new TrainPlacing(rater).place(TRAIN, () -> false).found().orElseThrow());
        }

        FittedMovement fitted() {
            return FittedMovement.of(
                    rater, TRAIN, layout, MakingSizes.customary().beyond(rater.brief()));
        }
    }

    @Test
    void what_stands_on_an_arbor_and_its_end_shake_fill_the_frame() {
        FittedMovement fitted = DEMO.fitted();
        for (FittedArbor arbor : fitted.arbors().subList(0, 5)) {
            Standing standing = arbor.standing().orElseThrow();
            long filled = standing.backSpacer() + standing.parts() + standing.frontSpacer();

            assertThat(fitted.depth() - filled)
                    .isEqualTo(standing.shake().stack().nominal());
        }
    }

    // The nearest whole layer is within half a layer, 0.1 mm, of the middle of the band, 0.5 mm.
    @Test
    void every_end_shake_is_within_half_a_layer_of_the_middle_of_the_band() {
        for (FittedArbor arbor : DEMO.fitted().arbors().subList(0, 5)) {
            long shake = arbor.standing().orElseThrow().shake().stack().nominal();
            long middle = nanometres(DEMO.rater().brief().fit().endShake().low().si())
                    + nanometres(DEMO.rater().brief().fit().endShake().high().si());

            assertThat(Math.abs(2 * shake - middle))
                    .isLessThanOrEqualTo(
                            nanometres(DEMO.rater().brief().printer().layer().si()));
            assertThat(arbor.standing().orElseThrow().shake().change()).isEmpty();
        }
    }

    private static long nanometres(double metres) {
        return Math.round(1e9 * metres);
    }

    @Test
    void what_is_printed_is_whole_layers_high() {
        LayerGrid grid = new BriefFit(DEMO.rater().brief()).grid();
        FittedMovement fitted = DEMO.fitted();
        for (FittedArbor arbor : fitted.arbors().subList(1, 5)) {
            Standing standing = arbor.standing().orElseThrow();
            assertThat(grid.holds(standing.parts())).isTrue();
            assertThat(standing.backSpacer() == 0 || grid.holds(standing.backSpacer()))
                    .isTrue();
            assertThat(standing.frontSpacer() == 0 || grid.holds(standing.frontSpacer()))
                    .isTrue();
        }
        // Pillars stand 3 mm deep in each plate.
        assertThat(grid.holds(fitted.depth() + 6_000_000)).isTrue();
        assertThat(fitted.depth()).isGreaterThanOrEqualTo(DEMO.layout().planes().innerDepth());
    }

    // Where no pillar is printed the frame is made to measure.
    @Test
    void without_pillars_the_plates_are_as_far_apart_as_the_layout_says() {
        Placed bare = new Placed(new TrainRater(Briefs.demoWith("/frame/pillars = remove")), DEMO.layout());

        assertThat(bare.fitted().depth()).isEqualTo(DEMO.layout().planes().innerDepth());
    }

    // The demo's drum turns in bearings of 4 x 13 x 5 mm (ISO 15, series 02), its centre arbor in plain bores, wheels
    // below
    // on fixed rods; clearance 0.1 mm.
    @ParameterizedTest
    @CsvSource({
        "0, SEAT, 4.0, 4.1",
        "1, RUNNING, 3.0, 3.1",
        "2, HOLDING, 2.0, 2.0",
        "4, HOLDING, 1.5, 1.5",
        "5, RUNNING, 1.5, 1.6",
        "6, HOLDING, 2.0, 2.0"
    })
    void a_hole_is_drilled_for_what_it_does(int arbor, Use use, double rod, double least) {
        PlateHole hole = DEMO.fitted().arbors().get(arbor).front().orElseThrow();

        assertThat(hole.use()).isEqualTo(use);
        assertThat(hole.through().fitted()).isEqualTo(nanometres(1e-3 * rod));
        assertThat(hole.through().drill().diameter()).isGreaterThanOrEqualTo(nanometres(1e-3 * least));
        // The next smaller metric drill would be too small.
        assertThat(hole.through().excess()).isLessThan(100_000);
    }

    @Test
    void a_bearing_is_seated_in_whole_layers_if_its_size_is_known() {
        PlateHole known = DEMO.fitted().arbors().get(0).front().orElseThrow();
        assertThat(known.seat().orElseThrow().bearing().outer()).isEqualTo(13_000_000);
        assertThat(known.seat().orElseThrow().depth().height()).isBetween(5_000_000L, 5_200_000L);

        Placed unknown = new Placed(new TrainRater(Briefs.demoWith("/arbors/drum/bearing = remove")), DEMO.layout());
        PlateHole hole = unknown.fitted().arbors().get(0).front().orElseThrow();
        assertThat(hole.use()).isEqualTo(Use.UNKNOWN_SEAT);
        assertThat(hole.seat()).isEmpty();
    }

    // By hand: rods end level with the plates of 6 mm; the drum's goes on through the motion work's room and a collar
    // of
    // 5 and a square of 12 mm, the centre's through that room, the hour pipe, a gap of 1 mm, a hand and its collar of
    // 2.4 mm each and the clutch's fingers of 6 mm, which spring against it. The pipe lets the hour hand, 4.8 mm, pass
    // the
    // square by a gap and an end shake of 0.8 mm, a gap before the motion work: 1 + 17 + 1.8 + 4.8 mm.
    @Test
    void rods_reach_through_the_plates_and_before_the_dial() {
        FittedMovement fitted = DEMO.fitted();
        long between = fitted.depth() + 12_000_000;
        long motion = DEMO.layout().planes().depth() - DEMO.layout().planes().innerDepth() - 12_000_000;

        assertThat(motion).isPositive();
        assertThat(fitted.arbors().get(0).length()).isEqualTo(between + motion + 17_000_000);
        assertThat(fitted.arbors().get(1).length()).isEqualTo(between + motion + 36_400_000);
        assertThat(fitted.arbors().get(2).length()).isEqualTo(between);
        assertThat(fitted.arbors().get(5).length()).isEqualTo(between);
        assertThat(fitted.arbors().get(6).length()).isEqualTo(6_000_000 + motion);
        assertThat(fitted.arbors().get(6).back()).isEmpty();
    }

    @Test
    void parts_are_printed_as_high_as_they_are_fitted() {
        FittedMovement fitted = DEMO.fitted();
        List<MovementPart> parts = MovementParts.of(DEMO.rater(), DEMO.rater().rate(TRAIN), Optional.of(DEMO.layout()))
                .parts();

        for (int arbor = 1; arbor < 5; arbor++) {
            String name = "arbor-" + (arbor + 1) + (arbor == 4 ? "-escape-wheel-and-pinion" : "-wheel-and-pinion");
            double height =
                    1e-6 * fitted.arbors().get(arbor).standing().orElseThrow().parts();
            assertThat(parts)
                    .filteredOn(part -> part.name().equals(name))
                    .singleElement()
                    .satisfies(part -> assertThat(part.solid().height())
                            .isEqualTo(height, org.assertj.core.api.Assertions.within(1e-9)));
        }
        assertThat(parts)
                .extracting(MovementPart::name)
                .contains("cannon-pinion", "hour-wheel", "minute-hand", "pillar")
                .anyMatch(name -> name.startsWith("front-plate"))
                .anyMatch(name -> name.startsWith("arbor-3-spacer"));
    }
}
