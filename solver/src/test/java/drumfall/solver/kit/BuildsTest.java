// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.kit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import drumfall.solver.brief.Brief;
import drumfall.solver.fit.FitException;
import drumfall.solver.layout.Layout;
import drumfall.solver.making.MovementParts;
import drumfall.solver.rating.Rating;
import drumfall.solver.rating.TrainRater;
import drumfall.solver.rating.placing.TrainPlacing;
import drumfall.solver.samples.Briefs;
import drumfall.solver.samples.DemoTrain;
import drumfall.solver.samples.Trains;
import drumfall.solver.train.Train;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The demonstration's train with fewer or more rolling bearings. Its brief has two, on the drum arbor; arbors 3 and 4 are
 * the intermediate ones.
 */
class BuildsTest {
    private static final Train TRAIN = DemoTrain.train();
    private static final Train PLACED = Trains.of("85/10 m1.5 | 66/12 m1.5 · 83/12 m1 · 55/12 m1 · E21", "36", 2);
    private static final List<String> ROLES = List.of("drum", "intermediate", "centre", "escape");

    /** Thinner hubs than the demonstration's, with which the train meets its brief. */
    private static Brief brief(String edits) {
        return Briefs.demoWith("/parts/hubWall = \"0 mm\" & " + edits);
    }

    private static Builds builds(String edits) {
        return Builds.of(new TrainRater(brief(edits)), TRAIN, Optional.empty());
    }

    private static String drag(String drag) {
        return "/arbors/bearing/drag = \"" + drag + "\"";
    }

    /** Two bearings on the named arbors and none on the others, written into the brief as a maker would. */
    private static String only(List<String> rolling) {
        return ROLES.stream()
                .map(role -> "/arbors/" + role + "/bearings = " + (rolling.contains(role) ? "\"both\"" : "\"none\""))
                .collect(Collectors.joining(" & "));
    }

    private static double least(String edits, List<String> rolling) {
        return new TrainRater(brief(edits + " & " + only(rolling)))
                .rate(TRAIN)
                .weight()
                .leastWeight();
    }

    private static List<String> and(List<String> roles, String other) {
        return Stream.concat(roles.stream(), Stream.of(other)).toList();
    }

    private static List<Integer> arbors(List<BearingPlace> places) {
        return places.stream().map(BearingPlace::arbor).toList();
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "/arbors/drum/bearings = \"front\"", "/arbors/escape/bearings = \"both\""})
    void the_briefs_own_way_has_exactly_the_figures_of_its_rating(String edits) {
        assertThat(builds(edits).build(BuildWay.AS_GIVEN).rating()).isEqualTo(new TrainRater(brief(edits)).rate(TRAIN));
    }

    // Five arbors from the drum to the escape wheel with two supports each.
    @ParameterizedTest
    @CsvSource({"PLAIN, '', 0", "EVERYWHERE, drum intermediate centre escape, 10"})
    void a_way_has_exactly_the_figures_of_a_brief_that_asks_for_it(BuildWay way, String rolling, int bearings) {
        Brief asked = brief(only(Arrays.asList(rolling.split(" "))));
        Build build = builds("").build(way);

        assertThat(build.brief()).isEqualTo(asked);
        assertThat(build.rating()).isEqualTo(new TrainRater(asked).rate(TRAIN));
        assertThat(build.bearingCount()).isEqualTo(bearings);
    }

    // A ball bearing without grease runs at a coefficient of 0.001 to 0.0015 of its bore radius (JTEKT/Koyo, Ball and
    // Roller Bearings, table 8-1), a bore in plastic at a hundred times that.
    @ParameterizedTest
    @ValueSource(strings = {"drum", "intermediate", "centre", "escape"})
    void a_bearing_washed_dry_saves_weight_on_every_loaded_arbor(String role) {
        Build plain = builds(drag("0 N mm")).build(BuildWay.PLAIN);

        assertThat(least(drag("0 N mm"), List.of(role))).isLessThan(plain.leastWeight());
    }

    // The escape arbor gives all that the pendulum takes in, and it is little.
    @Test
    void grease_that_costs_a_light_arbor_more_than_rolling_saves_keeps_its_bearings_away() {
        Builds dry = builds(drag("0 N mm"));
        Builds greased = builds(drag("0.02 N mm"));
        int escape = TRAIN.meshes().size() + 1;

        assertThat(least(drag("0.02 N mm"), List.of("escape")))
                .isGreaterThan(greased.build(BuildWay.PLAIN).leastWeight());
        assertThat(arbors(dry.build(BuildWay.RECOMMENDED).bearings())).contains(escape);
        assertThat(arbors(greased.build(BuildWay.RECOMMENDED).bearings())).doesNotContain(escape);
        assertThat(greased.build(BuildWay.EVERYWHERE).leastWeight())
                .isGreaterThan(greased.build(BuildWay.RECOMMENDED).leastWeight());
    }

    // Against a plain loop over written briefs: arbor after arbor, each the lightest, while it saves one in a hundred.
    @ParameterizedTest
    @ValueSource(strings = {"0 N mm", "0.02 N mm", "0.2 N mm", "2 N mm", "20 N mm"})
    void bearings_are_recommended_where_they_save_most_and_nowhere_else(String drag) {
        List<String> taken = new ArrayList<>();
        double least = least(drag(drag), taken);
        boolean saves = true;
        while (saves && taken.size() < ROLES.size()) {
            String best = ROLES.stream()
                    .filter(role -> !taken.contains(role))
                    .min(Comparator.comparingDouble(role -> least(drag(drag), and(taken, role))))
                    .orElseThrow();
            double after = least(drag(drag), and(taken, best));
            saves = 1 - after / least >= 0.01;
            if (saves) {
                taken.add(best);
                least = after;
            }
        }
        Build recommended = builds(drag(drag)).build(BuildWay.RECOMMENDED);

        assertThat(recommended.brief()).isEqualTo(brief(drag(drag) + " & " + only(taken)));
        assertThat(recommended.leastWeight()).isEqualTo(least);
    }

    // A rod of 15 mm radius at a coefficient of 0.31, the middle of 0.12 and 0.5, resists at an arm of 4.65 mm what
    // drives its pinion of 8 leaves of module 1 at an arm of 4 mm.
    @Test
    void where_no_weight_drives_it_in_plain_bores_the_arbor_that_holds_it_gets_its_bearings_first() {
        Builds stuck = builds("/arbors/centre/diameter = \"30 mm\" & /friction/bores/high = \"0.5\"");

        assertThat(stuck.build(BuildWay.PLAIN).leastWeight()).isInfinite();
        assertThat(stuck.build(BuildWay.AS_GIVEN).leastWeight()).isInfinite();
        assertThat(stuck.build(BuildWay.RECOMMENDED).leastWeight()).isFinite();
        assertThat(arbors(stuck.recommended())).contains(2);
    }

    // As above, and 4.65 mm are also more than the arms of the intermediate pinions, of 9, 10 or 8 leaves of module 1,
    // once
    // the force on the wheel is added to that on the pinion.
    @Test
    void where_arbors_of_two_roles_hold_it_both_get_bearings() {
        String thick = "/arbors/centre/diameter = \"30 mm\" & /arbors/intermediate/diameter = \"30 mm\""
                + " & /friction/bores/high = \"0.5\"";
        Builds stuck = builds(thick);

        assertThat(ROLES)
                .allSatisfy(role -> assertThat(least(thick, List.of(role))).isInfinite());
        assertThat(stuck.build(BuildWay.RECOMMENDED).leastWeight()).isFinite();
        assertThat(arbors(stuck.recommended())).contains(2, 3, 4);
    }

    @Test
    void a_way_tells_which_demands_it_misses() {
        Builds builds = builds("");
        Build given = builds.build(BuildWay.AS_GIVEN);
        Build everywhere = builds.build(BuildWay.EVERYWHERE);
        double limit = everywhere.brief().weight().limit().si();

        assertThat(given.rating().recommendedWeight()).isLessThanOrEqualTo(limit);
        assertThat(given.missed()).isEmpty();
        assertThat(everywhere.rating().recommendedWeight()).isGreaterThan(limit);
        assertThat(everywhere.missed()).contains("weight limit", "tooth bending above-1");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "/arbors/drum/bearings = \"none\"; ''; 2",
                "/arbors/drum/bearings = \"front\"; 1; 1",
                "/arbors/drum/bearings = \"rear\"; 1; 1",
                "/arbors/drum/bearings = \"both\"; 2; ''",
            })
    void what_is_recommended_is_what_the_brief_does_not_ask_for(String edits, String needed, String besides) {
        Builds builds = builds(edits);

        assertThat(onDrum(builds.needed())).isEqualTo(needed);
        assertThat(onDrum(builds.recommended())).isEqualTo(besides);
    }

    private static String onDrum(List<BearingPlace> places) {
        return places.stream()
                .filter(place -> place.arbor() == 1)
                .map(place -> Integer.toString(place.count()))
                .collect(Collectors.joining());
    }

    // Outer ring 13 mm with no clearance: the 13 mm drill, 0.15 mm skim, 0.1 mm shrinkage, so drawn 12.95 mm; 5 mm are
    // 25 layers of 0.2 mm. No drill of either series reaches 99 mm.
    @Test
    void every_bearing_has_its_seat_or_the_reason_why_not() {
        List<BearingPlace> places = builds("/arbors/escape/kind = \"turning\""
                        + " & /arbors/escape/bearing = {\"outer\": \"99 mm\", \"width\": \"5 mm\"}")
                .build(BuildWay.EVERYWHERE)
                .bearings();

        assertThat(places.get(0).size()).isEqualTo("4 mm × 13 mm × 5 mm");
        assertThat(places.get(0).seating()).isEqualTo("seat drawn 12.95 mm, 5 mm deep");
        assertThat(places.get(1).size()).isEqualTo("bore 3 mm; the brief gives no size");
        assertThat(places.get(1).seating()).isEqualTo("seat unknown");
        assertThat(places.get(2).seating())
                .isEqualTo("in what turns on the rod, printed with a bore that runs on it and no seat");
        assertThat(places.get(4).seating()).contains("99 mm", "must be at most the largest drill");
    }

    // Outer ring 5 mm with no clearance: the 5 mm drill, 0.15 mm skim, 0.1 mm shrinkage; 1.5 mm are up to 1.6 mm in
    // layers.
    @Test
    void a_bearing_on_a_rod_that_stands_still_sits_in_what_turns_on_it() {
        String fixed = "/arbors/%s/kind = \"fixed\" & /arbors/%s/bearings = \"both\" & /arbors/%s/bearing ="
                + " {\"outer\": \"5 mm\", \"width\": \"1.5 mm\"}";
        List<BearingPlace> places = builds(fixed.replace("%s", "intermediate")).needed();

        assertThat(places.get(1).arbor()).isEqualTo(3);
        assertThat(places.get(1).seating()).isEqualTo("in what turns on the rod, seat drawn 4.95 mm, 1.6 mm deep");
    }

    private static Optional<String> refusal(TrainRater rater, Optional<Layout> layout) {
        try {
            return MovementParts.of(rater, rater.rate(PLACED), layout).parts().isEmpty()
                    ? Optional.of("no parts")
                    : Optional.empty();
        } catch (FitException refused) {
            return Optional.of(refused.getMessage());
        }
    }

    // A pinion of 12 leaves of module 1 has roots of less than 12 mm, an intermediate wheel's hub takes the seat.
    // Without
    // places pinions stand before their wheels; with places some stand behind.
    @ParameterizedTest
    @CsvSource({
        "both, 5 mm, 1.5 mm, true",
        "rear, 12 mm, 3 mm, true",
        "front, 12 mm, 3 mm, false",
        "both, 5 mm, 40 mm, false"
    })
    void the_list_names_a_hubs_seat_if_the_part_is_made_with_it_and_else_says_what_the_part_says(
            String ends, String outer, String width, boolean made) {
        TrainRater rater = new TrainRater(Briefs.demoWith("/arbors/intermediate/kind = \"fixed\""
                + " & /arbors/intermediate/bearings = \"" + ends + "\" & /arbors/intermediate/bearing = {\"outer\": \""
                + outer + "\", \"width\": \"" + width + "\"}"));
        Optional<Layout> placed =
                new TrainPlacing(rater).place(PLACED, () -> false).found();
        assertThat(placed).isPresent();
        assertThat(refusal(rater, Optional.empty()).isEmpty()).isEqualTo(made);
        for (Optional<Layout> layout : List.of(Optional.<Layout>empty(), placed)) {
            List<BearingPlace> hubs = Builds.of(rater, PLACED, layout).needed().stream()
                    .filter(place -> place.build().kind() == Brief.ArborKind.FIXED)
                    .toList();
            Optional<String> refusal = refusal(rater, layout);

            assertThat(arbors(hubs)).containsExactly(3, 4);
            assertThat(hubs.stream().flatMap(place -> place.unseated().stream()).findFirst())
                    .isEqualTo(refusal);
            assertThat(hubs)
                    .allSatisfy(place -> assertThat(place.seating())
                            .isEqualTo(place.unseated()
                                    .orElseGet(() -> "in what turns on the rod, seat drawn "
                                            + Shopping.millimetres(place.seat()
                                                    .orElseThrow()
                                                    .hole()
                                                    .drawn()) + " mm, "
                                            + Shopping.millimetres(place.seat()
                                                    .orElseThrow()
                                                    .depth()
                                                    .height()) + " mm deep")));
        }
    }

    // Two clocks at once, so that both columns of counts are told apart.
    @Test
    void the_shopping_list_tells_needed_and_recommended_bearings_apart() {
        TrainRater rater = new TrainRater(Briefs.demoWith("/fit/kits = 2"));
        Rating rating = rater.rate(TRAIN);
        Builds builds = Builds.of(rater, TRAIN, Optional.empty());
        List<Item> items = Kit.of(rater, rating, Optional.empty()).shopping();

        assertThat(named(items, "ball bearing"))
                .extracting(Item::size, Item::perClock, Item::forAll)
                .containsExactly(tuple("4 mm × 13 mm × 5 mm", "2", "4"));
        List<Item> besides = named(items, "ball bearing (recommended besides)");
        int recommended =
                builds.recommended().stream().mapToInt(BearingPlace::count).sum();
        assertThat(besides.stream()
                        .mapToInt(item -> Integer.parseInt(item.perClock()))
                        .sum())
                .isEqualTo(recommended)
                .isPositive();
        assertThat(besides)
                .allSatisfy(item -> assertThat(item.why())
                        .contains(String.format(
                                Locale.ROOT,
                                "least weight with the recommended bearings %.3f kg, as the brief says %.3f kg",
                                builds.build(BuildWay.RECOMMENDED).leastWeight(),
                                rating.weight().leastWeight())));
    }

    @Test
    void a_brief_with_bearings_everywhere_has_none_recommended_besides() {
        TrainRater rater = new TrainRater(Briefs.demoWith(only(ROLES)));
        List<Item> items = Kit.of(rater, rater.rate(TRAIN), Optional.empty()).shopping();

        assertThat(named(items, "ball bearing")).isNotEmpty();
        assertThat(named(items, "ball bearing (recommended besides)")).isEmpty();
    }

    private static List<Item> named(List<Item> items, String what) {
        return items.stream().filter(item -> item.what().equals(what)).toList();
    }
}
