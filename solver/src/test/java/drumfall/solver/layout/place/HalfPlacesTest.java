// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.layout.place;

import static org.assertj.core.api.Assertions.assertThat;

import drumfall.solver.layout.Half;
import drumfall.solver.layout.LayoutNeed;
import drumfall.solver.layout.LayoutOutcome.NoLayout;
import drumfall.solver.layout.LayoutOutcome.Placed;
import drumfall.solver.layout.Movements;
import drumfall.solver.layout.Part;
import drumfall.solver.layout.PartKind;
import drumfall.solver.layout.size.ArborSize;
import drumfall.solver.layout.size.MeshSpacing;
import drumfall.solver.layout.size.MovementParts;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** Halves of movements placed alone, against whole movements that the same placer places. */
class HalfPlacesTest {
    private static final int CASES = "full".equals(System.getProperty("drumfall.samples")) ? 2000 : 300;

    @ParameterizedTest
    @EnumSource
    void each_half_of_a_placed_movement_may_stand(Half half) {
        long placed = seeds().filter(seed -> Placer.place(Movements.drawn(seed), () -> false) instanceof Placed)
                .peek(seed -> assertThat(mayStand(Movements.drawn(seed), half))
                        .as("seed %d", seed)
                        .isTrue())
                .count();
        assertThat(placed).isGreaterThan(CASES / 10);
    }

    /** The rest of a refused half is replaced by that of other movements drawn, in its own frame and planes. */
    @ParameterizedTest
    @EnumSource
    void a_half_that_cannot_stand_stands_in_no_movement(Half half) {
        int joined = 0;
        for (LayoutNeed need : seeds().mapToObj(Movements::drawn).toList()) {
            if (!mayStand(need, half)) {
                for (long other = 1; other <= 12; other++) {
                    MovementParts rest = Movements.drawn(CASES + other).parts();
                    if (rest.meshes().size() == need.parts().meshes().size()) {
                        assertThat(Placer.place(with(need, half, rest), () -> false))
                                .isInstanceOf(NoLayout.class);
                        joined++;
                    }
                }
            }
        }
        assertThat(joined).isGreaterThan(CASES / 2);
    }

    /** Two movements that have no place, each half of which stands alone: neither is to blame by itself. */
    @Test
    void halves_that_only_stand_in_each_others_way_may_both_stand() {
        long together = seeds().mapToObj(Movements::drawn)
                .filter(need -> Placer.place(need, () -> false) instanceof NoLayout)
                .filter(need -> mayStand(need, Half.ABOVE) && mayStand(need, Half.BELOW))
                .count();
        assertThat(together).isPositive();
    }

    /** Parts of a movement of four meshes whose centre arbor is the second after the drum. */
    @ParameterizedTest
    @CsvSource({
        "DRUM, 0, ABOVE",
        "WHEEL, 0, ABOVE",
        "PINION, 1, ABOVE",
        "WHEEL, 1, ABOVE",
        "PINION, 2, ABOVE",
        "HUB, 2, ABOVE",
        "WHEEL, 2, BELOW",
        "PINION, 3, BELOW",
        "ESCAPE_WHEEL, 4, BELOW",
        "PALLETS, 5, BELOW"
    })
    void a_part_of_the_train_belongs_to_one_half(PartKind kind, int arbor, Half half) {
        for (Half one : Half.values()) {
            assertThat(one.holds(new Part(kind, arbor), Movements.eightDay())).isEqualTo(one == half);
        }
    }

    @ParameterizedTest
    @CsvSource({"ROD, 2", "CANNON_PINION, 2", "HOUR_WHEEL, 2", "MINUTE_WHEEL, 6", "MINUTE_PINION, 6", "ROD, 6"})
    void the_centre_arbors_rod_and_the_motion_work_stand_with_both_halves(PartKind kind, int arbor) {
        for (Half one : Half.values()) {
            assertThat(one.holds(new Part(kind, arbor), Movements.eightDay())).isTrue();
        }
    }

    private static LongStream seeds() {
        return LongStream.rangeClosed(1, CASES);
    }

    private static boolean mayStand(LayoutNeed need, Half half) {
        return Placer.mayStand(need, half, Optional.empty(), new PlaneBook(), () -> false);
    }

    /** The half of a need with what the rest of another movement takes in the elevation. */
    private static LayoutNeed with(LayoutNeed need, Half half, MovementParts rest) {
        MovementParts own = need.parts();
        int centre = own.centreArbor();
        List<MeshSpacing> meshes = new ArrayList<>();
        for (int mesh = 0; mesh < own.meshes().size(); mesh++) {
            boolean kept = (half == Half.ABOVE) == (mesh < centre);
            meshes.add(
                    kept
                            ? own.meshes().get(mesh)
                            : asThick(rest.meshes().get(mesh), own.meshes().get(mesh)));
        }
        List<ArborSize> arbors = new ArrayList<>();
        for (int arbor = 0; arbor <= own.escapeArbor(); arbor++) {
            boolean kept = arbor == centre || (half == Half.ABOVE) == (arbor < centre);
            arbors.add((kept ? own : rest).arbors().get(arbor));
        }
        MovementParts parts = new MovementParts(centre, arbors, meshes, own.drum(), own.escape(), own.motion());
        return new LayoutNeed(
                parts, need.line(), need.gaps(), need.envelope(), need.locks(), need.preference(), need.grid());
    }

    private static MeshSpacing asThick(MeshSpacing mesh, MeshSpacing as) {
        return new MeshSpacing(
                mesh.centreDistance(),
                mesh.wheelTipRadius(),
                mesh.pinionTipRadius(),
                as.wheelThickness(),
                as.pinionLength());
    }
}
