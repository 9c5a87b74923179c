// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.terminal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import drumfall.ui.terminal.TerminalBench.Run;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class MeshCommandTest {
    /** A few operations on doubles of the order of one. */
    private static final double ROUNDING = 1e-12;

    @TempDir
    Path folder;

    private TerminalBench bench;

    @BeforeEach
    void open() {
        bench = new TerminalBench(folder);
    }

    private JsonNode mesh(String command) {
        Run run = bench.run(("mesh " + command + " --json").split(" ", -1));
        assertThat(run.err()).isEmpty();
        assertThat(run.code()).isEqualTo(ExitCode.DONE.number());
        return run.json();
    }

    // KHK, Gear Technical Reference, "Calculation of Positive Shifted Gear": module 3, 20 degrees, 12 and 24 teeth have
    // the
    // pitch diameters 36.000 and 72.000, the base diameters 33.8289 and 67.6579 and the standard centre distance
    // 54.000.
    // Printed to a tenth of a micrometre; none of them depends on the shifts.
    @Test
    void diameters_and_centre_distance_are_the_published_ones() {
        JsonNode json = mesh("24 12 --module 3mm --pressure-angle 20deg");
        double printed = 5.1e-8;
        assertThat(json.at("/wheel/pitchDiameter_m").doubleValue()).isCloseTo(0.072, within(ROUNDING));
        assertThat(json.at("/pinion/pitchDiameter_m").doubleValue()).isCloseTo(0.036, within(ROUNDING));
        assertThat(json.at("/wheel/baseDiameter_m").doubleValue()).isCloseTo(0.0676579, within(printed));
        assertThat(json.at("/pinion/baseDiameter_m").doubleValue()).isCloseTo(0.0338289, within(printed));
        assertThat(json.at("/centreDistance_m").doubleValue()).isCloseTo(0.054, within(ROUNDING));
    }

    // The pins of a lantern are driven almost wholly after the line of centres, leaves of that number before it too:
    // common
    // practice, no source.
    @Test
    void a_lantern_is_driven_after_the_line_of_centres_and_leaves_before_it_too() {
        double lantern = mesh("60 8 --form lantern").get("recessShare").doubleValue();
        double leaves =
                mesh("60 8 --form cycloidal --module 1.5mm").get("recessShare").doubleValue();
        assertThat(lantern).isGreaterThan(0.9);
        assertThat(leaves).isLessThan(0.9);
    }

    @ParameterizedTest
    @CsvSource({"60 8, 7.5", "90 12 --form cycloidal, 7.5", "60 8 --form lantern, 7.5"})
    void the_curve_runs_over_one_pitch_and_its_ratio_means_the_counts(String command, double ratio) {
        JsonNode json = mesh(command);
        double pitch = 2 * Math.PI / json.at("/wheel/count").intValue();
        JsonNode curve = json.at("/frictions/1/curve");
        List<Double> angles = new ArrayList<>();
        double turned = 0;
        for (JsonNode sample : curve) {
            angles.add(sample.get("wheelAngle_rad").doubleValue());
            turned += sample.get("ratio").doubleValue() / curve.size();
            assertThat(sample.get("side").textValue()).isIn("approach", "recess");
            assertThat(sample.get("pairs").intValue()).isBetween(1, 2);
        }
        assertThat(angles).isSorted();
        assertThat(angles.get(0)).isBetween(0.0, pitch / curve.size());
        assertThat(angles.get(angles.size() - 1)).isBetween(pitch - pitch / curve.size(), pitch);
        // Over a whole pitch the pinion turns by its own pitch; cycloidal tops ripple, and 128 samples average a step
        // to 1 %.
        assertThat(turned).isCloseTo(ratio, within(0.01 * ratio));
    }

    @ParameterizedTest
    @ValueSource(strings = {"60 8", "90 12 --form cycloidal", "60 8 --form lantern"})
    void contact_stays_within_the_tips_and_friction_costs(String command) {
        JsonNode json = mesh(command);
        double mean = 1;
        for (JsonNode friction : json.get("frictions")) {
            assertThat(friction.get("meanEfficiency").doubleValue()).isLessThan(mean);
            mean = friction.get("meanEfficiency").doubleValue();
            double worst = friction.get("worstEfficiency").doubleValue();
            assertThat(worst).isLessThan(mean);
            for (JsonNode sample : friction.get("curve")) {
                // The worst phase is searched for between samples too; tied pairs are averaged in a sample.
                assertThat(sample.get("efficiency").doubleValue()).isGreaterThan(worst - 1e-6);
                assertThat(sample.get("wheelContactRadius_m").doubleValue())
                        .isLessThan(json.at("/wheel/tipDiameter_m").doubleValue() / 2 + 1e-9);
                assertThat(sample.get("pinionContactRadius_m").doubleValue())
                        .isLessThan(json.at("/pinion/tipDiameter_m").doubleValue() / 2 + 1e-9);
            }
        }
        assertThat(json.get("frictions")).hasSize(3);
    }

    @Test
    void one_coefficient_gives_one_curve_and_no_friction_loses_nothing() {
        JsonNode json = mesh("60 8 --friction 0");
        assertThat(json.get("frictions")).hasSize(1);
        // Efficiency is a quotient of arms; without friction it is 1 but for rounding.
        assertThat(json.at("/frictions/0/meanEfficiency").doubleValue()).isCloseTo(1, within(1e-9));
        assertThat(json.at("/frictions/0/worstEfficiency").doubleValue()).isCloseTo(1, within(1e-9));
    }

    @Test
    void the_reserve_is_what_binding_leaves_above_the_most_friction() {
        JsonNode json = mesh("60 8 --friction 0.1-0.4");
        assertThat(json.get("bindingReserve").doubleValue())
                .isCloseTo(json.get("bindingFriction").doubleValue() - 0.4, within(ROUNDING));
        assertThat(json.get("bindingFriction").doubleValue())
                .isLessThanOrEqualTo(json.get("bindingFrictionDrawn").doubleValue() + 1e-6);
    }

    @Test
    void more_thinning_leaves_more_backlash_and_errors_spread_it() {
        JsonNode tight = mesh("60 8 --thinning 0.05mm --centre-error 0mm");
        JsonNode loose = mesh("60 8 --thinning 0.15mm --centre-error 0mm");
        double more =
                loose.get("backlash_m").doubleValue() - tight.get("backlash_m").doubleValue();
        // Both gears of the pair lose 0.1 mm; the search may choose other shifts, which the standard distance makes up
        // for.
        assertThat(more).isCloseTo(0.2e-3, within(1e-6));
        JsonNode off = mesh("60 8 --thinning 0.1mm --centre-error 0.1mm");
        assertThat(off.get("leastBacklash_m").doubleValue())
                .isLessThan(off.get("backlash_m").doubleValue());
        assertThat(off.get("greatestBacklash_m").doubleValue())
                .isGreaterThan(off.get("backlash_m").doubleValue());
    }

    @Test
    void the_teeth_print_with_the_nozzle_asked_about() {
        JsonNode json = mesh("60 8 --nozzle 0.6mm --module 1.5mm");
        assertThat(json.get("thinnestSection_m").doubleValue()).isCloseTo(1.2e-3, within(ROUNDING));
        assertThat(json.get("printableSection_m").doubleValue()).isGreaterThanOrEqualTo(1.2e-3);
    }

    @Test
    void the_report_speaks_in_the_units_asked_for() {
        Run metric = bench.run("mesh", "60", "8");
        assertThat(metric.lines().get(0))
                .startsWith("60/8, involute at")
                .endsWith("module 1 mm; the wheel drives, teeth chosen at a friction of 0.25");
        assertThat(metric.out()).contains("Centre distance: 34 mm.", "Contact ratio: ", "worst phase", "Binds from");
        assertThat(metric.out()).doesNotContain(" in.", "''", "{");
        Run inches = bench.run("mesh", "60", "8", "--units", "imperial");
        assertThat(inches.out()).contains("Centre distance: 1.33858 in.").doesNotContain("34 mm");
    }

    @Test
    void rows_that_a_form_does_not_have_are_left_out() {
        assertThat(bench.run("mesh", "60", "8", "--form", "lantern").out())
                .doesNotContain("base diameter", "profile shift");
        assertThat(bench.run("mesh", "60", "8").out()).contains("base diameter", "profile shift");
    }
}
