// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.search;

import static org.assertj.core.api.Assertions.assertThat;

import drumfall.solver.brief.Brief;
import drumfall.solver.rating.Demand;
import drumfall.solver.rating.DemandFigure;
import drumfall.solver.rating.Rating;
import drumfall.solver.samples.SmallBriefs;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/**
 * The smallest clash against every set of demands. Plain loops rate every train; a set of demands clashes if each train
 * misses one of them, so a smallest clash is a smallest set that shares a demand with what every train misses.
 */
class SmallestClashTest {
    private static final int BRIEFS = "full".equals(System.getProperty("drumfall.samples")) ? 100 : 12;

    private static final int LEFT_OUT = BRIEFS / 6;

    /** Choices of the brief and laws of the trade: a train that misses one of these is none. */
    private static final Set<Demand> NEVER_DROPPED = EnumSet.of(Demand.ARC, Demand.STEPS_UP);

    @TestFactory
    Stream<DynamicTest> no_smaller_set_of_demands_clashes() {
        return SmallBriefs.fewer(12 * BRIEFS, 1).stream()
                .map(brief ->
                        TrainSearch.run(brief, SearchListener.SILENT, () -> false) instanceof SearchOutcome.NoTrain none
                                ? DynamicTest.dynamicTest(
                                        none.clash().demands().toString(), () -> smallest(brief, none.clash()))
                                : null)
                .filter(test -> test != null)
                .limit(BRIEFS);
    }

    /** Each shortcut left out, then all; the briefs are few, since some questions are then asked a hundred times. */
    @TestFactory
    Stream<DynamicTest> nor_does_one_if_shortcuts_are_left_out() {
        List<QuestionSettings> settings = new ArrayList<>();
        for (QuestionShortcut shortcut : QuestionShortcut.values()) {
            settings.add(QuestionSettings.USUAL.without(shortcut));
        }
        settings.add(QuestionSettings.USUAL.without(QuestionShortcut.values()));
        return SmallBriefs.fewer(1)
                .filter(brief -> TrainSearch.unexplained(brief, SearchListener.SILENT, () -> false)
                        .front()
                        .isEmpty())
                .limit(LEFT_OUT)
                .flatMap(brief -> settings.stream()
                        .map(setting -> DynamicTest.dynamicTest(
                                setting.taken().toString(),
                                () -> smallest(
                                        brief,
                                        ClashFinder.smallestClash(
                                                brief, SearchListener.SILENT, () -> false, setting)))));
    }

    private static void smallest(Brief brief, Clash clash) {
        Set<Set<String>> missed = new HashSet<>();
        for (Rating rating : PlainLoops.all(brief)) {
            if (rating.missed().noneMatch(figure -> NEVER_DROPPED.contains(figure.demand()))
                    && Double.isFinite(rating.recommendedWeight())) {
                missed.add(rating.missed().map(SmallestClashTest::name).collect(Collectors.toSet()));
            }
        }
        List<String> demands = new ArrayList<>(
                new TreeSet<>(missed.stream().flatMap(Set::stream).toList()));
        Set<String> found =
                clash.demands().stream().map(SmallestClashTest::name).collect(Collectors.toSet());

        assertThat(clash.smallest()).isTrue();
        assertThat(missed).allMatch(set -> set.stream().anyMatch(found::contains));
        assertThat(found).hasSize(fewest(demands, missed));
    }

    private static int fewest(List<String> demands, Set<Set<String>> missed) {
        List<Long> bits = missed.stream()
                .map(set -> set.stream()
                        .mapToLong(name -> 1L << demands.indexOf(name))
                        .sum())
                .toList();
        int fewest = Integer.MAX_VALUE;
        for (long set = 0; set < 1L << demands.size(); set++) {
            long held = set;
            if (Long.bitCount(set) < fewest && bits.stream().allMatch(miss -> (miss & held) != 0)) {
                fewest = Long.bitCount(set);
            }
        }
        return fewest;
    }

    private static String name(DemandFigure figure) {
        return figure.demand() == Demand.LOCK
                ? "LOCK " + figure.place()
                : figure.demand().name();
    }

    private static String name(HeldDemand held) {
        return switch (held.pointer()) {
            case "/locks/escapeTeeth" -> "LOCK escape wheel";
            case "/locks/falls" -> "LOCK falls";
            case "/locks/meshes/0/wheel" -> "LOCK below-1 wheel";
            default -> held.demand().name();
        };
    }
}
