// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import drumfall.solver.layout.LayoutOutcome.Placed;
import drumfall.solver.layout.place.Placer;
import drumfall.solver.layout.size.Envelope;
import drumfall.solver.layout.size.Pillars;
import java.util.List;
import java.util.Optional;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The room a placed movement takes, in whole nanometres. */
class MovementSizeTest {
    private static final long MM = 1_000_000;
    private static final int CASES = "full".equals(System.getProperty("drumfall.samples")) ? 500 : 60;

    /** Layouts of movements drawn at random, those that have one. */
    private static List<Layout> layouts() {
        return LongStream.rangeClosed(1, CASES)
                .mapToObj(Movements::drawn)
                .map(need -> Placer.place(need, () -> false))
                .filter(Placed.class::isInstance)
                .map(outcome -> ((Placed) outcome).layout())
                .toList();
    }

    /** The eight-day movement alone, its first arbors in one vertical: sums of its sizes as written in its table. */
    @Test
    void the_height_of_arbors_in_one_vertical_is_the_sum_of_their_distances_and_the_outer_radii() {
        Layout layout = upright();
        MovementSize size = layout.size();

        // Drum arbor 3 x 82 mm = 61.5 + 43.75 mm below the dial centre, its great wheel of 1.5 mm (72 + 2) / 2 = 55.5
        // mm.
        assertThat(size.parts().bottom()).isEqualTo(-(61_500_000L + 43_750_000L + 55_500_000L));
        // Escape arbor 1 mm (64 + 10) / 2 = 37 mm and 1 mm (60 + 8) / 2 = 34 mm above it, pallets 35 mm higher reach 24
        // mm.
        assertThat(size.parts().top()).isEqualTo(37_000_000L + 34_000_000L + 35_000_000L + 24_000_000L);
        assertThat(size.height()).isEqualTo(160_750_000L + 130_000_000L);
        // The great wheel is the widest: 55.5 mm to either side.
        assertThat(size.width()).isEqualTo(111_000_000L);
        // 290.75 mm by 111 mm.
        assertThat(size.plateArea()).isCloseTo(0.03227325, within(1e-12));
    }

    /** Upright as a value only; it need not be free of clashes. */
    private static Layout upright() {
        LayoutNeed need = Movements.need(Movements.eightDay(), Movements.frame(300, 420, 130), 48);
        Layout any = ((Placed) Placer.place(need, () -> false)).layout();
        List<Place> places = List.of(
                new Place(0, -105_250_000),
                new Place(0, -43_750_000),
                Place.DIAL_CENTRE,
                new Place(0, 37_000_000),
                new Place(0, 71_000_000),
                new Place(0, 106_000_000),
                new Place(0, 24_000_000));
        return new Layout(need, places, any.frameCorner(), any.planes());
    }

    @Test
    void every_part_is_within_the_box_and_every_side_of_it_is_touched() {
        assertThat(layouts()).hasSizeGreaterThan(CASES / 5).allSatisfy(layout -> {
            Box box = layout.size().parts();
            List<Box> parts = parts(layout).toList();
            assertThat(parts).allMatch(part -> box.around(part).equals(box));
            assertThat(parts).anyMatch(part -> part.left() == box.left());
            assertThat(parts).anyMatch(part -> part.right() == box.right());
            assertThat(parts).anyMatch(part -> part.bottom() == box.bottom());
            assertThat(parts).anyMatch(part -> part.top() == box.top());
        });
    }

    private static Stream<Box> parts(Layout layout) {
        long half = (layout.need().line().diameter() + 1) / 2;
        Stream<Box> line = layout.falls().stream()
                .map(fall -> new Box(
                        fall - half,
                        layout.place(0).y(),
                        fall + half,
                        layout.place(0).y()));
        return Stream.concat(layout.discs().stream().map(Disc::box), line);
    }

    @Test
    void a_movement_in_a_mirror_is_as_large() {
        assertThat(layouts()).allSatisfy(layout -> {
            List<Place> places = layout.places().stream().map(Place::mirrored).toList();
            Place corner =
                    new Place(-layout.frame().right(), layout.frameCorner().y());
            MovementSize mirrored = new Layout(layout.need().mirrored(), places, corner, layout.planes()).size();
            assertThat(mirrored.width()).isEqualTo(layout.size().width());
            assertThat(mirrored.height()).isEqualTo(layout.size().height());
            assertThat(mirrored.depth()).isEqualTo(layout.size().depth());
            assertThat(mirrored.plateArea()).isEqualTo(layout.size().plateArea());
        });
    }

    @Test
    void the_movement_fits_the_frame_it_was_placed_in() {
        assertThat(layouts()).allSatisfy(layout -> {
            assertThat(layout.frame().around(layout.size().plate())).isEqualTo(layout.frame());
            assertThat(layout.size().depth())
                    .isLessThanOrEqualTo(layout.need().envelope().depth());
        });
    }

    /** The outer edges of pillars lie an inset less a radius within the frame; parts may stand further out. */
    @ParameterizedTest
    @CsvSource({"6, 8, 8", "6, 20, 12", "8, 8, 8", "5, 60, 60"})
    void a_plate_reaches_over_parts_and_pillars(long radius, long side, long end) {
        LayoutNeed bare = Movements.need(Movements.eightDay(), Movements.frame(200, 320, 130), 24);
        Layout given = ((Placed) Placer.place(bare, () -> false)).layout();
        Envelope frame = bare.envelope();
        Pillars pillars = new Pillars(radius * MM, side * MM, end * MM);
        Envelope pillared = new Envelope(
                frame.width(),
                frame.height(),
                frame.depth(),
                frame.plateThickness(),
                Optional.of(pillars),
                frame.dialPlace());
        Layout layout = new Layout(bare.with(pillared), given.places(), given.frameCorner(), given.planes());
        Box parts = given.size().parts();
        Box edges = given.frame();

        assertThat(layout.size().parts()).isEqualTo(parts);
        assertThat(layout.size().plate())
                .isEqualTo(new Box(
                        Math.min(parts.left(), edges.left() + (side - radius) * MM),
                        Math.min(parts.bottom(), edges.bottom() + (end - radius) * MM),
                        Math.max(parts.right(), edges.right() - (side - radius) * MM),
                        Math.max(parts.top(), edges.top() - (end - radius) * MM)));
    }

    @Test
    void without_pillars_the_plate_is_as_large_as_the_parts() {
        assertThat(layouts())
                .filteredOn(layout -> layout.need().envelope().pillars().isEmpty())
                .isNotEmpty()
                .allSatisfy(layout -> assertThat(layout.size().plate())
                        .isEqualTo(layout.size().parts()));
    }
}
