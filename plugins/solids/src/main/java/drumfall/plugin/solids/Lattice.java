// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.plugin.solids;

import drumfall.solver.making.solid.Box;
import drumfall.solver.making.solid.Slab;
import drumfall.solver.making.solid.Solid;
import drumfall.solver.teeth.outline.Point;
import org.locationtech.jts.geom.Coordinate;

/**
 * The grid that corners lie on: a power of two of a millimetre, 2<sup>-15</sup> (31 nm) unless the part is larger than
 * half a metre.
 *
 * <p>Coordinates are whole numbers of steps below 2<sup>24</sup>: a 32-bit float holds them exactly, and orientation tests
 * on them are exact in a double.
 *
 * @param step mm
 */
record Lattice(double step) {
    private static final int FINEST = -15;
    private static final int FLOAT_BITS = 24;

    /** The grid for a solid. */
    static Lattice of(Solid solid) {
        Box box = solid.box();
        double extent = Math.max(
                Math.max(Math.max(-box.left(), -box.bottom()), Math.max(box.right(), box.top())), solid.height());
        int exponent = Math.max(FINEST, Math.getExponent(extent) + 1 - FLOAT_BITS);
        return new Lattice(Math.scalb(1.0, exponent));
    }

    /** The nearest grid point, in steps. */
    Coordinate snapped(Point point) {
        return new Coordinate(Math.rint(point.x() / step), Math.rint(point.y() / step));
    }

    /**
     * The levels between slabs, in steps, from the bed up.
     *
     * @throws IllegalArgumentException if a slab is thinner than a step
     */
    double[] levels(Solid solid) {
        double[] levels = new double[solid.slabs().size() + 1];
        for (int i = 1; i < levels.length; i++) {
            Slab slab = solid.slabs().get(i - 1);
            levels[i] = Math.rint(slab.to() / step);
            if (levels[i] <= levels[i - 1]) {
                throw new IllegalArgumentException("The height (" + slab.height() + " mm) of a slab must be at least "
                        + step + " mm to be written. Maybe leave the slab out.");
            }
        }
        return levels;
    }
}
