// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.plugin.solids;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import drumfall.solver.making.MovementPart;
import drumfall.solver.making.part.BobShell;
import drumfall.solver.making.part.Click;
import drumfall.solver.making.part.PrintSizes;
import drumfall.solver.making.part.PrintedShape;
import drumfall.solver.making.part.Pulley;
import drumfall.solver.making.part.RodHead;
import drumfall.solver.making.part.Spacer;
import drumfall.solver.making.part.WeightShell;
import drumfall.solver.making.part.WindingKey;
import drumfall.solver.making.solid.Region;
import drumfall.solver.making.solid.Slab;
import drumfall.solver.making.solid.Solid;
import drumfall.solver.teeth.outline.LineSegment;
import drumfall.solver.teeth.outline.OutlineSegment;
import drumfall.solver.teeth.outline.Point;
import drumfall.solver.teeth.outline.Ring;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class MeshTest {
    private static final PrintSizes PRINT = new PrintSizes(0.4e-3, 0.2e-3, 0.15e-3);

    private static StlSurface surface(Solid solid, SolidOptions options) {
        return StlSurface.read(StlWriter.bytes("part", Mesh.of(solid, options)));
    }

    /** Area of the polygons that follow the rings, by the shoelace formula, times the height. */
    private static double faceted(Solid solid, double chordError) {
        double volume = 0;
        for (Slab slab : solid.slabs()) {
            volume += slab.height()
                    * slab.region()
                            .rings()
                            .mapToDouble(ring -> area(ring, chordError))
                            .sum();
        }
        return volume;
    }

    private static double area(Ring ring, double chordError) {
        List<Point> corners = ring.polygon(chordError);
        double twice = 0;
        Point last = corners.get(corners.size() - 1);
        for (Point next : corners) {
            twice += last.x() * next.y() - next.x() * last.y();
            last = next;
        }
        return twice / 2;
    }

    static Stream<Arguments> movement() {
        return Movements.eightDays().stream().map(part -> Arguments.of(part.name(), part));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("movement")
    void every_part_of_a_movement_is_a_closed_surface_of_its_volume(String name, MovementPart part) {
        StlSurface surface = surface(part.solid(), SolidOptions.FINE);
        assertThat(surface.closed()).as("each edge once each way").isTrue();
        assertThat(surface.singleFans()).as("one fan about each corner").isTrue();
        // 3MF Core Specification 1.4.0, 4.1.1: normals point outwards, so the volume is positive. The grid moves
        // corners by less than a ten-millionth of the part's reach.
        double volume = faceted(part.solid(), SolidOptions.FINE.chordError());
        assertThat(surface.volume()).isCloseTo(volume, within(1e-6 * volume));
        assertThat(surface.lowest()).isZero();
        assertThat(surface.highest()).isEqualTo((float) part.solid().height());
        // Normals are written as 32-bit floats.
        assertThat(surface.worstNormal()).isLessThan(1e-6);
    }

    static Stream<Arguments> handles() {
        return Stream.of(
                Arguments.of("click with one hole", new Click(22e-3, 8e-3, 2e-3, 3e-3, 5e-3, PRINT), 1),
                Arguments.of("spacer", new Spacer(3e-3, 9e-3, 4e-3, PRINT), 1),
                Arguments.of("pulley", new Pulley(21e-3, 3e-3, 1.5e-3, 1.6e-3, 10e-3, PRINT), 1),
                Arguments.of("key with a blind socket", new WindingKey(10e-3, 12e-3, 80e-3, 20e-3, 6e-3, PRINT), 0),
                Arguments.of(
                        "bob half with an open channel and two chambers",
                        new BobShell(100e-3, 10e-3, 6e-3, 1.6e-3, PRINT),
                        0),
                Arguments.of("shell, open above", new WeightShell(70e-3, 100e-3, 2.4e-3, 6e-3, PRINT), 1),
                Arguments.of("rod head", new RodHead(20e-3, 40e-3, 6e-3, 6e-3, 10e-3, 3e-3, PRINT), 3));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("handles")
    void a_surface_has_as_many_handles_as_its_part_has_holes(String name, PrintedShape part, int holes) {
        // Euler and Poincare: corners less edges plus facets is 2 - 2 g for a connected surface of g handles.
        StlSurface surface = surface(part.solid(), SolidOptions.FINE);
        assertThat(surface.closed()).isTrue();
        assertThat(surface.euler()).isEqualTo(2 - 2 * holes);
    }

    private static Region square(double x, double y, double half, double turn) {
        List<Point> corners = IntStream.range(0, 4)
                .mapToObj(i -> Point.polar(half * Math.sqrt(2), turn + Math.PI / 4 + i * Math.PI / 2))
                .map(p -> new Point(p.x() + x, p.y() + y))
                .toList();
        List<OutlineSegment> sides = new ArrayList<>();
        for (int i = 0; i < 4; i++) {
            sides.add(new LineSegment(corners.get(i), corners.get((i + 1) % 4)));
        }
        return Region.of(new Ring(sides));
    }

    @Test
    void slabs_whose_edges_cross_share_the_corners_where_they_do() {
        Solid star = Solid.of(3, square(0, 0, 10, 0)).topped(3, square(0, 0, 10, Math.PI / 4));
        StlSurface surface = surface(star, SolidOptions.FINE);
        assertThat(surface.closed()).isTrue();
        assertThat(surface.euler()).isEqualTo(2);
        // Corners and crossings are rounded to 1 nm.
        assertThat(surface.volume()).isCloseTo(2400, within(2400 * 1e-6));
    }

    @Test
    void random_piles_of_squares_are_closed_or_refused() {
        Random random = new Random(7);
        int samples = "full".equals(System.getProperty("drumfall.samples")) ? 2000 : 60;
        int closed = 0;
        for (int i = 0; i < samples; i++) {
            Solid pile = Solid.of(1, square(0, 0, 6, random.nextDouble()));
            for (int slab = 0; slab < 4; slab++) {
                double x = random.nextInt(7) - 3.0;
                double y = random.nextInt(7) - 3.0;
                pile = pile.topped(1, square(x, y, 4, random.nextBoolean() ? 0 : random.nextDouble()));
            }
            StlSurface surface = surface(pile, SolidOptions.FINE);
            assertThat(surface.closed()).isTrue();
            double volume = faceted(pile, 1);
            assertThat(surface.volume()).isCloseTo(volume, within(1e-6 * volume));
            closed++;
        }
        assertThat(closed).isEqualTo(samples);
    }

    @Test
    void parts_of_a_solid_that_meet_in_an_edge_only_are_refused() {
        Solid stairs = Solid.of(3, square(-5, 0, 5, 0)).topped(3, square(5, 0, 5, 0));
        assertThatThrownBy(() -> Mesh.of(stairs, SolidOptions.FINE))
                .hasMessageMatching("The edge \\(at .+ mm\\) of a solid must belong to two faces only\\. Maybe .+\\.");
    }

    @ParameterizedTest
    @CsvSource({"0.1, 50", "0.01, 150", "0.001, 450"})
    void a_finer_chord_error_follows_a_circle_with_more_facets(double chordError, int facets) {
        Solid ring = new Spacer(20e-3, 40e-3, 4e-3, PRINT).solid();
        StlSurface coarse = surface(ring, new SolidOptions(chordError));
        assertThat(coarse.closed()).isTrue();
        assertThat(coarse.facetCount()).isGreaterThan(facets);
        // A band as wide as the chord error along both circles.
        assertThat(coarse.volume()).isCloseTo(ring.volume(), within(chordError * Math.PI * 60 * 4));
    }

    @ParameterizedTest
    @CsvSource({
        "0, must be from 5.0E-4 to 1.0 mm. Maybe take 5.0E-4 mm.",
        "-1, Maybe take 5.0E-4 mm.",
        "NaN, must be from",
        "2, Maybe take 1.0 mm."
    })
    void a_chord_error_that_follows_nothing_is_refused(double chordError, String said) {
        assertThatThrownBy(() -> new SolidOptions(chordError))
                .hasMessageStartingWith("The chordError (")
                .hasMessageContaining(said);
    }

    @ParameterizedTest
    @CsvSource({"3, -22", "10, -20", "100, -17", "600, -14"})
    void the_grid_is_as_fine_as_floats_hold_exactly(double reach, int exponent) {
        Solid block = Solid.of(8, square(0, 0, reach, 0));
        assertThat(Lattice.of(block).step()).isEqualTo(Math.scalb(1.0, exponent));
        StlSurface surface = surface(block, SolidOptions.FINE);
        assertThat(surface.closed()).isTrue();
        double volume = 4 * reach * reach * 8;
        assertThat(surface.volume()).isCloseTo(volume, within(volume * 1e-6));
    }
}
