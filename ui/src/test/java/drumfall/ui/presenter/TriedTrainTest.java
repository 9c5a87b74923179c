// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.presenter;

import static org.assertj.core.api.Assertions.assertThat;

import drumfall.solver.brief.MeshPlace;
import drumfall.solver.brief.MeshPlace.Side;
import drumfall.solver.quantity.UnitSystem;
import drumfall.solver.rating.Rating;
import drumfall.solver.rating.TrainRater;
import drumfall.ui.presenter.StripFigure.Kind;
import drumfall.ui.presenter.TrialStanding.Better;
import drumfall.ui.work.LatestDesk;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TriedTrainTest {
    private static final StripFigure WHEEL = StripFigure.of(Kind.WHEEL, new MeshPlace(Side.BELOW, 1));
    private static final StripFigure DRUM = StripFigure.of(Kind.DRUM);

    private final Turns turns = new Turns();
    private final Workspace workspace = turns.workspace(SmallBriefs.small());
    private final TriedTrain tried = new TriedTrain(workspace, new LatestDesk(turns, "trial"));

    @BeforeEach
    void solve() {
        turns.solve(workspace);
    }

    private TrialStanding standing() {
        return tried.standing().orElseThrow();
    }

    private Front front() {
        return workspace.front().orElseThrow();
    }

    @Test
    void nothing_is_said_while_nothing_is_tried() {
        assertThat(tried.standing()).isEmpty();
        workspace.tryCount(WHEEL, "400");
        assertThat(tried.standing()).isPresent();
        workspace.dropTrial();
        assertThat(tried.standing()).isEmpty();
    }

    @Test
    void a_train_that_misses_demands_names_each_and_leads_to_its_place_in_the_brief() {
        workspace.tryCount(WHEEL, "400");
        Rating rating = workspace.trial().orElseThrow();
        assertThat(standing().missed()).hasSize((int) rating.missed().count());
        assertThat(standing().missed())
                .extracting(BriefLink::pointer)
                .contains("/teeth/wheelTeeth")
                .allMatch(pointer -> !workspace.draft().at(pointer).isMissingNode());
        assertThat(standing().better()).isEmpty();
    }

    private TrialStanding words(Rating rating, Front front, TriedTrain.Places places) {
        return new TrialWords(workspace.brief(), UnitSystem.METRIC).of(rating, Optional.of(front), places);
    }

    @Test
    void every_train_of_the_front_is_said_to_stand_on_it() {
        assertThat(front().ratings())
                .allSatisfy(rating -> assertThat(
                                words(rating, front(), TriedTrain.Places.SOUGHT).sentence())
                        .isEqualTo("It stands on the front."));
    }

    @Test
    void a_train_with_the_same_objectives_as_one_of_the_front_is_said_to_be_stood_for() {
        Rating first = front().ratings().get(0);
        Rating likeFirst = new Rating(
                front().ratings().get(1).train(),
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
        assertThat(words(
                                likeFirst,
                                Front.of(workspace.brief(), List.of(first), Front.Standing.PROVED),
                                TriedTrain.Places.SOUGHT)
                        .better())
                .extracting(Better::train)
                .containsExactly(first.train());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "PROVED  | SOUGHT  | Nothing on the front beats it; looking whether its arbors have places.",
                "PROVED  | FOUND   | Meets every demand, and nothing on the front beats it.",
                "PROVED  | NONE    | Nothing on the front beats it, but its arbors have no places within frame and gaps.",
                "PROVED  | UNKNOWN | Nothing on the front beats it; whether its arbors have places could not be found out.",
                "STOPPED | SOUGHT  | Meets every demand, and nothing found so far beats it.",
                "GROWING | SOUGHT  | Meets every demand, and nothing found so far beats it.",
            })
    void a_train_that_nothing_beats_is_told_so_as_far_as_that_is_known(
            Front.Standing standing, TriedTrain.Places places, String sentence) {
        Rating rating = front().ratings().get(0);
        Front without = Front.of(workspace.brief(), List.of(), standing);
        assertThat(words(rating, without, places).sentence()).isEqualTo(sentence);
    }

    /** Every drum and every wheel that the brief offers is tried; whatever meets the brief must be accounted for. */
    @Test
    void a_train_that_meets_the_brief_is_beaten_by_just_those_that_dominate_its_cell() {
        int beaten = 0;
        for (int teeth = 56; teeth <= 72; teeth++) {
            for (int drum = 24; drum <= 48; drum += 2) {
                workspace.dropTrial();
                workspace.tryCount(WHEEL, Integer.toString(teeth));
                workspace.tryCount(DRUM, drum + " mm");
                Optional<Rating> trial = workspace.trial().filter(Rating::feasible);
                if (trial.isPresent()) {
                    beaten += heldAgainstFront(trial.get()) ? 1 : 0;
                }
            }
        }
        assertThat(beaten).isPositive();
    }

    private boolean heldAgainstFront(Rating trial) {
        List<Rating> dominating = front().ratings().stream()
                .filter(option -> dominates(option, trial))
                .toList();
        assertThat(standing().missed()).isEmpty();
        if (dominating.isEmpty()) {
            return false;
        }
        assertThat(standing().better())
                .extracting(Better::train)
                .containsExactlyElementsOf(
                        dominating.stream().map(Rating::train).toList());
        assertThat(standing().better()).allMatch(better -> better.words().endsWith(" less"));
        assertThat(standing().shortly())
                .startsWith("Beaten by " + dominating.get(0).train());
        return true;
    }

    /** Pareto's definition, written out on the cells' numbers. */
    private static boolean dominates(Rating option, Rating trial) {
        List<Long> one = option.cell().numbers();
        List<Long> other = trial.cell().numbers();
        return IntStream.range(0, one.size()).allMatch(i -> one.get(i) <= other.get(i)) && !one.equals(other);
    }

    @Test
    void while_the_front_answers_an_earlier_brief_nothing_is_said_of_being_beaten() {
        workspace.tryCount(DRUM, "24 mm");
        Rating trial = new TrainRater(workspace.brief())
                .rate(workspace.trial().orElseThrow().train());
        new Offer("/weight/limit", "", "11.9 kg", "", "").put(workspace);
        assertThat(workspace.frontIsEarlier()).isTrue();
        if (trial.feasible()) {
            assertThat(standing().sentence())
                    .isEqualTo(
                            "Meets every demand; whether it is beaten shows once the search for this brief is done.");
        }
        assertThat(standing().better()).isEmpty();
    }
}
