// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.fit.cutting;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * The linear programme of cutting patterns, its patterns made as they are wanted (P. C. Gilmore and R. E. Gomory, <i>A Linear
 * Programming Approach to the Cutting-Stock Problem</i>, Operations Research 9, 1961).
 *
 * <p>It is solved in floating point and gives two things, neither of which has to be trusted: patterns whose rounding down
 * starts a plan, and prices from which {@link #lowerBound} makes a bound in whole numbers.
 */
final class PriceProgramme {
    private static final long UNIT_PRICE = 100_000_000;
    private static final double WORTH_ENTERING = 1e-6;
    private static final double ZERO = 1e-9;
    private static final int MOST_ROUNDS = 500;

    private final PieceSizes sizes;
    private final int kinds;
    private final double[][] basis;
    private final List<int[]> patterns = new ArrayList<>();
    private double[] amounts;
    private long[] prices;
    private int bound;

    private PriceProgramme(PieceSizes sizes) {
        this.sizes = sizes;
        kinds = sizes.kinds();
        basis = new double[kinds][kinds];
        amounts = new double[kinds];
        prices = new long[kinds];
        for (int kind = 0; kind < kinds; kind++) {
            int[] alone = new int[kinds];
            alone[kind] = sizes.mostOnRod(kind);
            patterns.add(alone);
            put(kind, alone);
        }
        bound = sizes.lengthBound(sizes.demand());
    }

    /** Solves the programme, or stops after a counted number of rounds. */
    static PriceProgramme solved(PieceSizes sizes) {
        PriceProgramme programme = new PriceProgramme(sizes);
        int rounds = 0;
        while (rounds < MOST_ROUNDS && programme.improve()) {
            rounds++;
        }
        return programme;
    }

    /** Rods below which no plan goes, proven in whole numbers. */
    int lowerBound() {
        return bound;
    }

    /** The whole rods of the solution, rounded down, and never more than wanted. */
    List<int[]> wholeRods() {
        List<int[]> rods = new ArrayList<>();
        int[] left = sizes.demand();
        for (int place = 0; place < kinds; place++) {
            int[] pattern = patterns.get(place);
            for (int copy = 0; copy + 1 <= amounts[place] + ZERO && covered(pattern, left); copy++) {
                rods.add(pattern);
                take(left, pattern);
            }
        }
        return rods;
    }

    static void take(int[] left, int[] pattern) {
        for (int kind = 0; kind < left.length; kind++) {
            left[kind] -= pattern[kind];
        }
    }

    private static boolean covered(int[] pattern, int[] left) {
        for (int kind = 0; kind < left.length; kind++) {
            if (pattern[kind] > left[kind]) {
                return false;
            }
        }
        return true;
    }

    private boolean improve() {
        double[] wanted =
                sizes.wanted().stream().mapToDouble(Integer::doubleValue).toArray();
        amounts = LinearSystem.solve(basis, wanted);
        double[] ones = new double[kinds];
        Arrays.fill(ones, 1);
        double[] dual = LinearSystem.solve(LinearSystem.transposed(basis), ones);
        for (int kind = 0; kind < kinds; kind++) {
            prices[kind] = Math.max(0, Math.round(dual[kind] * UNIT_PRICE));
        }
        Optional<int[]> best = BestPattern.of(sizes, prices);
        if (best.isEmpty()) {
            return false;
        }
        long worth = BestPattern.worth(best.get(), prices);
        raiseBound(worth);
        return worth > UNIT_PRICE * (1 + WORTH_ENTERING) && enter(best.get());
    }

    /**
     * No pattern is worth more than {@code worth}, so all pieces together need {@code Σ price · wanted / worth} rods
     * (A. A. Farley, <i>A Note on Bounding a Class of Linear Programming Problems</i>, Operations Research 38, 1990).
     */
    private void raiseBound(long worth) {
        if (worth > 0) {
            long total = BestPattern.worth(sizes.demand(), prices);
            bound = Math.max(bound, Math.toIntExact((total + worth - 1) / worth));
        }
    }

    private boolean enter(int[] pattern) {
        double[] column = Arrays.stream(pattern).asDoubleStream().toArray();
        double[] share = LinearSystem.solve(basis, column);
        int leaving = -1;
        for (int place = 0; place < kinds; place++) {
            if (share[place] > ZERO
                    && (leaving < 0 || amounts[place] * share[leaving] < amounts[leaving] * share[place])) {
                leaving = place;
            }
        }
        if (leaving < 0) {
            return false;
        }
        patterns.set(leaving, pattern);
        put(leaving, pattern);
        return true;
    }

    private void put(int place, int[] pattern) {
        for (int kind = 0; kind < kinds; kind++) {
            basis[kind][place] = pattern[kind];
        }
    }
}
