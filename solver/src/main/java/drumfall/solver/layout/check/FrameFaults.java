// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.layout.check;

import drumfall.solver.layout.Box;
import drumfall.solver.layout.Layout;
import drumfall.solver.layout.Part;
import drumfall.solver.layout.PartKind;
import drumfall.solver.layout.Rule;
import drumfall.solver.layout.Shortfall;
import java.util.List;

/** Parts that stand out of the frame. */
final class FrameFaults {
    private final Layout layout;
    private final Box frame;
    private final List<Body> bodies;
    private final List<Shortfall> faults;

    FrameFaults(Layout layout, List<Body> bodies, List<Shortfall> faults) {
        this.layout = layout;
        this.frame = layout.frame();
        this.bodies = bodies;
        this.faults = faults;
    }

    void find() {
        for (Body body : bodies) {
            long across = sideGap(body.place().x(), body.radius());
            long up = Math.min(
                            body.place().y() - frame.bottom(),
                            frame.top() - body.place().y())
                    - body.radius();
            check(body.part(), Math.min(across, up));
        }
        for (long fall : layout.falls()) {
            long half = (layout.need().line().diameter() + 1) / 2;
            check(new Part(PartKind.LINE, 0), sideGap(fall, half));
        }
    }

    private long sideGap(long x, long radius) {
        return Math.min(x - frame.left(), frame.right() - x) - radius;
    }

    private void check(Part part, long gap) {
        if (gap < 0) {
            faults.add(Shortfall.of(Rule.FRAME_EDGE, part, 0, gap));
        }
    }
}
