// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.plugin.sheet.pdf;

import drumfall.plugin.sheet.draw.Drawing;
import java.io.IOException;
import java.io.OutputStream;
import java.util.List;

/** Sets drawings at their true size, over several pages where they are larger than one. */
public final class TemplatePages {
    /** Length of the line that every page is checked by, mm. */
    static final double SCALE_LINE = 100;

    private static final double SIDE = 14;
    private static final double FOOT = 30;
    private static final double TOP = 24;
    private static final double OVERLAP = 10;
    private static final double MARK = 4;
    private static final double TICK = 10;

    private final Booklet booklet;
    private final Style small;
    private final Style head;

    private TemplatePages(Booklet booklet) throws IOException {
        this.booklet = booklet;
        this.small = new Style(booklet.regular(), 8.5, 11);
        this.head = new Style(booklet.medium(), 12, 15);
    }

    /**
     * Writes templates.
     *
     * @param title what the maker calls the design
     * @param version of the program
     * @param drawings at least one
     * @param paper what they will be printed on
     * @param out where to
     */
    public static void write(String title, String version, List<Drawing> drawings, Paper paper, OutputStream out)
            throws IOException {
        try (Booklet booklet = new Booklet("Paper templates: " + title, "Drumfall " + version, paper)) {
            TemplatePages pages = new TemplatePages(booklet);
            for (Drawing drawing : drawings) {
                pages.drawing(drawing);
            }
            booklet.save(out);
        }
    }

    private void drawing(Drawing drawing) throws IOException {
        double width = booklet.paper().width() / Paper.POINTS - 2 * SIDE;
        double height = booklet.paper().height() / Paper.POINTS - FOOT - TOP;
        Tiles tiles = new Tiles(drawing.box(), width, height, OVERLAP);
        for (int row = 0; row < tiles.rows(); row++) {
            for (int column = 0; column < tiles.columns(); column++) {
                try (Ink ink = booklet.page()) {
                    if (row == 0 && column == 0) {
                        booklet.mark(drawing.title());
                    }
                    head(ink, drawing, tiles, row, column);
                    window(ink, drawing, tiles, row, column);
                    scale(ink);
                }
            }
        }
    }

    private void head(Ink ink, Drawing drawing, Tiles tiles, int row, int column) throws IOException {
        double y = booklet.paper().height() - pt(15);
        ink.text(drawing.title(), head, Ink.BLACK, pt(SIDE), y);
        int count = tiles.rows() * tiles.columns();
        if (count > 1) {
            int number = row * tiles.columns() + column + 1;
            ink.textRight(
                    "Sheet " + number + " of " + count + ": row " + (row + 1) + ", column " + (column + 1),
                    small,
                    Ink.BLACK,
                    booklet.paper().width() - pt(SIDE),
                    y);
            ink.text(
                    "Cut along the frame, or fold it back; lay sheets over each other by " + (int) OVERLAP
                            + " mm until the crosses meet.",
                    small,
                    Ink.GREY,
                    pt(SIDE),
                    y - 13);
        }
    }

    private void window(Ink ink, Drawing drawing, Tiles tiles, int row, int column) throws IOException {
        double x = pt(SIDE);
        double y = pt(FOOT);
        ink.clip(x, y, pt(tiles.width()), pt(tiles.height()));
        double originX = x - pt(tiles.left(column));
        double originY = y - pt(tiles.bottom(row));
        ink.drawing(drawing, originX, originY, Paper.POINTS, 0.35);
        ink.line(originX - pt(MARK), originY, originX + pt(MARK), originY, 0.35, Ink.GREY);
        ink.line(originX, originY - pt(MARK), originX, originY + pt(MARK), 0.35, Ink.GREY);
        ink.restore();
        if (tiles.rows() * tiles.columns() > 1) {
            ink.frame(x, y, pt(tiles.width()), pt(tiles.height()), 0.3, Ink.GREY);
            crosses(ink, tiles, row, column);
        }
    }

    /** Crosses in the middle of every overlap, which fall on each other when the sheets lie right. */
    private void crosses(Ink ink, Tiles tiles, int row, int column) throws IOException {
        double[] xs = {OVERLAP / 2, tiles.width() - OVERLAP / 2};
        double[] ys = {OVERLAP / 2, tiles.height() - OVERLAP / 2};
        for (int i = 0; i < 2; i++) {
            for (int j = 0; j < 2; j++) {
                boolean beside = i == 0 ? column > 0 : column < tiles.columns() - 1;
                boolean below = j == 0 ? row < tiles.rows() - 1 : row > 0;
                if (beside || below) {
                    cross(ink, pt(SIDE + xs[i]), pt(FOOT + ys[j]));
                }
            }
        }
    }

    private static void cross(Ink ink, double x, double y) throws IOException {
        ink.line(x - pt(MARK), y, x + pt(MARK), y, 0.4, Ink.BLACK);
        ink.line(x, y - pt(MARK), x, y + pt(MARK), 0.4, Ink.BLACK);
    }

    private void scale(Ink ink) throws IOException {
        double x = pt(SIDE);
        double y = pt(17);
        ink.line(x, y, x + pt(SCALE_LINE), y, 0.6, Ink.BLACK);
        for (double at = 0; at <= SCALE_LINE; at += TICK) {
            double half = at == 0 || at == SCALE_LINE ? 2.5 : 1.2;
            ink.line(x + pt(at), y - pt(half), x + pt(at), y + pt(half), 0.5, Ink.BLACK);
        }
        ink.text(
                "This line is " + (int) SCALE_LINE
                        + " mm long. If your print's is not, print at 100 %, not fitted to the page.",
                small,
                Ink.BLACK,
                x,
                y - pt(6.5));
    }

    private static double pt(double millimetres) {
        return millimetres * Paper.POINTS;
    }
}
