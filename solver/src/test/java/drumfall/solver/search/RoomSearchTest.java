// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.search;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import drumfall.solver.brief.Brief;
import drumfall.solver.brief.LeastRoom;
import drumfall.solver.layout.Layout;
import drumfall.solver.layout.check.LayoutCheck;
import drumfall.solver.rating.Rating;
import drumfall.solver.rating.TrainRater;
import drumfall.solver.rating.placing.LeastRooms;
import drumfall.solver.rating.placing.TrainPlacing;
import drumfall.solver.samples.Briefs;
import drumfall.solver.samples.SmallBriefs;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Random;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Fronts with the least room beside the objectives, against plain loops that place every train that meets the brief. */
class RoomSearchTest {
    private static final boolean FULL = "full".equals(System.getProperty("drumfall.samples"));

    private static final List<String> WISHES = List.of(
            "{\"figure\": \"movement-height\", \"resolution\": \"2 mm\"}",
            "{\"figure\": \"movement-width\", \"resolution\": \"3 mm\", \"enough\": \"120 mm\"}",
            "{\"figure\": \"movement-depth\", \"resolution\": \"1/16 in\"}",
            "{\"figure\": \"plate-area\", \"resolution\": \"6 cm2\", \"enough\": \"150 cm2\"} & /frame/pillars = remove");

    /** One objective, so that the room decides on most trains of a front. */
    private static final String WEIGHT = "[{\"figure\": \"recommended-weight\", \"resolution\": \"0.5 %\"}]";

    /** Drawn once; apart from the tests' class, whose initialization searching threads would wait for. */
    private static final class Drawn {
        static final List<Brief> BRIEFS = briefs(FULL ? 100 : 4, 11_000);
    }

    private static final Map<Brief, List<Rating>> PLAIN = new ConcurrentHashMap<>();

    @TestFactory
    Stream<DynamicTest> the_front_is_that_of_plain_loops() {
        return Drawn.BRIEFS.stream()
                .map(brief -> DynamicTest.dynamicTest(describe(brief), () -> sameFront(brief, SearchSettings.USUAL)));
    }

    @TestFactory
    Stream<DynamicTest> the_front_is_the_same_if_nothing_is_carried_over_from_larger_room() {
        SearchSettings anew = SearchSettings.USUAL.without(Shortcut.CARRY_OVER);
        return Drawn.BRIEFS.stream()
                .map(brief -> DynamicTest.dynamicTest(describe(brief), () -> sameFront(brief, anew)));
    }

    private static String describe(Brief brief) {
        LeastRoom least = brief.frame().least().orElseThrow();
        return brief.name() + ", " + least.figure().word();
    }

    private static void sameFront(Brief brief, SearchSettings settings) {
        SearchOutcome outcome = TrainSearch.run(brief, SearchListener.SILENT, () -> false, settings);
        List<Rating> expected = plainFront(brief);

        assertThat(outcome.front().stream().map(Rating::cell).toList())
                .isEqualTo(expected.stream().map(Rating::cell).toList());
        assertThat(outcome.front().stream().map(Rating::train).toList())
                .isEqualTo(expected.stream().map(Rating::train).toList());
        assertThat(outcome instanceof SearchOutcome.NoTrain).isEqualTo(expected.isEmpty());
    }

    private static List<Rating> plainFront(Brief brief) {
        return PLAIN.computeIfAbsent(brief, RoomSearchTest::newPlainFront);
    }

    private static List<Rating> newPlainFront(Brief brief) {
        TrainRater rater = new TrainRater(brief);
        LeastRooms rooms = LeastRooms.of(rater, new TrainPlacing(rater)).orElseThrow();
        List<Rating> roomed = new ArrayList<>();
        for (Rating rating : PlainLoops.feasible(brief)) {
            OptionalLong steps = rooms.steps(rating.train(), () -> false);
            steps.ifPresent(known -> roomed.add(rating.withRoom(known)));
        }
        return PlainLoops.front(roomed);
    }

    /** Otherwise the tests above could not tell a search in ever less room from one in all the room there is. */
    @Test
    void some_of_these_fronts_hold_trains_that_stand_on_them_for_their_room_alone() {
        long more = Drawn.BRIEFS.stream()
                .filter(brief -> plainFront(brief).size() > inAnyRoom(brief).size())
                .count();
        assertThat(more).isPositive();
    }

    private static List<Rating> inAnyRoom(Brief brief) {
        return TrainSearch.unexplained(brief, SearchListener.SILENT, () -> false)
                .front();
    }

    @Test
    void each_train_is_drawn_with_the_room_it_is_listed_by() {
        int drawn = 0;
        for (Brief brief : Drawn.BRIEFS) {
            TrainRater rater = new TrainRater(brief);
            LeastRooms rooms = LeastRooms.of(rater, new TrainPlacing(rater)).orElseThrow();
            for (Rating rating :
                    TrainSearch.run(brief, SearchListener.SILENT, () -> false).front()) {
                List<Long> cell = rating.cell().numbers();
                Layout layout =
                        TrainPlacing.layout(brief, rating.train(), () -> false).orElseThrow();
                assertThat(LayoutCheck.faults(layout)).isEmpty();
                long most = rooms.limit(cell.get(cell.size() - 1)).most();
                long measured = layout.measure(rooms.limit(1).wish());
                assertThat(measured).isLessThanOrEqualTo(most);
                if (cell.get(cell.size() - 1) > rooms.enough()) {
                    assertThat(measured)
                            .isGreaterThan(
                                    rooms.limit(cell.get(cell.size() - 1) - 1).most());
                }
                drawn++;
            }
        }
        assertThat(drawn).isGreaterThan(Drawn.BRIEFS.size());
    }

    /** Sizes of our own. A size on an edge belongs to the smaller room. */
    @ParameterizedTest
    @CsvSource({
        "10 mm,          , 1",
        "10 mm, 200 mm   , 20",
        "10 mm, 200.001 mm, 21",
        "10 mm, 195 mm   , 20",
        "1/8 in, 1 in    , 8",
        "0.3 mm, 0.9 mm  , 3"
    })
    void what_is_enough_is_a_whole_number_of_steps_rounded_up(String resolution, String enough, long steps) {
        String field = enough == null ? "" : ", \"enough\": \"" + enough + "\"";
        Brief brief = Briefs.demoWith("/frame/least = {\"figure\": \"movement-height\", \"resolution\": \"" + resolution
                + "\"" + field + "}");
        TrainRater rater = new TrainRater(brief);
        assertThat(LeastRooms.of(rater, new TrainPlacing(rater)).orElseThrow().enough())
                .isEqualTo(steps);
    }

    /** Whatever was found until then is a train that meets the brief, in a cell as long as those of complete fronts. */
    @Test
    void the_room_that_is_searched_is_told_and_shrinks_by_whole_steps() {
        Brief brief = Drawn.BRIEFS.get(0);
        LeastRoom least = brief.frame().least().orElseThrow();
        List<Double> told = new ArrayList<>();
        TrainSearch.run(
                brief,
                new SearchListener() {
                    @Override
                    public void progressed(SearchProgress progress) {
                        assertThat(progress.room().map(SearchProgress.Room::figure))
                                .isIn(Optional.empty(), Optional.of(least.figure()));
                        told.add(progress.room().map(SearchProgress.Room::most).orElse(Double.POSITIVE_INFINITY));
                    }
                },
                () -> false);
        List<Double> rooms = told.stream().distinct().toList();
        assertThat(rooms).hasSizeGreaterThan(1).isSortedAccordingTo(Comparator.reverseOrder());
        assertThat(told).isSortedAccordingTo(Comparator.reverseOrder());
        double step = least.resolution().si();
        assertThat(rooms.subList(1, rooms.size()))
                .allSatisfy(room -> assertThat(room / step).isCloseTo(Math.rint(room / step), within(1e-9)));
    }

    @Test
    void a_search_that_is_stopped_keeps_what_it_found() {
        Brief brief = Drawn.BRIEFS.stream()
                .filter(some -> plainFront(some).size() > 1)
                .findFirst()
                .orElseThrow();
        for (int looks : new int[] {50, 500, 2_000, 5_000}) {
            AtomicInteger left = new AtomicInteger(looks);
            SearchOutcome outcome = TrainSearch.run(brief, SearchListener.SILENT, () -> left.decrementAndGet() < 0);
            assertThat(outcome.front())
                    .allSatisfy(rating -> assertThat(
                                    new TrainRater(brief).rate(rating.train()).feasible())
                            .isTrue())
                    .allSatisfy(rating -> assertThat(rating.cell().numbers())
                            .hasSize(brief.objectives().size() + 1));
        }
    }

    private static boolean mayBePlacedOneByOne(Brief brief) {
        int trains = PlainLoops.feasible(brief).size();
        return trains >= 10 && trains <= 350 && !inAnyRoom(brief).isEmpty();
    }

    /** Frames in which some trains have a place; heights, widths, depths and plates are made small in turn. */
    private static List<Brief> briefs(int count, long seed) {
        Random random = new Random(seed);
        List<Brief> briefs = new ArrayList<>();
        for (Brief brief : SmallBriefs.fewer(3 * count, seed)) {
            Brief drawn = SmallBriefs.fewer(Briefs.with(
                    brief,
                    "/frame/depth = \"" + (85 + random.nextInt(26)) + " mm\""
                            + " & /frame/width = \"" + (180 + random.nextInt(120)) + " mm\""
                            + " & /frame/height = \"" + (250 + random.nextInt(200)) + " mm\""
                            + " & /frame/arrangement = \"upright\" & /parts/hubWall = \"1.2 mm\""
                            + " & /teeth/modules = [\"1 mm\", \"1.75 mm\"] & /weight/limit = \"100 kg\""
                            + " & /objectives = " + WEIGHT
                            + " & /frame/least = " + WISHES.get(briefs.size() % WISHES.size())));
            if (briefs.size() < count && mayBePlacedOneByOne(drawn)) {
                briefs.add(drawn);
            }
        }
        return briefs;
    }
}
