// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.kit;

import drumfall.solver.brief.Brief;
import drumfall.solver.rating.Rating;
import java.util.List;
import java.util.Locale;

/**
 * A movement built one way.
 *
 * @param way how many rolling bearings it has
 * @param brief the brief with the bearings of this way
 * @param rating the train, rated against that brief
 * @param bearings arbor by arbor from the drum; arbors without any are left out
 */
public record Build(BuildWay way, Brief brief, Rating rating, List<BearingPlace> bearings) {
    /** Copies the list. */
    public Build {
        bearings = List.copyOf(bearings);
    }

    /** Number of rolling bearings. */
    public int bearingCount() {
        return bearings.stream().mapToInt(BearingPlace::count).sum();
    }

    /** Least running weight in the middle of all bands, kg; infinite if none drives it. */
    public double leastWeight() {
        return rating.weight().leastWeight();
    }

    /** The demands that it misses, such as {@code tooth bending above-1}; none if it meets the brief. */
    public List<String> missed() {
        return rating.missed()
                .map(missed -> (words(missed.demand().name()) + " " + missed.place()).strip())
                .toList();
    }

    private static String words(String name) {
        return name.toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}
