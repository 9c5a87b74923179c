// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.rating.why;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.offset;
import static org.assertj.core.api.Assertions.withinPercentage;

import com.fasterxml.jackson.core.JsonPointer;
import drumfall.solver.brief.Brief;
import drumfall.solver.brief.BriefWriter;
import drumfall.solver.brief.BundledBriefs;
import drumfall.solver.layout.Layout;
import drumfall.solver.rating.Rating;
import drumfall.solver.rating.TrainRater;
import drumfall.solver.rating.placing.PlacedPower;
import drumfall.solver.rating.placing.TrainPlacing;
import drumfall.solver.rating.placing.WeightBesideBob;
import drumfall.solver.samples.Briefs;
import drumfall.solver.samples.DemoTrain;
import drumfall.solver.samples.Trains;
import drumfall.solver.train.Train;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class WhereFromBookTest {
    private static final int SAMPLES = "full".equals(System.getProperty("drumfall.samples")) ? 500 : 8;

    // 1e-10 of the value: a card is a dozen operations, a chain some hundred; the felt average runs over some dozen
    // samples.
    private static final double PERCENT = 1e-8;

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "/weight/builders = \"95 %\"",
                "/arbors/drum/bearings = \"front\"",
                "/arbors/centre/kind = \"fixed\" & /arbors/centre/bearings = \"rear\"",
                "/arbors/escape/kind = \"turning\" & /arbors/escape/bearings = \"both\"",
                "/arbors/intermediate/bearings = \"rear\" & /arbors/intermediate/bearing = {\"outer\": \"16 mm\", \"width\": \"3 mm\"}",
                "/weight/bindingReserve = \"100 %\" & /friction/staticFactor = \"1.6\"",
                "/teeth/form = \"lantern\" & /teeth/pressureAngle = remove & /printer/nozzle = \"0.25 mm\"",
                "/drum/ratchet = {\"teeth\": 12, \"toothDepth\": \"3 mm\", \"thickness\": \"4 mm\"} & /arbors/drum/diameter = \"12 mm\""
            })
    void every_card_reckons_its_figure_from_its_inputs(String edits) {
        Brief brief = Briefs.demoWith(edits);
        TrainRater rater = new TrainRater(brief);
        Random random = new Random(61);
        for (int i = 0; i < SAMPLES; i++) {
            Train train = Trains.random(brief, random);
            WhereFromBook book = WhereFromBook.of(rater, rater.rate(train));
            for (Card card : book.figures()) {
                if (Double.isInfinite(card.value())) {
                    assertThat(card.reckoned()).as(card.name()).isInfinite();
                } else {
                    assertThat(card.reckoned())
                            .as("%s of %s", card.name(), train)
                            .isCloseTo(card.value(), offset(Math.abs(card.value()) * PERCENT / 100));
                }
            }
        }
    }

    /** With pillars, without them, and without motion work before the front plate. */
    @ParameterizedTest
    @ValueSource(strings = {"", "/frame/pillars = remove", "/hands/motionWork = false"})
    void cards_of_a_placed_movement_reckon_its_size(String edits) {
        Brief brief = Briefs.demoWith(edits);
        TrainRater rater = new TrainRater(brief);
        Train train = Trains.of("85/10 m1.5 | 66/12 m1.5 · 83/12 m1 · 55/12 m1 · E21", "36", 2);
        Layout layout = TrainPlacing.layout(brief, train, () -> false).orElseThrow();

        WhereFromBook book = WhereFromBook.of(rater, rater.rate(train), Optional.of(layout));

        // Whole nanometres below a metre in floating point: 1e-15 m.
        assertThat(value(book, "movement-width")).isCloseTo(layout.size().width() * 1e-9, offset(1e-15));
        assertThat(value(book, "movement-height")).isCloseTo(layout.size().height() * 1e-9, offset(1e-15));
        assertThat(value(book, "movement-depth")).isCloseTo(layout.size().depth() * 1e-9, offset(1e-15));
        assertThat(value(book, "plate-area")).isEqualTo(layout.size().plateArea());
        for (Card card : book.figures()) {
            assertThat(card.reckonedFromTheEnds())
                    .as(card.name())
                    .isCloseTo(card.value(), offset(Math.abs(card.value()) * PERCENT / 100));
        }
        assertThat(book.cards()).extracting(Card::name).doesNotHaveDuplicates();
    }

    private static final String SHELL =
            "/pendulum/bob = {\"diameter\": \"90 mm\", \"thickness\": \"24 mm\", \"behindPlate\": \"50 mm\"}";

    /** On one line and on two, with and without a bob of the brief's own. */
    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            quoteCharacter = '`',
            value = {"2; ", "1; ", "2; " + SHELL, "1; " + SHELL})
    void cards_of_the_bob_reckon_its_size_and_how_far_the_weight_keeps_from_it(int falls, String edits) {
        Brief brief = Briefs.demoWith(edits == null ? "" : edits);
        TrainRater rater = new TrainRater(brief);
        Train train = Trains.of("85/10 m1.5 | 66/12 m1.5 · 83/12 m1 · 55/12 m1 · E21", "36", falls);
        Rating rating = rater.rate(train);
        Layout layout = TrainPlacing.layout(brief, train, () -> false).orElseThrow();

        WhereFromBook book = WhereFromBook.of(rater, rating, Optional.of(layout));

        WeightBesideBob beside = WeightBesideBob.of(rater, train, layout, rating.recommendedWeight());
        assertThat(value(book, "bob-gap")).isEqualTo(beside.gap());
        assertThat(book.card("bob-gap-across").isPresent()).isEqualTo(edits != null);
        Set<String> chain = new HashSet<>();
        collect(book.card("bob-gap").orElseThrow(), chain);
        assertThat(chain)
                .contains("recommended-weight", "layout.weight-aside", "brief.fall.height", "brief.weight.width")
                .contains(edits == null ? "brief.pendulum.bobMass" : "brief.pendulum.bob.behindPlate");
        for (Card card : book.figures()) {
            assertThat(card.reckonedFromTheEnds())
                    .as(card.name())
                    .isCloseTo(card.value(), offset(Math.abs(card.value()) * PERCENT / 100));
        }
    }

    /** By hand: 150 g fill a disc of 1300 kg/m³ a fifth as thick as it is wide if it is 90.2 mm wide and 18 mm thick. */
    @Test
    void a_bob_of_which_only_the_mass_is_known_has_room_for_any_that_is_made() {
        WhereFromBook book = demo();

        assertThat(value(book, "brief.pendulum.bobMass")).isEqualTo(0.15);
        // A tenth of a millimetre, as rounded by hand.
        assertThat(value(book, "bob-diameter")).isCloseTo(0.0902, offset(1e-4));
        assertThat(value(book, "bob-thickness")).isCloseTo(0.0180, offset(1e-4));
    }

    /** The customary ratchet is 5 mm thick; a layer of 0.2 mm is left as play. */
    @ParameterizedTest
    @CsvSource({"8 mm, 0.005, room", "5.2 mm, 0.005, room", "4 mm, 0.0038, thinner"})
    void the_ratchet_s_thickness_says_whether_the_click_space_limits_it(String space, double thickness, String word) {
        Brief brief = Briefs.demoWith(
                "/drum/ratchet = remove & /printer/layer = \"0.2 mm\" & /drum/clickSpace = \"%s\"".formatted(space));
        TrainRater rater = new TrainRater(brief);

        Card card = WhereFromBook.of(rater, rater.rate(DemoTrain.train()))
                .card("ratchet-thickness")
                .orElseThrow();

        // Decimal millimetres in floating point: 1e-15 m.
        assertThat(card.value()).isCloseTo(thickness, offset(1e-15));
        assertThat(card.reckoned()).isEqualTo(card.value());
        assertThat(card.source()).contains(word);
        assertThat(card.inputs())
                .extracting(Card::name)
                .containsExactly("ratchet-customary-thickness", "brief.drum.clickSpace", "brief.printer.layer");
    }

    @Test
    void a_rating_alone_says_nothing_of_size() {
        assertThat(demo().card("movement-height")).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "/frame/arrangement = \"upright\"; 85/10 m1.25 | 66/12 m1.25 · 76/12 m1 · 55/12 m1 · E21",
                "/frame/arrangement = \"compact\"; 85/10 m1.25 | 66/12 m1.25 · 76/12 m1 · 55/12 m1 · E21",
                "/frame/arrangement = \"shallow\"; 85/10 m1.5 | 83/12 m1 · 66/12 m1 · 55/12 m1 · E21",
                "/arbors/drum/bearings = \"rear\" & /arbors/centre/kind = \"fixed\"; 85/10 m1.25 | 66/12 m1.25 · 76/12 m1 · 55/12 m1 · E21"
            })
    void every_card_of_a_placed_train_reckons_its_figure(String edits, String line) {
        TrainRater rater = new TrainRater(Briefs.demoWith(edits));
        Train train = Trains.of(line, "36", 2);
        Layout layout =
                new TrainPlacing(rater).place(train, () -> false).found().orElseThrow();
        WhereFromBook book = WhereFromBook.of(rater, rater.rate(train), Optional.of(layout));

        assertThat(value(book, "placed-least-weight"))
                .isEqualTo(PlacedPower.walk(rater, train, layout).leastWeight())
                .isLessThan(value(book, "least-weight"));
        for (Card card : book.figures()) {
            assertThat(card.reckoned())
                    .as(card.name())
                    .isCloseTo(card.value(), offset(Math.abs(card.value()) * PERCENT / 100));
            assertThat(card.reckonedFromTheEnds())
                    .as(card.name())
                    .isCloseTo(card.value(), offset(Math.abs(card.value()) * PERCENT / 100));
        }
        Set<String> chain = new HashSet<>();
        collect(book.card("placed-least-weight").orElseThrow(), chain);
        assertThat(chain)
                .contains(
                        "layout.wheel-place-1", "brief.friction.bores.high", "brief.escapement.drop", "train.pinion-3");
    }

    @Test
    void every_figure_follows_from_the_ends_of_its_chain_alone() {
        for (Card card : demo().figures()) {
            assertThat(card.reckonedFromTheEnds())
                    .as(card.name())
                    .isCloseTo(card.value(), offset(Math.abs(card.value()) * PERCENT / 100));
        }
    }

    @Test
    void chains_end_at_fields_of_the_brief_that_are_there() {
        var tree = BriefWriter.tree(BundledBriefs.demo());
        List<Card> typed = demo().cards().stream()
                .filter(card -> card.pointer().isPresent())
                .toList();

        assertThat(typed).hasSizeGreaterThan(30).allSatisfy(card -> {
            assertThat(tree.at(JsonPointer.compile(card.pointer().orElseThrow()))
                            .isTextual())
                    .as(card.name())
                    .isTrue();
            assertThat(card.formula()).isEmpty();
        });
    }

    @Test
    void the_weight_is_chained_to_all_that_it_rests_on() {
        Set<String> chain = new HashSet<>();
        collect(demo().card("recommended-weight").orElseThrow(), chain);

        assertThat(chain)
                .contains(
                        "brief.friction.teeth.low",
                        "brief.friction.bores.high",
                        "brief.friction.pallets.low",
                        "brief.pendulum.quality.low",
                        "brief.pendulum.bobMass",
                        "brief.escapement.drop",
                        "brief.arbors.bearing.drag",
                        "brief.hands.torque",
                        "brief.weight.reserve",
                        "brief.material.density",
                        "train.wheel-1",
                        "train.pinion-3",
                        "train.escape-teeth",
                        "gravity");
    }

    private static void collect(Card card, Set<String> names) {
        names.add(card.name());
        card.inputs().forEach(input -> collect(input, names));
    }

    // A card whose inputs do not move its figure would be decoration: each is moved by one part in a thousand. Those
    // left out
    // do not decide here: what stands at nought, a worse of two, or a figure cut to whole spaces or micrograms.
    @ParameterizedTest
    @CsvSource({
        "escape-torque",
        "memory",
        "tension-running",
        "torque-load-2-running",
        "torque-in-3-running",
        "mesh-felt-1"
    })
    void every_input_of_a_card_moves_its_figure(String name) {
        Card card = demo().card(name).orElseThrow();
        double[] inputs = card.inputs().stream().mapToDouble(Card::value).toArray();
        for (int i = 0; i < inputs.length; i++) {
            double[] moved = inputs.clone();
            moved[i] *= 1.001;
            if (inputs[i] != 0) {
                assertThat(card.formula().orElseThrow().function().of(moved))
                        .as("%s by %s", name, card.inputs().get(i).name())
                        .isNotEqualTo(card.reckoned());
            }
        }
    }

    @Test
    void the_cards_say_what_the_rating_says() {
        Rating rating = new TrainRater(BundledBriefs.demo()).rate(DemoTrain.train());
        WhereFromBook book = demo();

        assertThat(value(book, "least-weight")).isEqualTo(rating.weight().leastWeight());
        assertThat(value(book, "recommended-weight")).isEqualTo(rating.recommendedWeight());
        assertThat(value(book, "pendulum-length")).isEqualTo(rating.pendulumLength());
        assertThat(value(book, "filament")).isEqualTo(rating.filamentMass());
        assertThat(value(book, "escape-torque"))
                .isEqualTo(rating.weight().need().torque());
        assertThat(value(book, "tension-binding"))
                .isEqualTo(rating.weight().binding().tension());
        assertThat(value(book, "duration"))
                .isCloseTo(rating.durationRoundedDown().doubleValue() * 3600, withinPercentage(1e-12));
        assertThat(book.card("no-such-figure")).isEmpty();
    }

    @Test
    void names_are_unique_and_every_card_has_a_source() {
        List<Card> cards = demo().cards();

        assertThat(cards).extracting(Card::name).doesNotHaveDuplicates();
        assertThat(cards).allSatisfy(card -> assertThat(card.source()).isNotBlank());
        assertThat(cards).allSatisfy(card -> assertThat(cards).containsAll(card.inputs()));
    }

    @Test
    void inputs_without_a_formula_are_refused() {
        Card end = new Card("end", "x", 1, "1", Optional.empty(), List.of(), "here", Optional.empty());

        assertThatThrownBy(
                        () -> new Card("loose", "y", 1, "1", Optional.empty(), List.of(end), "here", Optional.empty()))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("must have a formula");
    }

    private static double value(WhereFromBook book, String name) {
        return book.card(name).orElseThrow().value();
    }

    private static WhereFromBook demo() {
        TrainRater rater = new TrainRater(BundledBriefs.demo());
        return WhereFromBook.of(rater, rater.rate(DemoTrain.train()));
    }
}
