// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.presenter;

import drumfall.solver.layout.Layout;
import drumfall.solver.layout.Place;
import drumfall.solver.layout.Rule;
import drumfall.solver.layout.Shortfall;
import drumfall.solver.layout.check.LayoutCheck;
import drumfall.solver.layout.drag.Drag;
import drumfall.solver.layout.size.MovementParts;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * An arbor on its way along its arc, what it drives carried with it, and what clashes there before the rest is placed anew.
 *
 * @param drag where the arbor is held
 * @param wished where the maker wants it
 * @param carried the layout as drawn
 * @param faults what clashes in it
 */
public record PlacedDrag(Drag drag, Place wished, Layout carried, List<Shortfall> faults) {
    /** Copies the list. */
    public PlacedDrag {
        faults = List.copyOf(faults);
    }

    /**
     * Whether an arbor can be drawn: all of the going train but the centre arbor, and the minute arbor.
     *
     * @param parts what is placed
     * @param arbor its number
     */
    public static boolean canDraw(MovementParts parts, int arbor) {
        boolean going = arbor >= 0 && arbor <= parts.escapeArbor() && arbor != parts.centreArbor();
        return going || (parts.motion().isPresent() && arbor == parts.minuteArbor());
    }

    /**
     * The arbor about which another goes: its neighbour towards the dial centre.
     *
     * @param parts what is placed
     * @param arbor an arbor that can be drawn
     */
    public static int anchor(MovementParts parts, int arbor) {
        int centre = parts.centreArbor();
        if (arbor == parts.minuteArbor()) {
            return centre;
        }
        return arbor < centre ? arbor + 1 : arbor - 1;
    }

    /**
     * Draws an arbor towards a point.
     *
     * @param layout the layout before
     * @param arbor an arbor that can be drawn
     * @param wished where the maker wants it
     * @return nothing if no place on the arc is free
     */
    static Optional<PlacedDrag> towards(Layout layout, int arbor, Place wished) {
        return Drag.towards(layout, arbor, wished).map(drag -> {
            Layout carried = carried(layout, arbor, drag.place());
            List<Shortfall> faults = LayoutCheck.faults(carried).stream()
                    .filter(fault -> !isLock(fault.rule()))
                    .toList();
            return new PlacedDrag(drag, wished, carried, faults);
        });
    }

    /** Locks of what is carried along are the placer's to keep; they are no clash of parts. */
    private static boolean isLock(Rule rule) {
        return rule == Rule.LOCKED_PLACE || rule == Rule.LOCKED_DIRECTION;
    }

    private static Layout carried(Layout layout, int arbor, Place to) {
        MovementParts parts = layout.need().parts();
        Place step = to.minus(layout.place(arbor));
        List<Place> places = new ArrayList<>();
        for (int number = 0; number < parts.placeCount(); number++) {
            Place at = layout.place(number);
            places.add(follows(parts, arbor, number) ? at.plus(step) : at);
        }
        return new Layout(layout.need(), places, layout.frameCorner(), layout.planes());
    }

    private static boolean follows(MovementParts parts, int arbor, int number) {
        if (arbor == parts.minuteArbor() || number == parts.minuteArbor()) {
            return number == arbor;
        }
        return arbor < parts.centreArbor() ? number <= arbor : number >= arbor;
    }
}
