// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.display;

import drumfall.solver.ratio.RatioTrain;
import java.util.Collections;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Drivers and followers between the arbor of the movement and the display, whatever their order.
 *
 * <p>A display slower than its arbor has pinions for drivers and wheels for followers; a faster one the other way about.
 *
 * @param driverCounts teeth of the drivers, the most first, one for each mesh
 * @param followerCounts teeth of the followers, the most first, one for each mesh
 */
public record DisplayTrain(List<Integer> driverCounts, List<Integer> followerCounts) {
    /**
     * Puts each list in order and checks the counts.
     *
     * @throws drumfall.solver.ratio.RatioException if the lists are empty, differ in length or hold a count below 1
     */
    public DisplayTrain {
        RatioTrain ordered = new RatioTrain(driverCounts, followerCounts);
        driverCounts = ordered.toothCounts();
        followerCounts = ordered.leafCounts();
    }

    static DisplayTrain of(RatioTrain train) {
        return new DisplayTrain(train.toothCounts(), train.leafCounts());
    }

    /** Turns of the display for one turn of the arbor, exact, without sign. */
    public BigFraction turns() {
        return new RatioTrain(driverCounts, followerCounts).ratio();
    }

    /** Whether the display turns against its arbor: each mesh reverses the turn, an idler too. */
    public boolean reverses() {
        return driverCounts.size() % 2 == 1;
    }

    /** The most teeth of any of its wheels. */
    public int largestCount() {
        return Math.max(Collections.max(driverCounts), Collections.max(followerCounts));
    }
}
