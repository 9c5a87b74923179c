// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.layout.check;

import drumfall.solver.layout.Part;
import drumfall.solver.layout.PartKind;
import drumfall.solver.layout.Place;
import drumfall.solver.layout.Span;

/** A round part as the check sees it; radius in nm, arbor -1 for a pillar. */
record Body(PartKind kind, int arbor, int number, Place place, long radius, Span span) {
    static Body onArbor(PartKind kind, int arbor, Place place, long radius, Span span) {
        return new Body(kind, arbor, arbor, place, radius, span);
    }

    static Body pillar(int corner, Place place, long radius, Span span) {
        return new Body(PartKind.PILLAR, -1, corner, place, radius, span);
    }

    Part part() {
        return new Part(kind, number);
    }

    boolean is(PartKind asked, int onArbor) {
        return kind == asked && arbor == onArbor;
    }

    boolean meets(Span other, long spacing) {
        return span.gapTo(other) < spacing;
    }
}
