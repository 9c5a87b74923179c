// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.layout.place;

import drumfall.solver.layout.LayoutNeed;
import drumfall.solver.layout.size.Face;
import drumfall.solver.layout.size.MotionSize;
import java.util.BitSet;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.BooleanSupplier;

/**
 * Keeps the orders of the planes found for movements that are alike along their arbors, as the trains of one brief mostly
 * are; may be shared between threads.
 */
public final class PlaneBook {
    private final Map<Question, Orders> known = new ConcurrentHashMap<>();

    /**
     * All that orders of the planes depend on.
     *
     * @param sizes between the plates
     * @param face on which side of the great wheel the drum stands
     * @param plate thickness of a plate, nm
     * @param motion the motion work
     * @param depth room over plates and motion work, nm
     * @param forbidden pairs of slots that must not meet
     * @param open pairs of slots that matter, those among them
     */
    record Question(
            PlaneSizes sizes,
            Face face,
            long plate,
            Optional<MotionSize> motion,
            long depth,
            BitSet forbidden,
            BitSet open) {}

    /** The orders for a movement; good for nothing once cancelled. */
    Orders orders(LayoutNeed need, PairClaims claims, BooleanSupplier cancelled) {
        Question question = new Question(
                PlaneSizes.of(need),
                need.parts().drum().face(),
                need.envelope().plateThickness(),
                need.parts().motion(),
                need.envelope().depth(),
                claims.forbidden(),
                claims.open());
        Orders before = known.get(question);
        if (before != null) {
            return before;
        }
        Orders found = new OrderList(question, cancelled).build();
        if (!cancelled.getAsBoolean()) {
            known.put(question, found);
        }
        return found;
    }
}
