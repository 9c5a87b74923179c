// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.layout.place;

import static org.assertj.core.api.Assertions.assertThat;

import drumfall.solver.layout.place.PlaneRoom.Pair;
import drumfall.solver.layout.size.Gaps;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The planes of a drum 42 mm long, its great wheel and an escape wheel, 1 mm from each other and from the plates. */
class PlaneRoomTest {
    private static final long MM = 1_000_000;
    private static final PlaneSizes TWO = new PlaneSizes(List.of(8 * MM, 5 * MM), 42 * MM, 6 * MM, new Gaps(MM, MM, 0));
    private static final long DRUM_AND_ESCAPE_WHEEL = PlaneRoom.bit(0, Pair.DRIVEN_AND_WHEEL);

    /** Reckoned by hand: 1 + 8 + 6 + 42 + 1 = 58 mm; an escape wheel beyond the drum or behind the great wheel adds 5 + 1. */
    @ParameterizedTest
    @CsvSource({"57, false, false", "58, true, false", "63, true, false", "64, true, true"})
    void a_plane_of_its_own_for_the_escape_wheel_takes_its_thickness_and_a_gap(
            long depth, boolean together, boolean apart) {
        PlaneRoom room = PlaneRoom.of(TWO, depth * MM, () -> false);

        assertThat(room.keepsApart(0)).isEqualTo(together);
        assertThat(room.keepsApart(DRUM_AND_ESCAPE_WHEEL)).isEqualTo(apart);
    }

    @Test
    void where_everything_can_be_apart_nothing_is_decisive() {
        assertThat(PlaneRoom.of(TWO, 100 * MM, () -> false).decisive()).isZero();
        assertThat(PlaneRoom.AMPLE.keepsApart(-1)).isTrue();
    }

    @Test
    void pairs_that_cannot_come_to_be_kept_apart_are_not_decisive() {
        PlaneRoom room = PlaneRoom.of(TWO, 58 * MM, () -> false);

        assertThat(room.decisive() & DRUM_AND_ESCAPE_WHEEL).isNotZero();
        assertThat(room.left(0, ~DRUM_AND_ESCAPE_WHEEL).decisive() & DRUM_AND_ESCAPE_WHEEL)
                .isZero();
        assertThat(room.left(DRUM_AND_ESCAPE_WHEEL, -1).keepsApart(0)).isFalse();
    }
}
