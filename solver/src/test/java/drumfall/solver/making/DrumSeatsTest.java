// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.making;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import drumfall.solver.brief.Brief;
import drumfall.solver.fit.FitException;
import drumfall.solver.making.solid.SizeLimitException;
import drumfall.solver.making.solid.Slab;
import drumfall.solver.making.solid.Solid;
import drumfall.solver.rating.TrainRater;
import drumfall.solver.samples.Briefs;
import drumfall.solver.samples.Trains;
import drumfall.solver.train.Train;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;

/**
 * Seats of bearings on a drum's rod that stands still: in the outer face of the great wheel and in the far end of the drum.
 * Bearing 684: 4 × 9 × 4 mm; 694: 4 × 11 × 4 mm; 624: 4 × 13 × 5 mm; all by ISO 15, from memory.
 */
class DrumSeatsTest {
    private static final String TRAIN = "85/10 m1.5 | 66/12 m1.5 · 83/12 m1 · 55/12 m1 · E21";

    private static Brief brief(String bearings, String outer, String width, String more) {
        return Briefs.demoWith("/arbors/drum/kind = \"fixed\" & /arbors/drum/bearings = \"" + bearings
                + "\" & /arbors/drum/bearing = {\"outer\": \"" + outer + "\", \"width\": \"" + width + "\"}" + more);
    }

    private static Solid part(Brief brief, String drum, String name) {
        TrainRater rater = new TrainRater(brief);
        Train train = Trains.of(TRAIN, drum, 2);
        return MovementParts.of(rater, rater.rate(train), Optional.empty()).parts().stream()
                .filter(part -> part.name().equals(name))
                .findFirst()
                .orElseThrow()
                .solid();
    }

    /** Whether there is material at a height above the bed and a distance from the axis, away from pins and line, mm. */
    private static boolean has(Solid solid, double height, double distance) {
        Slab slab = solid.slabs().stream()
                .filter(one -> one.from() <= height && one.to() > height)
                .findFirst()
                .orElseThrow();
        Geometry section = Planes.of(slab.region());
        double angle = 0.5;
        return section.contains(section.getFactory()
                .createPoint(new Coordinate(distance * Math.cos(angle), distance * Math.sin(angle))));
    }

    // By hand: a ring of 9 mm, a drill of 9 mm, 0.15 mm cut off, 0.1 mm of shrinkage: drawn 8.95 mm, radius 4.475 mm.
    // The
    // rod of 4 mm with 0.1 mm of clearance, a drill of 4.1 mm: drawn 4.05 mm. 4 mm deep are 20 layers. The wheel faces
    // the
    // back, so the rear bearing is the wheel's, and it lies with that face down.
    @ParameterizedTest
    @CsvSource({"none, false, false", "rear, true, false", "front, false, true", "both, true, true"})
    void the_wheel_has_the_rear_seat_and_the_drum_before_it_the_front_one(
            String bearings, boolean inWheel, boolean inDrum) {
        Brief brief = brief(bearings, "9 mm", "4 mm", "");
        Solid wheel = part(brief, "36", "arbor-1-wheel");
        Solid drum = part(brief, "36", "arbor-1-drum");
        Solid flange = part(brief, "36", "arbor-1-drum-flange");

        assertThat(has(wheel, 0.1, 4.4)).isEqualTo(!inWheel);
        assertThat(has(wheel, 3.9, 4.4)).isEqualTo(!inWheel);
        assertThat(has(wheel, 4.1, 4.4)).isTrue();
        assertThat(has(wheel, 0.1, 4.6)).isTrue();
        // The flange is 2.4 mm thick, so 1.6 mm of the seat are in the drum; its tube around the rod has 2.4 mm of
        // wall.
        assertThat(has(flange, 1, 4.4)).isEqualTo(!inDrum);
        assertThat(has(flange, 1, 4.6)).isTrue();
        assertThat(has(drum, drum.height() - 0.1, 4.4)).isEqualTo(!inDrum);
        assertThat(has(drum, drum.height() - 1.5, 4.3)).isEqualTo(!inDrum);
        assertThat(has(drum, drum.height() - 1.7, 4.3)).isTrue();
        assertThat(has(drum, drum.height() - 1.7, 1.9)).isFalse();
        // Two extrusion widths of 0.4 mm are left around the seat, where without it the tube ends at 2.025 + 2.4 mm.
        assertThat(has(drum, drum.height() - 0.1, 5.2)).isEqualTo(inDrum);
        assertThat(has(drum, 3, 4.5)).isFalse();
    }

    @Test
    void the_tube_widens_without_hanging_over() {
        for (String outer : new String[] {"9 mm", "11 mm", "13 mm"}) {
            Solid drum = part(brief("front", outer, "4 mm", ""), "40", "arbor-1-drum");
            assertThat(Planes.overhang(drum, 0.21)).as(outer).isLessThan(0.01);
        }
    }

    @Test
    void a_seat_that_the_flange_holds_leaves_the_drum_as_it_is() {
        Brief shallow = brief("front", "9 mm", "2 mm", "");
        Solid flange = part(shallow, "36", "arbor-1-drum-flange");

        assertThat(part(shallow, "36", "arbor-1-drum").volume())
                .isEqualTo(part(brief("none", "9 mm", "2 mm", ""), "36", "arbor-1-drum")
                        .volume());
        assertThat(has(flange, 1.9, 4.4)).isFalse();
        assertThat(has(flange, 2.1, 4.4)).isTrue();
    }

    @Test
    void the_flange_s_spigot_goes_between_the_drum_s_tubes() {
        Brief brief = brief("front", "13 mm", "4 mm", "");
        Slab spigot = part(brief, "36", "arbor-1-drum-flange").slabs().get(1);
        Slab end = last(part(brief, "36", "arbor-1-drum"));
        Geometry both = Planes.of(spigot.region()).intersection(Planes.of(end.region()));

        assertThat(both.getArea()).isCloseTo(0, within(1e-9));
        assertThat(Planes.of(spigot.region()).getArea()).isPositive();
    }

    private static Slab last(Solid solid) {
        return solid.slabs().get(solid.slabs().size() - 1);
    }

    @Test
    void a_bearing_as_wide_as_the_great_wheel_is_thick_is_refused_in_one_sentence() {
        assertThatThrownBy(() -> part(brief("both", "13 mm", "5 mm", ""), "40", "arbor-1-wheel"))
                .isInstanceOf(FitException.class)
                .hasMessage("The depth (5 mm) of the bearing seat (arbor 1, rear) must be at most 4.6 mm, so that two"
                        + " layers are left of what it is cut into. Maybe take a narrower bearing, a bearing at the"
                        + " other end alone, or a rod that turns.");
    }

    // A drum of 22 mm has no chamber: its pins begin at 2.025 + 0.8 mm, and a wall is 0.8 mm. The chamber of one of 30
    // mm ends
    // at 12.6 mm; the spigot of the flange takes a wall and 0.15 mm of play on either side.
    @ParameterizedTest
    @CsvSource({"22, 9 mm, 4.05 mm, pins of the ratchet", "30, 24 mm, 21.4 mm, spigot"})
    void a_bearing_too_wide_for_the_drum_is_refused_in_one_sentence(
            String drum, String outer, String most, String what) {
        assertThatThrownBy(() -> part(brief("front", outer, "4 mm", ""), drum, "arbor-1-drum"))
                .isInstanceOf(FitException.class)
                .hasMessageMatching("The diameter \\(.+ mm\\) of the bearing seat \\(arbor 1, front\\) must be at most "
                        + most
                        + ", two extrusion widths short of the .*"
                        + what
                        + "\\. Maybe take a smaller bearing, a wider drum, a bearing at the other end alone, or a rod that"
                        + " turns\\.");
    }

    @Test
    void a_drum_too_short_for_its_seat_is_refused_in_one_sentence() {
        Brief brief = brief("front", "13 mm", "10 mm", " & /drum/length = \"10 mm\"");
        assertThatThrownBy(() -> part(brief, "40", "arbor-1-drum"))
                .isInstanceOf(SizeLimitException.class)
                .hasMessageStartingWith("The length of a drum with a bearing seat (10 mm) must be at least ")
                .hasMessageContaining("the seat and what widens the drum's tube under it. Maybe take ");
    }
}
