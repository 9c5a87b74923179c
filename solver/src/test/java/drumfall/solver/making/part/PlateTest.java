// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.making.part;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import drumfall.solver.making.Planes;
import drumfall.solver.making.solid.Solid;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.locationtech.jts.geom.Geometry;

class PlateTest {
    private static final PrintSizes PRINT = new PrintSizes(0.4e-3, 0.2e-3, 0.15e-3);
    private static final Joint JOINT = new Joint(8e-3, 8e-3, 12e-3, 60e-3);

    private static Plate plate(double width, double height) {
        List<PlateHole> holes = new ArrayList<>();
        for (int i = -1; i <= 1; i++) {
            holes.add(new PlateHole("arbor " + (i + 2), 0, i * 0.06, 4e-3, 10e-3, 4e-3));
        }
        holes.add(PlateHole.plain("wall screw", 0.02, 0.045, 5e-3));
        return new Plate("back plate", width, height, 8e-3, holes, PRINT);
    }

    @ParameterizedTest
    @CsvSource({
        // width and height of the plate, sides of the bed, mm; pieces
        "120, 200, 220, 220, 1",
        "180, 320, 220, 220, 2",
        "320, 180, 220, 220, 2",
        "180, 320, 180, 340, 1",
        "160, 320, 160, 120, 4",
        "118, 320, 160, 120, 3",
    })
    void a_plate_is_cut_into_as_few_pieces_as_the_bed_asks_for(
            double width, double height, double bedWidth, double bedDepth, int pieces) {
        List<Solid> cut = plate(width * 1e-3, height * 1e-3).pieces(bedWidth * 1e-3, bedDepth * 1e-3, JOINT);
        assertThat(cut)
                .hasSize(pieces)
                .allSatisfy(piece -> assertThat(piece.box().fits(bedWidth + 1e-9, bedDepth + 1e-9))
                        .isTrue());
    }

    @ParameterizedTest
    @CsvSource({"180, 320", "320, 180"})
    void pieces_together_are_the_plate_but_for_the_play_of_the_joints(double width, double height) {
        Plate plate = plate(width * 1e-3, height * 1e-3);
        List<Solid> pieces = plate.pieces(0.22, 0.22, JOINT);
        List<Solid> whole = plate.pieces(1, 1, JOINT);
        Geometry one = bottom(pieces.get(0));
        Geometry other = bottom(pieces.get(1));
        assertThat(one.intersection(other).getArea()).isLessThan(1e-9);
        // A tail is a trapezoid 8 and 12 mm wide and 8 mm high; its socket is 0.3 mm wider and 0.15 mm deeper.
        double gap = bottom(whole.get(0)).difference(one.union(other)).getArea();
        double tails = Math.floor(Math.min(width, height) / 60);
        assertThat(gap).isCloseTo(tails * (10.3 * 8.15 - 10 * 8), within(1e-6));
        assertThat(Planes.overhang(pieces.get(0), 0)).isZero();
    }

    private static Geometry bottom(Solid solid) {
        return Planes.of(solid.slabs().get(0).region());
    }

    @Test
    void a_tail_cannot_be_pulled_out_straight() {
        List<Solid> pieces = plate(0.18, 0.32).pieces(0.22, 0.22, JOINT);
        Geometry pulled = org.locationtech.jts.geom.util.AffineTransformation.translationInstance(0, 2)
                .transform(bottom(pieces.get(1)));
        // Its head, 4 mm wider than its neck, is held once the play is used up.
        assertThat(pulled.intersection(bottom(pieces.get(0))).getArea()).isGreaterThan(0.1);
    }

    @Test
    void a_seat_is_wider_than_its_hole_from_its_depth_up() {
        Solid whole = plate(0.1, 0.2).pieces(0.22, 0.22, JOINT).get(0);
        assertThat(whole.slabs()).hasSize(2);
        assertThat(whole.slabs().get(1).from()).isCloseTo(4, within(1e-12));
        double through = whole.slabs().get(0).region().moments().area();
        double seated = whole.slabs().get(1).region().moments().area();
        assertThat(through - seated).isCloseTo(3 * Math.PI * (25 - 4), within(1e-6));
    }

    @Test
    void pieces_of_a_plate_wider_than_the_bed_both_ways_are_the_plate_but_for_the_play_of_the_joints() {
        Plate plate = plate(0.25, 0.32);
        List<Solid> pieces = plate.pieces(0.22, 0.2, JOINT);
        assertThat(pieces)
                .hasSize(4)
                .allSatisfy(piece ->
                        assertThat(piece.box().fits(220 + 1e-9, 200 + 1e-9)).isTrue());
        Geometry all = bottom(pieces.get(0));
        for (Solid piece : pieces.subList(1, 4)) {
            assertThat(all.intersection(bottom(piece)).getArea()).isLessThan(1e-9);
            all = all.union(bottom(piece));
        }
        double gap = bottom(plate.pieces(1, 1, JOINT).get(0)).difference(all).getArea();
        // Rows are 160 mm high and take two tails each; the cut stands beside the holes in the middle, so that one
        // column
        // is narrower than 120 mm and takes one, the other two.
        assertThat(gap).isCloseTo(7 * (10.3 * 8.15 - 10 * 8), within(1e-6));
    }

    @Test
    void a_plate_without_a_free_strip_for_the_joint_is_refused() {
        List<PlateHole> holes = new ArrayList<>();
        for (int i = -14; i <= 14; i++) {
            holes.add(PlateHole.plain("hole " + i, i % 2 == 0 ? 0.03 : -0.03, i * 0.01, 8e-3));
        }
        Plate pierced = new Plate("front plate", 0.18, 0.32, 8e-3, holes, PRINT);
        assertThatThrownBy(() -> pierced.pieces(0.22, 0.22, JOINT))
                .hasMessageMatching("The front plate \\(320.0 mm long\\) must have a strip of .+ Maybe .+\\.");
    }

    @Test
    void holes_that_meet_are_refused() {
        List<PlateHole> holes =
                List.of(PlateHole.plain("arbor 1", 0, 0, 8e-3), PlateHole.plain("arbor 2", 0, 8e-3, 8e-3));
        assertThatThrownBy(() -> new Plate("front plate", 0.1, 0.1, 8e-3, holes, PRINT))
                .hasMessageContaining("distance between the holes for arbor 1 and arbor 2 in the front plate (8 mm)"
                        + " must be at least 8.8 mm");
    }
}
