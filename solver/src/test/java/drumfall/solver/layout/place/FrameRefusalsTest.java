// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.layout.place;

import static org.assertj.core.api.Assertions.assertThat;

import drumfall.solver.layout.DirectionLock;
import drumfall.solver.layout.LayoutNeed;
import drumfall.solver.layout.LayoutOutcome;
import drumfall.solver.layout.LayoutOutcome.NoLayout;
import drumfall.solver.layout.LayoutOutcome.Scope;
import drumfall.solver.layout.Locks;
import drumfall.solver.layout.Movements;
import drumfall.solver.layout.PartKind;
import drumfall.solver.layout.Rule;
import drumfall.solver.layout.Shortfall;
import drumfall.solver.layout.size.DialPlace;
import drumfall.solver.layout.size.Envelope;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What the frame's width and height refuse at once, whatever the places, has no place in plain loops over all of them. */
class FrameRefusalsTest {
    private static final int CASES = "full".equals(System.getProperty("drumfall.samples")) ? 3000 : 250;
    private static final long MM = 1_000_000;

    /** Movements drawn at random in frames from too small to roomy: what is refused is never placed. */
    @Test
    void what_is_refused_at_once_has_no_place() {
        Random random = new Random(17);
        int refused = 0;
        int placed = 0;
        for (int i = 0; i < CASES; i++) {
            LayoutNeed drawn = Movements.drawn(1 + random.nextInt(500));
            LayoutNeed need = drawn.with(frame(drawn, 45 + random.nextInt(110), 45 + random.nextInt(130)));
            boolean found = PlainLayouts.bestScore(need) != null;
            Optional<Shortfall> first = new Refusals(need, new Contacts(need)).first();
            assertThat(first.isPresent() && found)
                    .as("%s refused by %s", need, first)
                    .isFalse();
            refused += first.isPresent() ? 1 : 0;
            placed += found ? 1 : 0;
        }
        assertThat(refused).isGreaterThan(CASES / 20);
        assertThat(placed).isGreaterThan(CASES / 20);
    }

    private static Envelope frame(LayoutNeed need, long width, long height) {
        Envelope given = need.envelope();
        return new Envelope(
                width * MM, height * MM, given.depth(), given.plateThickness(), Optional.empty(), DialPlace.ANYWHERE);
    }

    // The eight-day movement: escape wheel 25 mm, pallets 24 mm, 35 mm over it: 84 mm high, 50 mm wide.
    @ParameterizedTest
    @CsvSource({"84000, false", "83990, true"})
    void pallets_stand_over_the_escape_wheel(long heightMicrometres, boolean refused) {
        LayoutNeed roomy = Movements.need(Movements.eightDay(), Movements.frame(900, 900, 130), 24);
        Envelope given = roomy.envelope();
        LayoutNeed low = roomy.with(new Envelope(
                given.width(),
                heightMicrometres * 1000,
                given.depth(),
                given.plateThickness(),
                Optional.empty(),
                DialPlace.ANYWHERE));
        Optional<Shortfall> first = new Refusals(alone(low), new Contacts(alone(low))).first();
        assertThat(first.filter(shortfall -> shortfall.first().kind() == PartKind.PALLETS
                                && shortfall.rule() == Rule.HEIGHT
                                && shortfall.found() == 84 * MM)
                        .isPresent())
                .isEqualTo(refused);
    }

    /** With wheels small enough not to be too high by themselves. */
    private static LayoutNeed alone(LayoutNeed need) {
        return new LayoutNeed(
                Movements.parts(0, java.util.List.of(Movements.mesh(60, 8, 1000)), false),
                need.line(),
                need.gaps(),
                need.envelope(),
                need.locks(),
                need.preference(),
                need.grid());
    }

    // Mesh of 60 and 8 at module 1 mm: 34 mm apart, wheel's tips at 31 mm, escape wheel's at 25 mm: 90 mm in one line.
    @ParameterizedTest
    @CsvSource({"0, WIDTH", "90, HEIGHT"})
    void a_held_direction_counts_across_or_up(double degrees, Rule rule) {
        LayoutNeed need = alone(Movements.need(Movements.eightDay(), Movements.frame(89, 89, 130), 24))
                .with(new Locks(java.util.List.of(), java.util.List.of(new DirectionLock(0, Math.toRadians(degrees)))));

        LayoutOutcome outcome = Placer.place(need, () -> false);

        assertThat(outcome).isInstanceOf(NoLayout.class);
        assertThat(((NoLayout) outcome).scope()).isEqualTo(Scope.ANYWHERE);
        assertThat(((NoLayout) outcome).closest().rule()).isEqualTo(rule);
        assertThat(((NoLayout) outcome).closest().found()).isEqualTo(90 * MM);
    }
}
