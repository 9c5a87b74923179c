// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.presenter;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.node.TextNode;
import drumfall.solver.brief.Brief;
import drumfall.solver.layout.LayoutNeed;
import drumfall.solver.quantity.UnitSystem;
import drumfall.solver.rating.Rating;
import drumfall.solver.rating.TrainRater;
import drumfall.solver.rating.placing.LeastRooms;
import drumfall.solver.rating.placing.TrainPlacing;
import drumfall.solver.train.Train;
import drumfall.ui.design.BriefDraft;
import drumfall.ui.presenter.TrialStanding.Better;
import drumfall.ui.work.LatestDesk;
import drumfall.ui.work.LongDesk;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;

/** The window's state on a brief that wants the movement small: columns, sizes, tried trains, what stays chosen. */
class LeastRoomTest {
    private static final StripFigure DRUM = StripFigure.of(StripFigure.Kind.DRUM);
    private static final long STEP = 2 * PlacedTrains.MM;

    private final Turns turns = new Turns();
    private final Workspace workspace = turns.workspace(small());
    private final TriedTrain tried = new TriedTrain(workspace, new LatestDesk(turns, "trial"));

    /** The small brief, heights told apart by two millimetres. */
    private static Brief small() {
        return BriefDraft.of(SmallBriefs.small())
                .with("/frame/least/figure", TextNode.valueOf("movement-height"))
                .with("/frame/least/resolution", TextNode.valueOf("2 mm"))
                .brief()
                .orElseThrow();
    }

    private List<Rating> front() {
        return workspace.front().orElseThrow().ratings();
    }

    private static long room(Rating rating) {
        List<Long> numbers = rating.cell().numbers();
        return numbers.get(numbers.size() - 1);
    }

    private static Optional<LayoutNeed> need(Brief brief, Train train) {
        return Optional.of(new TrainPlacing(new TrainRater(brief)).need(train));
    }

    @Test
    void the_height_has_a_column_behind_the_objectives() {
        List<FrontColumn> plain = FrontColumn.usual(SmallBriefs.small());
        List<FrontColumn> columns = FrontColumn.usual(small());
        int objectives = small().objectives().size();
        assertThat(plain).doesNotContain(FrontColumn.MOVEMENT_HEIGHT);
        assertThat(columns).hasSize(plain.size() + 1).containsAll(plain);
        assertThat(columns.get(objectives)).isEqualTo(FrontColumn.MOVEMENT_HEIGHT);
        assertThat(FrontColumn.room(SmallBriefs.small())).isEmpty();
    }

    @Test
    void the_height_shown_of_each_train_is_the_one_it_is_listed_by() {
        turns.solve(workspace);
        FrontSizes sizes = new FrontSizes(workspace, LeastRoomTest::need, new LatestDesk(turns, "sizes"));
        AtomicInteger told = new AtomicInteger();
        sizes.listen(told::incrementAndGet);
        sizes.want(true);
        turns.until(() -> told.get() == front().size());

        assertThat(front()).extracting(LeastRoomTest::room).hasSizeGreaterThan(1);
        assertThat(front()).allSatisfy(rating -> {
            long height = sizes.of(rating.train()).orElseThrow().height();
            assertThat((height + STEP - 1) / STEP).isEqualTo(room(rating));
        });
    }

    @Test
    void a_chosen_train_stays_chosen_when_the_front_is_searched_anew() {
        turns.solve(workspace);
        Train last = front().get(front().size() - 1).train();
        workspace.choose(last);
        BriefEdits edits = new BriefEdits(workspace);
        SheetRow row = BriefSheet.rowOf("/frame/least/figure").orElseThrow();

        edits.enter(row, row.lines().get(2), "40 cm");
        turns.finish(workspace);

        assertThat(workspace
                        .front()
                        .orElseThrow()
                        .brief()
                        .frame()
                        .least()
                        .orElseThrow()
                        .enough())
                .isPresent();
        assertThat(workspace.chosen().map(Rating::train)).contains(last);
        assertThat(front()).extracting(LeastRoomTest::room).containsOnly(200L);
        workspace.undo();
        turns.finish(workspace);
        assertThat(front()).extracting(Rating::train).contains(last);
    }

    /** The same train with another drum: all that differs is what the drum does to weight, run and room. */
    private boolean standsOnceTried(String drum) {
        workspace.dropTrial();
        workspace.tryCount(DRUM, drum);
        Optional<Rating> trial = workspace.trial().filter(Rating::feasible);
        if (trial.isEmpty()) {
            return false;
        }
        assertThat(standing().sentence())
                .isEqualTo(
                        "Meets every demand; looking how much room it takes, as the movement height is wanted small.");
        turns.until(() -> !standing().sentence().contains("looking how much room"));
        return true;
    }

    private TrialStanding standing() {
        return tried.standing().orElseThrow();
    }

    /** What the room is by itself, and Pareto's definition on the cells with it. */
    @Test
    void a_tried_train_is_measured_before_it_is_held_against_the_front() {
        turns.solve(workspace);
        TrainRater rater = new TrainRater(workspace.brief());
        LeastRooms rooms = LeastRooms.of(rater, new TrainPlacing(rater)).orElseThrow();
        int held = 0;
        int inRoom = 0;
        for (int drum = 20; drum <= 60; drum++) {
            if (standsOnceTried(drum + " mm")) {
                Rating trial = workspace.trial().orElseThrow();
                OptionalLong steps = rooms.steps(trial.train(), () -> false);
                if (steps.isPresent()) {
                    held++;
                    Rating roomed = trial.withRoom(steps.getAsLong());
                    List<Rating> beating = front().stream()
                            .filter(option -> option.cell().dominates(roomed.cell()))
                            .toList();
                    assertThat(standing().better())
                            .extracting(Better::train)
                            .containsAll(beating.stream().map(Rating::train).toList());
                    inRoom += (int) beating.stream()
                            .filter(option -> room(option) < room(roomed))
                            .peek(option -> assertThat(words(option))
                                    .contains("movement height %d mm instead of %d mm"
                                            .formatted(2 * room(option), 2 * room(roomed))))
                            .count();
                }
            }
        }
        assertThat(held).isPositive();
        assertThat(inRoom).isPositive();
    }

    private String words(Rating option) {
        return standing().better().stream()
                .filter(better -> better.train().equals(option.train()))
                .map(Better::words)
                .findFirst()
                .orElseThrow();
    }

    @Test
    void what_easing_would_buy_is_said_to_leave_the_room_out() {
        turns.solve(workspace);
        EasingSheet sheet = new EasingSheet(workspace, new LongDesk(turns, "easing"));
        sheet.ask();
        assertThat(sheet.about()).endsWith("every other objective no worse, and no more room taken.");
        sheet.stop();
        turns.until(() -> !sheet.busy());
    }

    @Test
    void a_train_with_the_same_objectives_and_room_is_said_to_be_stood_for_in_both() {
        turns.solve(workspace);
        Rating first = front().get(0);
        Rating like = new Rating(
                front().get(1).train(),
                first.demands(),
                first.objectiveValues(),
                first.cell(),
                first.durationRoundedDown(),
                first.weight(),
                first.recommendedWeight(),
                first.leastSmoothest(),
                first.leastRoughest(),
                first.pendulumLength(),
                first.filamentMass());
        Front only = Front.of(workspace.brief(), List.of(first), Front.Standing.PROVED);
        TrialWords words = new TrialWords(workspace.brief(), UnitSystem.METRIC);

        TrialStanding standing = words.of(like, Optional.of(only), TriedTrain.Places.FOUND);

        assertThat(standing.sentence())
                .isEqualTo(
                        "On the front stands one in its place, the same in every objective and in movement height at its"
                                + " resolution:");
        assertThat(standing.better()).extracting(Better::train).containsExactly(first.train());
    }

    @Test
    void a_train_without_places_is_told_so_and_one_that_could_not_be_placed_too() {
        turns.solve(workspace);
        Rating first = front().get(0);
        Rating plain = new TrainRater(workspace.brief()).rate(first.train());
        Front none = Front.of(workspace.brief(), List.of(), Front.Standing.PROVED);
        TrialWords words = new TrialWords(workspace.brief(), UnitSystem.METRIC);
        assertThat(words.of(plain, Optional.of(none), TriedTrain.Places.NONE).sentence())
                .isEqualTo("Nothing on the front beats it, but its arbors have no places within frame and gaps.");
        assertThat(words.of(plain, Optional.of(none), TriedTrain.Places.UNKNOWN).sentence())
                .isEqualTo("Meets every demand; how much room it takes could not be found out.");
    }
}
