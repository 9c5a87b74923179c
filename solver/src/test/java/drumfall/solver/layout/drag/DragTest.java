// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.layout.drag;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import drumfall.solver.layout.Disc;
import drumfall.solver.layout.Layout;
import drumfall.solver.layout.LayoutNeed;
import drumfall.solver.layout.LayoutOutcome;
import drumfall.solver.layout.LayoutOutcome.Placed;
import drumfall.solver.layout.Locks;
import drumfall.solver.layout.Movements;
import drumfall.solver.layout.PartKind;
import drumfall.solver.layout.Place;
import drumfall.solver.layout.PlaceLock;
import drumfall.solver.layout.check.LayoutCheck;
import drumfall.solver.layout.place.Placer;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class DragTest {
    private static final LayoutNeed NEED = Movements.need(Movements.eightDay(), Movements.frame(300, 420, 130), 48);
    private static final Layout LAYOUT = ((Placed) Placer.place(NEED, () -> false)).layout();
    private static final int CASES = "full".equals(System.getProperty("drumfall.samples")) ? 500 : 50;

    /** The foot of a point on a circle: on the ray from the middle; rounding moves it by less than 1 nm. */
    @ParameterizedTest
    @CsvSource({"1, 2", "3, 2", "6, 2"})
    void an_arbor_with_free_way_goes_to_the_foot_of_the_wished_point(int arbor, int anchor) {
        Place wished = LAYOUT.place(arbor).plus(new Place(3_000_000, 1_000_000));
        Drag drag = Drag.towards(LAYOUT, arbor, wished).orElseThrow();
        Place middle = LAYOUT.place(anchor);
        assertThat(middle.directionTo(drag.place())).isCloseTo(middle.directionTo(wished), within(1e-7));
        assertThat(drag.place().distance(middle)).isCloseTo(LAYOUT.place(arbor).distance(middle), within(1.5));
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 1, 3, 4, 6})
    void the_rest_is_placed_anew_with_the_drawn_arbor_where_it_was_drawn(int arbor) {
        Random random = new Random(arbor);
        int placed = 0;
        for (int i = 0; i < CASES / 5; i++) {
            Place wished =
                    new Place(random.nextInt(200_000_000) - 100_000_000, random.nextInt(300_000_000) - 150_000_000);
            Drag drag = Drag.towards(LAYOUT, arbor, wished).orElseThrow();
            LayoutOutcome outcome = drag.resolve(() -> false);
            if (outcome instanceof Placed found) {
                assertThat(LayoutCheck.faults(found.layout())).isEmpty();
                // one nanometre each way for every arbor on the way from the dial centre
                assertThat(found.layout().place(arbor).distance(drag.place())).isLessThan(4.0);
                placed++;
            }
        }
        assertThat(placed).isPositive();
    }

    /** Steps of a 3600th of a turn: no free one of them may be nearer than the place found. */
    @Test
    void no_nearer_place_of_a_fine_sweep_is_free() {
        Random random = new Random(11);
        for (int i = 0; i < CASES; i++) {
            Place wished =
                    new Place(random.nextInt(120_000_000) - 60_000_000, random.nextInt(120_000_000) - 60_000_000);
            Drag drag = Drag.towards(LAYOUT, 4, wished).orElseThrow();
            assertThat(isClearOfCentre(drag.place())).isTrue();
            for (int step = 0; step < 3600; step++) {
                Place at = LAYOUT.place(3).plus(Place.polar(NEED.centreDistance(3), step * Math.PI / 1800));
                if (isClearOfCentre(at)) {
                    assertThat(drag.place().distance(wished)).isLessThanOrEqualTo(at.distance(wished) + 4);
                }
            }
        }
    }

    /** What no order of the planes can mend between escape arbor and centre arbor: parts of the one, the rod of the other. */
    private static boolean isClearOfCentre(Place escape) {
        List<Disc> discs = LAYOUT.discs();
        double apart = escape.distance(LAYOUT.place(2));
        return discs.stream()
                .filter(disc -> disc.part().number() == 2 || disc.part().number() == 4)
                .filter(disc -> disc.part().kind() != PartKind.CANNON_PINION
                        && disc.part().kind() != PartKind.HOUR_WHEEL)
                .allMatch(
                        disc -> apart >= disc.radius() + 1_500_000 + NEED.gaps().radial());
    }

    @Test
    void an_arbor_between_two_that_stay_has_two_places() {
        Locks locks = new Locks(List.of(new PlaceLock(0, new Place(20_000_000, -90_000_000))), List.of());
        LayoutNeed need = NEED.with(locks);
        Layout layout = ((Placed) Placer.place(need, () -> false)).layout();
        Place left = Drag.towards(layout, 1, new Place(-90_000_000, -40_000_000))
                .orElseThrow()
                .place();
        Place right = Drag.towards(layout, 1, new Place(90_000_000, -40_000_000))
                .orElseThrow()
                .place();
        assertThat(left.x()).isLessThan(right.x());
        for (Place place : List.of(left, right)) {
            // a micrometre, to which centre distances are held
            assertThat(place.distance(layout.place(0))).isCloseTo((double) need.centreDistance(0), within(1_000.0));
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {-1, 2, 5, 7})
    void centre_and_pallet_arbor_cannot_be_drawn(int arbor) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Drag.towards(LAYOUT, arbor, Place.DIAL_CENTRE))
                .withMessageContaining("The drawn arbor (" + arbor + ") must be in mesh with a neighbour");
    }
}
