// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.rating.placing;

import drumfall.solver.layout.Layout;
import drumfall.solver.layout.LayoutOutcome.Merit;
import drumfall.solver.layout.LayoutOutcome.Scope;
import drumfall.solver.layout.Shortfall;
import drumfall.solver.rating.Demand;
import java.util.Optional;

/** What came of placing a train's arbors. */
public sealed interface Placement {
    /** Where everything stands, if it has a place. */
    default Optional<Layout> found() {
        return this instanceof Placed placed ? Optional.of(placed.layout()) : Optional.empty();
    }

    /**
     * Every arbor has its place.
     *
     * @param layout where everything stands
     * @param merit how good it is among the possible ones
     */
    record Placed(Layout layout, Merit merit) implements Placement {}

    /**
     * There is no layout, which is proved.
     *
     * @param closest what the arrangement nearest to fitting lacked
     * @param scope how far the proof reaches
     */
    record NoPlace(Shortfall closest, Scope scope) implements Placement {}

    /**
     * The train lacks parts that are to be placed.
     *
     * @param lacking the demand it misses: {@link Demand#ARC} without an escapement, {@link Demand#TOOTH_SIZE} without
     *     teeth that print, be it in the motion work
     */
    record Undrawn(Demand lacking) implements Placement {}

    /** The work was cancelled before anything was known. */
    record Stopped() implements Placement {}
}
