// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.plugin.sheet.pdf;

import drumfall.plugin.sheet.content.Block;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;

/** Sets a table; its head is repeated on every page, and no row is torn apart. */
final class TableSetter {
    private static final double PAD = 3;
    private static final double GUTTER = 14;

    private final Column column;
    private final Style cell;
    private final Style strong;

    TableSetter(Column column, Style cell, Style strong) {
        this.column = column;
        this.cell = cell;
        this.strong = strong;
    }

    void set(Block.Table table) throws IOException {
        List<String> heads = table.columns().stream().map(Block.Column::head).toList();
        double headHeight = height(heads, table, strong);
        double first = table.rows().isEmpty() ? 0 : height(table.rows().get(0), table, cell);
        column.need(strong.leading() + headHeight + first);
        column.ink().text(table.caption(), cell, Ink.GREY, column.left(), column.down(cell.leading()));
        column.down(2);
        head(heads, table);
        for (List<String> row : table.rows()) {
            if (column.need(height(row, table, cell))) {
                head(heads, table);
            }
            row(row, table, cell);
            rule(0.3);
        }
    }

    private void head(List<String> heads, Block.Table table) throws IOException {
        row(heads, table, strong);
        rule(0.8);
    }

    private void rule(double width) throws IOException {
        double y = column.down(0);
        column.ink().line(column.left(), y, column.right(), y, width, width > 0.5 ? Ink.BLACK : Ink.PALE);
    }

    private void row(List<String> cells, Block.Table table, Style style) throws IOException {
        double top = column.down(0);
        double height = height(cells, table, style);
        List<List<String>> wrapped = wrapped(cells, table, style);
        double x = column.left();
        for (int i = 0; i < cells.size(); i++) {
            double width = width(table, i);
            double y = top - PAD;
            for (String line : wrapped.get(i)) {
                y -= style.leading();
                double base = y + style.leading() - style.size();
                if (table.columns().get(i).numbers()) {
                    column.ink().textRight(line, style, Ink.BLACK, x + width - inner(table, i), base);
                } else {
                    column.ink().text(line, style, Ink.BLACK, x, base);
                }
            }
            x += width;
        }
        column.down(height);
    }

    /** The last column ends at the edge, every other leaves a gutter to its neighbour. */
    private static double inner(Block.Table table, int index) {
        return index == table.columns().size() - 1 ? 0 : GUTTER;
    }

    private double height(List<String> cells, Block.Table table, Style style) throws IOException {
        int most =
                wrapped(cells, table, style).stream().mapToInt(List::size).max().orElse(1);
        return most * style.leading() + 2 * PAD;
    }

    private List<List<String>> wrapped(List<String> cells, Block.Table table, Style style) throws IOException {
        List<List<String>> wrapped = new ArrayList<>();
        for (int i = 0; i < cells.size(); i++) {
            wrapped.add(Lines.of(cells.get(i), style, width(table, i) - inner(table, i)));
        }
        return wrapped;
    }

    private double width(Block.Table table, int index) {
        double all = table.columns().stream().mapToDouble(Block.Column::share).sum();
        return column.width() * table.columns().get(index).share() / all;
    }
}
