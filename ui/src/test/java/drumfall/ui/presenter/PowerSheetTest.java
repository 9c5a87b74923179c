// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.presenter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import drumfall.solver.brief.BundledBriefs;
import drumfall.solver.brief.MeshPlace;
import drumfall.solver.power.answers.ArcCurve;
import drumfall.solver.power.books.Place;
import drumfall.solver.power.books.PowerBooks;
import drumfall.solver.quantity.UnitSystem;
import drumfall.solver.rating.Rating;
import drumfall.solver.rating.TrainRater;
import drumfall.solver.rating.answers.Change;
import drumfall.solver.rating.answers.PowerAnswers;
import drumfall.ui.presenter.PowerSetting.Dial;
import drumfall.ui.presenter.StripFigure.Kind;
import drumfall.ui.presenter.WhereCard.Input;
import drumfall.ui.work.LatestDesk;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class PowerSheetTest {
    private final Turns turns = new Turns();
    private final Workspace workspace = turns.workspace(BundledBriefs.demo());
    private PowerSheet sheet;

    private PowerSheet sheet() {
        return new PowerSheet(workspace, new LatestDesk(turns, "power"), new LatestDesk(turns, "savings"));
    }

    @BeforeEach
    void look() {
        workspace.choose(MeshTrains.train());
        sheet = sheet();
        sheet.lookAt(true);
    }

    private PowerPicture picture() {
        turns.until(() -> sheet.state()
                .picture()
                .filter(known -> Optional.of(known.setting()).equals(sheet.setting()))
                .isPresent());
        return sheet.state().picture().orElseThrow();
    }

    private Rating rating() {
        return workspace.chosen().orElseThrow();
    }

    private PowerStep step(Place place, int number) {
        return picture().steps().stream()
                .filter(step -> step.place() == place && step.number() == number)
                .findFirst()
                .orElseThrow();
    }

    @Test
    void without_a_train_there_is_one_sentence_and_the_next_step() {
        Workspace empty = turns.workspace(BundledBriefs.demo());
        PowerSheet nothing = new PowerSheet(empty, new LatestDesk(turns, "power"), new LatestDesk(turns, "savings"));
        nothing.lookAt(true);
        assertThat(nothing.state().sentence())
                .contains("No train is chosen. Choose one in the front to see where its power goes.");
        assertThat(nothing.setting()).isEmpty();
        assertThat(nothing.cards()).isEmpty();
    }

    @Test
    void nothing_is_reckoned_until_the_sheet_is_looked_at() {
        PowerSheet behind = sheet();
        assertThat(behind.state()).isInstanceOf(PowerState.Reckoning.class);
        assertThat(behind.findings()).isInstanceOf(PowerFindings.Unasked.class);
        behind.lookAt(true);
        assertThat(behind.findings()).isInstanceOf(PowerFindings.Busy.class);
        turns.until(() -> behind.state().picture().isPresent());
    }

    @Test
    void at_first_the_recommended_weight_hangs_in_the_middle_of_the_bands() {
        PowerPicture picture = picture();
        assertThat(picture.setting().weight()).isEqualTo(rating().recommendedWeight());
        // The same walk in another order of operations.
        assertThat(picture.least()).isCloseTo(rating().weight().leastWeight(), within(1e-9));
        assertThat(picture.recommended()).isCloseTo(rating().recommendedWeight(), within(1e-9));
        PowerBooks books = new PowerAnswers(
                        new TrainRater(workspace.brief()), MeshTrains.train(), rating().recommendedWeight())
                .books();
        assertThat(picture.books()).contains(books);
    }

    @Test
    void the_way_begins_with_all_the_power_and_leaves_nothing_beyond_the_pendulum() {
        List<PowerStep> steps = picture().steps();
        assertThat(steps.get(0).before()).isEqualTo(1);
        for (int i = 1; i < steps.size(); i++) {
            assertThat(steps.get(i).before()).isEqualTo(steps.get(i - 1).after());
        }
        assertThat(steps).allMatch(step -> step.after() <= step.before());
        PowerStep last = steps.get(steps.size() - 1);
        assertThat(last.arrives()).isTrue();
        // Fifteen shares taken from one leave rounding only.
        assertThat(last.after()).isCloseTo(0, within(1e-9));
        assertThat(picture().delivered()).isCloseTo(last.share(), within(1e-15));
    }

    @Test
    void a_weight_under_the_least_stops_the_clock_and_says_what_it_needs() {
        double least = picture().least();
        sheet.set(Dial.WEIGHT, least * 0.99);
        assertThat(picture().books()).isEmpty();
        assertThat(picture().steps()).isEmpty();
        assertThat(sheet.state().sentence().orElseThrow())
                .startsWith("Under ")
                .contains(ShownFigure.of(
                                drumfall.solver.quantity.Dimension.MASS,
                                least,
                                UnitSystem.METRIC,
                                ShownFigure.Rounding.UP)
                        .text());
        sheet.set(Dial.WEIGHT, least * 1.01);
        assertThat(picture().books()).isPresent();
        assertThat(sheet.state().sentence()).isEmpty();
    }

    @Test
    void the_ends_of_the_bands_need_what_the_rating_says() {
        sheet.set(Dial.FRICTION, 0);
        sheet.set(Dial.QUALITY, 1e9);
        assertThat(picture().least()).isCloseTo(rating().leastSmoothest(), within(1e-9));
        sheet.set(Dial.FRICTION, 1);
        sheet.set(Dial.QUALITY, 0);
        PowerPicture roughest = picture();
        assertThat(roughest.least()).isCloseTo(rating().leastRoughest(), within(1e-9));
    }

    @Test
    void the_curve_rises_from_the_escape_angle_and_the_mean_is_never_below_the_worst() {
        List<ArcCurve.Point> curve = picture().curve();
        assertThat(curve.get(0).worstArc().orElseThrow()).isCloseTo(picture().escapeAngle(), within(1e-12));
        assertThat(curve).isSortedAccordingTo(Comparator.comparingDouble(ArcCurve.Point::weight));
        assertThat(curve)
                .allSatisfy(point -> assertThat(point.meanArc().orElseThrow())
                        .isGreaterThanOrEqualTo(point.worstArc().orElseThrow() - 1e-12));
        assertThat(curve.get(curve.size() - 1).weight())
                .isCloseTo(sheet.travel(Dial.WEIGHT).orElseThrow().most(), within(1e-6));
    }

    @Test
    void pointing_at_a_mesh_lights_its_wheel_in_the_strip_and_at_bores_their_arbor() {
        PowerStep mesh = step(Place.MESH, 1);
        sheet.pointAt(Optional.of(mesh));
        assertThat(workspace.strip().highlight().hovered())
                .contains(StripFigure.of(Kind.WHEEL, new MeshPlace(MeshPlace.Side.BELOW, 1)));
        assertThat(sheet.isPointedAt(mesh)).isTrue();
        PowerStep bores = step(Place.BORES, 2);
        assertThat(sheet.isPointedAt(bores)).isFalse();
        sheet.pointAt(Optional.of(bores));
        assertThat(workspace.strip().highlight().arbor()).contains(2);
        assertThat(sheet.isPointedAt(bores)).isTrue();
        assertThat(sheet.isPointedAt(mesh)).isFalse();
        sheet.pointAt(Optional.empty());
        assertThat(sheet.isPointedAt(bores)).isFalse();
    }

    @Test
    void a_mesh_that_is_picked_is_the_one_looked_into() {
        sheet.pick(step(Place.MESH, 2));
        assertThat(workspace.highlight().mesh()).contains(2);
    }

    @Test
    void dials_go_back_and_another_train_forgets_them() {
        sheet.set(Dial.FRICTION, 0.9);
        assertThat(sheet.isMoved()).isTrue();
        sheet.reset();
        assertThat(sheet.isMoved()).isFalse();
        assertThat(picture().setting().friction()).isEqualTo(0.5);
        sheet.set(Dial.QUALITY, 0);
        workspace.choose(MeshTrains.toothless());
        assertThat(sheet.isMoved()).isFalse();
    }

    @Test
    void a_train_that_no_weight_drives_says_so_and_what_to_try() {
        workspace.choose(MeshTrains.toothless());
        PowerPicture picture = picture();
        assertThat(picture.least()).isInfinite();
        assertThat(picture.curve()).isEmpty();
        assertThat(sheet.state().sentence())
                .contains("No weight drives this train at the friction and quality set."
                        + " Take less friction, or more leaves in the pinions.");
    }

    @Test
    void savings_come_from_the_background_the_largest_first_and_can_be_stopped() {
        assertThat(sheet.findings()).isInstanceOf(PowerFindings.Busy.class);
        sheet.stopFinding();
        assertThat(sheet.findings()).isInstanceOf(PowerFindings.Stopped.class);
        sheet.find();
        turns.until(() -> sheet.findings().found().isPresent());
        PowerFindings.Found found = sheet.findings().found().orElseThrow();
        assertThat(found.changes())
                .isNotEmpty()
                .isSortedAccordingTo(Comparator.comparingDouble(Change::saved).reversed());
        picture();
        PowerCards cards = sheet.cards().orElseThrow();
        assertThat(cards.chance(found).text()).endsWith(" in 20 builders");
        assertThat(cards.chanceCard(found).inputs()).isNotEmpty();
        assertThat(found.changes())
                .allSatisfy(change -> assertThat(cards.card(change).formula()).isNotBlank());
        // Half of all builders need what half of all builders need.
        assertThat(found.chance().thatRun(found.chance().quantile(0.5))).isGreaterThanOrEqualTo(0.5);
    }

    @ParameterizedTest
    @EnumSource(PowerFigure.class)
    void every_figure_says_where_it_comes_from(PowerFigure figure) {
        picture();
        PowerCards cards = sheet.cards().orElseThrow();
        isWhole(cards.card(figure));
        assertThat(cards.card(figure).value()).isEqualTo(cards.value(figure));
        sheet.set(Dial.FRICTION, 0.7);
        sheet.set(Dial.WEIGHT, rating().recommendedWeight() * 1.1);
        picture();
        PowerCards moved = sheet.cards().orElseThrow();
        isWhole(moved.card(figure));
        assertThat(moved.card(figure).value()).isEqualTo(moved.value(figure));
    }

    @Test
    void every_place_says_where_its_power_comes_from() {
        picture();
        PowerCards cards = sheet.cards().orElseThrow();
        assertThat(picture().steps())
                .allSatisfy(step -> isWhole(cards.card(step)))
                .allSatisfy(step -> assertThat(cards.card(step).value()).isEqualTo(PowerStep.microwatts(step.power())));
    }

    // (2 Q / π) ln(A / e) beats, and the arbor that stands first of those that are listed.
    @Test
    void the_clock_coasts_and_its_arbors_spin_as_long_as_their_formulas_say() {
        PowerPicture picture = picture();
        PowerCards cards = sheet.cards().orElseThrow();
        double arc = picture.books().orElseThrow().semiArc();
        double beats = 2 * picture.setting().quality() / Math.PI * Math.log(arc / picture.escapeAngle());
        double beat = picture.coasting().orElseThrow().secondsPerBeat();

        // 1e-9: the quality of the dial is carried as a share of its band.
        assertThat(picture.coasting().orElseThrow().seconds())
                .isCloseTo(beats * beat, org.assertj.core.api.Assertions.withinPercentage(1e-7));
        assertThat(picture.spins()).hasSize(MeshTrains.train().meshes().size() + 1);
        assertThat(cards.card(PowerFigure.FREE_SPIN).inputs())
                .hasSize(picture.spins().size())
                .anyMatch(input ->
                        input.value().equals(cards.value(PowerFigure.FREE_SPIN).text()));
    }

    private static void isWhole(WhereCard card) {
        assertThat(card.title()).isNotBlank();
        assertThat(card.formula()).isNotBlank();
        assertThat(card.source()).isNotBlank();
        assertThat(card.inputs())
                .isNotEmpty()
                .allSatisfy(input -> assertThat(input.value()).isNotBlank());
    }

    @Test
    void the_card_of_the_least_weight_leads_back_to_the_brief() {
        picture();
        List<WhereCard> waiting =
                new ArrayList<>(List.of(sheet.cards().orElseThrow().card(PowerFigure.LEAST)));
        for (int depth = 0; depth < 12 && typed(waiting).isEmpty(); depth++) {
            waiting = new ArrayList<>(waiting.stream()
                    .flatMap(card -> card.inputs().stream())
                    .flatMap(input -> input.card().stream())
                    .map(next -> next.get())
                    .limit(50)
                    .toList());
        }
        assertThat(typed(waiting)).isNotEmpty();
    }

    private static List<Input> typed(List<WhereCard> cards) {
        return cards.stream()
                .flatMap(card -> card.inputs().stream())
                .filter(input -> input.pointer().isPresent())
                .toList();
    }
}
