// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.making.solid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import drumfall.solver.making.shape.Rings;
import drumfall.solver.teeth.outline.Outline;
import drumfall.solver.teeth.outline.Point;
import drumfall.solver.teeth.outline.Ring;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RegionTest {
    private static final Ring DISC = Rings.circle(10);

    @Test
    void an_annulus_has_the_area_between_its_circles() {
        // Arcs are integrated exactly; what is left is rounding.
        assertThat(Region.of(DISC, Rings.hole(4)).moments().area()).isCloseTo(Math.PI * (100 - 16), within(1e-9));
    }

    @ParameterizedTest
    @CsvSource({
        // hole's x, its radius, what is said: the disc has a radius of 10
        "0, 4, ''",
        "5, 4.9, ''",
        "5, 5.5, must not cross",
        "20, 4, inside its outline only",
        "0, 12, inside its outline only"
    })
    void a_hole_lies_inside_its_outline(double x, double radius, String fault) {
        Ring hole = Rings.hole(new Point(x, 0), radius);
        if (fault.isEmpty()) {
            assertThat(Region.of(DISC, hole).rings()).hasSize(2);
        } else {
            assertThatThrownBy(() -> Region.of(DISC, hole)).hasMessageContaining(fault);
        }
    }

    @ParameterizedTest
    @CsvSource({
        // second hole's x and radius beside one of radius 2 about -4
        "4, 2, ''",
        "-4, 1, inside its outline only",
        "-4, 3, inside its outline only",
        "-2, 1, must not cross"
    })
    void a_hole_lies_in_no_other(double x, double radius, String fault) {
        Ring first = Rings.hole(new Point(-4, 0), 2);
        Ring second = Rings.hole(new Point(x, 0), radius);
        if (fault.isEmpty()) {
            assertThat(Region.of(DISC, first, second).rings()).hasSize(3);
        } else {
            assertThatThrownBy(() -> Region.of(DISC, first, second)).hasMessageContaining(fault);
        }
    }

    @Test
    void an_outline_may_stand_in_the_hole_of_another_but_not_in_its_material() {
        Outline tube = new Outline(DISC, List.of(Rings.hole(6)));
        assertThat(new Region(List.of(tube, new Outline(Rings.circle(3), List.of()))).outlines())
                .hasSize(2);
        Outline island = new Outline(Ring.circle(new Point(8, 0), 1), List.of());
        assertThatThrownBy(() -> new Region(List.of(tube, island))).hasMessageContaining("beside the others");
    }

    @Test
    void a_ring_that_crosses_itself_is_refused() {
        Ring bow = Rings.polygon(
                List.of(new Point(0, 0), new Point(4, 4), new Point(4, 0), new Point(-1, 3), new Point(-1, -3)));
        Ring sound = bow.moments().area() > 0 ? bow : bow.reversed();
        assertThatThrownBy(() -> Region.of(sound)).hasMessageContaining("must not cross");
    }

    @ParameterizedTest
    @CsvSource({
        // arc about the origin of radius 10 from one angle to another, degrees; left, bottom, right, top of its sector
        "-45, 45, 10",
        "10, 80, 9.848077530122081",
        "-200, 20, 10"
    })
    void a_box_around_an_arc_reaches_its_outermost_point(double from, double to, double right) {
        Ring sector = Rings.sector(1, 10, Math.toRadians(from), Math.toRadians(to));
        assertThat(Box.around(sector).right()).isCloseTo(right, within(1e-12));
    }
}
