// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.making.part;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import drumfall.solver.making.Planes;
import drumfall.solver.making.solid.Solid;
import drumfall.solver.teeth.form.LanternPair;
import drumfall.solver.train.ToothModule;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class PartShapeTest {
    private static final PrintSizes PRINT = new PrintSizes(0.4e-3, 0.2e-3, 0.15e-3);
    private static final Crossings CROSSED = new Crossings(16e-3, 3e-3, 5, 3e-3, 2e-3);
    private static final WheelPart WHEEL =
            new WheelPart(Teeth.cut(60, 8, true), CROSSED, 6e-3, 3e-3, PinCircle.NONE, PRINT);
    private static final Drum DRUM =
            new Drum(52e-3, 45e-3, 4e-3, 31e-3, 1.5e-3, 6e-3, new PinCircle(3, 10e-3, 3e-3), PRINT);
    private static final WeightShell SHELL = new WeightShell(70e-3, 100e-3, 2.4e-3, 6e-3, PRINT);

    static Map<String, Solid> solids() {
        LanternPair lantern = LanternPair.of(60, 8, 1.2, 1.05, 0.1);
        WheelWithLantern caged = new WheelWithLantern(
                WHEEL, lantern.pinion(), ToothModule.ofMillimetres("1"), 3e-3, 4.6e-3, 12e-3, 0.15e-3);
        Map<String, Solid> solids = new TreeMap<>();
        solids.put("wheel", WHEEL.solid());
        solids.put("wheel with pinion", new WheelWithPinion(WHEEL, Teeth.cut(64, 8, false), 12e-3).solid());
        solids.put("wheel with lantern", caged.solid());
        solids.put("upper shroud", caged.upperShroud());
        solids.put("hour wheel", new PipedWheel(WHEEL, 8e-3, 12e-3).solid());
        solids.put("spacer", new Spacer(3e-3, 9e-3, 4e-3, PRINT).solid());
        solids.put("drum", DRUM.solid());
        solids.put("drum flange", DRUM.flange());
        solids.put("weight shell", SHELL.solid());
        solids.put("weight lid", SHELL.lid());
        solids.put(
                "ratchet",
                new Ratchet(24, 16e-3, 2.5e-3, 5e-3, 1e-3, 6e-3, new PinCircle(3, 7e-3, 3e-3), true, PRINT).solid());
        solids.put("click", new Click(22e-3, 8e-3, 2e-3, 3e-3, 5e-3, PRINT).solid());
        solids.put("square", new WindingSquare(10e-3, 12e-3, 3e-3, 6e-3, PRINT).solid());
        solids.put("key", new WindingKey(10e-3, 12e-3, 80e-3, 20e-3, 6e-3, PRINT).solid());
        solids.put(
                "cannon pinion",
                new CannonPinion(Teeth.cut(36, 12, false), 6e-3, 4e-3, 6.4e-3, 20e-3, 6e-3, 1e-4, 5e-4, PRINT).solid());
        solids.put("hand", new Hand(90e-3, 12e-3, 3e-3, 6e-3, 2.4e-3, 3e-3, PRINT).solid());
        solids.put("pulley", new Pulley(21e-3, 3e-3, 1.5e-3, 1.6e-3, 10e-3, PRINT).solid());
        solids.put("bob half", new BobShell(100e-3, 10e-3, 6e-3, 1.6e-3, PRINT).solid());
        solids.put("rating nut", new RatingNut(30e-3, 6e-3, 8e-3, 12, PRINT).solid());
        solids.put("rod head", new RodHead(20e-3, 40e-3, 6e-3, 6e-3, 10e-3, 3e-3, PRINT).solid());
        return solids;
    }

    static java.util.stream.Stream<String> names() {
        return solids().keySet().stream();
    }

    @ParameterizedTest
    @MethodSource("names")
    void no_part_is_laid_in_the_air(String name) {
        // A wall that steps out by half an extrusion width, or by a layer's height, still has ground to hold on to.
        assertThat(Planes.overhang(solids().get(name), 0.21)).isLessThan(0.01);
    }

    @ParameterizedTest
    @MethodSource("names")
    void volumes_agree_with_the_polygons_of_an_independent_library(String name) {
        Solid solid = solids().get(name);
        double polygons = solid.slabs().stream()
                .mapToDouble(slab -> Planes.of(slab.region()).getArea() * slab.height())
                .sum();
        // A chord within 0.002 mm of an arc of 1 mm radius leaves out less than a hundredth of its area.
        assertThat(polygons).isCloseTo(solid.volume(), within(solid.volume() * 3e-3));
        assertThat(solid.slabs().stream()
                        .allMatch(slab -> Planes.of(slab.region()).isValid()))
                .isTrue();
    }

    @Test
    void a_hollow_drum_weighs_floor_and_two_tubes_less_its_holes() {
        double floor = Math.PI * (31 * 31 - 3 * 3 - 3 * 1.5 * 1.5) - Math.PI * 0.975 * 0.975;
        double tubes = Math.PI * (26 * 26 - 22 * 22 + 7 * 7 - 3 * 3);
        double volume = floor * 4 + tubes * 45;
        // Worked by hand from the circles: three pins of 3 mm and the line's hole of 1.3 x 1.5 mm.
        assertThat(DRUM.solid().volume()).isCloseTo(volume, within(volume * 1e-9));
    }

    @Test
    void the_shot_that_goes_into_a_shell_fills_it_up_to_the_lids_spigot() {
        double area = Math.PI * (32.6 * 32.6 - 5.4 * 5.4) * 1e-6;
        assertThat(SHELL.shotVolume()).isCloseTo(area * (0.1 - 0.0024), within(1e-12));
    }

    @Test
    void a_lids_spigot_goes_into_its_chamber_with_the_fit_all_round() {
        double chamber = 26 - 4;
        double spigot = DRUM.flange().slabs().get(1).region().box().right();
        assertThat(chamber - spigot).isCloseTo(0.15, within(1e-9));
    }

    @Test
    void a_pulley_s_groove_is_as_wide_at_its_bottom_as_the_line() {
        Solid pulley = new Pulley(21e-3, 3e-3, 1.5e-3, 1.6e-3, 10e-3, PRINT).solid();
        double narrowest = pulley.slabs().stream()
                .filter(slab -> slab.region().box().right() < 10.5 + 1e-9)
                .mapToDouble(slab -> slab.height())
                .sum();
        assertThat(narrowest).isCloseTo(1.5, within(1e-9));
        assertThat(pulley.box().right()).isCloseTo(13.5, within(1e-9));
    }

    @Test
    void a_ratchet_s_steep_faces_hold_the_way_it_says() {
        for (boolean anticlockwise : new boolean[] {true, false}) {
            Solid ratchet =
                    new Ratchet(24, 16e-3, 2.5e-3, 5e-3, 1e-3, 6e-3, PinCircle.NONE, anticlockwise, PRINT).solid();
            // Just inside the tip circle, material ends at the steep face on the x axis.
            double ahead = anticlockwise ? -0.2 : 0.2;
            var section = Planes.of(ratchet.slabs().get(0).region());
            var factory = section.getFactory();
            assertThat(section.contains(factory.createPoint(new org.locationtech.jts.geom.Coordinate(15.5, ahead))))
                    .isTrue();
            assertThat(section.contains(factory.createPoint(new org.locationtech.jts.geom.Coordinate(15.5, -ahead))))
                    .isFalse();
        }
    }
}
