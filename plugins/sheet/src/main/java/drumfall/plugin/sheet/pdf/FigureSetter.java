// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.plugin.sheet.pdf;

import drumfall.plugin.sheet.draw.Drawing;
import drumfall.plugin.sheet.draw.Label;
import java.io.IOException;
import java.util.List;

/** Sets drawings in rows, all shrunk alike. */
final class FigureSetter {
    private static final double SPACE = 12;

    private final Column column;
    private final Style caption;
    private final int inARow;

    FigureSetter(Column column, Style caption, int inARow) {
        this.column = column;
        this.caption = caption;
        this.inARow = inARow;
    }

    /** Height of the first row with its captions, points. */
    double firstRow(List<Drawing> drawings) {
        List<Drawing> first = drawings.subList(0, Math.min(inARow, drawings.size()));
        return height(first, scale(drawings));
    }

    private double height(List<Drawing> row, double scale) {
        return tallest(row, scale) + caption.leading() + SPACE;
    }

    private static double tallest(List<Drawing> row, double scale) {
        return row.stream().mapToDouble(drawing -> drawing.box().depth()).max().orElse(0) * scale;
    }

    private double cell() {
        return (column.width() - (inARow - 1) * SPACE) / inARow;
    }

    private double scale(List<Drawing> drawings) {
        double largest = drawings.stream()
                .mapToDouble(
                        drawing -> Math.max(drawing.box().width(), drawing.box().depth()))
                .max()
                .orElse(1);
        return Math.min(cell() / largest, Paper.POINTS);
    }

    void set(List<Drawing> drawings) throws IOException {
        double scale = scale(drawings);
        for (int first = 0; first < drawings.size(); first += inARow) {
            row(drawings.subList(first, Math.min(first + inARow, drawings.size())), scale);
        }
        column.down(4);
    }

    private void row(List<Drawing> row, double scale) throws IOException {
        double cell = cell();
        double tallest = tallest(row, scale);
        column.need(height(row, scale));
        double bottom = column.down(tallest + SPACE / 2);
        for (int i = 0; i < row.size(); i++) {
            Drawing drawing = row.get(i);
            double middle = column.left() + i * (cell + SPACE) + cell / 2;
            double x = middle - scale * (drawing.box().left() + drawing.box().right()) / 2;
            double y = bottom
                    + tallest / 2
                    - scale * (drawing.box().bottom() + drawing.box().top()) / 2;
            column.ink().drawing(drawing, x, y, scale, 0.4);
            for (Label label : drawing.labels()) {
                column.ink().text(label.text(), caption, Ink.BLACK, x + scale * label.x(), y + scale * label.y());
            }
            double width = caption.face().width(drawing.title(), caption.size());
            column.ink().text(drawing.title(), caption, Ink.GREY, middle - width / 2, bottom - caption.leading());
        }
        column.down(caption.leading() + SPACE / 2);
    }
}
