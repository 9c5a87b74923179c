// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.fit.bore;

import drumfall.solver.fit.FitException;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;

/**
 * One way to carry the arbors of a movement: with fewer or more bearings.
 *
 * @param name such as {@code bearings at the drum only}
 * @param seatings one for each pivot, in the order given
 */
public record BuildVariant(String name, List<Seating> seatings) {
    /**
     * Copies the seatings.
     *
     * @throws FitException if the name is blank
     */
    public BuildVariant {
        FitException.requireName("a build variant", name);
        seatings = List.copyOf(seatings);
    }

    /**
     * Seats every pivot, in a bearing if its arbor is listed, else in a plain bore.
     *
     * @param name name of the variant
     * @param pivots all pivots
     * @param bearings the bearing for each arbor that gets some, at all its pivots
     * @param rules clearances and finish
     * @throws FitException if a listed arbor has no pivot, or a hole cannot be made
     */
    public static BuildVariant of(String name, List<Pivot> pivots, Map<String, Bearing> bearings, SeatingRules rules) {
        TreeSet<String> strangers = new TreeSet<>(bearings.keySet());
        pivots.forEach(pivot -> strangers.remove(pivot.arbor()));
        if (!strangers.isEmpty()) {
            String known = pivots.stream().map(Pivot::arbor).distinct().collect(Collectors.joining(", "));
            throw FitException.refused(
                    "arbor", strangers.first(), "build variant (" + name + ")", "have a pivot", "name one of " + known);
        }
        return new BuildVariant(
                name,
                pivots.stream().map(pivot -> seated(pivot, bearings, rules)).toList());
    }

    private static Seating seated(Pivot pivot, Map<String, Bearing> bearings, SeatingRules rules) {
        Bearing bearing = bearings.get(pivot.arbor());
        return bearing == null ? rules.plain(pivot) : rules.rolling(pivot, bearing);
    }

    /** How many bearings of each designation to buy, in the order of their names. */
    public Map<String, Long> bearingCounts() {
        return seatings.stream()
                .flatMap(seating -> seating.rolling().stream())
                .collect(Collectors.groupingBy(Bearing::name, TreeMap::new, Collectors.counting()));
    }

    /** The finishing drills to have at hand, each once, smallest first. */
    public List<Drill> drills() {
        return new DrillRack(seatings.stream()
                        .map(seating -> seating.hole().drill())
                        .distinct()
                        .toList())
                .drills();
    }
}
