// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.teeth;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import drumfall.solver.teeth.choice.ToothFamily;
import drumfall.solver.teeth.form.InvoluteGear;
import drumfall.solver.teeth.form.LanternPinion;
import drumfall.solver.train.ToothModule;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ContactTeethTest {
    private static final List<ToothModule> MODULES = List.of(module("1.5"), module("0.5"), module("1"));

    private static ToothModule module(String millimetres) {
        return ToothModule.ofMillimetres(millimetres);
    }

    private static ContactTeeth teeth(ToothFamily family, double friction) {
        Optional<Double> angle = family == ToothFamily.INVOLUTE ? Optional.of(20.0) : Optional.empty();
        return new ContactTeeth(
                new ToothNeeds(family, angle, FixedShape.NOTHING, friction, 1e-4, 5e-5, 1e-4, 4e-4, MODULES));
    }

    // With a nozzle of 0.4 mm a tooth of module 0.5 mm, 0.79 mm thick at the pitch circle, is below two widths.
    @Test
    void the_smallest_module_that_prints_serves_the_larger_ones() {
        ContactTeeth teeth = teeth(ToothFamily.INVOLUTE, 0.25);

        assertThat(teeth.teeth(60, 8, module("0.5"))).isEmpty();
        assertThat(teeth.teeth(60, 8, module("0.999"))).isEmpty();
        assertThat(teeth.teeth(60, 8, module("1"))).isPresent();
        assertThat(teeth.teeth(60, 8, module("7"))).isEqualTo(teeth.teeth(60, 8, module("1")));
        assertThat(teeth.atAnyModule(60, 8)).isEqualTo(teeth.teeth(60, 8, module("1")));
    }

    // A lantern pinion is only driven, so a wheel of 8 before 60 pins has no form.
    @Test
    void counts_that_never_run_have_no_teeth_at_any_module() {
        assertThat(teeth(ToothFamily.LANTERN, 0.25).atAnyModule(8, 60)).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"24, 8", "60, 8", "90, 10", "48, 12"})
    void shifts_cancel_so_that_centres_stay_standard(int toothCount, int leafCount) {
        MeshTeeth found = teeth(ToothFamily.INVOLUTE, 0.25)
                .teeth(toothCount, leafCount, module("1"))
                .orElseThrow();

        // 1e-9: the inverse of the involute function is found by iteration.
        assertThat(found.pair().centreDistance()).isCloseTo((toothCount + leafCount) / 2.0, within(1e-9));
        InvoluteGear wheel = (InvoluteGear) found.pair().driver();
        InvoluteGear pinion = (InvoluteGear) found.pair().follower();
        assertThat(wheel.shift() + pinion.shift()).isCloseTo(0, within(1e-12));
        // Arms of an involute's force are the base radii; 1e-6: the sampling's own tolerance.
        assertThat(found.wheel().forceArm()).isCloseTo(wheel.baseRadius(), within(1e-6));
        assertThat(found.pinion().forceArm()).isCloseTo(pinion.baseRadius(), within(1e-6));
        assertThat(found.path().contactRatio()).isGreaterThan(1);
        assertThat(found.path().approachShare()).isBetween(0.0, 1.0);
    }

    @ParameterizedTest
    @CsvSource({"INVOLUTE, 60, 8", "CYCLOIDAL, 60, 10", "LANTERN, 60, 10"})
    void more_friction_never_lets_more_through(ToothFamily family, int toothCount, int leafCount) {
        MeshTeeth found = teeth(family, 0.25).atAnyModule(toothCount, leafCount).orElseThrow();
        double worst = 1;
        double mean = 1;
        for (double friction : new double[] {0, 0.1, 0.2, 0.3, 0.4}) {
            EfficiencyCurve curve = found.curve(friction);
            assertThat(curve.worst()).isLessThanOrEqualTo(worst);
            assertThat(curve.mean()).isLessThanOrEqualTo(mean);
            assertThat(found.torque().worstOverBand(friction)).isLessThanOrEqualTo(curve.worst() + 0.05);
            worst = curve.worst();
            mean = curve.mean();
        }
        // 1e-3: SWIFT sampling of a form that need not be conjugate loses no work without friction.
        assertThat(found.curve(0).mean()).isCloseTo(1, within(1e-3));
        assertThat(found.path().bindingFriction()).isGreaterThan(0.4);
    }

    @Test
    void the_same_question_is_answered_from_memory_whoever_asks() {
        MeshTeeth first = teeth(ToothFamily.INVOLUTE, 0.21).atAnyModule(64, 8).orElseThrow();
        MeshTeeth second = teeth(ToothFamily.INVOLUTE, 0.21).atAnyModule(64, 8).orElseThrow();

        assertThat(second).isSameAs(first);
        assertThat(second.curve(0.3)).isSameAs(first.curve(0.3));
    }

    @ParameterizedTest
    @CsvSource({
        "INVOLUTE, 'involute 20°, contact of the drawn teeth'",
        "CYCLOIDAL, 'cycloidal, contact of the drawn teeth'",
        "LANTERN, 'lantern, contact of the drawn teeth'",
    })
    void the_label_names_form_and_method(ToothFamily family, String label) {
        assertThat(teeth(family, 0.25).label()).isEqualTo(label);
    }

    // The pins of a lantern are metal rods and set no limit; its wheel does.
    @Test
    void only_printed_teeth_have_a_form_factor() {
        MeshTeeth lantern = teeth(ToothFamily.LANTERN, 0.25).atAnyModule(60, 10).orElseThrow();
        MeshTeeth involute =
                teeth(ToothFamily.INVOLUTE, 0.25).atAnyModule(60, 10).orElseThrow();

        assertThat(lantern.pinion().formFactor()).isInfinite();
        assertThat(lantern.wheel().formFactor()).isBetween(0.1, 0.8);
        assertThat(involute.wheel().formFactor()).isBetween(0.2, 0.6);
        assertThat(involute.pinion().formFactor()).isBetween(0.2, 0.6);
    }

    /** Fixed near what is chosen freely, where teeth surely exist. */
    @Test
    void what_is_fixed_of_an_involute_shape_is_so_and_the_rest_is_chosen() {
        MeshTeeth chosen = shaped(ToothFamily.INVOLUTE, FixedShape.NOTHING);
        double shift = ((InvoluteGear) chosen.pair().follower()).shift() + 0.02;
        double addendum = addendum((InvoluteGear) chosen.pair().driver()) - 0.01;
        Optional<Double> free = Optional.empty();
        MeshTeeth found = shaped(
                ToothFamily.INVOLUTE,
                new FixedShape(Optional.of(shift), Optional.of(addendum), free, free, free, free, free));
        InvoluteGear wheel = (InvoluteGear) found.pair().driver();
        // 1e-9: shifts and tips are stored as sums and radii.
        assertThat(((InvoluteGear) found.pair().follower()).shift()).isCloseTo(shift, within(1e-9));
        assertThat(wheel.shift()).isCloseTo(-shift, within(1e-9));
        assertThat(addendum(wheel)).isCloseTo(addendum, within(1e-9));
        // Chosen for the worst phase, so what is fixed lets no more through; 5e-3: the choice is a search by steps.
        assertThat(found.curve(0.25).worst())
                .isLessThanOrEqualTo(chosen.curve(0.25).worst() + 5e-3);
    }

    private static double addendum(InvoluteGear gear) {
        return gear.flank().tipRadius() - gear.pitchRadius();
    }

    @Test
    void a_pin_diameter_that_is_fixed_is_that_of_the_pins() {
        Optional<Double> free = Optional.empty();
        FixedShape fixed = new FixedShape(free, free, free, free, free, free, Optional.of(1.25));
        assertThat(((LanternPinion) shaped(ToothFamily.LANTERN, fixed).pair().follower()).pinDiameter())
                .isEqualTo(1.25);
    }

    private static MeshTeeth shaped(ToothFamily family, FixedShape fixed) {
        Optional<Double> angle = family == ToothFamily.INVOLUTE ? Optional.of(20.0) : Optional.empty();
        return new ContactTeeth(new ToothNeeds(family, angle, fixed, 0.25, 1e-4, 5e-5, 1e-4, 4e-4, MODULES))
                .atAnyModule(60, 10)
                .orElseThrow();
    }
}
