// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.layout.place;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import drumfall.solver.layout.AngleGrid;
import drumfall.solver.layout.DirectionLock;
import drumfall.solver.layout.Layout;
import drumfall.solver.layout.LayoutNeed;
import drumfall.solver.layout.LayoutOutcome;
import drumfall.solver.layout.LayoutOutcome.Merit;
import drumfall.solver.layout.LayoutOutcome.NoLayout;
import drumfall.solver.layout.LayoutOutcome.Placed;
import drumfall.solver.layout.LayoutOutcome.Scope;
import drumfall.solver.layout.LayoutOutcome.Stopped;
import drumfall.solver.layout.Locks;
import drumfall.solver.layout.Movements;
import drumfall.solver.layout.Part;
import drumfall.solver.layout.PartKind;
import drumfall.solver.layout.Place;
import drumfall.solver.layout.PlaceLock;
import drumfall.solver.layout.Preference;
import drumfall.solver.layout.Rule;
import drumfall.solver.layout.Shortfall;
import drumfall.solver.layout.Wish;
import drumfall.solver.layout.check.LayoutCheck;
import drumfall.solver.layout.size.MeshSpacing;
import drumfall.solver.layout.size.MovementParts;
import java.util.List;
import java.util.Random;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class PlacerTest {
    private static final MovementParts EIGHT_DAY = Movements.eightDay();
    private static final LayoutNeed ROOMY = Movements.need(EIGHT_DAY, Movements.frame(300, 420, 130), 48);
    private static final int CASES = "full".equals(System.getProperty("drumfall.samples")) ? 500 : 50;

    /** Frames in millimetres: straight upright, folded, squat, tight. */
    @ParameterizedTest
    @CsvSource({"300, 420, 130", "160, 420, 130", "220, 200, 130", "160, 240, 110"})
    void an_eight_day_movement_is_placed_soundly(long width, long height, long depth) {
        Layout layout = placed(Movements.need(EIGHT_DAY, Movements.frame(width, height, depth), 48));
        assertThat(LayoutCheck.faults(layout)).isEmpty();
    }

    /** Places are rounded to 1 nm each way, so a distance is off by at most half the diagonal of that, less than 1 nm. */
    @Test
    void centre_distances_hold_to_a_nanometre() {
        Layout layout = placed(ROOMY);
        for (int mesh = 0; mesh < EIGHT_DAY.meshes().size(); mesh++) {
            assertThat(layout.place(mesh).distance(layout.place(mesh + 1)))
                    .isCloseTo((double) EIGHT_DAY.meshes().get(mesh).centreDistance(), within(1.0));
        }
    }

    @Test
    void a_wheel_wider_than_the_frame_is_refused_anywhere_and_named() {
        NoLayout none = refused(Movements.need(EIGHT_DAY, Movements.frame(110, 420, 130), 48));
        assertThat(none.scope()).isEqualTo(Scope.ANYWHERE);
        assertThat(none.closest())
                .isEqualTo(Shortfall.of(Rule.WIDTH, new Part(PartKind.WHEEL, 0), 110_000_000, 111_000_000));
    }

    @Test
    void planes_deeper_than_the_frame_are_refused_anywhere_and_named() {
        NoLayout none = refused(Movements.need(EIGHT_DAY, Movements.frame(300, 420, 70), 48));
        assertThat(none.scope()).isEqualTo(Scope.ANYWHERE);
        assertThat(none.closest().rule()).isEqualTo(Rule.DEPTH);
        assertThat(none.closest().first()).isEqualTo(new Part(PartKind.DRUM, 0));
    }

    /** A wheel of 66 teeth behind a short mesh reaches the rod of the arbor before it at every direction. */
    @Test
    void a_wheel_that_reaches_the_arbor_before_it_is_refused_anywhere_with_both_named() {
        List<MeshSpacing> meshes = List.of(Movements.mesh(40, 8, 1000), Movements.mesh(66, 8, 1000));
        NoLayout none = refused(Movements.need(Movements.parts(1, meshes, false), Movements.frame(400, 400, 130), 24));
        assertThat(none.scope()).isEqualTo(Scope.ANYWHERE);
        assertThat(none.closest().first()).isEqualTo(new Part(PartKind.ROD, 0));
        assertThat(none.closest().second()).contains(new Part(PartKind.WHEEL, 1));
        // 24 mm apart less a wheel of 34 mm and a rod of 1.5 mm
        assertThat(none.closest().found()).isEqualTo(-11_500_000);
    }

    /** Two discs of 55.5 mm and 38.75 mm, 61.5 mm apart, cannot stand in a square of 120 mm: 25.75 mm free each way. */
    @Test
    void neighbours_too_far_apart_for_the_frame_are_refused_anywhere_with_both_named() {
        NoLayout none = refused(Movements.need(EIGHT_DAY, Movements.frame(120, 120, 130), 48));
        assertThat(none.scope()).isEqualTo(Scope.ANYWHERE);
        assertThat(none.closest().first()).isEqualTo(new Part(PartKind.WHEEL, 0));
        assertThat(none.closest().second()).contains(new Part(PartKind.WHEEL, 1));
    }

    @Test
    void a_frame_in_which_only_the_grid_finds_no_place_is_refused_on_the_grid_alone() {
        NoLayout none = refused(Movements.need(EIGHT_DAY, Movements.frame(130, 170, 130), 48));
        assertThat(none.scope()).isEqualTo(Scope.ON_GRID);
        assertThat(none.closest().amount()).isPositive();
    }

    @ParameterizedTest
    @EnumSource(Wish.class)
    void a_finer_grid_is_never_worse(Wish wish) {
        LayoutNeed coarse =
                Movements.need(EIGHT_DAY, Movements.frame(170, 330, 130), 12).with(Preference.inOrder(wish));
        LayoutNeed fine = coarse.with(new AngleGrid(24));
        assertThat(placed(fine).measure(wish))
                .isLessThanOrEqualTo(placed(coarse).measure(wish));
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 1, 2, 3, 4})
    void a_locked_direction_off_the_grid_is_held_to_the_nanometre(int mesh) {
        int checked = 0;
        Random random = new Random(mesh);
        for (int i = 0; i < CASES / 5; i++) {
            double direction = 2 * Math.PI * random.nextDouble();
            LayoutNeed need = ROOMY.with(Locks.NONE.with(new DirectionLock(mesh, direction)));
            if (Placer.place(need, () -> false) instanceof Placed placed) {
                Place from = placed.layout().place(mesh == 4 ? 2 : mesh);
                Place to = placed.layout().place(mesh == 4 ? EIGHT_DAY.minuteArbor() : mesh + 1);
                assertThat(to.minus(from)).isEqualTo(Place.polar(need.centreDistance(mesh), direction));
                assertThat(LayoutCheck.faults(placed.layout())).isEmpty();
                checked++;
            }
        }
        assertThat(checked).isPositive();
    }

    /** The drum two meshes from the centre arbor: the arbor between stands where two circles cross, off the grid. */
    @Test
    void a_locked_drum_closes_a_linkage_off_the_grid() {
        int checked = 0;
        Random random = new Random(7);
        for (int i = 0; i < CASES; i++) {
            Place drum = new Place(random.nextInt(60_000_000) - 30_000_000, -80_000_000 - random.nextInt(20_000_000));
            LayoutNeed need = ROOMY.with(new Locks(List.of(new PlaceLock(0, drum)), List.of()));
            if (Placer.place(need, () -> false) instanceof Placed placed) {
                assertThat(placed.layout().place(0)).isEqualTo(drum);
                assertThat(LayoutCheck.faults(placed.layout())).isEmpty();
                checked++;
            }
        }
        assertThat(checked).isGreaterThan(CASES / 2);
    }

    @Test
    void a_locked_drum_out_of_reach_is_refused() {
        Locks locks = new Locks(List.of(new PlaceLock(0, new Place(0, -200_000_000))), List.of());
        NoLayout none = refused(ROOMY.with(locks));
        assertThat(none.closest().rule()).isEqualTo(Rule.LOCKED_PLACE);
        // 61.5 mm and 43.75 mm reach 105.25 mm
        assertThat(none.closest().amount()).isEqualTo(94_750_000);
    }

    @Test
    void a_mirrored_need_can_be_placed_if_and_only_if_the_need_can() {
        for (long seed = 1; seed <= CASES; seed++) {
            LayoutNeed need = Movements.drawn(seed);
            LayoutOutcome own = Placer.place(need, () -> false);
            LayoutOutcome other = Placer.place(need.mirrored(), () -> false);
            assertThat(other.getClass()).as("seed %d", seed).isEqualTo(own.getClass());
            if (own instanceof Placed placed && other instanceof Placed mirrored && placed.merit() != Merit.ANY) {
                assertThat(PlainLayouts.score(mirrored.layout())).isEqualTo(PlainLayouts.score(placed.layout()));
            }
        }
    }

    @Test
    void a_book_of_orders_used_before_changes_no_outcome() {
        PlaneBook book = new PlaneBook();
        for (long seed = 1; seed <= CASES; seed++) {
            LayoutNeed drawn = Movements.drawn(seed);
            LayoutNeed lighter = drawn.with(Preference.ANY);
            for (LayoutNeed need : List.of(drawn, lighter, drawn)) {
                assertThat(Placer.place(need, book, () -> false))
                        .as("seed %d", seed)
                        .isEqualTo(Placer.place(need, () -> false));
            }
        }
    }

    @Test
    void orders_cut_short_are_not_kept() {
        PlaneBook book = new PlaneBook();
        AtomicInteger looks = new AtomicInteger();
        assertThat(Placer.place(ROOMY, book, () -> looks.incrementAndGet() > 3)).isInstanceOf(Stopped.class);
        assertThat(Placer.place(ROOMY, book, () -> false)).isEqualTo(Placer.place(ROOMY, () -> false));
    }

    @Test
    void work_cancelled_at_once_ends_stopped() {
        assertThat(Placer.place(ROOMY, () -> true)).isInstanceOf(Stopped.class);
    }

    @Test
    void work_cancelled_with_a_layout_in_hand_says_that_it_is_the_best_found() {
        LayoutNeed need =
                Movements.need(EIGHT_DAY, Movements.frame(220, 320, 130), 48).with(Preference.inOrder(Wish.COMPACT));
        AtomicInteger looks = new AtomicInteger();
        Placer.place(need, () -> looks.incrementAndGet() < 0);
        int last = looks.getAndSet(0);
        assertThat(Placer.place(need, () -> looks.incrementAndGet() >= last))
                .isInstanceOfSatisfying(Placed.class, placed -> {
                    assertThat(placed.merit()).isEqualTo(Merit.BEST_FOUND);
                    assertThat(LayoutCheck.faults(placed.layout())).isEmpty();
                });
    }

    private static Layout placed(LayoutNeed need) {
        LayoutOutcome outcome = Placer.place(need, () -> false);
        assertThat(outcome).isInstanceOf(Placed.class);
        return ((Placed) outcome).layout();
    }

    private static NoLayout refused(LayoutNeed need) {
        LayoutOutcome outcome = Placer.place(need, () -> false);
        assertThat(outcome).isInstanceOf(NoLayout.class);
        return (NoLayout) outcome;
    }
}
