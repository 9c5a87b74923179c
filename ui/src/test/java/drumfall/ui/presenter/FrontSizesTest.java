// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.presenter;

import static org.assertj.core.api.Assertions.assertThat;

import drumfall.solver.layout.LayoutNeed;
import drumfall.solver.layout.MovementSize;
import drumfall.solver.quantity.UnitSystem;
import drumfall.solver.rating.Rating;
import drumfall.solver.rating.TrainRater;
import drumfall.solver.train.Train;
import drumfall.ui.work.LatestDesk;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Sizes of the trains of the front, placed one after the other while somebody looks at them. */
class FrontSizesTest {
    private final Turns turns = new Turns();
    private final Workspace workspace = turns.workspace(SmallBriefs.small());
    private final AtomicInteger placed = new AtomicInteger();

    private FrontSizes sizes(Optional<LayoutNeed> need) {
        return new FrontSizes(
                workspace,
                (brief, train) -> {
                    placed.incrementAndGet();
                    return need;
                },
                new LatestDesk(turns, "sizes"));
    }

    private Train first() {
        return workspace.front().orElseThrow().ratings().get(0).train();
    }

    @Test
    void nothing_is_placed_while_nobody_looks() {
        FrontSizes sizes = sizes(Optional.of(PlacedTrains.need()));
        turns.solve(workspace);
        assertThat(placed).hasValue(0);
        assertThat(sizes.of(first())).isEmpty();
    }

    @Test
    void every_train_of_the_front_gets_its_size_and_is_placed_once() {
        FrontSizes sizes = sizes(Optional.of(PlacedTrains.need()));
        turns.solve(workspace);
        AtomicInteger told = new AtomicInteger();
        sizes.listen(told::incrementAndGet);
        int trains = workspace.front().orElseThrow().ratings().size();

        sizes.want(true);
        turns.until(() -> told.get() == trains);
        sizes.want(false);
        sizes.want(true);

        MovementSize expected = PlacedTrains.layout().size();
        assertThat(workspace.front().orElseThrow().ratings())
                .isNotEmpty()
                .allSatisfy(rating -> assertThat(sizes.of(rating.train())).contains(expected));
        assertThat(placed).hasValue(trains);
    }

    @Test
    void a_train_without_a_place_has_no_size() {
        FrontSizes sizes = sizes(Optional.empty());
        turns.solve(workspace);
        AtomicInteger told = new AtomicInteger();
        sizes.listen(told::incrementAndGet);
        sizes.want(true);
        turns.until(() -> told.get() > 0);
        assertThat(sizes.of(first())).isEmpty();
    }

    /** Figures in whole nanometres, so that a metre has nine decimals; areas to the last bit. */
    @ParameterizedTest
    @EnumSource(
            value = FrontColumn.class,
            names = {"MOVEMENT_HEIGHT", "MOVEMENT_WIDTH", "MOVEMENT_DEPTH", "PLATE_AREA"})
    void a_column_of_places_shows_the_size_and_nothing_where_there_is_none(FrontColumn column) {
        turns.solve(workspace);
        Rating rating = workspace.front().orElseThrow().ratings().get(0);
        TrainRater rater = new TrainRater(workspace.brief());
        MovementSize size = PlacedTrains.layout().size();
        double expected = switch (column) {
            case MOVEMENT_HEIGHT -> size.height() * 1e-9;
            case MOVEMENT_WIDTH -> size.width() * 1e-9;
            case MOVEMENT_DEPTH -> size.depth() * 1e-9;
            default -> size.plateArea();
        };
        assertThat(column.isOfPlaces()).isTrue();
        assertThat(column.value(rating, rater, Optional.of(size))).isEqualTo(expected);
        assertThat(column.shown(column.value(rating, rater, Optional.empty()), UnitSystem.METRIC))
                .isEqualTo(ShownFigure.NONE);
        assertThat(FrontColumn.usual(workspace.brief())).doesNotContain(column);
    }

    @ParameterizedTest
    @EnumSource(PlacedSize.Figure.class)
    void a_figure_of_the_size_stands_on_its_card(PlacedSize.Figure figure) {
        PlacedSheet sheet = PlacedTrains.sheet(turns, workspace);
        PlacedSize size = sheet.size().orElseThrow();
        WhereCard card = size.card(figure, UnitSystem.METRIC);
        assertThat(card.title()).isEqualTo(figure.title());
        assertThat(card.value()).isEqualTo(size.value(figure, UnitSystem.METRIC));
        assertThat(card.inputs()).isNotEmpty();
    }
}
