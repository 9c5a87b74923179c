// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.teeth.flank;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class FlankPieceTest {
    static Stream<FlankPiece> everyKindOfPiece() {
        return Stream.of(
                new RadialPiece(3, 4, 0.1),
                new InvolutePiece(9.4, 0.1, 9.6, 11),
                new ArcPiece(4.2, -0.1, 1.5, false, 1.9, 0.3),
                new ArcPiece(2.4, 0.3, 0.4, true, Math.PI, 1.8),
                new EpicycloidPiece(30, 2, 0, 0.026, 0.01, 1.1),
                new EpicycloidPiece(30, 4, 0.7, 0.05, 0.2, 1.1),
                new TrochoidPiece(4, 0.5, 0.15, 0.38, Math.PI / 8, 0.9));
    }

    // Both tellings solve the same closed curve; the arc's and trochoid's inverses lose a few digits at their ends.
    @ParameterizedTest
    @MethodSource("everyKindOfPiece")
    void a_piece_told_by_radius_is_the_piece_told_by_its_parameter(FlankPiece piece) {
        for (double share = 0.02; share < 1; share += 0.06) {
            FlankPoint point = piece.at(share);
            assertThat(piece.halfAngle(point.radius())).isCloseTo(point.halfAngle(), within(1e-10));
            assertThat(piece.radialNormal(point.radius())).isCloseTo(point.radialNormal(), within(1e-7));
        }
    }

    // Central difference with a step of 1e-5 of the piece: truncation and rounding both below 1e-6.
    @ParameterizedTest
    @MethodSource("everyKindOfPiece")
    void the_normal_stands_square_on_the_curve(FlankPiece piece) {
        for (double share = 0.05; share < 1; share += 0.1) {
            FlankPoint before = piece.at(share - 1e-5);
            FlankPoint after = piece.at(share + 1e-5);
            FlankPoint point = piece.at(share);
            double along = after.radius() - before.radius();
            double across = point.radius() * (after.halfAngle() - before.halfAngle());
            double length = Math.hypot(along, across);
            double dot = (along * point.radialNormal() + across * point.forwardNormal()) / length;
            assertThat(dot).isCloseTo(0, within(1e-6));
        }
    }

    @ParameterizedTest
    @MethodSource("everyKindOfPiece")
    void the_radius_never_falls_from_root_to_tip(FlankPiece piece) {
        double last = piece.startRadius();
        assertThat(piece.at(0).radius()).isCloseTo(last, within(1e-12));
        assertThat(piece.at(1).radius()).isCloseTo(piece.endRadius(), within(1e-12));
        for (double share = 0.01; share <= 1; share += 0.01) {
            assertThat(piece.at(share).radius()).isGreaterThanOrEqualTo(last);
            last = piece.at(share).radius();
        }
    }

    @Test
    void pieces_that_do_not_meet_are_refused() {
        assertThatThrownBy(() -> Flank.of(new RadialPiece(3, 4, 0.1), new RadialPiece(4.1, 5, 0.1)))
                .hasMessageContaining("gap");
        assertThat(Flank.of(new RadialPiece(3, 4, 0.1), new RadialPiece(4, 5, 0.1))
                        .tipRadius())
                .isEqualTo(5);
    }

    @Test
    void a_root_is_found_to_the_tolerance_and_a_bracket_without_one_is_refused() {
        assertThat(Roots.find(x -> x * x * x - 2, 0, 2, 1e-15)).isCloseTo(Math.cbrt(2), within(1e-14));
        assertThat(Roots.find(x -> x < 0.3 ? -1 : 1, 0, 1, 1e-12)).isCloseTo(0.3, within(1e-11));
        assertThatThrownBy(() -> Roots.find(x -> x * x + 1, 0, 1, 1e-9)).hasMessageContaining("change of sign");
    }
}
