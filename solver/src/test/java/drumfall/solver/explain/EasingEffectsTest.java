// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.explain;

import static org.assertj.core.api.Assertions.assertThat;

import drumfall.solver.brief.Brief;
import drumfall.solver.explain.Easing.Effect;
import drumfall.solver.rating.Demand;
import drumfall.solver.rating.DemandFigure;
import drumfall.solver.rating.Rating;
import drumfall.solver.rating.TrainRater;
import drumfall.solver.samples.Briefs;
import drumfall.solver.samples.SmallBriefs;
import drumfall.solver.samples.Trains;
import drumfall.solver.train.Train;
import java.util.EnumSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/**
 * What each easing is said to touch, against ratings of random trains at eased values. Everything that spares a question
 * about an easing rests on it. Figures that are not touched are equal to the last bit, so no tolerance is needed.
 */
class EasingEffectsTest {
    private static final boolean FULL = "full".equals(System.getProperty("drumfall.samples"));

    @TestFactory
    Stream<DynamicTest> an_easing_touches_the_demands_it_names_and_no_others() {
        List<Brief> briefs = SmallBriefs.some(FULL ? 60 : 2, 40);
        return Easing.of(briefs.get(0)).stream()
                .map(easing -> DynamicTest.dynamicTest(
                        easing.pointer() + " " + easing.way(),
                        () -> briefs.forEach(brief -> touches(brief, easing, 2))));
    }

    @Test
    void the_share_of_builders_and_the_reserve_touch_the_demands_they_name_and_no_others() {
        Brief asking = Briefs.with(SmallBriefs.some(1, 40).get(0), "/weight/builders = \"80 %\"");

        List<Easing> builders = Easing.of(asking).stream()
                .filter(easing -> easing.pointer().equals("/weight/builders")
                        || easing.pointer().equals("/weight/reserve"))
                .toList();

        assertThat(builders).hasSize(2);
        // Every rating counts two thousand builders.
        builders.forEach(easing -> touches(asking, easing, 1));
    }

    private static void touches(Brief brief, Easing easing, int trains) {
        EasingSteps steps = new EasingSteps(brief, easing);
        Random random = new Random(steps.last());
        TrainRater typed = new TrainRater(brief);
        for (int i = 0; i < trains; i++) {
            Train train = Trains.random(brief, random);
            Rating before = typed.rate(train);
            for (int count : new TreeSet<>(List.of(Math.min(1, steps.last()), steps.last()))) {
                Rating after = new TrainRater(steps.at(count).orElseThrow()).rate(train);
                compare(easing, before, after);
            }
        }
    }

    private static void compare(Easing easing, Rating before, Rating after) {
        Set<Demand> touched = EnumSet.noneOf(Demand.class);
        if (easing.effect() != Effect.CHOICE) {
            touched.addAll(easing.eases());
            touched.addAll(easing.hardens());
        }
        assertThat(after.demands()).hasSameSizeAs(before.demands());
        for (int i = 0; i < before.demands().size(); i++) {
            DemandFigure was = before.demands().get(i);
            DemandFigure is = after.demands().get(i);
            String what = easing + " " + was + " " + is;
            assertThat(is.demand()).isEqualTo(was.demand());
            if (!touched.contains(was.demand())) {
                assertThat(is.figure()).as(what).isEqualTo(was.figure());
            }
            if (was.met() && !easing.hardens().contains(was.demand())) {
                assertThat(is.met()).as(what).isTrue();
            }
            if (is.met() && !easing.eases().contains(was.demand())) {
                assertThat(was.met()).as(what).isTrue();
            }
        }
        if (easing.effect() != Effect.OPEN) {
            assertThat(after.recommendedWeight()).as("%s", easing).isEqualTo(before.recommendedWeight());
        }
    }
}
