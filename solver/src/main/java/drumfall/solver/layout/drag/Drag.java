// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.layout.drag;

import drumfall.solver.layout.DirectionLock;
import drumfall.solver.layout.Layout;
import drumfall.solver.layout.LayoutOutcome;
import drumfall.solver.layout.Locks;
import drumfall.solver.layout.Place;
import drumfall.solver.layout.place.Placer;
import drumfall.solver.layout.size.MovementParts;
import java.util.Optional;
import java.util.function.BooleanSupplier;

/**
 * An arbor drawn to a place along its arc.
 *
 * @param from the layout before
 * @param arbor the arbor that is drawn
 * @param place where it comes to stand
 * @param lock the direction that holds it there
 */
public record Drag(Layout from, int arbor, Place place, DirectionLock lock) {
    /**
     * Draws an arbor as near as its arc allows to a wished point.
     *
     * @param layout the layout as it is
     * @param arbor an arbor of the going train other than the centre arbor, or the minute arbor
     * @param wished where the maker wants it
     * @return nothing if no place on the arc is free
     * @throws IllegalArgumentException if the arbor cannot be drawn: the centre arbor, whose place is the dial centre, and
     *     the pallet arbor, which follows the escape arbor
     */
    public static Optional<Drag> towards(Layout layout, int arbor, Place wished) {
        Arc arc = Arc.of(layout, arbor);
        return new FreeArc(layout, arc)
                .nearest(wished)
                .map(angle -> new Drag(layout, arbor, arc.at(angle), arc.lock(angle)));
    }

    /**
     * The locks under which the rest is placed anew: those of the need, the drawn mesh, and the meshes between it and the
     * dial centre as they stand.
     */
    public Locks locks() {
        MovementParts parts = from.need().parts();
        Locks locks = from.need().locks().withoutPlaceOf(arbor);
        int centre = parts.centreArbor();
        if (arbor <= parts.escapeArbor()) {
            for (int mesh = Math.min(arbor + 1, centre); mesh < Math.max(arbor - 1, centre); mesh++) {
                locks = locks.with(new DirectionLock(mesh, from.direction(mesh)));
            }
        }
        return locks.with(lock);
    }

    /**
     * Places everything else anew.
     *
     * @param cancelled asked now and then; true ends the work
     */
    public LayoutOutcome resolve(BooleanSupplier cancelled) {
        return Placer.place(from.need().with(locks()), cancelled);
    }
}
