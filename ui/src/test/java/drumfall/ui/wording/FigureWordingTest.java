// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.wording;

import static org.assertj.core.api.Assertions.assertThat;

import drumfall.solver.brief.Brief;
import drumfall.solver.brief.BundledBriefs;
import drumfall.solver.quantity.Dimension;
import drumfall.solver.quantity.Quantity;
import drumfall.solver.quantity.UnitSystem;
import drumfall.solver.rating.Rating;
import drumfall.solver.rating.TrainRater;
import drumfall.solver.train.Mesh;
import drumfall.solver.train.Reeving;
import drumfall.solver.train.ToothModule;
import drumfall.solver.train.Train;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class FigureWordingTest {
    private static final Brief BRIEF = BundledBriefs.demo();
    private static final FigureWording METRIC = FigureWording.in(UnitSystem.METRIC);

    private static Rating rating(int greatWheel) {
        ToothModule module = ToothModule.ofMillimetres("1");
        Train train = new Train(
                List.of(
                        Mesh.of(greatWheel, 10, module),
                        Mesh.of(74, 12, module),
                        Mesh.of(64, 12, module),
                        Mesh.of(53, 10, module)),
                1,
                BigFraction.of(36, 1000),
                Reeving.DOUBLE,
                21);
        return new TrainRater(BRIEF).rate(train);
    }

    /** What is shown may be short of the duration by less than one of its last digits, and never beyond it. */
    @ParameterizedTest
    @ValueSource(ints = {41, 57, 73, 85, 90})
    void a_duration_never_promises_more_than_there_is(int greatWheel) {
        Rating rating = rating(greatWheel);
        Quantity shown = Quantity.parse(Dimension.TIME, METRIC.duration(rating));
        double hours = rating.durationRoundedDown().doubleValue();
        assertThat(shown.si() / 3600).isLessThanOrEqualTo(hours).isGreaterThan(hours * 0.99);
    }

    @ParameterizedTest
    @EnumSource(UnitSystem.class)
    void a_weight_never_asks_for_less_than_it_takes(UnitSystem system) {
        Rating rating = rating(85);
        Quantity shown = Quantity.parse(Dimension.MASS, FigureWording.in(system).recommendedWeight(rating));
        assertThat(shown.si())
                .isGreaterThanOrEqualTo(rating.recommendedWeight())
                .isLessThan(rating.recommendedWeight() * 1.01);
    }

    @Test
    void a_train_is_written_from_the_drum_with_the_centre_marked() {
        assertThat(FigureWording.train(rating(85).train()))
                .isEqualTo("85/10 m1 | 74/12 m1 · 64/12 m1 · 53/10 m1 · E21");
    }

    @ParameterizedTest
    @CsvSource({
        "15, 2, 15/2",
        "24, 8, 3",
        "-3, 4, -3/4",
        "3, -4, -3/4",
    })
    void an_exact_fraction_is_written_with_a_stroke(int above, int below, String text) {
        assertThat(FigureWording.exact(BigFraction.of(above, below))).isEqualTo(text);
    }

    @ParameterizedTest
    @CsvSource({
        "LENGTH, 0.079, 79 mm",
        "MASS, 2.3471, 2.35 kg",
        "NUMBER, 5343.75, 5343.75",
        "NUMBER, 30, 30",
        "TORQUE, 0.03491, 34.9 N mm",
        "MASS, Infinity, beyond any",
        "MASS, 1e300, beyond any",
        "MASS, 1e-300, 0 g",
    })
    void a_figure_is_shown_with_its_usual_digits(Dimension dimension, double value, String text) {
        assertThat(METRIC.figure(dimension, value)).isEqualTo(text);
    }

    @Test
    void the_cautions_speak_of_the_weight_the_wall_and_who_is_near() {
        assertThat(String.join(" ", Cautions.ofTheHangingWeight()))
                .contains("fall", "rated line", "children and animals", "design aids", "building code");
    }

    @Test
    void the_version_is_filled_in() {
        assertThat(ProgramVersion.text()).matches("\\d+\\.\\d+\\.\\d+.*");
    }
}
