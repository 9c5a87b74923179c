// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.view.train;

import static org.assertj.core.api.Assertions.assertThat;

import drumfall.solver.brief.Brief;
import drumfall.solver.brief.Locks;
import drumfall.solver.quantity.UnitSystem;
import drumfall.solver.rating.Demand;
import drumfall.solver.rating.DemandFigure;
import drumfall.solver.rating.Rating;
import drumfall.solver.train.Train;
import drumfall.ui.presenter.StripFigure;
import drumfall.ui.presenter.StripFigure.Kind;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class MissedDemandsTest {
    private static MissedDemands missed(Train train, Brief brief) {
        return new MissedDemands(SampleTrains.rate(train, brief), new Figures(UnitSystem.METRIC));
    }

    @Test
    void a_train_that_meets_the_brief_misses_nothing() {
        assertThat(missed(SampleTrains.of(4), SampleTrains.brief()).sentences()).isEmpty();
    }

    @Test
    void a_wheel_that_is_not_as_held_is_named() {
        Train other = SampleTrains.withWheel(SampleTrains.of(4), 0, 86);
        MissedDemands missed = missed(other, SampleTrains.heldBrief());
        assertThat(missed.sentences()).contains("Not as held: Wheel of mesh 1.");
    }

    @Test
    void a_wheel_with_too_many_teeth_is_marked() {
        Train other = SampleTrains.withWheel(SampleTrains.of(4), 2, 91);
        MissedDemands missed = missed(other, SampleTrains.brief());
        assertThat(missed.sentences()).contains("The wheel of mesh 3 has 91 teeth, outside 24 to 90.");
        assertThat(marked(missed, other)).contains("WHEEL below-2").doesNotContain("WHEEL above-1");
    }

    private static List<String> marked(MissedDemands missed, Train train) {
        return StripValues.of(train, Locks.NONE, new Figures(UnitSystem.METRIC)).keySet().stream()
                .filter(missed::on)
                .map(figure ->
                        figure.kind() + figure.place().map(place -> " " + place).orElse(""))
                .toList();
    }

    /** Whatever a rating can miss is written beside some figure or reading of the strip. */
    @ParameterizedTest
    @ValueSource(ints = {2, 3, 4, 5, 6, 7, 8})
    void every_demand_of_a_train_has_its_place_on_the_strip(int meshes) {
        Train train = SampleTrains.of(meshes);
        Rating rating = SampleTrains.rate(train, SampleTrains.heldBrief());
        MissedDemands missed = new MissedDemands(rating, new Figures(UnitSystem.METRIC));
        for (DemandFigure figure : rating.demands()) {
            Optional<StripFigure> subject = missed.subject(figure);
            boolean reading = READINGS.contains(figure.demand());
            boolean lockOfAbsentMesh = figure.demand() == Demand.LOCK && subject.isEmpty();
            assertThat(reading || lockOfAbsentMesh || subject.isPresent())
                    .as("%s", figure)
                    .isTrue();
        }
    }

    private static final List<Demand> READINGS = List.of(
            Demand.RUN_AT_LEAST,
            Demand.RUN_AT_MOST,
            Demand.WEIGHT_LIMIT,
            Demand.LINE_LOAD,
            Demand.BUILDERS,
            Demand.PENDULUM_LENGTH,
            Demand.BEATS_PER_HOUR,
            Demand.SECONDS_HAND);

    @ParameterizedTest
    @EnumSource(Demand.class)
    void every_demand_has_a_sentence(Demand demand) {
        assertThat(TrainText.of("missed." + demand, "mesh 1", "1", "2", "3"))
                .isNotBlank()
                .doesNotContain("{");
    }

    @ParameterizedTest
    @EnumSource(Kind.class)
    void every_figure_has_a_name(Kind kind) {
        assertThat(TrainText.of("name." + kind, 1)).isNotBlank();
    }

    @ParameterizedTest
    @EnumSource(StripReading.Kind.class)
    void every_reading_has_a_name(StripReading.Kind kind) {
        assertThat(TrainText.of("name." + kind, 1)).isNotBlank();
    }
}
