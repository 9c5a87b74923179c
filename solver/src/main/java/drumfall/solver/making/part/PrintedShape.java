// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.making.part;

import drumfall.solver.making.solid.Solid;

/** Something that can be printed in one piece. */
@FunctionalInterface
public interface PrintedShape {
    /** Its solid, millimetres, as it stands on the print bed. */
    Solid solid();
}
