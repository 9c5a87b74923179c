// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.rating;

import drumfall.solver.quantity.Dimension;
import java.util.OptionalDouble;

/**
 * One demand and how a train stands to it.
 *
 * @param demand the demand
 * @param place the mesh, arbor or lock it speaks of, for example {@code above-1}; empty if it speaks of the whole train
 * @param figure the train's figure in SI units
 * @param from the least allowed, if there is such a limit
 * @param to the most allowed, if there is such a limit
 * @param met whether the train meets it, decided exactly where arithmetic is exact
 */
public record DemandFigure(
        Demand demand, String place, double figure, OptionalDouble from, OptionalDouble to, boolean met) {
    /** What figure and limits measure; of a lock it depends on what is held, a length or a count. */
    public Dimension dimension() {
        boolean heldLength = demand == Demand.LOCK
                && (place.endsWith(" diameter") || place.endsWith(" module") || place.endsWith(" distance"));
        return heldLength ? Dimension.LENGTH : demand.dimension();
    }

    static DemandFigure atLeast(Demand demand, String place, double figure, double from, boolean met) {
        return new DemandFigure(demand, place, figure, OptionalDouble.of(from), OptionalDouble.empty(), met);
    }

    static DemandFigure atMost(Demand demand, String place, double figure, double to, boolean met) {
        return new DemandFigure(demand, place, figure, OptionalDouble.empty(), OptionalDouble.of(to), met);
    }

    static DemandFigure between(Demand demand, String place, double figure, double from, double to, boolean met) {
        return new DemandFigure(demand, place, figure, OptionalDouble.of(from), OptionalDouble.of(to), met);
    }

    static DemandFigure oneOf(Demand demand, String place, double figure, boolean met) {
        return new DemandFigure(demand, place, figure, OptionalDouble.empty(), OptionalDouble.empty(), met);
    }
}
