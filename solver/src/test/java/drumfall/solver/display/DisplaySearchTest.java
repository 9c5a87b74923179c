// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.display;

import static org.assertj.core.api.Assertions.assertThat;

import drumfall.solver.ratio.CountRange;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.TreeMap;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;

class DisplaySearchTest {
    private static final int SAMPLES = "full".equals(System.getProperty("drumfall.samples")) ? 1_000 : 60;

    /** A train of the oracle: seconds a day it gains, its speed, its largest count. */
    private record Tried(BigFraction secondsADay, BigFraction turns, int largest) {
        static final Comparator<Tried> LEAST_ERROR_FIRST =
                Comparator.comparing((Tried tried) -> tried.secondsADay().abs()).thenComparing(Tried::turns);
    }

    @Test
    void the_ranking_by_seconds_a_day_is_that_of_trying_every_train() {
        SplittableRandom random = new SplittableRandom(1769);
        for (int sample = 0; sample < SAMPLES; sample++) {
            DisplayQuery query = randomQuery(random);

            DisplayOutcome outcome = DisplaySearch.nearest(query, () -> false);

            List<BigFraction> expected = tryEveryTrain(query).keySet().stream()
                    .sorted(Tried.LEAST_ERROR_FIRST)
                    .map(Tried::secondsADay)
                    .distinct()
                    .limit(query.wanted())
                    .toList();
            assertThat(outcome.proven()).isTrue();
            assertThat(outcome.options())
                    .extracting(option -> option.error().secondsADay())
                    .containsExactlyElementsOf(expected);
        }
    }

    @Test
    void the_front_is_that_of_trying_every_train() {
        SplittableRandom random = new SplittableRandom(1770);
        for (int sample = 0; sample < SAMPLES; sample++) {
            DisplayQuery query = randomQuery(random);

            DisplayOutcome outcome = DisplaySearch.front(query, () -> false);

            assertThat(outcome.proven()).isTrue();
            assertThat(outcome.options())
                    .extracting(option -> List.<Object>of(
                            option.error().secondsADay().abs(),
                            option.trains().get(0).largestCount()))
                    .containsExactlyElementsOf(plainFront(query));
        }
    }

    /** Errors and sizes that no other beats, the least error first; each tried train is held against all others. */
    private static List<List<Object>> plainFront(DisplayQuery query) {
        var tried = tryEveryTrain(query).keySet();
        return tried.stream()
                .filter(one -> tried.stream().noneMatch(other -> beats(other, one)))
                .sorted(Tried.LEAST_ERROR_FIRST)
                .map(one -> List.<Object>of(one.secondsADay().abs(), one.largest()))
                .distinct()
                .toList();
    }

    private static boolean beats(Tried other, Tried one) {
        int error = other.secondsADay().abs().compareTo(one.secondsADay().abs());
        return error <= 0 && other.largest() <= one.largest() && (error < 0 || other.largest() < one.largest());
    }

    private static DisplayQuery randomQuery(SplittableRandom random) {
        while (true) {
            int driver = random.nextInt(1, 30);
            int follower = random.nextInt(1, 30);
            int meshes = random.nextInt(1, 3);
            CountRange drivers = new CountRange(driver, driver + random.nextInt(5));
            CountRange followers = new CountRange(follower, follower + random.nextInt(5));
            BigFraction near = BigFraction.of(follower, driver)
                    .pow(meshes)
                    .multiply(BigFraction.of(random.nextInt(500, 2000), 1000));
            boolean reached = near.compareTo(
                                    BigFraction.of(follower, drivers.most()).pow(meshes))
                            >= 0
                    && near.compareTo(BigFraction.of(followers.most(), driver).pow(meshes)) <= 0;
            if (reached) {
                DrivingArbor arbor = new DrivingArbor(BigFraction.of(random.nextInt(1, 9), 4), random.nextBoolean());
                Display display = new Display(arbor.secondsPerTurn().multiply(near), 1);
                return new DisplayQuery(display, arbor, meshes, drivers, followers, random.nextInt(1, 9), 10_000);
            }
        }
    }

    /** The oracle: ordered loops over one or two meshes, the gain in a day from periods alone. */
    private static Map<Tried, Integer> tryEveryTrain(DisplayQuery query) {
        Map<Tried, Integer> found = new TreeMap<>(Tried.LEAST_ERROR_FIRST.thenComparingInt(Tried::largest));
        int second = query.meshCount() - 1;
        CountRange drivers = query.drivers();
        CountRange followers = query.followers();
        CountRange none = new CountRange(1, 1);
        CountRange secondDrivers = second == 1 ? drivers : none;
        CountRange secondFollowers = second == 1 ? followers : none;
        for (int a = drivers.least(); a <= drivers.most(); a++) {
            for (int b = secondDrivers.least(); b <= secondDrivers.most(); b++) {
                for (int c = followers.least(); c <= followers.most(); c++) {
                    for (int d = secondFollowers.least(); d <= secondFollowers.most(); d++) {
                        BigFraction turns = BigFraction.of((long) a * b, (long) c * d);
                        int largest = Math.max(Math.max(a, b), Math.max(c, d));
                        found.merge(new Tried(secondsADay(query, turns), turns, largest), 1, Integer::sum);
                    }
                }
            }
        }
        return found;
    }

    private static BigFraction secondsADay(DisplayQuery query, BigFraction turns) {
        BigFraction period =
                BigFraction.of(3600).divide(query.arbor().turnsPerHour()).divide(turns);
        BigFraction wanted =
                query.display().cycleSeconds().multiply(query.display().cyclesPerTurn());
        return BigFraction.of(86_400).multiply(wanted).divide(period).subtract(86_400);
    }

    // The wanted speed is 11/30 of a turn: 1/3 is nearest, then 1/4 is 0.1167 off and 1/2 is 0.1333. Of the wanted
    // period, 2.727 turns of the arbor, 1/2 would be only 0.727 off and 1/4 would be 1.273.
    @Test
    void trains_are_ranked_by_what_they_gain_in_a_day_not_by_their_period() {
        DrivingArbor arbor = DrivingArbor.CENTRE;
        Display display = new Display(arbor.secondsPerTurn().multiply(BigFraction.of(30, 11)), 1);
        DisplayQuery query = new DisplayQuery(display, arbor, 1, new CountRange(1, 1), new CountRange(2, 4), 3, 1);

        assertThat(DisplaySearch.nearest(query, () -> false).options())
                .extracting(DisplayOption::turns)
                .containsExactly(BigFraction.of(1, 3), BigFraction.of(1, 4), BigFraction.of(1, 2));
    }

    @Test
    void a_moon_disc_from_the_centre_arbor_is_proved_within_a_second_a_day() {
        DisplayQuery query = new DisplayQuery(
                Display.of(KnownCycle.SYNODIC_MONTH, 2),
                DrivingArbor.CENTRE,
                4,
                new CountRange(8, 16),
                new CountRange(40, 90),
                3,
                5);

        DisplayOutcome outcome = DisplaySearch.nearest(query, () -> false);

        assertThat(outcome.proven()).isTrue();
        assertThat(outcome.options()).hasSize(3).allSatisfy(option -> {
            assertThat(Math.abs(option.error().secondsADay().doubleValue())).isLessThan(1);
            assertThat(option.trains()).isNotEmpty().allSatisfy(train -> {
                assertThat(train.turns()).isEqualTo(option.turns());
                assertThat(DisplayError.of(query.display(), query.arbor(), train))
                        .isEqualTo(option.error());
            });
        });
    }

    @Test
    void a_cancelled_search_claims_no_proof() {
        DisplayQuery query = new DisplayQuery(
                Display.of(KnownCycle.LUNAR_DAY, 1),
                DrivingArbor.HOUR_WHEEL,
                2,
                new CountRange(8, 60),
                new CountRange(8, 90),
                3,
                5);

        assertThat(DisplaySearch.nearest(query, () -> true)).isEqualTo(new DisplayOutcome(List.of(), false));
        assertThat(DisplaySearch.front(query, () -> true)).isEqualTo(new DisplayOutcome(List.of(), false));
    }
}
