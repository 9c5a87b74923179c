// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.explain;

import static org.assertj.core.api.Assertions.assertThat;

import drumfall.solver.brief.Brief;
import drumfall.solver.explain.Standing.Place;
import drumfall.solver.rating.Rating;
import drumfall.solver.samples.SmallBriefs;
import drumfall.solver.search.PlainLoops;
import drumfall.solver.train.Train;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Every train of small briefs finds its place on the front, and each place means what it says. */
class StandingTest {
    @Test
    void every_train_misses_a_demand_or_is_listed_or_stood_for_or_beaten() {
        Set<Place> seen = EnumSet.noneOf(Place.class);
        for (Brief brief : SmallBriefs.fewer(5, 1)) {
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

    /** A listed train taking three steps of room, held against it another one with the same objectives. */
    @ParameterizedTest
    @CsvSource({"2, NOT_BEATEN_SO_FAR", "3, STOOD_FOR", "4, BEATEN", ", STOOD_FOR"})
    void room_counts_where_it_is_known_of_the_train_held_against_the_front(Long room, Place place) {
        List<Rating> front = fronted();
        Rating other = like(front.get(0), front.get(1).train());

        Standing standing = Standing.of(
                room == null ? other : other.withRoom(room),
                List.of(front.get(0).withRoom(3)));

        assertThat(standing.place()).isEqualTo(place);
        assertThat(standing.options()).hasSize(place == Place.NOT_BEATEN_SO_FAR ? 0 : 1);
    }

    /** A search that is stopped lists trains with the room that was searched, which is no less than they take. */
    @Test
    void a_listed_train_is_known_again_whatever_room_it_is_listed_with() {
        Rating listed = fronted().get(0);
        assertThat(Standing.of(listed.withRoom(3), List.of(listed.withRoom(7))).place())
                .isEqualTo(Place.LISTED);
        assertThat(Standing.of(listed, List.of(listed.withRoom(7))).place()).isEqualTo(Place.LISTED);
    }

    private static List<Rating> fronted() {
        return Fronted.FRONT;
    }

    /** Found once. */
    private static final class Fronted {
        static final List<Rating> FRONT = SmallBriefs.fewer(20, 1).stream()
                .map(PlainLoops::front)
                .filter(front -> front.size() > 1)
                .findFirst()
                .orElseThrow();
    }

    /** Another train with the figures of a rating. */
    private static Rating like(Rating rating, Train train) {
        return new Rating(
                train,
                rating.demands(),
                rating.objectiveValues(),
                rating.cell(),
                rating.durationRoundedDown(),
                rating.weight(),
                rating.recommendedWeight(),
                rating.leastSmoothest(),
                rating.leastRoughest(),
                rating.pendulumLength(),
                rating.filamentMass());
    }

    @Test
    void a_train_that_an_unfinished_front_does_not_beat_is_said_to_be_so_far() {
        Brief brief = SmallBriefs.fewer(20, 1).stream()
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
