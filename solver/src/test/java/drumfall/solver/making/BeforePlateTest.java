// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.making;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import drumfall.solver.making.BeforePlate.DialRoom;
import drumfall.solver.making.BeforePlate.Level;
import drumfall.solver.rating.TrainRater;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class BeforePlateTest {
    private static final List<PlacedMakes> MAKES = PlacedMakes.all().toList();

    static List<PlacedMakes> makes() {
        return MAKES;
    }

    private static BeforePlate before(PlacedMakes made) {
        MovementPart plate = made.parts().stream()
                .filter(part -> part.name().startsWith("front-plate"))
                .findFirst()
                .orElseThrow();
        // It faces the back, so its bed is its front face.
        return BeforePlate.of(made.parts(), plate.mount().stances().get(0).bed());
    }

    private static Level level(BeforePlate stack, String part) {
        return stack.levels().stream()
                .filter(level -> level.part().equals(part))
                .findFirst()
                .orElseThrow();
    }

    // By hand for the demonstration: a gap and an end shake of 1.8 mm, the cannon pinion 5 mm thick, 1.8 mm, the hour
    // wheel,
    // 5 mm: 13.6 mm. The square stands a gap of 1 mm before it and is 17 mm high; 1.8 mm before that pass the hands:
    // 33.4 mm.
    // Hour hand and collar 4.8 mm, a gap, minute hand and collar 4.8 mm, the clutch's fingers 6 mm: 50 mm.
    @Test
    void the_demonstrations_hands_and_square_stand_one_before_the_other() {
        BeforePlate stack = before(MAKES.get(0));
        DialRoom dial = stack.dial().orElseThrow();

        assertThat(stack.levels().get(0).from()).isCloseTo(1.8e-3, within(1e-9));
        assertThat(dial.from()).isCloseTo(13.6e-3, within(1e-9));
        assertThat(dial.to()).isCloseTo(33.4e-3, within(1e-9));
        assertThat(level(stack, "arbor-1-winding-square").from()).isCloseTo(14.6e-3, within(1e-9));
        assertThat(level(stack, "arbor-1-winding-square").to()).isCloseTo(31.6e-3, within(1e-9));
        assertThat(level(stack, "minute-hand").from()).isCloseTo(39.2e-3, within(1e-9));
        assertThat(stack.room()).isCloseTo(50e-3, within(1e-9));
    }

    // Either hand sweeps over the square of a drum that is nearer than it is long; a key must take hold of the square
    // behind.
    @ParameterizedTest
    @MethodSource("makes")
    void both_hands_pass_before_the_square_by_a_gap_and_the_end_shake_of_its_arbor(PlacedMakes made) {
        BeforePlate stack = before(made);
        double asked = made.brief().parts().axialGap().si()
                + made.brief().fit().endShake().high().si();
        double square = level(stack, "arbor-1-winding-square").to();

        assertThat(level(stack, "hour-hand").from() - square).isGreaterThanOrEqualTo(asked - 1e-9);
        assertThat(level(stack, "minute-hand").from())
                .isGreaterThanOrEqualTo(level(stack, "hour-hand").to()
                        + made.brief().parts().axialGap().si()
                        - 1e-9);
        assertThat(level(stack, "cannon-pinion").to())
                .isGreaterThan(level(stack, "minute-hand").to());
    }

    // Asked for alone or among all parts of the movement: the same parts at the same levels.
    @ParameterizedTest
    @MethodSource("makes")
    void the_parts_before_the_plate_are_those_of_the_whole_movement(PlacedMakes made) {
        TrainRater rater = new TrainRater(made.brief());
        MovementParts movement = MovementParts.of(rater, rater.rate(made.train()), Optional.of(made.layout()));
        double face = movement.places().orElseThrow().depth()
                + made.brief().frame().plate().si();

        assertThat(BeforePlate.of(movement.beforePlate(), face).levels())
                .containsExactlyInAnyOrderElementsOf(before(made).levels());
    }

    @Test
    void nothing_stands_before_the_plate_where_no_part_has_a_place() {
        BeforePlate none = BeforePlate.of(List.of(), 0.08);

        assertThat(none.room()).isZero();
        assertThat(none.dial()).isEmpty();
    }
}
