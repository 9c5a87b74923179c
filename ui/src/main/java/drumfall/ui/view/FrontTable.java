// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.view;

import drumfall.solver.rating.Rating;
import drumfall.solver.train.Train;
import drumfall.ui.presenter.FrontColumn;
import drumfall.ui.presenter.ShownFigure;
import drumfall.ui.presenter.Texts;
import drumfall.ui.presenter.Workspace;
import drumfall.ui.view.look.FigureLabel;
import drumfall.ui.view.look.Look;
import drumfall.ui.view.look.Parts;
import java.awt.Component;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.Optional;
import javax.swing.BorderFactory;
import javax.swing.JTable;
import javax.swing.ListSelectionModel;
import javax.swing.table.DefaultTableCellRenderer;
import javax.swing.table.TableCellRenderer;

/** The front as a table: one selection with the scatter, sorted by any column. */
final class FrontTable extends JTable {
    private final transient Workspace workspace;
    private final FrontRows rows;
    private boolean following;
    private boolean sized;

    FrontTable(Workspace workspace, FrontRows rows) {
        super(rows);
        this.workspace = workspace;
        this.rows = rows;
        setName("front.table");
        Parts.named(this, Texts.of("front.table.name"));
        setAutoCreateRowSorter(true);
        setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        setDefaultRenderer(Double.class, new FigureCell());
        setDefaultRenderer(String.class, new TrainCell());
        getSelectionModel().addListSelectionListener(event -> {
            if (!event.getValueIsAdjusting() && !following && getSelectedRow() >= 0) {
                workspace.choose(rowTrain(getSelectedRow()));
            }
        });
        MouseAdapter pointer = new MouseAdapter() {
            @Override
            public void mouseMoved(MouseEvent event) {
                int row = rowAtPoint(event.getPoint());
                workspace.pointAt(row < 0 ? Optional.empty() : Optional.of(rowTrain(row)));
            }

            @Override
            public void mouseExited(MouseEvent event) {
                workspace.pointAt(Optional.empty());
            }
        };
        addMouseListener(pointer);
        addMouseMotionListener(pointer);
    }

    private Train rowTrain(int viewRow) {
        return rows.ratings().get(convertRowIndexToModel(viewRow)).train();
    }

    /** Selects the chosen train's row and brings it into view. */
    void follow(Optional<Train> chosen) {
        following = true;
        int index = indexOf(chosen);
        if (index < 0) {
            clearSelection();
        } else {
            int row = convertRowIndexToView(index);
            if (row != getSelectedRow()) {
                setRowSelectionInterval(row, row);
                scrollRectToVisible(getCellRect(row, 0, true));
            }
        }
        following = false;
    }

    /** Trains were added or the columns changed: the selection stays on the chosen train. */
    void structure(Runnable change, Optional<Train> chosen) {
        following = true;
        int columns = getColumnCount();
        change.run();
        following = false;
        if (columns != getColumnCount() || !sized) {
            sized = true;
            widths();
        }
        follow(chosen);
    }

    private void widths() {
        for (int i = 0; i < getColumnCount(); i++) {
            boolean train = convertColumnIndexToModel(i) == rows.columns().size();
            getColumnModel().getColumn(i).setPreferredWidth(Look.scaled(train ? 330 : 88));
        }
    }

    private int indexOf(Optional<Train> chosen) {
        for (int i = 0; i < rows.ratings().size(); i++) {
            Rating rating = rows.ratings().get(i);
            if (chosen.isPresent() && rating.train().equals(chosen.get())) {
                return i;
            }
        }
        return -1;
    }

    /** A figure in its cell. */
    private final class FigureCell implements TableCellRenderer {
        private final FigureLabel label = new FigureLabel(true);

        @Override
        public Component getTableCellRendererComponent(
                JTable table, Object value, boolean selected, boolean focused, int row, int column) {
            FrontColumn shown = rows.columns().get(convertColumnIndexToModel(column));
            label.setOpaque(true);
            label.setFont(table.getFont());
            label.setBorder(BorderFactory.createEmptyBorder(0, Look.scaled(8), 0, Look.scaled(8)));
            label.setBackground(selected ? table.getSelectionBackground() : table.getBackground());
            label.setForeground(table.getForeground());
            label.setFigure(value instanceof Double figure ? shown.shown(figure, workspace.units()) : ShownFigure.NONE);
            return label;
        }
    }

    /** The train in its cell. */
    private static final class TrainCell extends DefaultTableCellRenderer {
        @Override
        public Component getTableCellRendererComponent(
                JTable table, Object value, boolean selected, boolean focused, int row, int column) {
            super.getTableCellRendererComponent(table, value, selected, focused, row, column);
            setToolTipText(String.valueOf(value));
            return this;
        }
    }
}
