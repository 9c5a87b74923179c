// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.teeth.outline;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import drumfall.solver.teeth.GearFigures;
import drumfall.solver.teeth.form.BasicRack;
import drumfall.solver.teeth.form.InvoluteGear;
import drumfall.solver.teeth.form.ToothForm;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class ToothAreaTest {
    /** Distance of the rings' arcs from the flank, modules. */
    private static final double TOLERANCE = 1e-6;

    static Stream<ToothForm> everyForm() {
        return OutlineTest.everyForm();
    }

    // Worked apart from the program: the basic rack of ISO 53 type A (fillet 0.38) rolled round the blank in some ten
    // thousand steps, at each radius the widest space it leaves; 8, 9 and 10 leaves are undercut. Half a unit of the
    // last
    // digit.
    @ParameterizedTest
    @CsvSource({"8, 47.5352", "9, 60.6936", "10, 75.4291", "45, 1581.4114", "68, 3618.8948"})
    void the_disc_of_a_gear_is_what_the_rack_leaves(int teeth, double area) {
        assertThat(ToothArea.disc(InvoluteGear.of(BasicRack.ISO_53_A, teeth, 0)))
                .isCloseTo(area, withinPercentage(0.0005));
    }

    // The drawn ring keeps within a millionth of a module of the flank, so the areas differ by that times its length,
    // some
    // five modules a tooth; as much again for the sums of both.
    @ParameterizedTest
    @MethodSource("everyForm")
    void the_disc_has_the_area_of_the_drawn_ring(ToothForm form) {
        double drawn = ToothRing.of(form, 1, 0, TOLERANCE).moments().area();

        assertThat(ToothArea.disc(form)).isCloseTo(drawn, within(2 * TOLERANCE * 5 * form.toothCount()));
    }

    // As the area; a shell of that thickness has its second moment with the square of the tip's radius.
    @ParameterizedTest
    @MethodSource("everyForm")
    void the_disc_resists_being_turned_as_the_drawn_ring(ToothForm form) {
        double drawn = ToothRing.of(form, 1, 0, TOLERANCE).moments().polar();
        double tip = form.flank().tipRadius();

        assertThat(ToothArea.polar(form)).isCloseTo(drawn, within(2 * TOLERANCE * 5 * form.toothCount() * tip * tip));
    }

    // A rounded leaf ends where its thinned flanks cross, which the sum leaves out: less than a thousandth of the disc.
    @ParameterizedTest
    @MethodSource("everyForm")
    void a_thinned_disc_has_the_area_of_the_ring_drawn_thinned(ToothForm form) {
        var flank = form.flank();
        GearFigures gear = new GearFigures(flank.tipRadius(), 0, 0, flank.rootRadius(), ToothArea.disc(form));
        for (double thinning : new double[] {0.05, 0.1}) {
            double drawn = ToothRing.of(form, 1, thinning, TOLERANCE).moments().area();

            assertThat(gear.area(thinning)).as("%s", thinning).isCloseTo(drawn, withinPercentage(0.05));
        }
    }
}
