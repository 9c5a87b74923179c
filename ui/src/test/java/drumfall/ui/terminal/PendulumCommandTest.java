// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.terminal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import drumfall.ui.terminal.TerminalBench.Run;
import java.nio.file.Path;
import java.util.Locale;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PendulumCommandTest {
    private static final String PALLETS = " --escape-teeth 30 --escape-radius 26mm --pallet-span 95° --lift 4°"
            + " --lock 1° --drop 1.5° --pallet-friction 0.2";
    private static final String HUNG = "pendulum --length 0.25m --bob 150g --rod 20g --quality 400";

    /** Every question but where the quality comes from. */
    static final String EVERYTHING =
            "pendulum --beats 7200 --arc 3deg --latitude 52 --height 50m --bob 150g --bob-shape lens"
                    + " --bob-diameter 60mm --bob-thickness 20mm --rod 20g --rod-length 300mm --nut-pitch 0.7mm --added 1g"
                    + " --added-at 120mm --expansion steel --torque 5Nmm --pallet-torque 0.002Nmm --inertia-share 0.03"
                    + PALLETS;

    @TempDir
    Path folder;

    private TerminalBench bench;

    @BeforeEach
    void open() {
        bench = new TerminalBench(folder);
        bench.write("arcs.csv", ringDown());
    }

    /** Arcs of a pendulum with Q 400 and some rubbing, in whole arc minutes. */
    static String ringDown() {
        StringBuilder text = new StringBuilder("# periods, semi-arc\n\n");
        double decay = Math.PI / 400;
        for (int periods = 0; periods <= 150; periods += 10) {
            double degrees = 4 * Math.exp(-decay * periods) + 0.004 * Math.expm1(-decay * periods) / decay;
            text.append(String.format(Locale.ROOT, "%d, %d arcmin%n", periods, Math.round(60 * degrees)));
        }
        return text.toString();
    }

    // g / π² at standard gravity, 13 digits; the length is given to rounding of a double.
    @Test
    void a_seconds_pendulum_has_its_length_at_standard_gravity() {
        JsonNode answer = json("pendulum --beats 3600");

        assertThat(answer.get("pendulumLength_m").doubleValue()).isCloseTo(0.9936213855661, within(1e-12));
        assertThat(answer.get("standardGravity").booleanValue()).isTrue();
    }

    // WGS 84 normal gravity at 45° and 51.5° as published programs have it; lengths g / π² to a micrometre.
    @ParameterizedTest
    @CsvSource({"45, 0.993576", "51.5, 0.994167", "51.5°, 0.994167", "0, 0.990954", "-90, 0.996209"})
    void a_latitude_gives_its_own_length(String latitude, double length) {
        assertThat(json("pendulum --beats 3600 --latitude " + latitude)
                        .get("pendulumLength_m")
                        .doubleValue())
                .isCloseTo(length, within(1e-6));
    }

    // Loss of a finite arc by the arithmetic-geometric mean: 14.8042 s a day at 3°.
    @Test
    void an_arc_costs_its_circular_error() {
        Run run = bench.run("pendulum", "--beats", "7200", "--arc", "3deg");

        assertThat(run.code()).isEqualTo(ExitCode.DONE.number());
        assertThat(run.out()).contains("loses 14.80 s a day");
    }

    @Test
    void beats_and_length_lead_to_one_another() {
        double length =
                json("pendulum --beats 7317 --arc 4deg").get("pendulumLength_m").doubleValue();
        double beats = json("pendulum --length " + length + "m --arc 4deg")
                .get("beatsPerHour")
                .doubleValue();

        assertThat(beats).isCloseTo(7317, within(1e-8));
    }

    @Test
    void a_ring_down_gives_quality_and_rubbing() {
        JsonNode quality =
                json("pendulum --beats 7200 --bob 150g --ring-down @arcs.csv").get("quality");
        double deviation = quality.at("/ringDown/qualityDeviation").doubleValue();

        // Made with Q 400 and read to whole arc minutes: within four of the stated deviations.
        assertThat(quality.get("low").doubleValue()).isCloseTo(400, within(4 * deviation));
        assertThat(deviation).isLessThan(40);
        assertThat(quality.at("/ringDown/coulombSeen").booleanValue()).isTrue();
    }

    @Test
    void the_books_of_the_escapement_balance() {
        JsonNode books = json(HUNG + " --arc 3.5deg" + PALLETS).at("/escapement/books");
        double spent = 0;
        for (String entry :
                new String[] {"pendulum_J", "locking_J", "impulseFriction_J", "palletArbor_J", "inertia_J", "drop_J"}) {
            spent += books.get(entry).doubleValue();
        }

        assertThat(spent / books.get("wheel_J").doubleValue()).isCloseTo(1, within(1e-9));
    }

    @Test
    void everything_at_once_is_answered_in_words() {
        Run run = bench.run((EVERYTHING + " --kind printed-light").split(" ", -1));

        assertThat(run.err()).isEmpty();
        assertThat(run.code()).isEqualTo(ExitCode.DONE.number());
        assertThat(run.out())
                .contains("The pallets embrace 7.5 tooth spaces", "A turn of the nut", "Quality: 200 to 2000")
                .doesNotContain("{", "''", "NaN");
    }

    @Test
    void a_torque_too_small_is_told_as_a_standstill() {
        assertThat(bench.run((HUNG + " --torque 0.001Nmm" + PALLETS).split(" ", -1))
                        .out())
                .contains("the clock stands");
    }

    // What a refusal offers is taken: the arc named in it is answered.
    @ParameterizedTest
    @CsvSource({"1deg, the least is ", "60deg, the greatest is "})
    void the_nearest_arc_that_a_refusal_names_works(String arc, String before) {
        String sentence =
                bench.run((HUNG + " --arc " + arc + PALLETS).split(" ", -1)).err();
        String offered = sentence.substring(sentence.indexOf(before) + before.length())
                .strip()
                .replaceFirst("\\.$", "")
                .replace(" ", "");
        Run run = bench.run((HUNG + " --arc " + offered + PALLETS).split(" ", -1));

        assertThat(run.err()).isEmpty();
        assertThat(run.code()).isEqualTo(ExitCode.DONE.number());
    }

    @ParameterizedTest
    @CsvSource(quoteCharacter = '`', delimiter = ';', textBlock = """
            pendulum;                                                  Missing: --beats NUMBER or --length LENGTH.
            pendulum --beats 7200 --length 1m;                         Both --beats and --length are given
            pendulum --beats 0;                                        "0" is too little; the least is 1
            pendulum --length 0m;                                      "0m" is too little; the least is 0.001 mm
            pendulum --beats 7200 --bob 0g;                            "0g" is too little; the least is 0.001 g
            pendulum --beats 7200 --bob -1kg;                          "-1kg" is too little; the least is 0.001 g
            pendulum --beats 7200 --bob 150g --rod 0g;                 "0g" is too little; the least is 0.001 g
            pendulum --beats 7200 --quality 0.5;                       "0.5" is too little; the least is 1
            pendulum --beats 7200 --quality 400 --kind printed-light;  Only one of --quality, --kind and --ring-down
            pendulum --beats 7200 --kind heavy;                        "heavy" is not known here; choose one of printed-light
            pendulum --beats 7200 --arc 200deg;                        goes over the top; write at most 179°.
            pendulum --beats 7200 --height 50m;                        --height means nothing without --latitude
            pendulum --beats 7200 --latitude 91;                       There is no latitude of 91°; the nearest is 90°.
            pendulum --beats 7200 --latitude 50 --height 90000m;       the nearest is 10000 m
            pendulum --beats 7200 --rod 20g;                           --rod means nothing without --bob
            pendulum --beats 7200 --bob 150g --bob-shape cone;         "cone" is no shape of a bob
            pendulum --beats 7200 --bob 150g --bob-shape ball;         --bob-shape ball means nothing without --bob-diameter
            pendulum --beats 7200 --bob 1g --rod 500g --rod-length 2m; No place of this bob gives a length of
            pendulum --beats 7200 --expansion wood;                    "wood" is not known here; choose one of deal
            pendulum --beats 7200 --ring-down @none.csv;               There is no file
            pendulum --beats 7200 --ring-down @words.csv;              line 1: "an arc" is no reading
            pendulum --beats 7200 --ring-down @bare.csv;               line 2: "3.9" is not an angle: the unit is missing.
            pendulum --beats 7200 --ring-down @short.csv;              must be at least 4
            pendulum --beats 7200 --ring-down @straight.csv;           the arcs fall in a straight line or slower
            pendulum --beats 7200 --escapement recoil-anchor;          The escapement recoil-anchor is not modelled
            pendulum --beats 7200 --escapement verge;                  "verge" is not known here; choose one of deadbeat
            pendulum --beats 7200 --lift 4deg;                         The escapement also needs --escape-teeth COUNT
            """)
    void bad_input_is_answered_by_one_sentence_and_the_nearest_value_that_works(String command, String sentence) {
        bench.write("words.csv", "an arc\n");
        bench.write("bare.csv", "0, 4°\n10, 3.9\n");
        bench.write("short.csv", "0, 4°\n10, 3.9°\n20, 3.8°\n");
        bench.write("straight.csv", "0, 4°\n10, 3.9°\n20, 3.7°\n30, 3.4°\n40, 3°\n");

        refuses(command, sentence);
    }

    @ParameterizedTest
    @CsvSource(quoteCharacter = '`', delimiter = ';', textBlock = """
            --arc 1deg;      no tooth escapes from these pallets; the least is
            --arc 60deg;     their friction takes all beyond; the greatest is
            --drop 7deg;     A drop of 7deg is all that a wheel of 30 teeth turns in a beat; write at most
            --pallet-span 10deg; embrace no tooth of 30; the least span is 18
            --escape-teeth 3;    the least is 4.
            --inertia-share 1;   An inertia share of 1 leaves nothing
            """)
    void pallets_that_cannot_be_are_refused(String changed, String sentence) {
        String option = changed.split(" ", -1)[0];
        refuses(HUNG + " " + changed + PALLETS.replaceAll(option + " [^ ]+", "").replace("  ", " "), sentence);
    }

    private void refuses(String command, String sentence) {
        Run run = bench.run(command.strip().split(" +", -1));
        assertThat(run.code()).isEqualTo(ExitCode.BAD_INPUT.number());
        assertThat(run.out()).isEmpty();
        assertThat(run.err().lines()).hasSize(1);
        assertThat(run.err()).contains(sentence).doesNotContain("Exception", "\tat ", "null");
    }

    private JsonNode json(String command) {
        Run run = bench.run((command + " --json").split(" ", -1));
        assertThat(run.err()).isEmpty();
        return run.json();
    }
}
