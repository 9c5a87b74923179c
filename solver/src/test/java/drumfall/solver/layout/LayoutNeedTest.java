// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import drumfall.solver.layout.size.DialPlace;
import drumfall.solver.layout.size.Envelope;
import drumfall.solver.layout.size.MeshSpacing;
import drumfall.solver.layout.size.Nanometres;
import drumfall.solver.layout.size.Pillars;
import drumfall.solver.layout.size.Side;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class LayoutNeedTest {
    private static final LayoutNeed NEED = Movements.need(Movements.eightDay(), Movements.frame(300, 420, 130), 48);

    @Test
    void neighbours_locked_off_their_centre_distance_are_refused() {
        Place straight = new Place(0, -NEED.centreDistance(1));
        assertThatCode(() -> NEED.with(new Locks(List.of(new PlaceLock(1, straight)), List.of())))
                .doesNotThrowAnyException();
        Place off = new Place(0, -NEED.centreDistance(1) - 1001);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> NEED.with(new Locks(List.of(new PlaceLock(1, off)), List.of())))
                .withMessage("The locked places of arbors (1 and 2) are 43751001 nm apart and must be their centre "
                        + "distance (43750000 nm) apart to 1000 nm. Maybe release one.");
    }

    @Test
    void a_direction_against_locked_places_is_refused() {
        PlaceLock below = new PlaceLock(1, new Place(0, -NEED.centreDistance(1)));
        assertThatCode(() -> NEED.with(new Locks(List.of(below), List.of(new DirectionLock(1, Math.PI / 2)))))
                .doesNotThrowAnyException();
        assertThatIllegalArgumentException()
                .isThrownBy(() -> NEED.with(new Locks(List.of(below), List.of(new DirectionLock(1, 0)))))
                .withMessageContaining("direction (0.0 rad) of mesh (1) must agree with the locked places");
    }

    @Test
    void a_centre_arbor_locked_off_the_dial_centre_is_refused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> NEED.with(new Locks(List.of(new PlaceLock(2, new Place(1, 0))), List.of())))
                .withMessageContaining("of the centre arbor (2) must be the dial centre");
    }

    @ParameterizedTest
    @ValueSource(ints = {-1, 5})
    void a_locked_arbor_outside_the_going_train_is_refused(int arbor) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> NEED.with(new Locks(List.of(new PlaceLock(arbor, Place.DIAL_CENTRE)), List.of())))
                .withMessageContaining("must be from 0 to 4");
    }

    @ParameterizedTest
    @ValueSource(ints = {-1, 5})
    void a_locked_mesh_that_does_not_exist_is_refused(int mesh) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> NEED.with(Locks.NONE.with(new DirectionLock(mesh, 0))))
                .withMessageContaining("must be from 0 to 4");
    }

    @Test
    void an_arbor_locked_twice_is_refused() {
        PlaceLock lock = new PlaceLock(0, new Place(0, -1));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Locks(List.of(lock, lock), List.of()))
                .withMessageContaining("must name each arbor once");
    }

    @ParameterizedTest
    @CsvSource({"0, false", "2, false", "6, false", "724, false", "4, true", "48, true", "720, true"})
    void the_steps_of_a_grid_are_a_multiple_of_four_up_to_720(int steps, boolean accepted) {
        if (accepted) {
            assertThatCode(() -> new AngleGrid(steps)).doesNotThrowAnyException();
        } else {
            assertThatIllegalArgumentException().isThrownBy(() -> new AngleGrid(steps));
        }
    }

    /** A point off the circle by rounding to whole nanometres each way: less than 1 nm. */
    @ParameterizedTest
    @ValueSource(ints = {4, 12, 48, 100})
    void a_circle_of_the_grid_is_its_own_mirror_image_both_ways(int steps) {
        List<Place> circle = new AngleGrid(steps).circle(43_750_001);
        assertThat(circle).hasSize(steps).doesNotHaveDuplicates().allSatisfy(point -> {
            assertThat(circle).contains(new Place(-point.x(), point.y()), new Place(point.x(), -point.y()));
            assertThat(point.distance(Place.DIAL_CENTRE)).isCloseTo(43_750_001, within(1.0));
        });
    }

    @Test
    void teeth_that_never_meet_are_refused() {
        assertThatCode(() -> new MeshSpacing(30, 20, 10, 1, 1)).doesNotThrowAnyException();
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new MeshSpacing(31, 20, 10, 1, 1))
                .withMessageContaining("(31 nm) must be at most the sum of the tip radii (30 nm)");
    }

    @Test
    void a_length_in_millimetres_is_refused_where_metres_are_asked() {
        assertThat(Nanometres.of(0.0615)).isEqualTo(61_500_000);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Nanometres.of(61.5))
                .withMessage("The length (61.5 m) must be within 1 m. Maybe it was given in millimetres.");
    }

    @Test
    void pillars_that_stand_out_of_the_frame_are_refused() {
        Pillars pillars = new Pillars(6, 40, 40);
        assertThatCode(() -> new Envelope(92, 92, 50, 4, Optional.of(pillars), DialPlace.ANYWHERE))
                .doesNotThrowAnyException();
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Envelope(91, 92, 50, 4, Optional.of(pillars), DialPlace.ANYWHERE))
                .withMessageContaining("The pillars' width (92 nm) must be at most the envelope width (91 nm).");
    }

    @Test
    void a_plane_that_wheel_and_pinion_of_one_arbor_share_is_refused() {
        Span plane = new Span(0, 5);
        assertThatCode(() -> new Planes(List.of(plane, new Span(5, 10)), plane, List.of(), 20, 28))
                .doesNotThrowAnyException();
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Planes(List.of(plane, new Span(4, 9)), plane, List.of(), 20, 28))
                .withMessageContaining("of arbor (1) must not overlap");
    }

    /** Each mesh reverses the turn and the centre arbor turns clockwise: right after an even number, left after an odd. */
    @ParameterizedTest
    @CsvSource({"0, RIGHT", "1, LEFT", "2, RIGHT", "3, LEFT"})
    void the_line_leaves_the_drum_on_the_side_that_turns_the_hands_clockwise(int meshes, Side side) {
        assertThat(Side.ofLine(meshes)).isEqualTo(side);
    }
}
