// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.wording;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.node.ObjectNode;
import drumfall.solver.brief.Brief;
import drumfall.solver.brief.BriefReader;
import drumfall.solver.brief.BriefWriter;
import drumfall.solver.brief.BundledBriefs;
import drumfall.solver.brief.Locks;
import drumfall.solver.brief.MeshLock;
import drumfall.solver.brief.MeshPlace;
import drumfall.solver.brief.ObjectiveFigure;
import drumfall.solver.quantity.Dimension;
import drumfall.solver.quantity.Quantity;
import drumfall.solver.quantity.UnitSystem;
import drumfall.solver.rating.Demand;
import drumfall.solver.rating.DemandFigure;
import drumfall.solver.rating.TrainRater;
import drumfall.solver.search.Clash;
import drumfall.solver.search.HeldDemand;
import drumfall.solver.train.Mesh;
import drumfall.solver.train.Reeving;
import drumfall.solver.train.ToothModule;
import drumfall.solver.train.Train;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.EnumSource.Mode;

class DemandWordingTest {
    private static final Brief BRIEF =
            BundledBriefs.load(BundledBriefs.MONTH_RUNNER).orElseThrow();
    private static final DemandWording WORDING = new DemandWording(BRIEF, UnitSystem.METRIC);

    @ParameterizedTest
    @EnumSource(Demand.class)
    void every_demand_has_a_name(Demand demand) {
        assertThat(DemandWording.name(demand)).isNotBlank().doesNotContain("{");
    }

    @ParameterizedTest
    @EnumSource(
            mode = Mode.EXCLUDE,
            names = {"LOCK", "BEATS_PER_HOUR", "BUILDERS"})
    void every_demand_has_a_clause_with_the_entries_of_the_brief(Demand demand) {
        assertThat(WORDING.clause(demand)).isNotBlank().doesNotContain("{", "null");
    }

    @ParameterizedTest
    @EnumSource(ObjectiveFigure.class)
    void every_objective_has_a_name(ObjectiveFigure figure) {
        assertThat(FigureWording.name(figure)).isNotBlank();
    }

    @Test
    void a_clause_speaks_in_the_words_of_the_brief() {
        assertThat(WORDING.clause(Demand.RUN_AT_LEAST))
                .isEqualTo("the clock runs at least " + BRIEF.run().atLeast().text());
    }

    @Test
    void the_clause_of_builders_says_how_many_are_asked_for() {
        ObjectNode tree = BriefWriter.tree(BRIEF);
        ((ObjectNode) tree.get("weight")).put("builders", "95 %");
        Brief asking = BriefReader.read(tree).accepted().orElseThrow();
        assertThat(new DemandWording(asking, UnitSystem.METRIC).clause(Demand.BUILDERS))
                .isEqualTo("the recommended weight runs the clocks of 95 % of all builders");
    }

    /** Every place that a rating names, whatever the shape of the train. */
    @Test
    void every_place_of_a_rating_is_worded() {
        ToothModule module = ToothModule.ofMillimetres("1");
        Mesh mesh = Mesh.of(60, 8, module);
        Train train = new Train(List.of(mesh, mesh, mesh, mesh), 2, BigFraction.of(3, 100), Reeving.SINGLE, 30);
        assertThat(new TrainRater(BRIEF).rate(train).demands())
                .filteredOn(demand -> !demand.place().isEmpty())
                .allSatisfy(demand -> {
                    String key =
                            "place." + demand.place().replaceAll("\\d+", "#").replace(' ', '.');
                    assertThat(Words.BOOK.phraseIfAny(key)).as(demand.place()).isPresent();
                });
    }

    @ParameterizedTest
    @CsvSource({
        "ABOVE, 1, mesh 1 above the centre",
        "BELOW, 3, mesh 3 below the centre",
    })
    void a_mesh_is_named_by_its_side_and_number(MeshPlace.Side side, int number, String words) {
        assertThat(PlaceWording.of(new MeshPlace(side, number))).isEqualTo(words);
    }

    /** A figure just outside its limit must not read as the limit. */
    @ParameterizedTest
    @CsvSource({
        "5.0001, 5.0001 kg",
        "5.00000012, 5.0000001 kg",
        "5.3, 5.3 kg",
    })
    void a_missed_limit_can_be_seen_to_be_missed(double kilograms, String shown) {
        DemandFigure missed = new DemandFigure(
                Demand.WEIGHT_LIMIT, "", kilograms, OptionalDouble.empty(), OptionalDouble.of(5), false);
        assertThat(WORDING.figure(missed)).isEqualTo(shown);
        assertThat(WORDING.limit(missed)).isEqualTo("at most 5 kg");
    }

    @Test
    void a_met_limit_is_shown_with_the_usual_digits() {
        DemandFigure met =
                new DemandFigure(Demand.WEIGHT_LIMIT, "", 4.98765, OptionalDouble.empty(), OptionalDouble.of(5), true);
        assertThat(WORDING.figure(met)).isEqualTo("4.99 kg");
    }

    @Test
    void an_infinite_figure_is_worded() {
        DemandFigure endless = new DemandFigure(
                Demand.WEIGHT_LIMIT, "", Double.POSITIVE_INFINITY, OptionalDouble.empty(), OptionalDouble.of(5), false);
        assertThat(WORDING.figure(endless)).isEqualTo("beyond any");
    }

    /** What a lock measures depends on what is held. */
    @ParameterizedTest
    @CsvSource({
        "below-1 distance, 0.0421, 0.042, 42.1 mm, 42 mm",
        "below-1 module, 0.00125, 0.001, 1.25 mm, 1 mm",
        "drum diameter, 0.036, 0.034, 36 mm, 34 mm",
        "below-1 wheel, 65, 64, 65, 64",
        "escape wheel, 30, 27, 30, 27",
    })
    void a_held_length_is_worded_as_one_and_a_held_count_as_a_count(
            String place, double figure, double held, String shown, String limit) {
        DemandFigure missed =
                new DemandFigure(Demand.LOCK, place, figure, OptionalDouble.of(held), OptionalDouble.of(held), false);
        assertThat(WORDING.figure(missed)).isEqualTo(shown);
        assertThat(WORDING.limit(missed)).contains(limit);
    }

    @Test
    void distance_and_direction_are_worded_alone_and_together_as_one_hole() {
        MeshLock open = MeshLock.open(new MeshPlace(MeshPlace.Side.BELOW, 1));
        MeshLock distance = open.withDistance(Optional.of(Quantity.parse(Dimension.LENGTH, "42 mm")));
        MeshLock direction = open.withDirection(Optional.of(Quantity.parse(Dimension.ANGLE, "75 deg")));

        assertThat(clause("/locks/meshes/0/distance", Locks.NONE.withMeshes(List.of(distance))))
                .isEqualTo("the centre distance of mesh 1 below the centre is held at 42 mm");
        assertThat(clause("/locks/meshes/0/direction", Locks.NONE.withMeshes(List.of(direction))))
                .isEqualTo("the direction of mesh 1 below the centre is held at 75 deg");
        assertThat(clause("/locks/motionDirection", Locks.NONE.withMotionDirection(direction.direction())))
                .isEqualTo("the direction of the motion work is held at 75 deg");
        assertThat(clause("/locks/motionDistance", Locks.NONE.withMotionDistance(distance.distance())))
                .isEqualTo("the minute arbor is held 42 mm from the centre arbor");
        assertThat(clause("/locks/palletDistance", Locks.NONE.withPalletDistance(distance.distance())))
                .isEqualTo("the pallet arbor is held 42 mm from the escape arbor");
        assertThat(LockWording.clauses(Locks.NONE.withMeshes(List.of(distance.and(direction)))))
                .containsExactly(
                        "the centre distance of mesh 1 below the centre is held at 42 mm, its direction at 75 deg");
    }

    private static String clause(String pointer, Locks lock) {
        return WORDING.clause(new HeldDemand(Demand.LOCK, pointer, lock));
    }

    @Test
    void a_clash_without_demands_blames_the_choices() {
        assertThat(WORDING.lines(new Clash(List.of(), true)))
                .singleElement()
                .asString()
                .startsWith("The counts, modules, drum sizes, reeving and escape teeth allowed make no train");
    }
}
