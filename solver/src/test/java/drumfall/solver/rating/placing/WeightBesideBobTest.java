// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.rating.placing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import drumfall.solver.layout.Layout;
import drumfall.solver.power.answers.BobClearance;
import drumfall.solver.rating.TrainRater;
import drumfall.solver.rating.placing.WeightBesideBob.Verdict;
import drumfall.solver.samples.Briefs;
import drumfall.solver.samples.Trains;
import drumfall.solver.train.Train;
import java.util.Locale;
import org.junit.jupiter.api.Test;

/** The weight of the demonstration brief beside its bob. */
class WeightBesideBobTest {
    private static final Train TRAIN = Trains.of("85/10 m1.25 | 66/12 m1.5 · 76/12 m1 · 60/12 m1 · E21", "36", 2);
    private static final double WEIGHT = 4.6;

    /** A layout and what becomes of weight and bob in it. */
    private record Hung(Layout layout, WeightBesideBob beside) {}

    private static Hung hung(String edits) {
        TrainRater rater = new TrainRater(Briefs.demoWith(edits));
        Layout layout =
                new TrainPlacing(rater).place(TRAIN, () -> false).found().orElseThrow();
        return new Hung(layout, WeightBesideBob.of(rater, TRAIN, layout, WEIGHT));
    }

    /** So large that the weight begins its fall beside it. */
    private static String large(double behindMillimetres) {
        return bob(behindMillimetres).replace("90 mm", "200 mm");
    }

    private static String bob(double behindMillimetres) {
        return String.format(
                Locale.ROOT,
                "/pendulum/bob = {\"diameter\": \"90 mm\", \"thickness\": \"24 mm\", \"behindPlate\": \"%.6f mm\"}",
                behindMillimetres);
    }

    // The weight is 80 mm wide, its line 18.75 mm and half of 22 + 1.5 mm beside the drum's axis, its top 100 mm below
    // it;
    // the bob swings below the pallet arbor. A pendulum that beats 7315 times an hour is 240.7 mm long by g (t / π)²;
    // the
    // bob hangs (150 + 10) / (150 + 20 / 3) of it down: 245.8 mm, to a millimetre for the arc.
    @Test
    void both_bodies_hang_where_the_layout_has_them() {
        Hung hung = hung(bob(50));
        BobClearance bodies = hung.beside().clearance();
        double drum =
                1e-9 * (hung.layout().place(0).x() - hung.layout().palletPlace().x());
        double aside = 0.01875 + 0.01175;

        assertThat(Math.abs(bodies.weight().aside() - drum)).isCloseTo(aside, within(1e-8));
        assertThat(bodies.weight().radius()).isEqualTo(0.04);
        assertThat(bodies.weight().fall()).isEqualTo(1.25);
        assertThat(bodies.weight().highestTop())
                .isCloseTo(
                        1e-9
                                        * (hung.layout().palletPlace().y()
                                                - hung.layout().place(0).y())
                                + 0.1,
                        within(1e-8));
        assertThat(bodies.bob().radius()).isEqualTo(0.045);
        assertThat(bodies.bob().thickness()).isEqualTo(0.024);
        assertThat(bodies.bob().distance()).isCloseTo(0.2458, within(0.001));
        // From the drum's rear flange of 2.4 mm through 6 mm of plate and 50 mm behind it.
        assertThat(bodies.weight().before())
                .isCloseTo(1e-9 * hung.layout().planes().drum().from() + 0.0024 + 0.006 + 0.05, within(1e-9));
    }

    @Test
    void a_weight_that_begins_its_fall_below_the_bob_is_clear_whatever_the_plane() {
        WeightBesideBob beside = hung("").beside();

        assertThat(beside.clearance().upright()).isGreaterThan(beside.wanted());
        assertThat(beside.verdict()).isEqualTo(Verdict.CLEAR);
    }

    @Test
    void the_least_distance_behind_the_plate_is_just_enough() {
        double least = 1e3 * hung(large(50)).beside().leastBehindPlate();
        WeightBesideBob just = hung(large(least + 1e-5)).beside();
        WeightBesideBob closer = hung(large(least - 1e-2)).beside();

        assertThat(just.verdict()).isEqualTo(Verdict.CLEAR);
        assertThat(just.clearance().gap()).isCloseTo(just.wanted(), within(1e-7));
        assertThat(closer.verdict()).isEqualTo(Verdict.MAY_MEET);
        assertThat(closer.furtherAside()).isPositive();
    }

    @Test
    void without_the_plane_of_the_bob_only_a_weight_beside_it_is_surely_clear() {
        WeightBesideBob beside = unknown(0.03);

        assertThat(beside.verdict()).isEqualTo(Verdict.PLANE_UNKNOWN);
        assertThat(beside.gap()).isEqualTo(beside.clearance().aside()).isNegative();
        // So much further aside it keeps the distance.
        WeightBesideBob further = unknown(0.03 + beside.furtherAside());
        assertThat(further.gap()).isCloseTo(0.001, within(1e-12));
        assertThat(unknown(0.03 + beside.furtherAside() + 1e-9).verdict()).isEqualTo(Verdict.CLEAR);
        assertThat(unknown(0.5).furtherAside()).isZero();
    }

    private static WeightBesideBob unknown(double aside) {
        BobClearance bodies = new BobClearance(
                new BobClearance.Bob(0.25, 0.05, 0.02),
                Math.toRadians(4),
                new BobClearance.Weight(aside, 0, 0.04, 0.2, 0.1, 1.25));
        return new WeightBesideBob(bodies, 0.01, false, 0.001);
    }
}
