// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.making.solid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import drumfall.solver.making.shape.Rings;
import drumfall.solver.teeth.outline.Outline;
import drumfall.solver.teeth.outline.PrintedPart;
import java.util.List;
import org.junit.jupiter.api.Test;

class SolidTest {
    private static final Region WIDE = Region.of(Rings.circle(20), Rings.hole(2));
    private static final Region NARROW = Region.of(Rings.circle(5), Rings.hole(2));

    @Test
    void a_stepped_cylinder_has_the_volume_and_inertia_of_its_steps() {
        Solid solid = Solid.of(6, WIDE).topped(12, NARROW);
        double volume = Math.PI * (6 * (400 - 4) + 12 * (25 - 4));
        // I = 1/2 m (R^2 + r^2) of each hollow cylinder.
        double inertia = Math.PI / 2 * (6 * (160000 - 16) + 12 * (625 - 16)) * 1e-15 * 1240;
        assertThat(solid.volume()).isCloseTo(volume, within(volume * 1e-12));
        assertThat(solid.mass(1240)).isCloseTo(volume * 1240e-9, within(1e-12));
        assertThat(solid.inertia(1240)).isCloseTo(inertia, within(inertia * 1e-12));
        assertThat(solid.height()).isEqualTo(18);
        assertThat(solid.box()).isEqualTo(new Box(-20, -20, 20, 20));
    }

    @Test
    void a_solid_weighs_what_the_same_layers_of_a_gear_weigh() {
        Outline outline = WIDE.outlines().get(0);
        PrintedPart layers = new PrintedPart(List.of(new PrintedPart.Layer(outline, 3, 1240)));
        Solid solid = Solid.of(3, WIDE);
        assertThat(solid.mass(1240)).isEqualTo(layers.mass(), within(1e-15));
        assertThat(solid.inertia(1240)).isEqualTo(layers.inertia(), within(1e-18));
    }

    @Test
    void a_slab_without_height_is_refused() {
        assertThatThrownBy(() -> Solid.of(0, WIDE)).hasMessageContaining("must be above 0 mm");
    }

    @Test
    void a_gap_between_slabs_is_refused() {
        List<Slab> gap = List.of(new Slab(0, 1, WIDE), new Slab(2, 3, WIDE));
        assertThatThrownBy(() -> new Solid(gap)).hasMessageContaining("must begin at 1.0 mm");
        assertThatThrownBy(() -> new Solid(List.of(new Slab(1, 2, WIDE)))).hasMessageContaining("begin at 0.0 mm");
    }

    @Test
    void a_solid_fits_a_bed_either_way_round() {
        Box box = new Box(0, 0, 30, 10);
        assertThat(box.fits(30, 10)).isTrue();
        assertThat(box.fits(10, 30)).isTrue();
        assertThat(box.fits(29, 29)).isFalse();
    }
}
