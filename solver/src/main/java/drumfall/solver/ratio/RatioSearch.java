// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.ratio;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.BooleanSupplier;

/**
 * Finds the trains nearest to a target ratio, and proves that none within the bounds is nearer.
 *
 * <p>A train's ratio is a product of wheels T over a product of leaves L. The distinct T and the distinct L are listed and
 * sorted; for each L, rising, the T next to target·L is found by one pointer that only moves up, and T is walked from
 * there in both directions until it is certainly too far.
 *
 * <p>Why nothing is missed:
 *
 * <ol>
 *   <li>Every choice of wheels has its product among the T, and every choice of pinions its product among the L, because
 *       {@link CountProducts} enumerates all choices.
 *   <li>For a fixed L the distance |T/L − target| rises in each direction away from target·L. The walk ends at a T whose
 *       distance, computed in doubles and lowered by more than all their rounding, still passes the distance of the
 *       last ratio kept, rounded up. All T farther out are farther away too.
 *   <li>The distance of the last ratio kept only falls. So whatever a walk left out is strictly farther than every ratio
 *       of the final list, and any T and L of a ratio in the final list were offered when they were met.
 *   <li>What is offered is compared with exact fractions, so the order and the ties are exact.
 * </ol>
 *
 * <p>Where the pointer stands is decided in doubles and may be off by T that differ from target·L by rounding only; such T
 * are within the margin, so no walk ends on them.
 */
public final class RatioSearch {
    private static final int LEAF_PRODUCTS_BETWEEN_CHECKS = 1024;

    private final RatioQuery query;
    private final BooleanSupplier cancelled;
    private final BestRatios best;

    private RatioSearch(RatioQuery query, BooleanSupplier cancelled) {
        this.query = query;
        this.cancelled = cancelled;
        this.best = new BestRatios(query);
    }

    /**
     * Searches to the end or until cancelled.
     *
     * @param cancelled asked now and then, from the calling thread; true ends the search early with what was found so far,
     *     not proven
     */
    public static RatioOutcome search(RatioQuery query, BooleanSupplier cancelled) {
        return new RatioSearch(query, cancelled).search();
    }

    private RatioOutcome search() {
        if (cancelled.getAsBoolean()) {
            return new RatioOutcome(List.of(), false);
        }
        long[] toothProducts = new CountProducts(query.wheels(), query.meshCount()).distinct();
        long[] leafProducts = new CountProducts(query.leaves(), query.meshCount()).distinct();
        boolean proven = meet(toothProducts, leafProducts);
        List<RatioEntry> entries = best.nearest().entrySet().stream()
                .map(entry -> entry(entry, proven))
                .toList();
        return new RatioOutcome(entries, proven);
    }

    private boolean meet(long[] toothProducts, long[] leafProducts) {
        double aim = query.target().doubleValue();
        int above = 0;
        for (int index = 0; index < leafProducts.length; index++) {
            if (index % LEAF_PRODUCTS_BETWEEN_CHECKS == 0 && cancelled.getAsBoolean()) {
                return false;
            }
            long leafProduct = leafProducts[index];
            while (above < toothProducts.length && toothProducts[above] < aim * leafProduct) {
                above++;
            }
            walkUp(toothProducts, above, leafProduct);
            walkDown(toothProducts, above - 1, leafProduct);
        }
        return true;
    }

    private void walkUp(long[] toothProducts, int from, long leafProduct) {
        for (int at = from; at < toothProducts.length && best.mayEnter(toothProducts[at], leafProduct); at++) {
            best.offer(toothProducts[at], leafProduct);
        }
    }

    private void walkDown(long[] toothProducts, int from, long leafProduct) {
        for (int at = from; at >= 0 && best.mayEnter(toothProducts[at], leafProduct); at--) {
            best.offer(toothProducts[at], leafProduct);
        }
    }

    private RatioEntry entry(Map.Entry<Approximation, BestRatios.Found> found, boolean proven) {
        List<RatioTrain> trains = new ArrayList<>();
        boolean all = proven && !found.getValue().moreProducts();
        for (long[] products : found.getValue().products()) {
            all &= addTrains(products[0], products[1], trains);
        }
        return new RatioEntry(found.getKey(), trains, all);
    }

    /** Adds the trains of two products while there is room; false if some were left out. */
    private boolean addTrains(long toothProduct, long leafProduct, List<RatioTrain> trains) {
        List<List<Integer>> leafChoices = new CountProducts(query.leaves(), query.meshCount()).choicesFor(leafProduct);
        for (List<Integer> wheels : new CountProducts(query.wheels(), query.meshCount()).choicesFor(toothProduct)) {
            for (List<Integer> leaves : leafChoices) {
                if (trains.size() == query.trainsPerRatio()) {
                    return false;
                }
                trains.add(new RatioTrain(wheels, leaves));
            }
        }
        return true;
    }
}
