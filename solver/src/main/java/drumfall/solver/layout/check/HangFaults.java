// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.layout.check;

import drumfall.solver.layout.Layout;
import drumfall.solver.layout.Part;
import drumfall.solver.layout.PartKind;
import drumfall.solver.layout.Place;
import drumfall.solver.layout.Rule;
import drumfall.solver.layout.Shortfall;
import drumfall.solver.layout.size.HangingLine;
import java.util.List;

/** Parts in the way of the line or of the weight. */
final class HangFaults {
    private final Layout layout;
    private final HangingLine line;
    private final List<Body> bodies;
    private final List<Shortfall> faults;

    HangFaults(Layout layout, List<Body> bodies, List<Shortfall> faults) {
        this.layout = layout;
        this.line = layout.need().line();
        this.bodies = bodies;
        this.faults = faults;
    }

    void find() {
        for (long fall : layout.falls()) {
            for (Body body : bodies) {
                checkFall(body, fall);
            }
        }
        for (Body body : bodies) {
            checkWeight(body);
        }
    }

    /** A fall hangs as deep in the movement as the drum and starts at the height of the drum's axis. */
    private void checkFall(Body body, long fall) {
        boolean meets = body.meets(layout.planes().drum(), layout.need().gaps().spacing());
        if (body.arbor() != 0 && meets) {
            long across = body.place().x() - fall;
            long above = Math.max(0, body.place().y() - layout.place(0).y());
            check(PartKind.LINE, body, across, above, (line.diameter() + 1) / 2);
        }
    }

    /** The weight passes everything that hangs over its top, however deep in the movement. */
    private void checkWeight(Body body) {
        Place at = body.place();
        long across = Math.max(0, Math.abs(at.x() - layout.weightMiddle()) - (line.weightWidth() + 1) / 2);
        long above = Math.max(0, at.y() - layout.weightTop());
        check(PartKind.WEIGHT, body, across, above, 0);
    }

    private void check(PartKind hanging, Body body, long across, long above, long halfWidth) {
        long reach = body.radius() + halfWidth;
        long asked = layout.need().gaps().radial();
        if (Math.max(Math.abs(across), above) >= reach + asked) {
            return;
        }
        long squared = across * across + above * above;
        if (Distances.less(squared, reach + asked)) {
            long found = Distances.floorRoot(squared) - reach;
            faults.add(Shortfall.between(Rule.RADIAL_GAP, new Part(hanging, 0), body.part(), asked, found));
        }
    }
}
