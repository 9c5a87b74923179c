// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.plugin.lists;

import drumfall.solver.kit.BearingPlace;
import drumfall.solver.kit.Build;
import drumfall.solver.kit.Builds;
import java.util.List;
import java.util.stream.Collectors;

/** The same train with fewer or more rolling bearings. */
final class BuildTable {
    private BuildTable() {}

    static Table of(Builds builds) {
        return new Table(
                "builds",
                "Fewer or more bearings",
                "The same train, weighed anew each way. Least weights are predictions from the brief's friction and the drag"
                        + " of the grease, not measurements. Change the weight in small steps, with nothing and nobody"
                        + " under it.",
                List.of(
                        "build",
                        "bearings",
                        "least_weight_kg",
                        "least_of_a_smooth_clock_kg",
                        "least_of_a_rough_clock_kg",
                        "recommended_weight_kg",
                        "misses of the brief",
                        "where"),
                builds.all().stream().map(BuildTable::row).toList());
    }

    private static List<String> row(Build build) {
        return List.of(
                build.way().title(),
                Integer.toString(build.bearingCount()),
                kilograms(build.leastWeight()),
                kilograms(build.rating().leastSmoothest()),
                kilograms(build.rating().leastRoughest()),
                kilograms(build.rating().recommendedWeight()),
                String.join("; ", build.missed()),
                build.bearings().stream().map(BuildTable::place).collect(Collectors.joining("; ")));
    }

    private static String kilograms(double mass) {
        return Double.isFinite(mass) ? KitTables.fixed(mass, 3) : "none drives it";
    }

    private static String place(BearingPlace place) {
        return place.count() + " on arbor " + place.arbor() + ": " + place.size() + ", " + place.seating();
    }
}
