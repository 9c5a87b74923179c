// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.layout.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import drumfall.solver.layout.Box;
import drumfall.solver.layout.DirectionLock;
import drumfall.solver.layout.Disc;
import drumfall.solver.layout.Layout;
import drumfall.solver.layout.LayoutNeed;
import drumfall.solver.layout.LayoutOutcome.Placed;
import drumfall.solver.layout.Locks;
import drumfall.solver.layout.Movements;
import drumfall.solver.layout.Part;
import drumfall.solver.layout.PartKind;
import drumfall.solver.layout.Place;
import drumfall.solver.layout.PlaceLock;
import drumfall.solver.layout.Planes;
import drumfall.solver.layout.Rule;
import drumfall.solver.layout.Shortfall;
import drumfall.solver.layout.Span;
import drumfall.solver.layout.place.Placer;
import drumfall.solver.layout.size.Envelope;
import drumfall.solver.layout.size.Gaps;
import drumfall.solver.layout.size.HangingLine;
import drumfall.solver.layout.size.Pillars;
import drumfall.solver.layout.size.Side;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** One sound layout, and for each rule the same layout changed just enough to violate it. Lengths in nm, exact. */
class LayoutCheckTest {
    private static final LayoutNeed NEED =
            Movements.need(Movements.eightDay(), Movements.pillaredFrame(200, 320, 130), 48);
    private static final Layout SOUND = ((Placed) Placer.place(NEED, () -> false)).layout();

    @Test
    void a_sound_layout_has_no_fault() {
        assertThat(LayoutCheck.faults(SOUND)).isEmpty();
    }

    /** The tolerance of a centre distance is 1 µm; rounding to whole nm moves a place by less than 1 nm. */
    @ParameterizedTest
    @CsvSource({"0, 997, false", "0, 1003, true", "1, 1003, true", "2, 1003, true", "3, 1003, true"})
    void an_arbor_off_its_centre_distance_is_named(int mesh, long off, boolean fault) {
        int moved = mesh < 2 ? mesh : mesh + 1;
        double away = SOUND.direction(mesh) + (mesh < 2 ? Math.PI : 0);
        Layout changed = with(moved, SOUND.place(moved).plus(Place.polar(off, away)));
        List<Shortfall> distances = of(Rule.CENTRE_DISTANCE, changed);
        assertThat(distances.stream()
                        .anyMatch(
                                found -> names(found, PartKind.WHEEL, mesh) && names(found, PartKind.PINION, mesh + 1)))
                .isEqualTo(fault);
    }

    @Test
    void a_minute_arbor_off_its_centre_distance_is_named() {
        int minute = NEED.parts().minuteArbor();
        double away = SOUND.place(2).directionTo(SOUND.place(minute));
        Layout changed = with(minute, SOUND.place(minute).plus(Place.polar(1003, away)));
        assertThat(of(Rule.CENTRE_DISTANCE, changed)).singleElement().satisfies(found -> {
            assertThat(names(found, PartKind.CANNON_PINION, 2)).isTrue();
            assertThat(names(found, PartKind.MINUTE_WHEEL, minute)).isTrue();
        });
    }

    @ParameterizedTest
    @CsvSource({"1000, 0", "1001, 1"})
    void pallets_off_the_vertical_over_the_escape_arbor_are_named(long off, int faults) {
        int pallets = NEED.parts().palletArbor();
        Layout changed = with(pallets, SOUND.place(pallets).plus(new Place(off, 0)));
        assertThat(of(Rule.PALLET_PLACE, changed)).hasSize(faults);
    }

    /** The widest gap that the layout bears is looked for by halving; one nanometre more must be refused. */
    @Test
    void a_gap_that_lacks_a_nanometre_is_named_with_its_two_parts() {
        long low = NEED.gaps().radial();
        long high = 100_000_000;
        while (high - low > 1) {
            long middle = (low + high) / 2;
            boolean sound = of(Rule.RADIAL_GAP, withGap(middle)).isEmpty();
            low = sound ? middle : low;
            high = sound ? high : middle;
        }
        Shortfall fault = of(Rule.RADIAL_GAP, withGap(high)).get(0);
        assertThat(fault.asked()).isEqualTo(high);
        assertThat(fault.found()).isEqualTo(low);
    }

    /** Gaps between two round parts, reckoned anew from the drawing's discs in floating point: to 1 nm. */
    @Test
    void the_gap_found_is_that_of_the_drawing() {
        List<Shortfall> faults = of(Rule.RADIAL_GAP, withGap(30_000_000));
        List<Shortfall> round = faults.stream()
                .filter(fault -> disc(fault.first()).isPresent()
                        && disc(fault.second().orElseThrow()).isPresent())
                .toList();
        assertThat(round).hasSizeGreaterThan(5).allSatisfy(fault -> {
            Disc first = disc(fault.first()).orElseThrow();
            Disc second = disc(fault.second().orElseThrow()).orElseThrow();
            double gap = first.place().distance(second.place()) - first.radius() - second.radius();
            assertThat((double) fault.found()).isCloseTo(gap, within(1.0));
        });
    }

    @ParameterizedTest
    @ValueSource(strings = {"left", "bottom", "right", "top"})
    void a_part_a_nanometre_out_of_the_frame_is_named(String edge) {
        Box extent = SOUND.extent();
        Box frame = SOUND.frame();
        Place corner = SOUND.frameCorner();
        Place moved = switch (edge) {
            case "left" -> new Place(extent.left() + 1, corner.y());
            case "bottom" -> new Place(corner.x(), extent.bottom() + 1);
            case "right" -> new Place(extent.right() - 1 - frame.width(), corner.y());
            default -> new Place(corner.x(), extent.top() - 1 - frame.height());
        };
        assertThat(of(Rule.FRAME_EDGE, new Layout(NEED, SOUND.places(), moved, SOUND.planes())))
                .isNotEmpty()
                .allSatisfy(fault -> assertThat(fault.found()).isEqualTo(-1));
    }

    @Test
    void a_dial_centre_a_nanometre_off_its_place_in_the_frame_is_named() {
        Place moved = SOUND.frameCorner().plus(new Place(1, 0));
        Layout changed = new Layout(NEED, SOUND.places(), moved, SOUND.planes());
        assertThat(of(Rule.DIAL_CENTRE, changed)).hasSize(1);
    }

    @Test
    void a_centre_arbor_off_the_dial_centre_is_named() {
        assertThat(of(Rule.DIAL_CENTRE, with(2, new Place(0, 1)))).hasSize(1);
    }

    @Test
    void a_nanometre_too_much_depth_is_named() {
        Envelope given = NEED.envelope();
        Envelope flat = new Envelope(
                given.width(),
                given.height(),
                SOUND.depth() - 1,
                given.plateThickness(),
                given.pillars(),
                given.dialPlace());
        assertThat(of(Rule.DEPTH, under(NEED.with(flat))))
                .singleElement()
                .satisfies(fault -> assertThat(fault.found()).isEqualTo(SOUND.depth()));
    }

    /** Spare depth is the maker's own affair as long as the frame holds it; a movement deeper than it says is not. */
    @ParameterizedTest
    @CsvSource({"0, false", "1, false", "-1, true"})
    void a_depth_stated_a_nanometre_too_small_is_named_and_a_larger_one_is_not(long more, boolean fault) {
        Planes given = SOUND.planes();
        Planes stated =
                new Planes(given.gears(), given.drum(), given.motion(), given.innerDepth(), given.depth() + more);
        List<Shortfall> faults = LayoutCheck.faults(new Layout(NEED, SOUND.places(), SOUND.frameCorner(), stated));
        assertThat(faults.stream().map(Shortfall::rule).toList())
                .isEqualTo(fault ? List.of(Rule.STATED_DEPTH) : List.of());
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 1, 2, 3, 4})
    void a_plane_thinner_than_its_parts_is_named(int plane) {
        List<Span> gears = new ArrayList<>(SOUND.planes().gears());
        gears.set(plane, new Span(gears.get(plane).from() + 1, gears.get(plane).to()));
        assertThat(of(Rule.PLANE_THICKNESS, with(gears, SOUND.planes().innerDepth())))
                .hasSize(1);
    }

    @Test
    void planes_a_nanometre_too_close_to_a_plate_are_named() {
        Layout changed = with(SOUND.planes().gears(), SOUND.planes().innerDepth() - 1);
        assertThat(of(Rule.AXIAL_GAP, changed)).isNotEmpty();
    }

    @Test
    void a_locked_place_missed_by_a_nanometre_is_named() {
        Place asked = SOUND.place(4).plus(new Place(1, 0));
        Locks locks = new Locks(List.of(new PlaceLock(4, asked)), List.of());
        assertThat(of(Rule.LOCKED_PLACE, under(NEED.with(locks)))).hasSize(1);
        Locks met = new Locks(List.of(new PlaceLock(4, SOUND.place(4))), List.of());
        assertThat(of(Rule.LOCKED_PLACE, under(NEED.with(met)))).isEmpty();
    }

    /** An arc of 1 µm is the tolerance; rounding adds less than 1 nm. */
    @ParameterizedTest
    @CsvSource({"990, 0", "1010, 1"})
    void a_locked_direction_missed_by_a_micrometre_is_named(double arc, int faults) {
        double turned = SOUND.direction(3) + arc / NEED.centreDistance(3);
        Locks locks = Locks.NONE.with(new DirectionLock(3, turned));
        assertThat(of(Rule.LOCKED_DIRECTION, under(NEED.with(locks)))).hasSize(faults);
    }

    @Test
    void parts_in_the_way_of_the_weight_are_named() {
        assertThat(of(Rule.RADIAL_GAP, under(withLine(0)))).anySatisfy(fault -> {
            assertThat(names(fault, PartKind.WEIGHT, 0)).isTrue();
            assertThat(names(fault, PartKind.WHEEL, 0)).isTrue();
        });
    }

    private static LayoutNeed withLine(long weightDrop) {
        HangingLine line = NEED.line();
        HangingLine changed =
                new HangingLine(line.diameter(), line.drumRadius(), line.side(), 0, line.weightWidth(), weightDrop);
        return new LayoutNeed(
                NEED.parts(), changed, NEED.gaps(), NEED.envelope(), NEED.locks(), NEED.preference(), NEED.grid());
    }

    /** Layouts in which an arbor stands lower than the drum are given a line that falls right over that arbor. */
    @Test
    void a_rod_in_the_way_of_the_line_is_named() {
        List<Layout> drawn = LongStream.rangeClosed(1, 50)
                .mapToObj(seed -> Placer.place(Movements.drawn(seed), () -> false))
                .filter(Placed.class::isInstance)
                .map(outcome -> ((Placed) outcome).layout())
                .filter(layout -> layout.place(1).y() < layout.place(0).y()
                        && layout.place(1).x() != layout.place(0).x())
                .toList();
        assertThat(drawn)
                .isNotEmpty()
                .allSatisfy(layout -> assertThat(LayoutCheck.faults(overRod(layout)))
                        .anySatisfy(fault -> {
                            assertThat(names(fault, PartKind.LINE, 0)).isTrue();
                            assertThat(names(fault, PartKind.ROD, 1)).isTrue();
                        }));
    }

    private static Layout overRod(Layout layout) {
        long across = layout.place(1).x() - layout.place(0).x();
        LayoutNeed need = layout.need();
        HangingLine line = new HangingLine(
                need.line().diameter(), Math.abs(across), across < 0 ? Side.LEFT : Side.RIGHT, 0, 1, 900_000_000);
        LayoutNeed changed = new LayoutNeed(
                need.parts(), line, need.gaps(), need.envelope(), need.locks(), need.preference(), need.grid());
        return new Layout(changed, layout.places(), layout.frameCorner(), layout.planes());
    }

    @Test
    void a_part_in_the_way_of_a_pillar_is_named() {
        Envelope given = NEED.envelope();
        Pillars stout = new Pillars(45_000_000, 45_000_000, 45_000_000);
        Envelope frame = new Envelope(
                given.width(),
                given.height(),
                given.depth(),
                given.plateThickness(),
                Optional.of(stout),
                given.dialPlace());
        assertThat(of(Rule.RADIAL_GAP, under(NEED.with(frame))))
                .anyMatch(fault -> fault.second().orElseThrow().kind() == PartKind.PILLAR);
    }

    private static Layout under(LayoutNeed need) {
        return new Layout(need, SOUND.places(), SOUND.frameCorner(), SOUND.planes());
    }

    private static Layout with(int arbor, Place place) {
        List<Place> places = new ArrayList<>(SOUND.places());
        places.set(arbor, place);
        return new Layout(NEED, places, SOUND.frameCorner(), SOUND.planes());
    }

    private static Layout with(List<Span> gears, long innerDepth) {
        Planes given = SOUND.planes();
        Planes changed = new Planes(gears, given.drum(), given.motion(), innerDepth, given.depth());
        return new Layout(NEED, SOUND.places(), SOUND.frameCorner(), changed);
    }

    private static Layout withGap(long radial) {
        Gaps gaps = new Gaps(radial, NEED.gaps().axial(), NEED.gaps().endShake());
        return under(new LayoutNeed(
                NEED.parts(), NEED.line(), gaps, NEED.envelope(), NEED.locks(), NEED.preference(), NEED.grid()));
    }

    private static List<Shortfall> of(Rule rule, Layout layout) {
        return LayoutCheck.faults(layout).stream()
                .filter(fault -> fault.rule() == rule)
                .toList();
    }

    private static boolean names(Shortfall fault, PartKind kind, int number) {
        Part part = new Part(kind, number);
        return fault.first().equals(part) || fault.second().filter(part::equals).isPresent();
    }

    private static Optional<Disc> disc(Part part) {
        return SOUND.discs().stream().filter(disc -> disc.part().equals(part)).findFirst();
    }
}
