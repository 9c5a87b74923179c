// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.explain;

import static org.assertj.core.api.Assertions.assertThat;

import drumfall.solver.brief.Brief;
import drumfall.solver.explain.Standing.Place;
import drumfall.solver.rating.Rating;
import drumfall.solver.samples.SmallBriefs;
import drumfall.solver.search.PlainLoops;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Every train of small briefs finds its place on the front, and each place means what it says. */
class StandingTest {
    @Test
    void every_train_misses_a_demand_or_is_listed_or_stood_for_or_beaten() {
        Set<Place> seen = EnumSet.noneOf(Place.class);
        for (Brief brief : SmallBriefs.some(5, 1)) {
            List<Rating> front = PlainLoops.front(brief);
            for (Rating rating : PlainLoops.all(brief)) {
                Standing standing = Standing.of(rating, front);
                seen.add(standing.place());
                means(standing, front);
                assertThat(standing.proved()).isEqualTo(standing);
            }
        }
        assertThat(seen).containsExactlyInAnyOrder(Place.MISSES, Place.LISTED, Place.STOOD_FOR, Place.BEATEN);
    }

    private static void means(Standing standing, List<Rating> front) {
        Rating rating = standing.rating();
        List<Rating> named =
                standing.options().stream().map(number -> front.get(number - 1)).toList();
        switch (standing.place()) {
            case MISSES -> assertThat(rating.feasible()).isFalse();
            case LISTED -> assertThat(named).extracting(Rating::train).containsExactly(rating.train());
            case STOOD_FOR -> assertThat(named).extracting(Rating::cell).containsExactly(rating.cell());
            case BEATEN ->
                assertThat(named).isNotEmpty().allMatch(option -> option.cell().dominates(rating.cell()));
            default -> throw new AssertionError("The front is complete, so it beats every other train.");
        }
    }

    @Test
    void a_train_that_an_unfinished_front_does_not_beat_is_said_to_be_so_far() {
        Brief brief = SmallBriefs.some(20, 1).stream()
                .filter(candidate -> !PlainLoops.none(candidate))
                .findFirst()
                .orElseThrow();

        Standing standing = Standing.of(PlainLoops.front(brief).get(0), List.of());

        assertThat(standing.place()).isEqualTo(Place.NOT_BEATEN_SO_FAR);
        assertThat(standing.options()).isEmpty();
        // A complete front is without it only if its arbors have no places.
        assertThat(standing.proved().place()).isEqualTo(Place.NO_PLACES);
    }
}
