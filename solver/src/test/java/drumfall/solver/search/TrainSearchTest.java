// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.search;

import static org.assertj.core.api.Assertions.assertThat;

import drumfall.solver.brief.Brief;
import drumfall.solver.rating.Demand;
import drumfall.solver.rating.Rating;
import drumfall.solver.samples.Briefs;
import drumfall.solver.samples.SmallBriefs;
import drumfall.solver.samples.Trains;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Outcomes of the search: proved, stopped, none; cancelling, streaming and repeating. */
class TrainSearchTest {
    /** A brief of a few thousand halves. */
    private static final String MIDDLING = "/teeth/wheelTeeth = {\"from\": 48, \"to\": 72} & /teeth/leaves/to = 9"
            + " & /teeth/modules = [\"1 mm\"] & /train/above/to = 1 & /train/below/to = 2"
            + " & /train/below/from = 2 & /beat/pendulumLength = {\"from\": \"0.2 m\", \"to\": \"1 m\"}"
            + " & /weight/limit = \"20 kg\" & /line/ratedLoad = \"2000 N\""
            + " & /material/allowable = \"100 MPa\"";

    /** Threads that ask at the same time, meshes to unwind, and single steps left: a few dozen questions. */
    private static final int FEW = 120;

    @Test
    void the_same_brief_gives_the_same_front_bit_for_bit() {
        List<Brief> briefs = Stream.concat(Stream.of(Briefs.demoWith(MIDDLING)), SmallBriefs.some(8, 4000).stream())
                .toList();
        for (Brief brief : briefs) {
            SearchOutcome first = run(brief);
            SearchOutcome second = run(brief);

            // Records compare every figure of every rating, doubles by their bits.
            assertThat(second).isEqualTo(first);
        }
        assertThat(run(briefs.get(0)).front()).hasSizeGreaterThan(3);
    }

    // On one fall a train of this brief weighs less, but its line would carry all of it: 300 N for eight times the load
    // are
    // 3.8 kg on one fall and 7.6 kg on two.
    @Test
    void a_lighter_train_that_breaks_its_line_does_not_stand_in_for_one_whose_line_carries() {
        String below =
                "{\"place\": {\"side\": \"below\", \"number\": %d}, \"wheel\": %d, \"leaves\": %d, \"module\": \"1 mm\"}";
        Brief brief = Briefs.demoWith("/frame/arrangement = \"unplaced\""
                + " & /teeth/wheelTeeth = {\"from\": 36, \"to\": 66} & /teeth/leaves = {\"from\": 11, \"to\": 12}"
                + " & /teeth/modules = [\"1 mm\", \"1.5 mm\"]"
                + " & /objectives = [{\"figure\": \"recommended-weight\", \"resolution\": \"1 g\"}]"
                + " & /locks = {\"meshesAbove\": 2, \"meshesBelow\": 3, \"escapeTeeth\": 21, \"meshes\": ["
                + String.join(", ", below.formatted(1, 64, 12), below.formatted(2, 66, 12), below.formatted(3, 65, 11))
                + "]}");

        assertThat(run(brief).front())
                .extracting(Rating::train)
                .containsExactly(Trains.of("43/12 m1.5 · 36/12 m1.5 | 64/12 m1 · 66/12 m1 · 65/11 m1 · E21", "46", 2));
    }

    // The time between two questions is measured by the bench; what can be counted is that few come after the answer.
    @Test
    void a_cancelled_search_asks_only_a_few_times_more() {
        Brief brief = Briefs.demoWith(MIDDLING);
        AtomicInteger all = new AtomicInteger();
        TrainSearch.run(brief, SearchListener.SILENT, () -> all.incrementAndGet() < 0);
        int stopped = 0;
        for (int point = 0; point < 30; point++) {
            int at = 1 + (int) ((long) all.get() * point / 31);
            AtomicInteger asked = new AtomicInteger();
            SearchOutcome outcome = TrainSearch.run(brief, SearchListener.SILENT, () -> asked.incrementAndGet() >= at);

            assertThat(asked.get() - at).isLessThan(FEW);
            assertThat(outcome).isInstanceOf(SearchOutcome.Stopped.class);
            assertThat(outcome.heading()).isEqualTo("stopped: may be incomplete");
            stopped += outcome.front().isEmpty() ? 0 : 1;
        }
        // Some were stopped with options in hand.
        assertThat(stopped).isPositive();
    }

    @Test
    void a_stopped_search_gives_only_trains_that_meet_the_brief() {
        Brief brief = Briefs.demoWith(MIDDLING);
        List<List<Rating>> streamed = new ArrayList<>();
        SearchListener listener = new SearchListener() {
            @Override
            public void frontChanged(List<Rating> front) {
                streamed.add(front);
            }
        };

        SearchOutcome outcome = TrainSearch.run(brief, listener, () -> streamed.size() >= 3);

        assertThat(outcome).isInstanceOf(SearchOutcome.Stopped.class);
        assertThat(outcome.front()).isNotEmpty().allMatch(Rating::feasible);
        assertThat(outcome.front()).isEqualTo(streamed.get(streamed.size() - 1));
    }

    @Test
    void the_front_streams_as_it_changes_and_ends_as_the_outcome() {
        List<List<Rating>> streamed = new ArrayList<>();
        List<SearchProgress> progress = new ArrayList<>();
        SearchListener listener = new SearchListener() {
            @Override
            public void frontChanged(List<Rating> front) {
                streamed.add(front);
            }

            @Override
            public void progressed(SearchProgress told) {
                progress.add(told);
            }
        };

        SearchOutcome outcome = TrainSearch.run(Briefs.demoWith(MIDDLING), listener, () -> false);

        assertThat(outcome).isInstanceOf(SearchOutcome.Proved.class);
        assertThat(outcome.heading()).isEqualTo("proved complete");
        assertThat(streamed).isNotEmpty();
        assertThat(streamed.get(streamed.size() - 1)).isEqualTo(outcome.front());
        assertThat(progress).allMatch(told -> told.done() >= 0 && told.done() <= 1);
        assertThat(progress)
                .extracting(SearchProgress::stage)
                .contains(SearchProgress.Stage.LISTING, SearchProgress.Stage.JOINING);
    }

    @Test
    void a_lock_that_leaves_nothing_is_named() {
        // Forty teeth, 3600 beats and eight leaves ask for a product of 48 · 60, and 56 teeth are the fewest.
        Brief brief = Briefs.demoWith(
                "/beat = {\"beatsPerHour\": {\"from\": \"3600\", \"to\": \"3600\"}, \"secondsHand\": false}"
                        + " & /escapement/teeth = {\"from\": 30, \"to\": 40, \"step\": 10} & /escapement/palletSpan = \"80 deg\""
                        + " & /teeth/leaves/to = 8 & /teeth/wheelTeeth/from = 56 & /teeth/modules = [\"1 mm\"]"
                        + " & /train/below/to = 2 & /train/above/to = 1 & /weight/limit = \"100 kg\""
                        + " & /line/ratedLoad = \"10000 N\" & /material/allowable = \"200 MPa\""
                        + " & /locks/escapeTeeth = 40");

        SearchOutcome outcome = run(brief);

        assertThat(run(brief.withLocks(drumfall.solver.brief.Locks.NONE)).front())
                .isNotEmpty();
        assertThat(outcome.heading()).isEqualTo("no train exists");
        assertThat(clash(outcome).demands())
                .extracting(HeldDemand::pointer)
                .containsExactly(Demand.BEATS_PER_HOUR.pointer(), "/locks/escapeTeeth");
        assertThat(clash(outcome).smallest()).isTrue();
        assertThat(outcome.front()).isEmpty();
    }

    @Test
    void an_arc_that_no_escape_wheel_keeps_is_named() {
        Brief brief =
                Briefs.demoWith(MIDDLING + " & /escapement/reserveArc = \"14 deg\" & /escapement/teeth/from = 21");

        Clash clash = clash(run(brief));

        assertThat(clash.demands()).extracting(HeldDemand::demand).containsExactly(Demand.ARC);
        assertThat(clash.smallest()).isTrue();
    }

    // Five meshes held in wheel, leaves and module, and every other lock: more demands than an int has bits.
    @Test
    void a_clash_is_found_among_more_than_thirty_demands() {
        String locks = Stream.of("above 1", "above 2", "below 1", "below 2", "below 3")
                .map(place ->
                        "{\"place\": {\"side\": \"%s\", \"number\": %s}, \"wheel\": 41, \"leaves\": 8, \"module\": \"1 mm\"}"
                                .formatted(place.substring(0, 5), place.substring(6)))
                .toList()
                .toString();
        Brief brief = Briefs.demoWith("/teeth/wheelTeeth = {\"from\": 40, \"to\": 42} & /teeth/leaves/to = 8"
                + " & /teeth/modules = [\"1 mm\"] & /train/above/from = 2 & /train/below/from = 3"
                + " & /beat = {\"beatsPerHour\": {\"from\": \"100\", \"to\": \"200\"}, \"secondsHand\": false}"
                + " & /run = {\"atLeast\": \"1 h\", \"wanted\": \"8 d\", \"atMost\": \"800 d\"}"
                + " & /weight/limit = \"500 kg\" & /line/ratedLoad = \"100000 N\""
                + " & /locks = {\"meshes\": " + locks + ", \"meshesAbove\": 2, \"meshesBelow\": 3,"
                + " \"drumDiameter\": \"36 mm\", \"falls\": 2, \"escapeTeeth\": 21}");

        Clash clash = clash(run(brief));

        assertThat(clash.demands()).extracting(HeldDemand::demand).containsExactly(Demand.BEATS_PER_HOUR);
        assertThat(clash.smallest()).isTrue();
    }

    @Test
    void a_clash_whose_proof_is_cut_short_says_so() {
        Brief brief = SmallBriefs.some(60, 1).stream()
                .filter(candidate -> run(candidate) instanceof SearchOutcome.NoTrain)
                .findFirst()
                .orElseThrow();
        boolean[] explaining = new boolean[1];
        SearchListener listener = new SearchListener() {
            @Override
            public void progressed(SearchProgress told) {
                explaining[0] |= told.stage() == SearchProgress.Stage.EXPLAINING;
            }
        };

        Clash clash = clash(TrainSearch.run(brief, listener, () -> explaining[0]));

        assertThat(clash.smallest()).isFalse();
        assertThat(clash.demands()).hasSizeGreaterThan(5);
    }

    @Test
    void an_outcome_is_one_of_three() {
        SearchOutcome proved = new SearchOutcome.Proved(List.of());
        SearchOutcome stopped = new SearchOutcome.Stopped(List.of());
        SearchOutcome none = new SearchOutcome.NoTrain(new Clash(List.of(), true));

        assertThat(Stream.of(proved, stopped, none).map(TrainSearchTest::name))
                .containsExactly("proved", "stopped", "none");
    }

    private static String name(SearchOutcome outcome) {
        return outcome.fold(proved -> "proved", stopped -> "stopped", none -> "none");
    }

    private static Clash clash(SearchOutcome outcome) {
        assertThat(outcome).isInstanceOf(SearchOutcome.NoTrain.class);
        return ((SearchOutcome.NoTrain) outcome).clash();
    }

    private static SearchOutcome run(Brief brief) {
        return TrainSearch.run(brief, SearchListener.SILENT, () -> false);
    }
}
