// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.ratio;

import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import org.apache.commons.numbers.fraction.BigFraction;

/** The nearest distinct ratios so far, each with the products of teeth and leaves that gave it. */
final class BestRatios {
    /**
     * Margin of the quick comparison, in units in the last place.
     *
     * <p>Both products and the target are each rounded once to a double, and so are their quotient and its difference from
     * the target: together less than 5 units in the last place of the larger of quotient and target.
     */
    private static final double MARGIN = 8;

    /** A ratio's products; {@code moreProducts} tells that some were left out. */
    static final class Found {
        private final List<long[]> products = new ArrayList<>();
        private boolean moreProducts;

        private void add(long toothProduct, long leafProduct, int most) {
            if (products.size() == most) {
                moreProducts = true;
            } else {
                products.add(new long[] {toothProduct, leafProduct});
            }
        }

        /** Pairs of a product of teeth and a product of leaves, by rising product of leaves. */
        List<long[]> products() {
            return products;
        }

        boolean moreProducts() {
            return moreProducts;
        }
    }

    private final TreeMap<Approximation, Found> nearest = new TreeMap<>(Approximation.NEAREST_FIRST);
    private final RatioQuery query;
    private final double aim;
    private double limit = Double.POSITIVE_INFINITY;

    BestRatios(RatioQuery query) {
        this.query = query;
        this.aim = query.target().doubleValue();
    }

    /** False only where the ratio is certainly farther from the target than every ratio kept and no more are wanted. */
    boolean mayEnter(long toothProduct, long leafProduct) {
        double quotient = (double) toothProduct / leafProduct;
        double distance = Math.abs(quotient - aim);
        return distance - MARGIN * Math.ulp(Math.max(quotient, aim)) <= limit;
    }

    /** Keeps the ratio if it is among the nearest, compared exactly. */
    void offer(long toothProduct, long leafProduct) {
        Approximation offered = Approximation.of(BigFraction.of(toothProduct, leafProduct), query.target());
        nearest.computeIfAbsent(offered, approximation -> new Found())
                .add(toothProduct, leafProduct, query.trainsPerRatio());
        if (nearest.size() > query.wanted()) {
            nearest.pollLastEntry();
        }
        if (nearest.size() == query.wanted()) {
            limit = Math.nextUp(nearest.lastKey().distance().doubleValue());
        }
    }

    /** The ratios kept, the nearest first. */
    SortedMap<Approximation, Found> nearest() {
        return nearest;
    }
}
