// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.explain;

import static drumfall.solver.explain.ExplainShortcut.CLASH_STANDS;
import static drumfall.solver.explain.ExplainShortcut.FALL_SPANS;
import static drumfall.solver.explain.ExplainShortcut.HALVE_STEPS;
import static drumfall.solver.explain.ExplainShortcut.LIGHTEST_AT_ONCE;
import static drumfall.solver.explain.ExplainShortcut.MARK_WIDENED;
import static drumfall.solver.explain.ExplainShortcut.NEEDED_ALONE;
import static drumfall.solver.explain.ExplainShortcut.NEW_TRAINS_ONLY;
import static drumfall.solver.explain.ExplainShortcut.NO_HEAVIER;
import static drumfall.solver.explain.ExplainShortcut.RATE_TIGHTER;
import static drumfall.solver.explain.ExplainShortcut.SET_ASIDE;
import static org.assertj.core.api.Assertions.assertThat;

import drumfall.solver.brief.Brief;
import drumfall.solver.explain.Easing.Effect;
import drumfall.solver.explain.Nearest.Verdict;
import drumfall.solver.rating.Rating;
import drumfall.solver.samples.Briefs;
import drumfall.solver.samples.SmallBriefs;
import drumfall.solver.search.PlainLoops;
import drumfall.solver.search.QuestionSettings;
import drumfall.solver.search.QuestionShortcut;
import drumfall.solver.search.SearchListener;
import drumfall.solver.search.TrainExistence;
import drumfall.solver.search.TrainSearch;
import java.util.DoubleSummaryStatistics;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** Explanations with each of their shortcuts left out in turn: the same comes out, only later. */
class ShortcutsLeftOutTest {
    private static final boolean FULL = "full".equals(System.getProperty("drumfall.samples"));
    private static final int MOST = 12;

    /** Steps gone through one by one at most, where a shortcut spares that. */
    private static final int STEPS = 15;

    private static final Set<ExplainShortcut> OF_LISTS = EnumSet.of(NEEDED_ALONE, MARK_WIDENED);
    /** Those of the smallest clash are left out where that is looked for. */
    private static final QuestionShortcut[] OF_QUESTIONS = EnumSet.complementOf(
                    EnumSet.of(QuestionShortcut.THIN_FIRST, QuestionShortcut.WIDEN_MET))
            .toArray(QuestionShortcut[]::new);

    private static final Set<ExplainShortcut> OF_COSTS = EnumSet.of(NO_HEAVIER);
    private static final Set<ExplainShortcut> OF_VALUES =
            EnumSet.complementOf(EnumSet.of(NEEDED_ALONE, MARK_WIDENED, NO_HEAVIER));

    private static final Map<Brief, Clashes> LISTED = new ConcurrentHashMap<>();
    private static final Map<String, List<Brief>> MISSED = new ConcurrentHashMap<>();
    private static final Map<Map.Entry<Brief, Easing>, Nearest> KNOWN = new ConcurrentHashMap<>();

    private static Map<String, ExplainSettings> without(Set<ExplainShortcut> shortcuts, QuestionShortcut... questions) {
        Map<String, ExplainSettings> settings = new LinkedHashMap<>();
        shortcuts.forEach(shortcut -> settings.put("without " + shortcut, ExplainSettings.USUAL.without(shortcut)));
        for (QuestionShortcut shortcut : questions) {
            settings.put("without " + shortcut, ExplainSettings.USUAL.asking(QuestionSettings.USUAL.without(shortcut)));
        }
        return settings;
    }

    /** Small briefs in which several demands are missed at once, each by little, so that clashes share demands. */
    private static List<Brief> missedSeveral() {
        return MISSED.computeIfAbsent(
                "several",
                key -> SmallBriefs.fewer(FULL ? 300 : 60, 7).stream()
                        .filter(brief -> brief.train().below().to() == 1)
                        .flatMap(brief -> edits(brief).limit(3).reduce((one, more) -> one + " & " + more).stream()
                                .map(edit -> Briefs.with(brief, edit)))
                        .limit(FULL ? 40 : 3)
                        .toList());
    }

    private static Stream<Brief> withoutTrains() {
        return Stream.concat(missed().stream().limit(FULL ? 40 : 2), missedSeveral().stream());
    }

    @TestFactory
    Stream<DynamicTest> the_same_clashes_are_listed() {
        Map<String, ExplainSettings> settings = without(OF_LISTS, OF_QUESTIONS);
        return settings.entrySet().stream()
                .map(entry -> DynamicTest.dynamicTest(
                        entry.getKey(),
                        () -> withoutTrains()
                                .forEach(brief -> assertThat(list(brief, entry.getValue()))
                                        .isEqualTo(listed(brief)))));
    }

    @Test
    void the_lists_compared_are_complete_some_hold_several_clashes_and_some_a_large_one() {
        List<Clashes> lists = withoutTrains().map(ShortcutsLeftOutTest::listed).toList();

        assertThat(lists).allMatch(Clashes::complete);
        assertThat(lists).anyMatch(clashes -> clashes.list().size() > 3);
        assertThat(lists)
                .anyMatch(clashes -> clashes.list().stream()
                        .anyMatch(clash -> clash.demands().size() > 3));
    }

    private static Clashes listed(Brief brief) {
        return LISTED.computeIfAbsent(brief, asked -> list(asked, ExplainSettings.USUAL));
    }

    private static Clashes list(Brief brief, ExplainSettings settings) {
        return ClashLister.of(brief, MOST, known -> {}, SearchListener.SILENT, () -> false, settings);
    }

    /** Small briefs that just miss all the trains they had: a lighter one, a longer or shorter run, another beat is asked for. */
    private static List<Brief> missed() {
        return MISSED.computeIfAbsent(
                "one",
                key -> SmallBriefs.fewer(FULL ? 300 : 60, 7).stream()
                        .filter(brief -> brief.train().below().to() == 1)
                        .flatMap(brief -> edits(brief).map(edit -> Briefs.with(brief, edit)))
                        .filter(brief -> !hasTrains(brief))
                        .limit(FULL ? 80 : 2)
                        .toList());
    }

    private static Stream<String> edits(Brief brief) {
        List<Rating> trains = PlainLoops.feasible(brief);
        if (trains.isEmpty()) {
            return Stream.empty();
        }
        DoubleSummaryStatistics hours = trains.stream()
                .mapToDouble(rating -> rating.durationRoundedDown().doubleValue())
                .summaryStatistics();
        double lightest =
                trains.stream().mapToDouble(Rating::recommendedWeight).min().orElseThrow();
        long beats = trains.stream()
                .mapToLong(
                        rating -> (long) rating.train().going().beatsPerHour().doubleValue())
                .max()
                .orElseThrow();
        return Stream.of(
                run(1.01 * hours.getMax()),
                "/weight/limit = \"%.4f kg\"".formatted(0.985 * lightest),
                "/beat/beatsPerHour = {\"from\": \"%d\", \"to\": \"%d\"}".formatted(beats + 2, beats + 3),
                run(0.98 * hours.getMin()));
    }

    /** So narrow that most heights of fall miss it. */
    private static String run(double hours) {
        return "/run = {\"atLeast\": \"%.4f h\", \"wanted\": \"%.4f h\", \"atMost\": \"%.4f h\"}"
                .formatted(hours, 1.001 * hours, 1.002 * hours);
    }

    private static boolean hasTrains(Brief brief) {
        return !TrainSearch.unexplained(brief, SearchListener.SILENT, () -> false)
                .front()
                .isEmpty();
    }

    @TestFactory
    Stream<DynamicTest> the_same_values_are_nearest() {
        return without(OF_VALUES, QuestionShortcut.ONE_OBJECTIVE, QuestionShortcut.FIRST_TRAIN).entrySet().stream()
                .map(entry -> DynamicTest.dynamicTest(entry.getKey(), () -> sameValues(entry.getValue())));
    }

    private static void sameValues(ExplainSettings settings) {
        int compared = 0;
        int found = 0;
        boolean stands = !settings.take(CLASH_STANDS);
        for (Brief brief : missed().subList(0, stands && !FULL ? 1 : missed().size())) {
            for (Easing easing : Easing.of(brief)) {
                if (!concerns(settings, easing)) {
                    continue;
                }
                Clashes clashes = stands ? listed(brief) : new Clashes(List.of(), false);
                Nearest usual = stands
                        ? NearestValues.of(brief, easing, clashes, () -> false)
                        : KNOWN.computeIfAbsent(
                                Map.entry(brief, easing), key -> NearestValues.of(brief, easing, clashes, () -> false));
                if (stands ? usual.standing().isEmpty() : inVain(settings, usual)) {
                    continue;
                }
                if (walks(settings) && !isNear(brief, usual)) {
                    firstStepsHaveNone(brief, easing);
                    continue;
                }
                Nearest other = NearestValues.of(brief, easing, clashes, () -> false, settings);
                String what = usual + " " + other;
                assertThat(other.verdict()).as(what).isEqualTo(usual.verdict());
                if (!stands) {
                    assertThat(other.value()).as(what).isEqualTo(usual.value());
                }
                assertThat(other.train().filter(Rating::feasible).isPresent())
                        .as(what)
                        .isEqualTo(usual.verdict() == Verdict.NEAREST);
                compared++;
                found += usual.verdict() == Verdict.NEAREST ? 1 : 0;
            }
        }
        assertThat(compared).isPositive();
        assertThat(stands || found > 0).isTrue();
    }

    /** Each shortcut is taken for few figures only; asking all others anew would show nothing. */
    private static boolean concerns(ExplainSettings settings, Easing easing) {
        Map<ExplainShortcut, Predicate<Easing>> taken = Map.of(
                CLASH_STANDS, one -> one.pointer().matches("/(run|line|frame)/.*"),
                HALVE_STEPS, one -> one.effect() == Effect.LIMIT || one.effect() == Effect.CHOICE,
                RATE_TIGHTER, one -> one.effect() == Effect.LIMIT || one.effect() == Effect.CHOICE,
                LIGHTEST_AT_ONCE, one -> one.pointer().equals("/weight/limit"),
                SET_ASIDE, one -> one.effect() == Effect.TRADE,
                FALL_SPANS, one -> one.effect() == Effect.TRADE,
                NEW_TRAINS_ONLY, one -> one.pointer().matches("/(run|beat|escapement|drum/diameter|train)/.*"));
        return taken.entrySet().stream()
                .filter(entry -> !settings.take(entry.getKey()))
                .findFirst()
                .map(entry -> entry.getValue().test(easing))
                .orElseGet(() ->
                        easing.pointer().startsWith("/run") || easing.pointer().startsWith("/drum"));
    }

    /** Whether a shortcut is left out that is taken only where a train is found, and none is. */
    private static boolean inVain(ExplainSettings settings, Nearest usual) {
        return (!settings.take(RATE_TIGHTER) || !settings.take(LIGHTEST_AT_ONCE)) && usual.verdict() != Verdict.NEAREST;
    }

    private static boolean walks(ExplainSettings settings) {
        return !settings.take(HALVE_STEPS) || !settings.take(SET_ASIDE) || !settings.take(FALL_SPANS);
    }

    private static boolean isNear(Brief brief, Nearest nearest) {
        EasingSteps steps = new EasingSteps(brief, nearest.easing());
        return nearest.verdict() == Verdict.NEAREST
                && IntStream.rangeClosed(1, Math.min(STEPS, steps.last()))
                        .anyMatch(count -> steps.text(count).equals(nearest.value()));
    }

    /** Where the answer is too far away for going there step by step, it is not among the first steps either. */
    private static void firstStepsHaveNone(Brief brief, Easing easing) {
        EasingSteps steps = new EasingSteps(brief, easing);
        int most = Math.min(easing.effect() == Effect.TRADE ? STEPS : 1, steps.last());
        for (int count = 1; count <= most; count++) {
            assertThat(TrainExistence.of(steps.at(count).orElseThrow(), Set.of(), () -> false)
                            .none())
                    .as("%s %d", easing, count)
                    .isTrue();
        }
    }

    /** Such a brief holds neither lengths nor beats, so that every question about it is asked in pieces. */
    @Test
    void the_same_weight_is_nearest_where_a_seconds_hand_alone_holds_the_beat() {
        Brief brief = Briefs.demoWith("/beat = {\"secondsHand\": true} & /frame/arrangement = \"unplaced\""
                + " & /train = {\"above\": {\"from\": 1, \"to\": 1}, \"below\": {\"from\": 2, \"to\": 2}}"
                + " & /teeth/wheelTeeth = {\"from\": 60, \"to\": 64} & /teeth/leaves = {\"from\": 8, \"to\": 8}"
                + " & /run = {\"atLeast\": \"1 d\", \"wanted\": \"8 d\", \"atMost\": \"20 d\"} & /weight/limit = \"0.5 kg\""
                + " & /line/ratedLoad = \"20000 N\" & /material/allowable = \"200 MPa\"");
        Easing weight = Easing.of(brief).stream()
                .filter(easing -> easing.pointer().equals("/weight/limit"))
                .findFirst()
                .orElseThrow();
        ExplainSettings whole =
                ExplainSettings.USUAL.asking(QuestionSettings.USUAL.without(QuestionShortcut.LENGTHS_IN_PIECES));

        Nearest usual = NearestValues.of(brief, weight, new Clashes(List.of(), false), () -> false);

        assertThat(usual.verdict()).isEqualTo(Verdict.NEAREST);
        assertThat(NearestValues.of(brief, weight, new Clashes(List.of(), false), () -> false, whole))
                .isEqualTo(usual);
    }

    @TestFactory
    Stream<DynamicTest> the_same_costs_are_told() {
        return without(OF_COSTS).entrySet().stream()
                .map(entry -> DynamicTest.dynamicTest(entry.getKey(), () -> sameCosts(entry.getValue())));
    }

    private static void sameCosts(ExplainSettings settings) {
        int gains = 0;
        for (Brief small : SmallBriefs.fewer(FULL ? 100 : 3, 1)) {
            // Wide cells hold several trains each; which of them stands for its cell must not change.
            Brief brief = Briefs.with(
                    small,
                    "/objectives = [{\"figure\": \"filament-mass\", \"resolution\": \"3 %\"},"
                            + " {\"figure\": \"recommended-weight\", \"resolution\": \"10 %\"}]");
            List<Rating> front = TrainSearch.unexplained(brief, SearchListener.SILENT, () -> false)
                    .front();
            for (Rating chosen : front.subList(0, Math.min(front.size(), FULL ? 4 : 1))) {
                List<Cost> usual = costs(brief, chosen, ExplainSettings.USUAL);

                List<Cost> other = costs(brief, chosen, settings);

                assertThat(other).isEqualTo(usual);
                gains += (int) usual.stream().filter(cost -> cost.gain() > 0).count();
            }
        }
        assertThat(gains).isPositive();
    }

    private static List<Cost> costs(Brief brief, Rating chosen, ExplainSettings settings) {
        return DemandCosts.of(brief, chosen.train(), cost -> {}, SearchListener.SILENT, () -> false, settings);
    }
}
