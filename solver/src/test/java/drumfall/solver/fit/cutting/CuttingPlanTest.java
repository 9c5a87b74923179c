// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.fit.cutting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import drumfall.solver.fit.FitException;
import drumfall.solver.fit.Nanometres;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CuttingPlanTest {
    private static final long MM = Nanometres.MILLIMETRE;
    private static final boolean FULL =
            System.getProperty("drumfall.samples", "").equals("full");

    // V. Chvátal, Linear Programming, 1983, ch. 13, from memory: rolls of 100; 97 of 45, 610 of 36, 395 of 31,
    // 211 of 14: 453 rolls. The bound can be had by hand from the prices 1/2, 1/2, 1/4, 0: 353.5 + 98.75 =
    // 452.25.
    @Test
    void the_textbook_rolls_take_453() {
        RodPlan plan = plan(100 * MM, 0, 45, 97, 36, 610, 31, 395, 14, 211);

        assertThat(plan.lowerBound()).isEqualTo(453);
        assertThat(plan.rods()).isEqualTo(453);
        assertThat(plan.provenLeast()).isTrue();
    }

    // Encyclopaedia article "Cutting stock problem": 13 widths from rolls of 5600 mm, 407 160 mm in all, at
    // least 72.7 rolls; that 73 do is quoted there too, from memory.
    @Test
    void thirteen_widths_of_paper_take_73_rolls() {
        RodPlan plan = plan(
                5600 * MM, 0, 1380, 22, 1520, 25, 1560, 12, 1710, 14, 1820, 18, 1880, 18, 1930, 20, 2000, 10, 2050, 12,
                2100, 14, 2140, 16, 2150, 18, 2200, 20);

        assertThat(plan.rods()).isEqualTo(73);
        assertThat(plan.provenLeast()).isTrue();
    }

    // By hand: first fit cuts 6+3, 5+2+2 and needs a third rod for the last 2, while 6+2+2 and 5+3+2 fill two
    // exactly.
    @Test
    void full_rods_are_found_where_first_fit_misses_them() {
        RodPlan plan = plan(10 * MM, 0, 6, 1, 5, 1, 3, 1, 2, 3);

        assertThat(plan.rods()).isEqualTo(2);
        assertThat(plan.cuts()).extracting(RodCut::offcut).containsOnly(0L);
    }

    // A saw of 2 mm: three pieces of 100 mm and two cuts take 304 mm; the last cut may run out of the rod's
    // end.
    @ParameterizedTest
    @CsvSource({"303, 2, 99", "304, 1, 0", "305, 1, 0", "306, 1, 0", "307, 1, 1"})
    void a_kerf_is_taken_by_every_cut_and_the_offcut_is_told(long rod, int rods, long offcut) {
        RodPlan plan = plan(rod * MM, 2 * MM, 100, 3);

        assertThat(plan.rods()).isEqualTo(rods);
        assertThat(plan.cuts().get(0).offcut()).isEqualTo(offcut * MM);
    }

    @Test
    void kits_are_cut_together_and_equal_lengths_keep_their_names() {
        List<ArborPiece> arbors = List.of(
                new ArborPiece("third", 3 * MM, 60 * MM, 1),
                new ArborPiece("second", 3 * MM, 60 * MM, 1),
                new ArborPiece("pallet", 2 * MM, 40 * MM, 1));
        CuttingPlan plan =
                CuttingPlan.of(List.of(new RodStock(3 * MM, 250 * MM), new RodStock(2 * MM, 100 * MM)), arbors, 3, MM);

        assertThat(plan.provenLeast()).isTrue();
        assertThat(plan.rods()).extracting(rod -> rod.stock().diameter()).containsExactly(2 * MM, 3 * MM);
        assertThat(plan.rods()).extracting(RodPlan::rods).containsExactly(2, 2);
        assertThat(cut(plan.rods().get(1), "third")).isEqualTo(3);
        assertThat(cut(plan.rods().get(1), "second")).isEqualTo(3);
    }

    @Test
    void a_rod_shorter_than_an_arbor_is_refused_with_the_length_that_works() {
        assertThatThrownBy(() -> CuttingPlan.of(
                        List.of(new RodStock(3 * MM, 100 * MM)),
                        List.of(new ArborPiece("great", 3 * MM, 120 * MM, 1)),
                        1,
                        MM))
                .isInstanceOf(FitException.class)
                .hasMessage("The length (100 mm) of the stock rod of 3 mm must be at least the length of arbor (great),"
                        + " 120 mm. Maybe take a rod of 120 mm.");
    }

    @Test
    void a_missing_or_doubled_rod_and_bad_numbers_are_refused() {
        List<RodStock> stock = List.of(new RodStock(3 * MM, 100 * MM));
        List<ArborPiece> arbors = List.of(new ArborPiece("third", 3 * MM, 60 * MM, 1));
        List<ArborPiece> thin = List.of(new ArborPiece("third", 2 * MM, 60 * MM, 1));
        List<RodStock> doubled = List.of(new RodStock(3 * MM, 100 * MM), new RodStock(3 * MM, 200 * MM));
        List<ArborPiece> alike = List.of(arbors.get(0), arbors.get(0));

        assertThatThrownBy(() -> CuttingPlan.of(stock, thin, 1, MM))
                .hasMessage(
                        "The diameter (2 mm) of arbor (third) must have a stock rod. Maybe add a stock rod of 2 mm.");
        assertThatThrownBy(() -> CuttingPlan.of(doubled, arbors, 1, MM))
                .hasMessageContaining("keep the length of 200 mm");
        assertThatThrownBy(() -> CuttingPlan.of(stock, alike, 1, MM)).hasMessageContaining("must be used once");
        assertThatThrownBy(() -> CuttingPlan.of(stock, arbors, 0, MM))
                .hasMessage("The number of kits (0) of the cutting plan must lie from 1 to 1000. Maybe take 1.");
        assertThatThrownBy(() -> CuttingPlan.of(stock, arbors, 1, -1)).hasMessageContaining("kerf");
        assertThatThrownBy(() -> CuttingPlan.of(stock, List.of(), 1, MM)).hasMessageContaining("number of arbors (0)");
    }

    // Every way to put up to eight pieces on rods is tried.
    @Test
    void small_plans_are_proven_and_as_short_as_every_other_way() {
        SplittableRandom random = new SplittableRandom(31);
        for (int i = 0; i < (FULL ? 3000 : 300); i++) {
            long rod = random.nextLong(20, 60);
            long kerf = random.nextLong(0, 3);
            long[] lengths =
                    random.longs(random.nextInt(1, 9), rod / 6 + 1, rod + 1).toArray();
            RodPlan plan = planOf(rod, kerf, lengths);

            assertThat(plan.provenLeast()).isTrue();
            assertThat(plan.rods()).isEqualTo(fewestRods(lengths, 0, new long[lengths.length], 0, rod + kerf, kerf));
        }
    }

    @Test
    void larger_plans_hold_every_arbor_and_no_rod_is_overfull() {
        SplittableRandom random = new SplittableRandom(32);
        for (int i = 0; i < (FULL ? 300 : 40); i++) {
            List<ArborPiece> arbors = new ArrayList<>();
            for (int arbor = 0; arbor < random.nextInt(3, 10); arbor++) {
                arbors.add(new ArborPiece(
                        "arbor " + arbor, 3 * MM, random.nextLong(30 * MM, 150 * MM), random.nextInt(1, 3)));
            }
            int kits = random.nextInt(1, 30);
            long length = random.nextLong(300 * MM, 1000 * MM);
            RodPlan plan = CuttingPlan.of(List.of(new RodStock(3 * MM, length)), arbors, kits, MM)
                    .rods()
                    .get(0);

            arbors.forEach(arbor -> assertThat(cut(plan, arbor.name())).isEqualTo(arbor.count() * kits));
            plan.cuts().forEach(cut -> assertThat(taken(cut, arbors, MM)).isLessThanOrEqualTo(length));
            assertThat(plan.rods()).isBetween(plan.lowerBound(), plan.lowerBound() + 1);
        }
    }

    @Test
    void a_thousand_kits_are_one_order() {
        RodPlan plan = plan(1000 * MM, MM, 137, 1000, 91, 1000, 64, 1000, 113, 1000, 58, 1000);

        assertThat(plan.cuts().stream().mapToInt(RodCut::rods).sum()).isEqualTo(plan.rods());
        assertThat(cut(plan, "137 mm")).isEqualTo(1000);
        assertThat(plan.provenLeast()).isTrue();
    }

    @Test
    void the_same_order_is_cut_the_same_way_each_time() {
        assertThat(plan(1000 * MM, MM, 137, 20, 91, 33, 64, 18))
                .isEqualTo(plan(1000 * MM, MM, 137, 20, 91, 33, 64, 18));
    }

    private static RodPlan plan(long rod, long kerf, int... lengthsAndCounts) {
        List<ArborPiece> arbors = new ArrayList<>();
        for (int i = 0; i < lengthsAndCounts.length; i += 2) {
            int length = lengthsAndCounts[i];
            arbors.add(new ArborPiece(length + " mm", MM, length * MM, lengthsAndCounts[i + 1]));
        }
        return CuttingPlan.of(List.of(new RodStock(MM, rod)), arbors, 1, kerf)
                .rods()
                .get(0);
    }

    private static RodPlan planOf(long rod, long kerf, long... lengths) {
        List<ArborPiece> arbors = new ArrayList<>();
        for (long length : lengths) {
            arbors.add(new ArborPiece("arbor " + arbors.size(), 1, length, 1));
        }
        return CuttingPlan.of(List.of(new RodStock(1, rod)), arbors, 1, kerf)
                .rods()
                .get(0);
    }

    private static int cut(RodPlan plan, String name) {
        return plan.cuts().stream()
                .mapToInt(cut -> cut.rods() * cut.pieces().getOrDefault(name, 0))
                .sum();
    }

    private static long taken(RodCut cut, List<ArborPiece> arbors, long kerf) {
        long pieces = arbors.stream()
                .mapToLong(arbor -> arbor.length() * cut.pieces().getOrDefault(arbor.name(), 0))
                .sum();
        int count = cut.pieces().values().stream().mapToInt(Integer::intValue).sum();
        return pieces + (count - 1) * kerf;
    }

    private static int fewestRods(long[] lengths, int next, long[] filled, int rods, long capacity, long kerf) {
        if (next == lengths.length) {
            return rods;
        }
        int best = Integer.MAX_VALUE;
        for (int rod = 0; rod <= rods; rod++) {
            if (filled[rod] + lengths[next] + kerf <= capacity) {
                long[] more = Arrays.copyOf(filled, filled.length);
                more[rod] += lengths[next] + kerf;
                best = Math.min(best, fewestRods(lengths, next + 1, more, Math.max(rods, rod + 1), capacity, kerf));
            }
        }
        return best;
    }
}
