// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.halves;

import static org.assertj.core.api.Assertions.assertThat;

import drumfall.solver.brief.MeshPlace;
import drumfall.solver.power.ArborRole;
import drumfall.solver.power.Criterion;
import drumfall.solver.rating.CellFront;
import drumfall.solver.rating.Rating;
import drumfall.solver.rating.TrainRater;
import drumfall.solver.train.Train;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;

/** Half trains of seeded small briefs, listed without leaving any out, against the rating of the joined train. */
class HalvesTest {
    private static final boolean FULL = "full".equals(System.getProperty("drumfall.samples"));
    /** More than a memory of the same length is ever credited with. */
    private static final double HARDER = 2;

    private static final int JOINS = FULL ? 2_000 : 150;

    @Test
    void a_joined_train_has_the_figures_of_its_rating_to_the_last_bit() {
        int joined = 0;
        for (Halves halves : Halves.all()) {
            HalfJoin join = new HalfJoin(halves.rater());
            double[] values = new double[halves.rater().objectives().asked().size()];
            Random random = new Random(1);
            for (int i = 0; i < JOINS; i++) {
                UpperHalf upper = halves.anyUpper(random);
                LowerHalf lower = halves.anyLower(random);
                Rating rating = halves.rater().rate(join.train(upper, lower));

                double weight = join.recommendedWeight(upper, lower);
                join.values(upper, lower, weight, values);

                assertThat(weight).isEqualTo(rating.recommendedWeight());
                assertThat(values)
                        .containsExactly(rating.objectiveValues().stream()
                                .mapToDouble(value -> value)
                                .toArray());
                assertThat(join.leastRecommendedWeight(upper, lower)).isLessThanOrEqualTo(weight);
                assertThat(join.clears(upper, lower)
                                && join.weightKept(upper, weight)
                                && join.teethBear(upper, lower, weight))
                        .isEqualTo(rating.feasible());
                joined++;
            }
        }
        assertThat(joined).isGreaterThan(1_000);
    }

    // Whenever one lower half replaces another, no upper half may make the replaced one the better choice: not lighter,
    // not
    // less in any other objective, and not the only one that clears.
    @Test
    void a_lower_half_that_replaces_another_is_nowhere_the_worse_choice() {
        int replaced = 0;
        for (Halves halves : Halves.all()) {
            HalfJoin join = new HalfJoin(halves.rater());
            LowerFront front = lowerFront(halves);
            Random random = new Random(2);
            List<LowerHalf> kept = front.culled(() -> false);
            for (int i = 0; i < 20; i++) {
                LowerHalf half = halves.anyLower(random);
                if (kept.stream().anyMatch(other -> other.compareTo(half) == 0)) {
                    continue;
                }
                replaced++;
                for (int j = 0; j < 10; j++) {
                    UpperHalf upper = halves.anyUpper(random);
                    assertThat(matched(join, halves, upper, half, kept)).isTrue();
                }
            }
        }
        assertThat(replaced).isGreaterThan(50);
    }

    private static boolean matched(
            HalfJoin join, Halves halves, UpperHalf upper, LowerHalf half, List<LowerHalf> kept) {
        Rating with = halves.rater().rate(join.train(upper, half));
        return !with.feasible()
                || kept.stream()
                        .map(other -> halves.rater().rate(join.train(upper, other)))
                        .anyMatch(other -> other.feasible() && nowhereWorse(other, with));
    }

    private static boolean nowhereWorse(Rating first, Rating second) {
        for (int i = 0; i < first.objectiveValues().size(); i++) {
            if (first.objectiveValues().get(i) > second.objectiveValues().get(i)) {
                return false;
            }
        }
        return first.recommendedWeight() <= second.recommendedWeight();
    }

    @Test
    void thinned_lists_lose_no_train_of_the_front() {
        for (Halves halves : Halves.all()) {
            int above = halves.uppers().get(0).meshes().size();
            HalfTables tables = new HalfTables(halves.rater());
            List<LowerHalf> lowers = thinned(halves, List.of());
            List<UpperHalf> uppers = lowers.isEmpty()
                    ? List.of()
                    : UpperHalves.thinned(tables, above, lowers, tables.nothing(), () -> false);

            List<Train> thinned = front(halves.rater(), uppers, lowers);

            assertThat(thinned).isEqualTo(front(halves.rater(), halves.uppers(), halves.lowers()));
            assertThat(lowers.size()).isLessThanOrEqualTo(halves.lowers().size());
        }
    }

    private static List<Train> front(TrainRater rater, List<UpperHalf> uppers, List<LowerHalf> lowers) {
        HalfJoin join = new HalfJoin(rater);
        CellFront front = new CellFront(rater.objectives().asked());
        for (UpperHalf upper : uppers) {
            for (LowerHalf lower : lowers) {
                double weight = join.recommendedWeight(upper, lower);
                if (join.clears(upper, lower)
                        && join.weightKept(upper, weight)
                        && join.teethBear(upper, lower, weight)) {
                    front.add(rater.rate(join.train(upper, lower)));
                }
            }
        }
        return front.ratings().stream().map(Rating::train).toList();
    }

    @Test
    void halves_known_beforehand_are_listed_once_and_change_nothing() {
        for (Halves halves : Halves.all()) {
            List<LowerHalf> sample = sample(halves);
            List<LowerHalf> without = thinned(halves, List.of());
            // All halves as known ones stay on the lists of every escape wheel.
            for (List<LowerHalf> known : List.of(sample, without, halves.lowers())) {
                List<LowerHalf> with = thinned(halves, known);

                assertThat(with.stream().map(HalvesTest::key))
                        .containsExactlyElementsOf(
                                without.stream().map(HalvesTest::key).toList());
                assertThat(new HashSet<>(with.stream().map(HalvesTest::key).toList()))
                        .hasSameSizeAs(with);
            }
        }
    }

    // Cancelled at the first question, at the second and so on: the lists end after a few more questions and never with
    // a fault.
    @Test
    void a_list_that_is_cancelled_asks_only_a_few_times_more() {
        Halves halves = Halves.all().get(0);
        int below = halves.lowers().get(0).meshes().size();
        int above = halves.uppers().get(0).meshes().size();
        HalfTables tables = new HalfTables(halves.rater());
        AtomicInteger counted = new AtomicInteger();
        LowerHalves.thinned(tables, below, halves.lowers(), tables.nothing(), () -> counted.incrementAndGet() < 0);
        int escapeWheels = halves.rater().choices().escapeTeethLeft().size();
        for (int at = 1; at < counted.get(); at += 1 + counted.get() / 300) {
            int from = at;
            AtomicInteger asked = new AtomicInteger();
            LowerHalves.thinned(
                    tables, below, halves.lowers(), tables.nothing(), () -> asked.incrementAndGet() >= from);
            // Unwinding a few meshes of each escape wheel, and once more for each step that is left out.
            assertThat(asked.get() - from).isLessThan(escapeWheels * (below + 12) + 24);
            AtomicInteger askedAbove = new AtomicInteger();
            UpperHalves.thinned(
                    tables, above, halves.lowers(), tables.nothing(), () -> askedAbove.incrementAndGet() >= from);
            // Unwinding a few meshes of each part of the list.
            assertThat(askedAbove.get() - from).isLessThan(UpperListing.PARTS * (above + 2) + 4);
        }
    }

    // The bound of tails against the tails themselves: every way to finish a half, walked out with its own figures.
    @Test
    void no_tail_undercuts_its_bound() {
        int compared = 0;
        for (Halves halves : Halves.all()) {
            HalfTables tables = new HalfTables(halves.rater());
            int below = halves.lowers().get(0).meshes().size();
            List<List<MeshChoice>> choices = new ArrayList<>();
            for (int number = 1; number <= below; number++) {
                choices.add(tables.choicesAt(MeshPlace.Side.BELOW, number));
            }
            Tails tails = new Tails(tables.rules, choices, () -> false);
            Random random = new Random(6);
            for (int i = 0; i < 40; i++) {
                LowerHalf half = halves.anyLower(random);
                EscapeSide side = new EscapeSide(tables.rules, half.escapeTeeth(), tails);
                double leastLoad = side.leastLoad(choices.get(0));
                assertThat(half.runningLoad).isGreaterThanOrEqualTo(leastLoad * (1 - 1e-9));
                assertThat(half.need.memory()).isBetween(side.shortestMemory, side.longestMemory);
                assertThat(half.need.torque()).isGreaterThanOrEqualTo(side.leastTorque(turns(half)));
                for (int before = 1; before < below; before++) {
                    compared++;
                    compareTail(tables.rules, side, half, before);
                }
            }
        }
        assertThat(compared).isGreaterThan(100);
    }

    /** The kind of the tail that a half has behind its first meshes. */
    private static TailKind kind(EscapeSide side, LowerHalf half, int before) {
        return side.kinds().stream()
                .filter(kind -> holds(kind, half, 1))
                .map(kind -> {
                    TailKind rest = kind;
                    for (int i = 1; i < before; i++) {
                        rest = rest.rest();
                    }
                    return rest;
                })
                .findFirst()
                .orElseThrow();
    }

    private static boolean holds(TailKind kind, LowerHalf half, int from) {
        return kind.first().stream().anyMatch(choice -> choice.mesh.equals(half.meshes.get(from).mesh))
                && (kind.rest() == null || holds(kind.rest(), half, from + 1));
    }

    private static double turns(LowerHalf half) {
        return half.meshes.stream().mapToDouble(choice -> choice.ratio).reduce(1, (a, b) -> a * b);
    }

    private static void compareTail(HalfRules rules, EscapeSide side, LowerHalf half, int before) {
        double ratio = 1;
        for (MeshChoice choice : half.meshes.subList(0, before)) {
            ratio *= choice.ratio;
        }
        TailBounds.Least least = side.tail(kind(side, half, before), TailOutlook.band(ratio));
        PartSums sums = PartSums.NONE;
        for (MeshChoice choice : half.meshes.subList(before, half.meshes.size())) {
            sums = sums.with(choice);
        }
        double slack = 1 - 1e-9;
        assertThat(load(rules, side, half, before, Criterion.RUNNING)).isGreaterThanOrEqualTo(least.running() * slack);
        assertThat(load(rules, side, half, before, Criterion.BINDING)).isGreaterThanOrEqualTo(least.binding() * slack);
        assertThat(sums.filament()).isGreaterThanOrEqualTo(least.sums().filament());
        assertThat(sums.largestTip()).isGreaterThanOrEqualTo(least.sums().largestTip());
        assertThat(sums.centreDistances()).isGreaterThanOrEqualTo(least.sums().centreDistances());
    }

    /** Torque on the arbor that carries the first wheel of the tail, with what each mesh truly lets through. */
    private static double load(HalfRules rules, EscapeSide side, LowerHalf half, int before, Criterion criterion) {
        double load = side.load(criterion, half.need.torque());
        ArborRole below = ArborRole.ESCAPE;
        for (int i = half.meshes.size() - 1; i >= before; i--) {
            MeshChoice choice = half.meshes.get(i);
            double hours = 1;
            for (MeshChoice faster : half.meshes.subList(0, i)) {
                hours /= faster.ratio;
            }
            double passed = choice.passed(criterion, half.need.memory() * choice.teeth / (3600 * hours));
            load = rules.step(criterion, load, below, choice, passed, ArborRole.INTERMEDIATE);
            below = ArborRole.INTERMEDIATE;
        }
        return load;
    }

    /** Better in every figure, a half may still not go beside all upper halves that the other one goes beside. */
    @Test
    void a_lower_half_is_replaced_only_by_one_that_goes_beside_the_same_upper_halves() {
        LowerReach free = LowerReach.NONE;
        List<LowerReach> narrower = List.of(
                new LowerReach(1, UpperReach.POINT, UpperReach.FREE, UpperReach.FREE),
                new LowerReach(0, UpperReach.POINT, 0.02, UpperReach.FREE),
                new LowerReach(0, UpperReach.POINT, UpperReach.FREE, 0.02));
        Halves halves = Halves.all().get(0);
        LowerHalf any = halves.lowers().get(0);
        for (LowerReach narrow : narrower) {
            assertThat(keptBeside(halves, any, narrow, free))
                    .as("narrow, then free")
                    .isEqualTo(2);
            assertThat(keptBeside(halves, any, free, narrow))
                    .as("free, then narrow")
                    .isEqualTo(1);
            assertThat(keptBeside(halves, any, narrow, narrow))
                    .as("both narrow")
                    .isEqualTo(1);
            assertThat(replacedWhileListed(halves, any, narrow, free)).isFalse();
            assertThat(replacedWhileListed(halves, any, free, narrow)).isTrue();
            assertThat(replacedWhileListed(halves, any, narrow, narrow)).isTrue();
        }
    }

    /** How many stay of a half and one alike that is harder to turn. */
    private static int keptBeside(Halves halves, LowerHalf half, LowerReach reach, LowerReach later) {
        LowerFront front = emptyFront(halves);
        front.offer(reaching(half, 1, 1, reach));
        front.offer(reaching(half, 2, HARDER, later));
        return front.size();
    }

    /** Whether a half harder to turn than a known one is left out before it is worked out. */
    private static boolean replacedWhileListed(Halves halves, LowerHalf half, LowerReach known, LowerReach listed) {
        LowerFront front = emptyFront(halves);
        front.offer(reaching(half, 1, 1, known));
        return front.replaced(
                half.runningLoad * HARDER,
                half.bindingLoad * HARDER,
                front.credit(half.need.memory()),
                half.centreWheelTip(),
                half.borne,
                half.sums,
                () -> listed);
    }

    private static LowerHalf reaching(LowerHalf half, int escapeTeeth, double times, LowerReach reach) {
        return new LowerHalf(
                half.meshes,
                escapeTeeth,
                half.need,
                half.runningLoad * times,
                half.bindingLoad * times,
                half.borne,
                half.sums,
                false,
                reach);
    }

    /** The front that all lower halves leave, with the outlook of their own range. */
    private static LowerFront lowerFront(Halves halves) {
        LowerFront front = emptyFront(halves);
        halves.lowers().forEach(front::offer);
        return front;
    }

    private static LowerFront emptyFront(Halves halves) {
        HalfTables tables = new HalfTables(halves.rater());
        double least = halves.lowers().stream()
                .mapToDouble(half -> half.runningLoad)
                .min()
                .orElseThrow();
        double shortest = halves.lowers().stream()
                .mapToDouble(half -> half.need.memory())
                .min()
                .orElseThrow();
        double longest = halves.lowers().stream()
                .mapToDouble(half -> half.need.memory())
                .max()
                .orElseThrow();
        CentreOutlook outlook =
                new CentreOutlook(tables, least, shortest * (1 - 1e-12), longest * (1 + 1e-12), () -> false);
        LowerProspects prospects =
                new LowerProspects(tables.rules, tables.nothing(), tables.uppers(longest, () -> false), halves.below());
        return new LowerFront(tables.rules, outlook, prospects);
    }

    private static List<LowerHalf> thinned(Halves halves, List<LowerHalf> known) {
        HalfTables tables = new HalfTables(halves.rater());
        return LowerHalves.thinned(tables, halves.below(), known, tables.nothing(), () -> false);
    }

    private static List<LowerHalf> sample(Halves halves) {
        HalfTables tables = new HalfTables(halves.rater());
        return LowerHalves.sample(tables, halves.below(), 2, tables.nothing(), () -> false);
    }

    private static String key(LowerHalf half) {
        return half.meshes.stream().map(choice -> choice.mesh.toString()).toList() + " E" + half.escapeTeeth;
    }

    /** Also after a sample has its escape wheels and before all have theirs. */
    @Test
    void a_sample_cancelled_at_any_question_ends_without_a_fault() {
        for (Halves halves : Halves.all().subList(0, 3)) {
            int cut = 0;
            boolean whole = false;
            while (!whole) {
                int last = ++cut;
                AtomicInteger asked = new AtomicInteger();
                List<LowerHalf> sample = LowerHalves.sample(
                        new HalfTables(halves.rater()),
                        halves.below(),
                        2,
                        new CellFront(halves.rater().objectives().asked()),
                        () -> asked.incrementAndGet() >= last);
                whole = asked.get() < last;
                assertThat(sample).isSubsetOf(halves.lowers());
            }
            assertThat(cut).isGreaterThan(20);
        }
    }
}
