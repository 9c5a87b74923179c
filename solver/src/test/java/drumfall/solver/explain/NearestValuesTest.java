// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.explain;

import static org.assertj.core.api.Assertions.assertThat;

import drumfall.solver.brief.Brief;
import drumfall.solver.brief.BriefChange;
import drumfall.solver.explain.Nearest.Verdict;
import drumfall.solver.rating.Rating;
import drumfall.solver.samples.Briefs;
import drumfall.solver.samples.SmallBriefs;
import drumfall.solver.search.PlainLoops;
import drumfall.solver.search.SearchListener;
import drumfall.solver.search.TrainSearch;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** Nearest values against plain loops over every train of the changed brief. */
class NearestValuesTest {
    private static final boolean FULL = "full".equals(System.getProperty("drumfall.samples"));

    @TestFactory
    Stream<DynamicTest> the_nearest_value_has_a_train_and_one_step_tighter_has_none() {
        return ClashListerTest.withoutTrains(FULL ? 40 : 2, 7)
                .map(brief -> DynamicTest.dynamicTest(
                        brief.run() + " " + brief.weight().limit(), () -> asPlainLoopsSay(brief)));
    }

    private static void asPlainLoopsSay(Brief brief) {
        Clashes clashes = ClashLister.of(brief, 6, SearchListener.SILENT, () -> false);
        for (Easing easing : eased(brief)) {
            Nearest nearest = NearestValues.of(brief, easing, clashes, () -> false);
            EasingSteps steps = new EasingSteps(brief, easing);
            String what = easing.pointer() + " " + easing.way() + " " + nearest;
            if (nearest.verdict() == Verdict.NEAREST) {
                int count = count(steps, nearest.value());
                assertThat(PlainLoops.none(steps.at(count).orElseThrow()))
                        .as(what)
                        .isFalse();
                assertThat(PlainLoops.none(steps.at(count - 1).orElseThrow()))
                        .as(what)
                        .isTrue();
                assertThat(nearest.train()).get().matches(Rating::feasible, what);
            } else if (nearest.verdict() == Verdict.NONE) {
                assertThat(PlainLoops.none(steps.at(steps.last()).orElseThrow()))
                        .as(what)
                        .isTrue();
            }
        }
    }

    /** Longer ranges of wheels and more meshes make too many trains for plain loops. */
    private static List<Easing> eased(Brief brief) {
        return Easing.of(brief).stream()
                .filter(easing -> !easing.pointer().startsWith("/train")
                        && !easing.pointer().startsWith("/teeth/wheelTeeth")
                        && !easing.pointer().startsWith("/teeth/leaves")
                        && !easing.pointer().startsWith("/escapement/teeth"))
                .toList();
    }

    private static int count(EasingSteps steps, String value) {
        for (int count = 1; count <= steps.last(); count++) {
            if (steps.text(count).equals(value)) {
                return count;
            }
        }
        throw new AssertionError("The value " + value + " is on no step.");
    }

    /** Every tighter step of a figure that makes one demand easier and another harder is empty, not only the last. */
    @Test
    void no_smaller_height_of_fall_has_a_train() {
        int enough = FULL ? 10 : 2;
        List<Integer> found = new ArrayList<>();
        Iterator<Brief> briefs =
                ClashListerTest.withoutTrains(FULL ? 60 : 12, 1).iterator();
        while (found.size() < enough && briefs.hasNext()) {
            Brief brief = briefs.next();
            Easing fall = Easing.of(brief).get(0);
            Nearest nearest = NearestValues.of(brief, fall, new Clashes(List.of(), false), () -> false);
            if (nearest.verdict() == Verdict.NEAREST) {
                EasingSteps steps = new EasingSteps(brief, fall);
                int count = count(steps, nearest.value());
                for (int tighter = Math.max(1, count - 5); tighter < count; tighter++) {
                    assertThat(PlainLoops.none(steps.at(tighter).orElseThrow())).isTrue();
                }
                found.add(count);
            }
        }
        assertThat(found).isNotEmpty();
    }

    @Test
    void a_clash_that_the_figure_cannot_touch_answers_at_once() {
        Brief brief = ClashListerTest.withoutTrains(1, 1).findFirst().orElseThrow();
        Clashes clashes = ClashLister.of(brief, 6, SearchListener.SILENT, () -> false);
        Easing untouched = Easing.of(brief).stream()
                .filter(easing -> easing.effect() == Easing.Effect.LIMIT
                        && clashes.list().stream().noneMatch(clash -> clash.holdsAny(easing.eases())))
                .findFirst()
                .orElseThrow();

        Nearest nearest = NearestValues.of(brief, untouched, clashes, () -> {
            throw new AssertionError("Nothing needs to be searched.");
        });

        assertThat(nearest.verdict()).isEqualTo(Verdict.NONE);
        assertThat(nearest.standing()).hasValue(0);
    }

    /** Click and hands stand farther in then and weigh less on their arbors, by parts in a hundred million. */
    @Test
    void a_smaller_gap_can_meet_a_weight_that_is_missed_by_next_to_nothing() {
        Brief brief = SmallBriefs.some(9, 1).stream()
                .filter(candidate -> !front(candidate).isEmpty())
                .map(candidate -> Briefs.with(
                        candidate, "/objectives = [{\"figure\": \"recommended-weight\", \"resolution\": \"0.1 g\"}]"))
                .findFirst()
                .orElseThrow();
        double lightest = front(brief).get(0).recommendedWeight();
        double closer =
                front(Briefs.with(brief, "/parts/gap = \"0.1 mm\"")).get(0).recommendedWeight();
        assertThat(closer).isLessThan(lightest);
        Brief missed = Briefs.with(brief, "/weight/limit = \"%.12f kg\"".formatted((lightest + closer) / 2));
        Clashes clashes = ClashLister.of(missed, 6, SearchListener.SILENT, () -> false);
        Easing gap = Easing.of(missed).stream()
                .filter(easing -> easing.pointer().equals("/parts/gap"))
                .findFirst()
                .orElseThrow();

        Nearest nearest = NearestValues.of(missed, gap, clashes, () -> false);

        assertThat(clashes.list()).isNotEmpty();
        assertThat(nearest.verdict()).isEqualTo(Verdict.NEAREST);
        assertThat(front(Briefs.with(missed, "/parts/gap = \"" + nearest.value() + "\"")))
                .isNotEmpty();
    }

    /** Wherever the answer lies between the brief and the last step, no halving may end beside it. */
    @Test
    void halving_ends_at_the_first_limit_that_the_lightest_train_keeps() {
        Brief brief = lightestAsked();
        double lightest = front(brief).get(0).recommendedWeight();
        int enough = (int) Math.ceil(lightest * 100);
        ExplainSettings settings =
                ExplainSettings.USUAL.without(ExplainShortcut.RATE_TIGHTER, ExplainShortcut.LIGHTEST_AT_ONCE);
        for (int missed = 1; missed <= 8; missed++) {
            Brief tight = Briefs.with(brief, "/weight/limit = \"%.2f kg\"".formatted((enough - missed) / 100.0));
            Easing weight = Easing.of(tight).stream()
                    .filter(easing -> easing.pointer().equals("/weight/limit"))
                    .findFirst()
                    .orElseThrow();

            Nearest nearest = NearestValues.of(tight, weight, new Clashes(List.of(), false), () -> false, settings);

            assertThat(nearest.verdict()).isEqualTo(Verdict.NEAREST);
            assertThat(nearest.value()).isEqualTo(new EasingSteps(tight, weight).text(missed));
        }
    }

    /** A small brief whose lightest train weighs some kg, so that limits go by steps of 0.01 kg. */
    private static Brief lightestAsked() {
        return SmallBriefs.some(40, 1).stream()
                .map(candidate -> Briefs.with(
                        candidate, "/objectives = [{\"figure\": \"recommended-weight\", \"resolution\": \"0.1 g\"}]"))
                .filter(candidate -> front(candidate).stream()
                        .anyMatch(train -> train.recommendedWeight() > 1.2 && train.recommendedWeight() < 9.8))
                .findFirst()
                .orElseThrow();
    }

    private static List<Rating> front(Brief brief) {
        return TrainSearch.unexplained(brief, SearchListener.SILENT, () -> false)
                .front();
    }

    @Test
    void a_search_that_is_cut_short_names_no_value() {
        Brief brief = ClashListerTest.withoutTrains(1, 1).findFirst().orElseThrow();
        for (Easing easing : Easing.of(brief)) {
            Nearest nearest = NearestValues.of(brief, easing, new Clashes(List.of(), false), () -> true);
            assertThat(nearest.verdict())
                    .isEqualTo(new EasingSteps(brief, easing).last() == 0 ? Verdict.NONE : Verdict.UNKNOWN);
        }
    }

    @Test
    void every_easing_names_a_field_of_the_brief() {
        Brief brief = ClashListerTest.withoutTrains(1, 1).findFirst().orElseThrow();
        assertThat(Easing.of(brief))
                .hasSizeGreaterThan(25)
                .allMatch(easing -> !BriefChange.typed(brief, easing.pointer()).isEmpty());
    }
}
