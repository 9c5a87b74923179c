// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.search;

import static org.assertj.core.api.Assertions.assertThat;

import drumfall.solver.brief.Brief;
import drumfall.solver.halves.HalfJoin;
import drumfall.solver.halves.HalfTables;
import drumfall.solver.halves.LowerHalf;
import drumfall.solver.halves.LowerHalves;
import drumfall.solver.halves.UpperHalf;
import drumfall.solver.halves.UpperHalves;
import drumfall.solver.rating.Rating;
import drumfall.solver.rating.TrainRater;
import drumfall.solver.samples.Briefs;
import drumfall.solver.samples.Trains;
import drumfall.solver.train.Train;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;

/**
 * Two derivations of counts from print: a brief pinned to their givens must allow the published counts, found by the search's
 * own lists and not put in. Sixteen turns of an effective drum of 40 mm take 16 π 40 mm = 2.01062 m of line; the fall is
 * rounded up to 2.0107 m, since the duration must be reached.
 */
class PublishedTrainsInTheFeasibleSetTest {
    private static final String COMMON = "/fall/height = \"2.0107 m\""
            + " & /drum/diameter = {\"from\": \"38.5 mm\", \"to\": \"38.5 mm\", \"step\": \"1 mm\"}"
            + " & /parts/hubWall = \"0 mm\" & /line/falls = [1] & /line/ratedLoad = \"100000 N\" & /weight/limit = \"500 kg\""
            + " & /beat = {\"beatsPerHour\": {\"from\": \"3600\", \"to\": \"3600\"}, \"secondsHand\": true}"
            + " & /escapement/teeth = {\"from\": 30, \"to\": 30, \"step\": 1} & /pendulum/bobMass = \"1 kg\""
            + " & /teeth/modules = [\"1 mm\"] & /material/allowable = \"200 MPa\"";

    // W. Derham, The Artificial Clock-Maker, 1696, ch. II.2 § 11: eight days, sixteen turns, seconds, thirty teeth,
    // pinions of
    // eight: 96, 64, 60.
    private static final String EIGHT_DAYS = COMMON
            + " & /run = {\"atLeast\": \"8 d\", \"wanted\": \"8 d\", \"atMost\": \"8.05 d\"}"
            + " & /teeth/wheelTeeth = {\"from\": 24, \"to\": 120} & /teeth/leaves = {\"from\": 8, \"to\": 8}"
            + " & /train = {\"above\": {\"from\": 1, \"to\": 1}, \"below\": {\"from\": 2, \"to\": 2}}";

    // Oiled brass and steel and a heavy pendulum, orders of magnitude from memory: a printed movement does not run a
    // year.
    private static final String OILED = " & /friction = {\"teeth\": {\"low\": \"0.1\", \"high\": \"0.1\"},"
            + " \"bores\": {\"low\": \"0.1\", \"high\": \"0.1\"}, \"pallets\": {\"low\": \"0.1\", \"high\": \"0.1\"},"
            + " \"staticFactor\": \"1.2\"} & /pendulum/quality = {\"low\": \"5000\", \"high\": \"5000\"}"
            + " & /hands/torque = \"0.1 N mm\"";

    // E. Beckett, A Rudimentary Treatise on Clocks, Watches and Bells, 8th ed. 1903, p. 138: 380 days on sixteen turns
    // with
    // pinions of 12, 10 and 10 above the centre: 100, 90, 76. Below the centre the common 64/8, 60/8 (pp. 22-23).
    private static final String YEAR = COMMON
            + OILED
            + " & /run = {\"atLeast\": \"380 d\", \"wanted\": \"380 d\", \"atMost\": \"380.5 d\"}"
            + " & /teeth/wheelTeeth = {\"from\": 60, \"to\": 100} & /teeth/leaves = {\"from\": 8, \"to\": 12}"
            + " & /train = {\"above\": {\"from\": 3, \"to\": 3}, \"below\": {\"from\": 2, \"to\": 2}}"
            + " & /locks/meshes = [" + leaves("above", 1, 12) + ", " + leaves("above", 2, 10) + ", "
            + leaves("above", 3, 10) + ", " + leaves("below", 1, 8) + ", " + leaves("below", 2, 8) + "]";

    @Test
    void the_eight_day_seconds_train_follows_from_its_givens() {
        List<Train> trains = feasible(Briefs.demoWith(EIGHT_DAYS));

        assertThat(trains).contains(Trains.of("96/8 m1 | 64/8 m1 · 60/8 m1 · E30", "38.5", 1));
        // Other splits of sixty are there too, and nothing but sixty; 60 before 64 is not, its second wheel meets the
        // centre
        // arbor at one module.
        assertThat(trains).contains(Trains.of("96/8 m1 | 80/8 m1 · 48/8 m1 · E30", "38.5", 1));
        assertThat(trains)
                .allMatch(train ->
                        train.below().get(0).toothCount() * train.below().get(1).toothCount() == 60 * 64);
    }

    @Test
    void the_year_clock_follows_from_its_givens() {
        List<Train> trains = feasible(Briefs.demoWith(YEAR));

        assertThat(trains).contains(Trains.of("100/12 m1 · 90/10 m1 · 76/10 m1 | 64/8 m1 · 60/8 m1 · E30", "38.5", 1));
    }

    @Test
    void the_search_proves_the_only_train_when_two_wheels_are_held() {
        Brief brief =
                Briefs.demoWith(EIGHT_DAYS + " & /locks/meshes = [{\"place\": {\"side\": \"above\", \"number\": 1},"
                        + " \"wheel\": 96}, {\"place\": {\"side\": \"below\", \"number\": 1}, \"wheel\": 64}]");

        SearchOutcome outcome = TrainSearch.run(brief, SearchListener.SILENT, () -> false);

        assertThat(outcome).isInstanceOf(SearchOutcome.Proved.class);
        assertThat(outcome.front().stream().map(Rating::train))
                .containsExactly(Trains.of("96/8 m1 | 64/8 m1 · 60/8 m1 · E30", "38.5", 1));
        assertThat(outcome.front().get(0).train().going().hoursPerTurn(0)).isEqualTo(BigFraction.of(12));
    }

    /** All trains of the brief: every lower half with every upper half that fits. */
    private static List<Train> feasible(Brief brief) {
        TrainRater rater = new TrainRater(brief);
        HalfJoin join = new HalfJoin(rater);
        List<LowerHalf> lowers =
                LowerHalves.all(new HalfTables(rater), brief.train().below().from(), () -> false);
        List<UpperHalf> uppers =
                UpperHalves.all(new HalfTables(rater), brief.train().above().from(), lowers, () -> false);
        List<Train> trains = new ArrayList<>();
        for (UpperHalf upper : uppers) {
            for (LowerHalf lower : lowers) {
                if (rater.rate(join.train(upper, lower)).feasible()) {
                    trains.add(join.train(upper, lower));
                }
            }
        }
        return trains;
    }

    private static String leaves(String side, int number, int held) {
        return "{\"place\": {\"side\": \"%s\", \"number\": %d}, \"leaves\": %d}".formatted(side, number, held);
    }
}
