// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.making.solid;

import java.util.ArrayList;
import java.util.List;

/**
 * A printed solid: slabs one on another, from the print bed at height 0 upwards; millimetres, the z axis the arbor's.
 *
 * @param slabs the slabs, each beginning where the one below it ends; at least one
 */
public record Solid(List<Slab> slabs) {
    private static final double CUBIC_METRES = 1e-9;
    private static final double SQUARE_METRES = 1e-6;

    /**
     * Checks that the slabs stand on each other.
     *
     * @throws IllegalArgumentException if there is none, the first does not lie on the bed, or there is a gap
     */
    public Solid {
        slabs = List.copyOf(slabs);
        if (slabs.isEmpty()) {
            throw new IllegalArgumentException("The slabs (none) of a solid must be at least one. Maybe add one.");
        }
        double height = 0;
        for (Slab slab : slabs) {
            if (slab.from() != height) {
                throw new IllegalArgumentException("The slab (from " + slab.from() + " mm) of a solid must begin at "
                        + height + " mm, where the one below it ends. Maybe stack them with topped.");
            }
            height = slab.to();
        }
    }

    /**
     * A solid of one slab.
     *
     * @param height mm, more than 0
     * @param region its section
     */
    public static Solid of(double height, Region region) {
        return new Solid(List.of(new Slab(0, height, region)));
    }

    /**
     * This solid with another slab on top.
     *
     * @param height of the slab, mm, more than 0
     * @param region its section
     */
    public Solid topped(double height, Region region) {
        List<Slab> more = new ArrayList<>(slabs);
        more.add(new Slab(height(), height() + height, region));
        return new Solid(more);
    }

    /** The height over all slabs, mm. */
    public double height() {
        return slabs.get(slabs.size() - 1).to();
    }

    /** The volume, cubic mm. */
    public double volume() {
        return slabs.stream().mapToDouble(Slab::volume).sum();
    }

    /**
     * The mass, kg.
     *
     * @param density kg/m&sup3; as printed, positive
     */
    public double mass(double density) {
        return volume() * CUBIC_METRES * density;
    }

    /**
     * The moment of inertia about the z axis, kg m&sup2;.
     *
     * @param density kg/m&sup3; as printed, positive
     */
    public double inertia(double density) {
        return slabs.stream()
                        .mapToDouble(slab -> slab.region().moments().polar() * slab.height())
                        .sum()
                * CUBIC_METRES
                * SQUARE_METRES
                * density;
    }

    /** What it covers of the print bed, mm. */
    public Box box() {
        return slabs.stream().map(slab -> slab.region().box()).reduce(Box::with).orElseThrow();
    }
}
