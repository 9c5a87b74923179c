// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.search;

import static org.assertj.core.api.Assertions.assertThat;

import drumfall.solver.brief.Brief;
import drumfall.solver.layout.check.LayoutCheck;
import drumfall.solver.rating.Demand;
import drumfall.solver.rating.Rating;
import drumfall.solver.rating.TrainRater;
import drumfall.solver.rating.placing.Placement;
import drumfall.solver.rating.placing.TrainPlacing;
import drumfall.solver.samples.Briefs;
import drumfall.solver.train.Train;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The front holds the trains that have places for their arbors, and loses none behind one that has not. */
class PlacedTrainsTest {
    private static final String FEW =
            "/train = {\"above\": {\"from\": 1, \"to\": 1}, \"below\": {\"from\": 2, \"to\": 2}}"
                    + " & /teeth/wheelTeeth = {\"from\": 75, \"to\": 76} & /teeth/leaves = {\"from\": 8, \"to\": 8}"
                    + " & /teeth/modules = [\"1 mm\", \"1.25 mm\"] & /escapement/teeth = {\"from\": 30, \"to\": 30, \"step\": 3}"
                    + " & /run = {\"atLeast\": \"1 d\", \"wanted\": \"8 d\", \"atMost\": \"20 d\"} & /weight/limit = \"60 kg\""
                    + " & /beat = {\"beatsPerHour\": {\"from\": \"4000\", \"to\": \"6000\"}, \"secondsHand\": false}"
                    + " & /line/ratedLoad = \"20000 N\" & /material/allowable = \"200 MPa\"";

    /** A frame that takes the wheels side by side, but not the train. */
    private static final String LOW = FEW + frame("140 mm", "110 mm");

    private static String frame(String width, String height) {
        return " & /frame/width = \"" + width + "\" & /frame/height = \"" + height + "\"";
    }

    /** Frames in which all trains have places, about half, one in eight and none. */
    @ParameterizedTest
    @CsvSource({"220 mm, 320 mm", "120 mm, 220 mm", "140 mm, 160 mm", "140 mm, 110 mm"})
    void the_front_is_that_of_the_trains_with_places(String width, String height) {
        Brief brief = Briefs.demoWith(FEW + frame(width, height));

        SearchOutcome outcome = TrainSearch.unexplained(brief, SearchListener.SILENT, () -> false);

        assertThat(outcome.front().stream().map(Rating::train).toList()).isEqualTo(placed(brief));
    }

    /** Otherwise the test above could not tell a search that places trains from one that does not. */
    @ParameterizedTest
    @CsvSource({
        "220 mm, 320 mm, 1, 1, false",
        "120 mm, 220 mm, 0.3, 0.7, false",
        "140 mm, 160 mm, 0.05, 0.3, true",
        "140 mm, 110 mm, 0, 0, true"
    })
    void these_frames_hold_so_large_a_share_of_trains_and_some_not_all_that_would_be_on_the_front(
            String width, String height, double least, double most, boolean frontChanges) {
        Brief brief = Briefs.demoWith(FEW + frame(width, height));
        TrainPlacing placing = new TrainPlacing(new TrainRater(brief));
        List<Rating> feasible = PlainLoops.feasible(brief);

        assertThat(share(feasible, placing)).isBetween(least, most);
        assertThat(share(PlainLoops.front(feasible), placing) < 1).isEqualTo(frontChanges);
    }

    private static double share(List<Rating> ratings, TrainPlacing placing) {
        return ratings.stream()
                .mapToInt(rating -> placing.place(rating.train(), () -> false) instanceof Placement.Placed ? 1 : 0)
                .average()
                .orElseThrow();
    }

    /** In plain loops: trains without places leave the front one round after another. */
    private static List<Train> placed(Brief brief) {
        TrainPlacing placing = new TrainPlacing(new TrainRater(brief));
        List<Rating> left = new ArrayList<>(PlainLoops.feasible(brief));
        while (true) {
            List<Rating> front = PlainLoops.front(left);
            List<Rating> unplaced = front.stream()
                    .filter(rating -> !(placing.place(rating.train(), () -> false) instanceof Placement.Placed))
                    .toList();
            if (unplaced.isEmpty()) {
                return front.stream().map(Rating::train).toList();
            }
            left.removeAll(unplaced);
        }
    }

    @Test
    void every_train_of_the_front_has_a_layout_that_the_independent_check_accepts() {
        Brief brief = Briefs.demoWith(FEW);
        TrainPlacing placing = new TrainPlacing(new TrainRater(brief));

        List<Rating> front =
                TrainSearch.run(brief, SearchListener.SILENT, () -> false).front();

        assertThat(front).isNotEmpty();
        assertThat(front).allSatisfy(rating -> {
            Placement.Placed placed = (Placement.Placed) placing.place(rating.train(), () -> false);
            assertThat(LayoutCheck.faults(placed.layout())).isEmpty();
        });
    }

    @Test
    void a_frame_too_low_for_any_layout_is_the_clash() {
        Brief brief = Briefs.demoWith(LOW);

        SearchOutcome outcome = TrainSearch.run(brief, SearchListener.SILENT, () -> false);

        assertThat(((SearchOutcome.NoTrain) outcome).clash().demands())
                .extracting(HeldDemand::demand)
                .contains(Demand.FRAME);
    }

    @Test
    void trains_are_listed_unplaced_where_the_brief_leaves_them_so() {
        Brief brief = Briefs.demoWith(LOW + " & /frame/arrangement = \"unplaced\"");

        assertThat(TrainSearch.run(brief, SearchListener.SILENT, () -> false).front())
                .isNotEmpty();
    }

    @Test
    void a_held_direction_is_kept_by_the_layout() {
        Brief brief = Briefs.demoWith(FEW
                + " & /locks/meshes = [{\"place\": {\"side\": \"below\", \"number\": 1}, \"direction\": \"80 deg\"}]");
        Train train = TrainSearch.run(brief, SearchListener.SILENT, () -> false)
                .front()
                .get(0)
                .train();

        Placement placement = new TrainPlacing(new TrainRater(brief)).place(train, () -> false);

        assertThat(((Placement.Placed) placement).layout().direction(1))
                .isCloseTo(Math.toRadians(80), org.assertj.core.api.Assertions.within(1e-6));
    }
}
