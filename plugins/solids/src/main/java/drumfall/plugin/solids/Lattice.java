// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.plugin.solids;

import drumfall.solver.making.solid.Box;
import drumfall.solver.making.solid.Slab;
import drumfall.solver.making.solid.Solid;
import drumfall.solver.teeth.outline.Point;
import org.locationtech.jts.geom.Coordinate;

/**
 * The grid that corners of sections lie on: a power of two of a millimetre that divides the part's reach from the axis
 * into fewer than 2<sup>24</sup> steps, 8 nm for a reach of 64 to 128 mm.
 *
 * <p>A 32-bit float holds such coordinates exactly, and orientation tests
 * on them are exact in a double.
 *
 * @param step mm
 */
record Lattice(double step) {
    private static final int FLOAT_BITS = 24;

    /** The grid for a solid. */
    static Lattice of(Solid solid) {
        Box box = solid.box();
        double extent = Math.max(Math.max(-box.left(), -box.bottom()), Math.max(box.right(), box.top()));
        return new Lattice(Math.scalb(1.0, Math.getExponent(extent) + 1 - FLOAT_BITS));
    }

    /** The nearest grid point, in steps. */
    Coordinate snapped(Point point) {
        return new Coordinate(Math.rint(point.x() / step), Math.rint(point.y() / step));
    }

    /**
     * The levels between slabs, mm, from the bed up: the nearest floats, which no test has to be exact on.
     *
     * @throws IllegalArgumentException if a slab is so thin that its ends fall on one float
     */
    static float[] levels(Solid solid) {
        float[] levels = new float[solid.slabs().size() + 1];
        for (int i = 1; i < levels.length; i++) {
            Slab slab = solid.slabs().get(i - 1);
            levels[i] = (float) slab.to();
            if (levels[i] <= levels[i - 1]) {
                throw new IllegalArgumentException("The height (" + slab.height() + " mm) of a slab at " + slab.from()
                        + " mm must be a millionth of that to be written. Maybe leave the slab out.");
            }
        }
        return levels;
    }
}
