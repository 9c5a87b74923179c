// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.layout.check;

import drumfall.solver.layout.Layout;
import drumfall.solver.layout.Shortfall;
import java.util.ArrayList;
import java.util.List;

/** Names every demand that a layout violates. */
public final class LayoutCheck {
    private LayoutCheck() {}

    /**
     * The violated demands, the empty list for a sound layout.
     *
     * @param layout any layout, sound or not
     */
    public static List<Shortfall> faults(Layout layout) {
        List<Body> bodies = new BodyList(layout).all();
        List<Shortfall> faults = new ArrayList<>();
        new PlaceFaults(layout, faults).find();
        new PlaneFaults(layout, faults).find();
        new PairFaults(layout, bodies, faults).find();
        new HangFaults(layout, bodies, faults).find();
        new FrameFaults(layout, bodies, faults).find();
        return List.copyOf(faults);
    }

    /**
     * Whether a layout meets every demand.
     *
     * @param layout any layout
     */
    public static boolean accepts(Layout layout) {
        return faults(layout).isEmpty();
    }
}
