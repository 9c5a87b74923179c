// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.presenter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.node.BooleanNode;
import com.fasterxml.jackson.databind.node.TextNode;
import drumfall.solver.brief.Brief;
import drumfall.solver.brief.BundledBriefs;
import drumfall.solver.kit.Kit;
import drumfall.solver.making.BeforePlate.Level;
import drumfall.solver.quantity.UnitSystem;
import drumfall.solver.rating.TrainRater;
import drumfall.solver.train.Reeving;
import drumfall.solver.train.Train;
import drumfall.ui.design.BriefDraft;
import drumfall.ui.presenter.PlacedFront.Kind;
import drumfall.ui.presenter.PlacedFront.Piece;
import drumfall.ui.presenter.PlacedState.Seen;
import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PlacedFrontTest {
    /** Millimetres; sums of decimal sizes. */
    private static final double EXACT = 1e-6;

    private static final Seen SEEN = PlacedTrains.seen(BundledBriefs.demo(), PlacedTrains.weekly());
    private static final PlacedFront FRONT = SEEN.front();
    private static final PlacedWords WORDS =
            new PlacedWords(SEEN.layout().need().parts(), UnitSystem.METRIC);

    private static Piece piece(String name) {
        return FRONT.pieces().stream()
                .filter(piece -> piece.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    // By hand for the demonstration: a gap and an end shake of 1.8 mm, the cannon pinion 5 mm thick, 1.8 mm, the hour
    // wheel
    // 5 mm: 13.6 mm. The square stands 1 mm before it and is 17 mm high with its collar; 1.8 mm before it passes the
    // hour
    // hand: 33.4 mm. Hour hand and collar 4.8 mm, a gap of 1 mm, minute hand and collar 4.8 mm. Hands of 100 mm and 70
    // mm are
    // common practice, no source.
    @ParameterizedTest
    @CsvSource({"hour-hand, 70, 33.4, 38.2, 1", "minute-hand, 100, 39.2, 44, 1"})
    void hands_stand_where_they_are_made_to_stand(String name, double length, double from, double to, int arbor) {
        Piece hand = piece(name);

        assertThat(hand.kind()).isEqualTo(Kind.HAND);
        assertThat(hand.reach()).isCloseTo(length, within(EXACT));
        assertThat(hand.from()).isCloseTo(from, within(EXACT));
        assertThat(hand.to()).isCloseTo(to, within(EXACT));
        assertThat(hand.arbor()).isEqualTo(arbor);
    }

    @Test
    void the_dial_has_its_room_between_hour_wheel_and_hour_hand() {
        PlacedFront.DialSpan dial = FRONT.dial().orElseThrow();

        assertThat(dial.from()).isCloseTo(13.6, within(EXACT));
        assertThat(dial.to()).isCloseTo(33.4, within(EXACT));
        // The clutch's fingers are 6 mm long and end it.
        assertThat(FRONT.room()).isCloseTo(50, within(EXACT));
    }

    /** The window and what is exported say the same. */
    @Test
    void every_level_of_the_kit_on_an_arbor_is_shown() {
        TrainRater rater = new TrainRater(BundledBriefs.demo());
        Kit kit = Kit.of(rater, rater.rate(PlacedTrains.weekly()), Optional.of(SEEN.layout()));
        List<Level> levels = kit.beforePlate().orElseThrow().levels().stream()
                .filter(level -> !level.part().startsWith("minute-wheel"))
                .toList();

        assertThat(levels).isNotEmpty().allSatisfy(level -> {
            assertThat(piece(level.part()).from()).isCloseTo(1e3 * level.from(), within(EXACT));
            assertThat(piece(level.part()).to()).isCloseTo(1e3 * level.to(), within(EXACT));
        });
        assertThat(FRONT.pieces().stream().filter(piece -> !piece.name().isEmpty()))
                .hasSameSizeAs(levels);
    }

    // Rods of 4 mm and 3 mm, which go a gap of 1 mm beyond the hour wheel's 13.6 mm and then as far as they carry
    // something:
    // the drum's the square's 17 mm, the centre's the hour wheel's pipe of 24.6 mm, a gap, hand, collar and fingers.
    @ParameterizedTest
    @CsvSource({"0, 4, 31.6", "1, 3, 51"})
    void the_rods_of_drum_and_centre_reach_before_the_plate(int arbor, double diameter, double to) {
        Piece rod = FRONT.pieces().stream()
                .filter(piece -> piece.kind() == Kind.ROD && piece.arbor() == arbor)
                .findFirst()
                .orElseThrow();

        assertThat(rod.across()).isCloseTo(diameter, within(EXACT));
        assertThat(rod.to()).isCloseTo(to, within(EXACT));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "minute-hand | minute hand: 100 mm long, 39.2 mm to 44 mm before the front plate",
                "hour-hand | hour hand: 70 mm long, 33.4 mm to 38.2 mm before the front plate"
            })
    void a_hand_is_named_with_its_sizes(String name, String words) {
        assertThat(WORDS.piece(piece(name))).isEqualTo(words);
    }

    @Test
    void a_seconds_hand_has_its_rod_alone_and_that_is_said() {
        Brief brief = BriefDraft.of(BundledBriefs.demo())
                .with("/beat/secondsHand", BooleanNode.TRUE)
                .with("/frame/height", TextNode.valueOf("500 mm"))
                .brief()
                .orElseThrow();
        // 64/8 times 60/8 are 60 turns an hour.
        Train train = new Train(
                List.of(MeshTrains.mesh(85, 10, "1.5"), MeshTrains.mesh(64, 8, "1.25"), MeshTrains.mesh(60, 8, "1")),
                1,
                BigFraction.of(36, 1000),
                Reeving.DOUBLE,
                30);
        PlacedFront front = PlacedTrains.seen(brief, train).front();

        assertThat(front.pieces().stream().filter(piece -> piece.kind() == Kind.SECONDS_ROD))
                .singleElement()
                .satisfies(rod -> {
                    assertThat(rod.arbor()).isEqualTo(3);
                    assertThat(WORDS.piece(rod))
                            .startsWith("rod of arbor 4 for the seconds hand, which is not printed: ");
                });
        assertThat(FRONT.pieces()).noneMatch(piece -> piece.kind() == Kind.SECONDS_ROD);
    }

    @Test
    void without_motion_work_there_is_the_square_but_neither_hand_nor_room_for_a_dial() {
        Brief brief = BriefDraft.of(BundledBriefs.demo())
                .with("/hands/motionWork", BooleanNode.FALSE)
                .brief()
                .orElseThrow();
        PlacedFront front = PlacedTrains.seen(brief, PlacedTrains.weekly()).front();

        assertThat(front.dial()).isEmpty();
        assertThat(front.pieces()).extracting(Piece::name).contains("arbor-1-winding-square");
        assertThat(front.pieces()).noneMatch(piece -> piece.kind() == Kind.HAND);
    }

    /** A hub wall of 1.2 mm is not two extrusions of a nozzle of 0.8 mm. */
    @Test
    void what_cannot_be_made_is_told_and_nothing_is_drawn() {
        Brief brief = BriefDraft.of(BundledBriefs.demo())
                .with("/printer/nozzle", TextNode.valueOf("0.8 mm"))
                .brief()
                .orElseThrow();
        TrainRater rater = new TrainRater(brief);
        PlacedFront front = PlacedFront.of(rater, rater.rate(PlacedTrains.weekly()), SEEN.layout());

        assertThat(front.refusal().orElseThrow()).contains("mm");
        assertThat(front.pieces()).isEmpty();
        assertThat(front.dial()).isEmpty();
    }
}
