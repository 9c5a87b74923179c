// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.making.part;

import drumfall.solver.making.solid.Region;
import drumfall.solver.making.solid.Solid;

/** A wheel of one thickness, on which a pinion or a pipe may be printed. */
public interface PlateWheel extends PrintedShape {
    /** Its section, mm. */
    Region section();

    /** Its thickness, m. */
    double thickness();

    /** Diameter of its bore as drawn, m. */
    double bore();

    /** Radius around the bore up to which it is solid, m: what stands on it finds ground there. */
    double solidRadius();

    /** What the printer can do. */
    PrintSizes print();

    @Override
    default Solid solid() {
        return Solid.of(Lengths.mm(thickness()), section());
    }
}
