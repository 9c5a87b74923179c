// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.making;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import drumfall.solver.brief.Brief;
import drumfall.solver.fit.FitException;
import drumfall.solver.making.solid.Slab;
import drumfall.solver.making.solid.Solid;
import drumfall.solver.rating.TrainRater;
import drumfall.solver.samples.Briefs;
import drumfall.solver.train.Mesh;
import drumfall.solver.train.Reeving;
import drumfall.solver.train.ToothModule;
import drumfall.solver.train.Train;
import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Seats of bearings in what turns on a rod that stands still. Bearing 682: 2 × 5 × 1.5 mm, by ISO 15, from memory.
 */
class HubSeatsTest {
    private static final Train TRAIN = new Train(
            List.of(
                    Mesh.of(85, 10, ToothModule.ofMillimetres("1.5")),
                    Mesh.of(83, 12, ToothModule.ofMillimetres("1")),
                    Mesh.of(66, 12, ToothModule.ofMillimetres("1")),
                    Mesh.of(55, 12, ToothModule.ofMillimetres("1"))),
            1,
            BigFraction.of(36, 1000),
            Reeving.DOUBLE,
            21);

    private static final String ROD =
            "/arbors/intermediate/kind = \"fixed\" & /arbors/intermediate/diameter = \"2 mm\"";

    private static Brief brief(String bearings, String size) {
        return Briefs.demoWith(ROD + " & /arbors/intermediate/bearings = \"" + bearings + "\""
                + " & /arbors/intermediate/bearing = " + size);
    }

    private static String size(String outer, String width) {
        return "{\"outer\": \"" + outer + "\", \"width\": \"" + width + "\"}";
    }

    private static Solid hub(Brief brief) {
        return parts(brief).stream()
                .filter(part -> part.name().equals("arbor-3-wheel-and-pinion"))
                .findFirst()
                .orElseThrow()
                .solid();
    }

    private static List<MovementPart> parts(Brief brief) {
        TrainRater rater = new TrainRater(brief);
        return MovementParts.of(rater, rater.rate(TRAIN), Optional.empty()).parts();
    }

    /** Diameter of the hole about the axis, mm. */
    private static double bore(Slab slab) {
        return slab.region()
                .rings()
                .filter(ring ->
                        Math.abs(ring.moments().x()) < 1e-9 && ring.moments().area() < 0)
                .mapToDouble(ring -> 2 * Math.sqrt(-ring.moments().area() / Math.PI))
                .min()
                .orElseThrow();
    }

    private static Slab at(Solid solid, double height) {
        return solid.slabs().stream()
                .filter(slab -> slab.from() <= height && slab.to() > height)
                .findFirst()
                .orElseThrow();
    }

    // By hand, as in a plate: a ring of 5 mm without clearance, a drill of 5 mm, less 0.15 mm that it cuts off, 0.1 mm
    // that
    // bores print smaller; the rod of 2 mm with 0.1 mm of clearance, a drill of 2.1 mm, the same. 1.5 mm deep are 1.6
    // mm of
    // layers of 0.2 mm. Pinions stand before their wheels where no places say otherwise.
    @ParameterizedTest
    @CsvSource({"none, false, false", "rear, true, false", "front, false, true", "both, true, true"})
    void each_end_that_the_brief_names_has_a_seat(String bearings, boolean wheelEnd, boolean pinionEnd) {
        Solid hub = hub(brief(bearings, size("5 mm", "1.5 mm")));
        double running = bore(at(hub, hub.height() / 2));
        assertThat(running).isCloseTo(2.05, within(1e-9));
        assertThat(bore(at(hub, 0.1))).isCloseTo(wheelEnd ? 4.95 : running, within(1e-9));
        assertThat(bore(at(hub, hub.height() - 0.1))).isCloseTo(pinionEnd ? 4.95 : running, within(1e-9));
        if (wheelEnd) {
            assertThat(hub.slabs().get(0).height()).isCloseTo(1.6, within(1e-9));
            assertThat(bore(at(hub, 1.7))).isEqualTo(running);
        }
    }

    @Test
    void a_seat_takes_away_its_ring_and_nothing_else() {
        double plain = hub(brief("none", size("5 mm", "1.5 mm"))).volume();
        Solid seated = hub(brief("front", size("5 mm", "1.5 mm")));
        double seat = bore(at(seated, seated.height() - 0.1));
        double running = bore(at(seated, seated.height() / 2));
        assertThat(plain - seated.volume())
                .isCloseTo(1.6 * Math.PI / 4 * (seat * seat - running * running), within(1e-6));
    }

    @Test
    void without_a_size_the_bore_runs_on_the_rod() {
        assertThat(hub(Briefs.demoWith(ROD + " & /arbors/intermediate/bearings = \"both\""))
                        .slabs())
                .hasSameSizeAs(hub(brief("none", size("5 mm", "1.5 mm"))).slabs());
    }

    @Test
    void a_wheels_hub_grows_around_its_seat() {
        Solid hub = hub(brief("rear", size("22 mm", "3 mm")));
        assertThat(bore(hub.slabs().get(0))).isGreaterThan(21);
    }

    @Test
    void a_seat_that_reaches_the_roots_of_the_pinion_is_refused_in_one_sentence() {
        assertThatThrownBy(() -> parts(brief("front", size("12 mm", "3 mm"))))
                .isInstanceOf(FitException.class)
                .hasMessageStartingWith("The diameter (11.")
                .hasMessageContaining("of the bearing seat (arbor 3, front) must be at most ")
                .hasMessageContaining("short of teeth and windows. Maybe take a smaller bearing");
    }

    @Test
    void a_seat_deeper_than_the_hub_is_refused_in_one_sentence() {
        assertThatThrownBy(() -> parts(brief("both", size("5 mm", "40 mm"))))
                .isInstanceOf(FitException.class)
                .hasMessageContaining("The depth (40")
                .hasMessageContaining("must be at most ")
                .hasMessageContaining(
                        "so that two layers are left of what it is cut into. Maybe take a narrower bearing");
    }

    @Test
    void rods_that_turn_have_no_seats_in_their_hubs() {
        Brief turning = Briefs.demoWith("/arbors/intermediate/kind = \"turning\" & "
                + "/arbors/intermediate/bearings = \"both\" & /arbors/intermediate/bearing = "
                + size("5 mm", "1.5 mm"));
        Solid hub = hub(turning);
        assertThat(bore(at(hub, 0.1))).isEqualTo(bore(at(hub, hub.height() / 2)));
    }
}
