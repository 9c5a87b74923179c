// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.parts;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import drumfall.solver.power.Movement;
import drumfall.solver.samples.HandClock;
import drumfall.solver.samples.Trains;
import drumfall.solver.teeth.GearFigures;
import drumfall.solver.train.Mesh;
import drumfall.solver.train.ToothModule;
import drumfall.solver.train.Train;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Masses by hand, g: area times height times 1.25 mg for a cubic mm. */
class PartStockTest {
    private static final Movement CLOCK = HandClock.movement();

    private static Mesh mesh(int wheel, String module) {
        return Mesh.of(wheel, 8, ToothModule.ofMillimetres(module));
    }

    /*
     * Discs of a rack rolled round, as in the area's own test, windows as quadrants let out, as in the crossing's. 60 teeth of
     * module 1: disc 2815.954, roots 28.75, rim to 26.25 mm, hub 5 mm: windows 1664.16 mm²: 5 · 1151.79 · 1.25 mg = 7.1987 g.
     * Eight leaves: disc 47.5352 mm², 8 mm long: 0.47535 g, their tips at 5 mm on the hub. Of module 1.25 tips at 6.25 mm fill
     * 19.924 mm² of the windows 5 mm high: 8 · 74.274 + 5 · 19.924 = 693.81 mm³: 0.86726 g. A tenth of a milligram: the rack is
     * rolled in steps.
     */
    @ParameterizedTest
    @CsvSource({"96, 1.25, 17.05208, 0.86726", "64, 1, 7.72793, 0.47535", "60, 1, 7.19871, 0.47535"})
    void a_wheel_is_its_disc_less_windows_and_a_pinion_its_leaves_with_what_they_fill(
            int teeth, String module, double wheel, double pinion) {
        Mesh mesh = mesh(teeth, module);

        assertThat(CLOCK.wheelMass(mesh) / 1e6).isCloseTo(wheel, within(1e-4));
        assertThat(CLOCK.printedPinionMass(mesh) / 1e6).isCloseTo(pinion, within(1e-4));
        assertThat(CLOCK.pinionMass(mesh)).isEqualTo(CLOCK.printedPinionMass(mesh));
        assertThat(CLOCK.gearMass(mesh)).isEqualTo(CLOCK.wheelMass(mesh) + CLOCK.printedPinionMass(mesh));
    }

    // 30 mm: roots at 23.4 mm, teeth of 0.65 · 2 π 23.4 / 2 · 6.6 = 315.37 mm² upon 1720.21 mm², rim of 2.4 mm: windows
    // 984.89 mm²: 5 · 1050.69 · 1.25 mg = 6.5668 g.
    @Test
    void the_escape_wheel_is_crossed_out_like_the_others() {
        assertThat(CLOCK.parts().escapeWheelMass() / 1e6).isCloseTo(6.566809, within(1e-6));
    }

    // As in the drum's own test: 19 884.08, 1844.46 and 1959.54 mm³; the click's ground to 18.5 mm fills 737.76 mm² of
    // the
    // windows, 5 mm high.
    @Test
    void the_drum_is_weighed_with_what_stands_on_its_arbor() {
        PartStock parts = CLOCK.parts();

        assertThat(parts.barrelMass(0.040) / 1e6).isCloseTo(24.855103, within(1e-6));
        assertThat(parts.ratchetMass(0.040) / 1e6).isCloseTo(2.305574, within(1e-6));
        assertThat(parts.groundMass(0.040) / 1e6).isCloseTo(4.611027, within(1e-6));
        assertThat(parts.squareMass() / 1e6).isCloseTo(2.449423, within(1e-6));
        assertThat(parts.drumMass(0.040))
                .isEqualTo(parts.barrelMass(0.040)
                        + parts.ratchetMass(0.040)
                        + parts.groundMass(0.040)
                        + parts.squareMass());
    }

    /*
     * Ten pins of 1.5 mm on 10 mm, tips at 5.75 mm, shrouds 2.5 mm thick with walls of 0.8 mm: radius 5.75 + 0.075 + 0.8 = 6.625
     * mm, holes of 1.65 mm: 2 · 2.5 (π 6.625² - 10 π 1.65²/4) = 582.52 mm³; they fill 27.86 mm² of the windows, 139.3 mm³:
     * 0.9023 g. Steel pins of 20 mm: 7.75 · 10 · π 1.5²/4 · 20 = 2739.1 mg.
     */
    @Test
    void a_lantern_pinion_is_two_shrouds_and_its_pins_weigh_on_the_arbor() {
        PartStock toothed = HandClock.parts();
        PartStock lantern = new PartStock(
                toothed.wheelThickness(),
                0.020,
                0,
                toothed.crossing(),
                Optional.of(new Shrouds(0.0025, 0.0008)),
                toothed.density(),
                toothed.escapeTeeth(),
                toothed.escapeWheelRadius(),
                toothed.drum());
        GearFigures pins = new GearFigures(5.75, 5, Double.POSITIVE_INFINITY, 4.25, 10 * Math.PI * 0.75 * 0.75);

        assertThat(lantern.pinionMass(10, pins, 0.001) / 1e6).isCloseTo(0.9023, within(1e-4));
        assertThat(lantern.pinMass(10, pins, 0.001) / 1e6).isCloseTo(2.7391, within(1e-4));
        assertThat(toothed.pinMass(10, pins, 0.001)).isZero();
    }

    @Test
    void the_sum_of_the_parts_does_not_depend_on_their_order() {
        Train train = Trains.of("68/8 m1 | 58/9 m1.25 · 45/10 m1 · 48/8 m1.5 · E21", "36", 2);
        List<Mesh> turned = new ArrayList<>(train.meshes());
        Collections.reverse(turned);
        Train other = new Train(turned, 1, train.drumDiameter(), train.reeving(), 21);

        assertThat(CLOCK.filamentMass(other)).isEqualTo(CLOCK.filamentMass(train));
    }
}
