// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.view;

import drumfall.solver.rating.Rating;
import drumfall.solver.rating.TrainRater;
import drumfall.ui.presenter.Front;
import drumfall.ui.presenter.FrontColumn;
import drumfall.ui.presenter.FrontSizes;
import drumfall.ui.presenter.Texts;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.swing.table.AbstractTableModel;

/** The trains of the front as rows, their figures as columns, the train itself last. */
final class FrontRows extends AbstractTableModel {
    private transient List<Rating> ratings = List.of();
    private transient List<FrontColumn> columns = new ArrayList<>();
    private transient Optional<TrainRater> rater = Optional.empty();
    private final transient FrontSizes sizes;

    FrontRows(FrontSizes sizes) {
        this.sizes = sizes;
        sizes.listen(this::sized);
    }

    /** A figure is there that the rows had none of. */
    private void sized() {
        if (!ratings.isEmpty() && columns.stream().anyMatch(FrontColumn::isOfPlaces)) {
            fireTableRowsUpdated(0, ratings.size() - 1);
        }
    }

    void show(Optional<Front> front) {
        List<Rating> next = front.map(Front::ratings).orElse(List.of());
        rater = front.map(Front::brief)
                .map(brief ->
                        rater.filter(known -> known.brief().equals(brief)).orElseGet(() -> new TrainRater(brief)));
        if (!next.equals(ratings)) {
            ratings = next;
            fireTableDataChanged();
        }
    }

    void show(List<FrontColumn> shown) {
        columns = List.copyOf(shown);
        fireTableStructureChanged();
    }

    List<FrontColumn> columns() {
        return columns;
    }

    List<Rating> ratings() {
        return ratings;
    }

    double value(Rating rating, FrontColumn column) {
        return column.value(rating, rater.orElseThrow(), sizes.of(rating.train()));
    }

    @Override
    public int getRowCount() {
        return ratings.size();
    }

    @Override
    public int getColumnCount() {
        return columns.size() + 1;
    }

    @Override
    public String getColumnName(int column) {
        return column < columns.size() ? columns.get(column).title() : Texts.of("front.train");
    }

    @Override
    public Class<?> getColumnClass(int column) {
        return column < columns.size() ? Double.class : String.class;
    }

    @Override
    public Object getValueAt(int row, int column) {
        Rating rating = ratings.get(row);
        return column < columns.size()
                ? (Object) value(rating, columns.get(column))
                : rating.train().toString();
    }
}
