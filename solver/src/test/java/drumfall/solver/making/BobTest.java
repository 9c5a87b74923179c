// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.making;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import drumfall.solver.brief.Brief;
import drumfall.solver.brief.BundledBriefs;
import drumfall.solver.making.solid.Slab;
import drumfall.solver.parts.BobSize;
import drumfall.solver.rating.BriefParts;
import drumfall.solver.samples.Briefs;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Printed mass and shot of a bob against the brief's mass, by areas of polygons of an independent library. */
class BobTest {
    private static final MakingSizes SIZES = MakingSizes.customary();

    private static double printed(Brief brief, Bob bob) {
        double volume = 0;
        for (Slab slab : bob.shell().solid().slabs()) {
            volume += 2 * Planes.of(slab.region()).getArea() * slab.height() * 1e-9;
        }
        return volume * brief.material().density().si();
    }

    @ParameterizedTest
    @CsvSource({"weekly-wall-clock, 0.15", "desk-clock, 0.06", "month-runner, 1.2"})
    void what_is_printed_and_its_shot_weigh_what_the_brief_says(String name, double mass) {
        Brief brief = BundledBriefs.load(name).orElseThrow();
        Bob bob = Bob.of(brief, SIZES);
        // Chords within 0.002 mm of the arcs lose less than a thousandth of the area.
        assertThat(printed(brief, bob) + bob.shot()).isCloseTo(mass, within(1e-3 * mass));
        assertThat(bob.shot()).isPositive();
    }

    @ParameterizedTest
    @ValueSource(strings = {"50 g", "150 g", "1.2 kg", "3 kg", "5 lb"})
    void shot_fills_the_chambers_so_far_that_it_cannot_run_about(String mass) {
        Bob bob = Bob.of(Briefs.demoWith("/pendulum/bobMass = \"" + mass + "\""), SIZES);
        double chambers = bob.shell().shotVolume();
        assertThat(bob.shotVolume()).isLessThanOrEqualTo(chambers).isGreaterThan(0.85 * chambers);
    }

    // The room is reckoned with 1300 kg/m3; shot alone has 4650, and the cube root of their ratio is 0.654.
    @ParameterizedTest
    @ValueSource(strings = {"20 g", "60 g", "150 g", "500 g", "1.2 kg", "3 kg"})
    void a_bob_as_small_as_holds_its_shot_fits_the_room_that_is_kept_for_it(String mass) {
        Brief brief = Briefs.demoWith("/pendulum/bobMass = \"" + mass + "\"");
        BobSize room = BriefParts.bob(brief);
        Bob bob = Bob.of(brief, SIZES);
        assertThat(bob.shell().diameter()).isBetween(0.65 * room.diameter(), room.diameter());
        assertThat(2 * bob.shell().thickness()).isBetween(0.65 * room.thickness(), room.thickness());
    }

    @ParameterizedTest
    @CsvSource({"300 g, 60 mm, 14 mm, at most", "10 g, 60 mm, 14 mm, at least", "80 g, 60 mm, 14 mm, ''"})
    void a_shell_of_the_brief_takes_shot_up_to_the_mass_of_the_brief(
            String mass, String diameter, String thickness, String refused) {
        Brief brief = Briefs.demoWith(
                "/pendulum/bobMass = \"%s\" & /pendulum/bob = {\"diameter\": \"%s\", \"thickness\": \"%s\", \"behindPlate\": \"40 mm\"}"
                        .formatted(mass, diameter, thickness));
        if (refused.isEmpty()) {
            Bob bob = Bob.of(brief, SIZES);
            assertThat(bob.shell().diameter()).isEqualTo(0.06);
            assertThat(bob.mass()).isCloseTo(0.08, within(1e-12));
            assertThat(bob.shot()).isPositive();
        } else {
            assertThatThrownBy(() -> Bob.of(brief, SIZES)).hasMessageContaining(refused + " ");
        }
    }

    // Steel of 7750 kg/m3 (Beckett 1903, p. 53), poured to 0.6 of it (loose packing, from memory): 4.65 g for each cm3.
    @Test
    void shot_takes_the_room_that_poured_steel_takes() {
        Bob bob = Bob.of(Briefs.demoWith(""), SIZES);
        assertThat(1e6 * bob.shotVolume()).isCloseTo(1e3 * bob.shot() / 4.65, within(1e-9));
    }

    @ParameterizedTest
    @CsvSource({"1 g, at least, the smallest shell around the rod", "50 kg, at most, a shell as wide as the bed"})
    void a_bob_that_cannot_be_made_is_refused_by_its_name_with_a_mass_that_can(
            String mass, String rule, String reason) {
        Brief brief = Briefs.demoWith("/pendulum/bobMass = \"" + mass + "\"");
        assertThatThrownBy(() -> Bob.of(brief, SIZES)).satisfies(refused -> {
            assertThat(refused)
                    .hasMessageContaining(reason)
                    .hasMessageMatching("The bobMass \\(" + mass + "\\) of the pendulum must be " + rule
                            + " \\d+ g, .+\\. Maybe take \\d+ g\\.");
            String offered = refused.getMessage().replaceAll(".*Maybe take (\\d+ g)\\.", "$1");
            Bob bob = Bob.of(Briefs.demoWith("/pendulum/bobMass = \"" + offered + "\""), SIZES);
            assertThat(bob.shot()).isNotNegative();
        });
    }
}
