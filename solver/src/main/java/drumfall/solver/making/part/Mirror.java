// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.making.part;

import drumfall.solver.teeth.outline.OutlineSegment;
import drumfall.solver.teeth.outline.Ring;

/** Rings seen from the other side. */
final class Mirror {
    private Mirror() {}

    /** The ring mirrored in the x axis, run in the sense it had. */
    static Ring of(Ring ring) {
        return new Ring(ring.segments().stream().map(OutlineSegment::mirrored).toList()).reversed();
    }
}
