// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.search;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import drumfall.solver.brief.Brief;
import drumfall.solver.rating.Rating;
import drumfall.solver.rating.TrainRater;
import drumfall.solver.samples.Briefs;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** A front that would hold too many trains is the front of the same brief in larger steps, and says so. */
class FrontThinningTest {
    private static final int MOST = 12;

    /** Steps far finer than anybody prints, so that the front is long; few counts, so that it is quickly found. */
    private static final String FINE = "/teeth/wheelTeeth = {\"from\": 48, \"to\": 72} & /teeth/leaves/to = 9"
            + " & /teeth/modules = [\"1 mm\"] & /train/above/to = 1 & /train/below = {\"from\": 2, \"to\": 2}"
            + " & /beat/pendulumLength = {\"from\": \"0.2 m\", \"to\": \"1 m\"}"
            + " & /weight/limit = \"20 kg\" & /line/ratedLoad = \"2000 N\" & /material/allowable = \"100 MPa\""
            + " & /frame/arrangement = \"unplaced\" & /objectives = ["
            + "{\"figure\": \"recommended-weight\", \"resolution\": \"1 g\"},"
            + " {\"figure\": \"filament-mass\", \"resolution\": \"0.1 g\"},"
            + " {\"figure\": \"largest-wheel\", \"resolution\": \"0.1 mm\"}]";

    private static final class Searched {
        static final Brief BRIEF = Briefs.demoWith(FINE);
        static final SearchOutcome WHOLE = run(BRIEF, SearchSettings.MOST_TRAINS);
        static final SearchOutcome THINNED = run(BRIEF, MOST);
    }

    @Test
    void a_front_within_the_limit_is_told_apart_as_the_brief_asks() {
        assertThat(Searched.WHOLE.front().size()).isGreaterThan(MOST);
        assertThat(Searched.WHOLE.stepsTimes()).isEqualTo(1);
        assertThat(Searched.WHOLE.searched(Searched.BRIEF)).isEqualTo(Searched.BRIEF);
    }

    @Test
    void a_front_beyond_the_limit_is_that_of_the_brief_with_the_first_doubled_steps_that_keep_to_it() {
        int times = Searched.THINNED.stepsTimes();

        assertThat(times).isGreaterThan(1).isEqualTo(Integer.highestOneBit(times));
        assertThat(Searched.THINNED).isInstanceOf(SearchOutcome.Proved.class);
        assertThat(Searched.THINNED.front().size()).isBetween(1, MOST);
        assertThat(trains(Searched.THINNED))
                .isEqualTo(trains(run(Searched.BRIEF.inSteps(times), SearchSettings.MOST_TRAINS)));
        assertThat(run(Searched.BRIEF.inSteps(times / 2), SearchSettings.MOST_TRAINS)
                        .front()
                        .size())
                .isGreaterThan(MOST);
    }

    @Test
    void its_trains_are_rated_by_the_brief_as_it_is() {
        TrainRater rater = new TrainRater(Searched.BRIEF);
        assertThat(Searched.THINNED.front())
                .allSatisfy(rating -> assertThat(rating).isEqualTo(rater.rate(rating.train())));
    }

    @Test
    void no_train_of_the_whole_front_is_better_by_more_than_a_larger_step() {
        Brief coarse = Searched.THINNED.searched(Searched.BRIEF);
        for (Rating rating : Searched.WHOLE.front()) {
            Rating told = rating.toldApart(coarse.objectives());
            assertThat(Searched.THINNED.front())
                    .map(option -> option.toldApart(coarse.objectives()).cell())
                    .anyMatch(cell -> cell.equals(told.cell()) || cell.dominates(told.cell()));
        }
    }

    @Test
    void the_way_there_is_told_of_in_steps_doubled_each_time_and_its_trains_rated_by_the_brief() {
        TrainRater rater = new TrainRater(Searched.BRIEF);
        List<Rating> told = new ArrayList<>();
        Set<Integer> times = new LinkedHashSet<>();
        SearchListener listener = new SearchListener() {
            @Override
            public void frontChanged(List<Rating> front) {
                told.addAll(front);
            }

            @Override
            public void progressed(SearchProgress progress) {
                times.add(progress.stepsTimes());
            }
        };
        TrainSearch.run(Searched.BRIEF, listener, () -> false, SearchSettings.USUAL.thinnedAbove(MOST));
        assertThat(times)
                .containsExactlyElementsOf(
                        Stream.iterate(1, last -> last <= Searched.THINNED.stepsTimes(), last -> 2 * last)
                                .toList());
        assertThat(told).isNotEmpty();
        assertThat(told.stream().distinct())
                .allSatisfy(rating -> assertThat(rating).isEqualTo(rater.rate(rating.train())));
    }

    @Test
    void a_front_that_is_searched_in_less_and_less_room_is_thinned_alike() {
        Brief brief = Briefs.demoWith(FINE.replace("unplaced", "upright")
                + " & /frame/least = {\"figure\": \"movement-height\", \"resolution\": \"5 mm\"}");
        SearchOutcome thinned = run(brief, MOST);

        assertThat(thinned.stepsTimes()).isGreaterThan(1);
        assertThat(thinned.front().size()).isBetween(1, MOST);
        SearchOutcome coarse = run(brief.inSteps(thinned.stepsTimes()), SearchSettings.MOST_TRAINS);
        assertThat(trains(thinned)).isEqualTo(trains(coarse));
        assertThat(thinned.front())
                .map(rating -> rating.cell().numbers().get(3))
                .isEqualTo(coarse.front().stream()
                        .map(rating -> rating.cell().numbers().get(3))
                        .toList());
    }

    @Test
    void whole_counts_are_never_told_apart_more_coarsely() {
        Brief counted = Briefs.demoWith(FINE.replace(
                "{\"figure\": \"largest-wheel\", \"resolution\": \"0.1 mm\"}", "{\"figure\": \"modules\"}"));
        assertThat(counted.inSteps(8).objectives().get(2))
                .isEqualTo(counted.objectives().get(2));
        assertThat(counted.inSteps(8)
                        .objectives()
                        .get(1)
                        .resolution()
                        .orElseThrow()
                        .text())
                .isEqualTo("0.0008 kg");
    }

    @Test
    void a_limit_that_no_steps_might_keep_is_refused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> SearchSettings.USUAL.thinnedAbove(9))
                .withMessageContaining("at least 10 trains, not 9");
        assertThat(SearchSettings.USUAL.thinnedAbove(10).mostTrains()).isEqualTo(10);
    }

    private static List<Object> trains(SearchOutcome outcome) {
        return outcome.front().stream().<Object>map(Rating::train).toList();
    }

    private static SearchOutcome run(Brief brief, int most) {
        return TrainSearch.run(brief, SearchListener.SILENT, () -> false, SearchSettings.USUAL.thinnedAbove(most));
    }
}
