// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.brief;

import static org.assertj.core.api.Assertions.assertThat;

import drumfall.solver.quantity.Dimension;
import drumfall.solver.quantity.Quantity;
import drumfall.solver.train.Mesh;
import drumfall.solver.train.ToothModule;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Which meshes have a held centre distance: {@code a = m (z + p) / 2}, to a micrometre and no further. */
class MeshLockTest {
    private static final MeshPlace PLACE = new MeshPlace(MeshPlace.Side.BELOW, 1);

    /** Reckoned by hand; an inch is 25.4 mm exactly (international yard and pound agreement, 1959). */
    @ParameterizedTest
    @CsvSource({
        // Several counts and modules make one distance.
        "62.5 mm, 90, 10, 1.25, true",
        "62.5 mm, 113, 12, 1, true",
        "62.5 mm, 91, 10, 1.25, false",
        // One micrometre off is the same hole, a nanometre more is not.
        "45.001 mm, 64, 8, 1.25, true",
        "45.001001 mm, 64, 8, 1.25, false",
        "44.999 mm, 64, 8, 1.25, true",
        "44.998999 mm, 64, 8, 1.25, false",
        // Teeth of 20 to the inch have a module of 1.27 mm: 90 of them are 4.5 in, half of that is the distance.
        "2.25 in, 80, 10, 1.27, true",
        "2 1/4 in, 80, 10, 1.27, true",
        "2.2501 in, 80, 10, 1.27, false",
        // Half nanometres count: 71 teeth of 1.000001 mm stand 35.5000355 mm apart.
        "35.5010355 mm, 61, 10, 1.000001, true",
        "35.5010356 mm, 61, 10, 1.000001, false"
    })
    void a_mesh_has_a_held_distance_to_a_micrometre(String held, int wheel, int leaves, String module, boolean met) {
        MeshLock lock = MeshLock.open(PLACE).withDistance(Optional.of(Quantity.parse(Dimension.LENGTH, held)));

        assertThat(lock.distanceMetBy(Mesh.of(wheel, leaves, ToothModule.ofMillimetres(module))))
                .isEqualTo(met);
    }

    @Test
    void any_mesh_has_the_distance_of_a_lock_that_holds_none() {
        assertThat(MeshLock.open(PLACE).distanceMetBy(Mesh.of(64, 8, ToothModule.ofMillimetres("1"))))
                .isTrue();
    }

    @Test
    void a_lock_on_a_distance_alone_holds_something_and_is_let_go_again() {
        MeshLock lock = MeshLock.open(PLACE).withDistance(Optional.of(Quantity.parse(Dimension.LENGTH, "45 mm")));

        assertThat(lock.isOpen()).isFalse();
        assertThat(lock.withDistance(Optional.empty()).isOpen()).isTrue();
    }

    @Test
    void a_centre_distance_is_exact() {
        assertThat(MeshLock.centreDistance(Mesh.of(61, 10, ToothModule.ofMillimetres("1.000001"))))
                .isEqualTo(BigFraction.of(71_000_071, 2_000_000_000));
    }
}
