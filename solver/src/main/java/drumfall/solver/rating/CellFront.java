// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.rating;

import drumfall.solver.brief.Objective;
import java.util.List;

/**
 * The non-dominated cells found so far, each with the train that stands for it by {@link TrainOrder}.
 *
 * <p>Not safe for use by several threads at once.
 */
public final class CellFront extends NonDominated<Rating> {
    /**
     * An empty front.
     *
     * @param objectives in the brief's order
     */
    public CellFront(List<Objective> objectives) {
        super(objectives, (first, second) -> TrainOrder.byCounts(first.train(), second.train()));
    }

    /**
     * Takes in a train unless another one is better or stands for its cell.
     *
     * @param rating of a train that meets every demand
     * @return whether the front changed
     */
    public boolean add(Rating rating) {
        double[] values =
                rating.objectiveValues().stream().mapToDouble(value -> value).toArray();
        return add(values, rating.recommendedWeight(), rating);
    }

    /** The trains of the front, first objective first. */
    public List<Rating> ratings() {
        return items();
    }
}
