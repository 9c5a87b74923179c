// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.fit.cutting;

import drumfall.solver.fit.FitException;
import drumfall.solver.fit.Nanometres;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * How to cut the arbors of a number of kits from stock rods.
 *
 * @param kits number of kits
 * @param kerf what a cut takes, nm
 * @param rods one plan for each diameter, thinnest first
 */
public record CuttingPlan(int kits, long kerf, List<RodPlan> rods) {
    private static final int MOST_KITS = 1000;
    private static final int MOST_PIECES = 20_000;

    /** Copies the plans. */
    public CuttingPlan {
        rods = List.copyOf(rods);
    }

    /**
     * Plans the cuts.
     *
     * @param stock one rod for each diameter in use
     * @param arbors arbors of one kit, at least one, with different names
     * @param kits 1 to 1000
     * @param kerf what a cut takes, nm, 0 to 10 mm
     * @throws FitException if a number is out of range, a diameter has no rod or two, a rod is shorter than an arbor, or there
     *     are more than 20 000 arbors of a diameter
     */
    public static CuttingPlan of(List<RodStock> stock, List<ArborPiece> arbors, int kits, long kerf) {
        FitException.requireCount("number of kits", "the cutting plan", kits, 1, MOST_KITS);
        FitException.requireLength("kerf", "the cutting plan", kerf, 0, 10 * Nanometres.MILLIMETRE);
        FitException.requireCount("number of arbors", "the cutting plan", arbors.size(), 1, MOST_PIECES);
        requireDifferentNames(arbors);
        Map<Long, RodStock> rods = byDiameter(stock);
        TreeMap<Long, List<ArborPiece>> pieces =
                arbors.stream().collect(Collectors.groupingBy(ArborPiece::diameter, TreeMap::new, Collectors.toList()));
        List<RodPlan> plans = new ArrayList<>();
        pieces.forEach((diameter, group) -> plans.add(planned(rods, diameter, group, kits, kerf)));
        return new CuttingPlan(kits, kerf, plans);
    }

    /** Whether every diameter's plan is proven to use the fewest rods. */
    public boolean provenLeast() {
        return rods.stream().allMatch(RodPlan::provenLeast);
    }

    private static RodPlan planned(
            Map<Long, RodStock> rods, long diameter, List<ArborPiece> arbors, int kits, long kerf) {
        RodStock rod = rods.get(diameter);
        if (rod == null) {
            String maybe = "add a stock rod of " + Nanometres.text(diameter);
            throw FitException.refused(
                    "diameter", Nanometres.text(diameter), named(arbors.get(0)), "have a stock rod", maybe);
        }
        arbors.forEach(arbor -> requireFits(rod, arbor));
        long count =
                arbors.stream().mapToLong(arbor -> (long) arbor.count() * kits).sum();
        FitException.requireCount("number of pieces", "the cutting plan", count, 1, MOST_PIECES);
        PieceSizes sizes = PieceSizes.of(rod, arbors, kits, kerf);
        RodSolution solution = RodSolver.solve(sizes);
        return new RodPlan(rod, NamedCuts.of(sizes, solution.patterns()), solution.lowerBound());
    }

    private static void requireFits(RodStock rod, ArborPiece arbor) {
        if (arbor.length() > rod.length()) {
            String rule = "be at least the length of %s, %s".formatted(named(arbor), Nanometres.text(arbor.length()));
            throw FitException.refused(
                    "length",
                    Nanometres.text(rod.length()),
                    "the stock rod of " + Nanometres.text(rod.diameter()),
                    rule,
                    "take a rod of " + Nanometres.text(arbor.length()));
        }
    }

    private static String named(ArborPiece arbor) {
        return "arbor (" + arbor.name() + ")";
    }

    private static void requireDifferentNames(List<ArborPiece> arbors) {
        SortedSet<String> names = new TreeSet<>();
        for (ArborPiece arbor : arbors) {
            if (!names.add(arbor.name())) {
                throw FitException.refused(
                        "name", arbor.name(), "an arbor", "be used once", "raise its count or rename it");
            }
        }
    }

    private static Map<Long, RodStock> byDiameter(List<RodStock> stock) {
        return stock.stream().collect(Collectors.toMap(RodStock::diameter, Function.identity(), (first, second) -> {
            throw FitException.refused(
                    "diameter",
                    Nanometres.text(first.diameter()),
                    "a stock rod",
                    "be listed once",
                    "keep the length of " + Nanometres.text(Math.max(first.length(), second.length())));
        }));
    }
}
