// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.train;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import drumfall.solver.ratio.CountRange;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MotionWorkSearchTest {
    private static final ToothModule ONE = ToothModule.ofMillimetres("1");

    // W. L. Goodrich, The Modern Clock, 1905, ch. XVI (12, 36, 10, 40); W. Derham, The Artificial Clock-Maker, 1696,
    // ch. X § 2 (48, 48, 6, 72); E. Beckett, A Rudimentary Treatise on Clocks, Watches and Bells, 8th ed. 1903, p. 224
    // (wheels 90, 100, pinions 25, 30, both ways about). None has equal sums of counts, so none stands on one centre
    // distance with one module. The two modules are by arithmetic: in the inverse ratio of the sums.
    @ParameterizedTest
    @CsvSource({
        "12, 36, 10, 40, 1.25, 1.2",
        "48, 48, 6, 72, 1.3, 1.6",
        "30, 90, 25, 100, 1.25, 1.2",
        "25, 90, 30, 100, 1.3, 1.15",
    })
    void a_published_motion_work_is_found_with_two_modules_and_with_no_single_one(
            int cannonPinion, int minuteWheel, int minutePinion, int hourWheel, String first, String second) {
        MotionWork published = new MotionWork(cannonPinion, minuteWheel, minutePinion, hourWheel);

        assertThat(search(6, 48, 36, 100, first, second).all())
                .contains(new SizedMotionWork(
                        published, ToothModule.ofMillimetres(first), ToothModule.ofMillimetres(second)));
        assertThat(search(6, 48, 36, 100, first).all())
                .isNotEmpty()
                .noneMatch(work -> work.counts().equals(published));
    }

    @Test
    void every_motion_work_found_gives_twelve_on_one_centre_distance() {
        assertThat(search(8, 15, 24, 60, "1", "1.25", "1.5").all()).isNotEmpty().allSatisfy(work -> {
            assertThat(work.counts().twelve()).isTrue();
            double second = work.minuteModule().metres()
                    * (work.counts().minutePinion() + work.counts().hourWheel())
                    / 2;
            // Rounding of two products of doubles near 0.03.
            assertThat(second).isCloseTo(work.centreDistance(), within(1e-17));
        });
    }

    @Test
    void the_search_agrees_with_trying_all_four_counts() {
        SplittableRandom random = new SplittableRandom(1657);
        int samples = "full".equals(System.getProperty("drumfall.samples")) ? 500 : 20;
        int found = 0;
        for (int sample = 0; sample < samples; sample++) {
            int leaf = random.nextInt(6, 12);
            int wheel = random.nextInt(18, 36);
            List<MotionWork> all = search(leaf, leaf + 8, wheel, wheel + 24, "1").all().stream()
                    .map(SizedMotionWork::counts)
                    .toList();

            assertThat(all).containsExactlyInAnyOrderElementsOf(tryAll(leaf, leaf + 8, wheel, wheel + 24));
            found += all.size();
        }
        assertThat(found).isPositive();
    }

    /** The oracle: four plain loops, twelve and one centre distance asked of whole numbers. */
    private static List<MotionWork> tryAll(int leastLeaf, int mostLeaf, int leastWheel, int mostWheel) {
        List<MotionWork> works = new ArrayList<>();
        for (int c = leastLeaf; c <= mostLeaf; c++) {
            for (int p = leastLeaf; p <= mostLeaf; p++) {
                for (int w = leastWheel; w <= mostWheel; w++) {
                    for (int h = leastWheel; h <= mostWheel; h++) {
                        if (w * h == 12 * c * p && c + w == p + h) {
                            works.add(new MotionWork(c, w, p, h));
                        }
                    }
                }
            }
        }
        return works;
    }

    @Test
    void the_smallest_centre_distance_comes_first() {
        assertThat(search(8, 15, 24, 60, "1", "1.25").all())
                .extracting(SizedMotionWork::centreDistance)
                .isSorted();
    }

    @Test
    void unequal_centre_distances_are_refused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new SizedMotionWork(new MotionWork(12, 36, 10, 40), ONE, ONE))
                .withMessage("The centre distances (24.0 mm and 25.0 mm) of a motion work must be equal."
                        + " Maybe use two modules.");
    }

    @Test
    void a_search_without_modules_or_without_end_is_refused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> search(8, 12, 24, 96))
                .withMessage("The number of modules (0) must be at least 1. Maybe list one.");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> search(1, 2000, 1, 2000, "1"))
                .withMessageStartingWith(
                        "The number of choices (8.00e+09) of a motion work must be at most 100000000.");
    }

    private static MotionWorkSearch search(
            int leastLeaf, int mostLeaf, int leastWheel, int mostWheel, String... modules) {
        return new MotionWorkSearch(
                new CountRange(leastLeaf, mostLeaf),
                new CountRange(leastWheel, mostWheel),
                Arrays.stream(modules).map(ToothModule::ofMillimetres).toList());
    }
}
