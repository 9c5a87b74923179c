// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.plugin.sheet.pdf;

import drumfall.plugin.sheet.content.Block;
import drumfall.plugin.sheet.content.Section;
import drumfall.plugin.sheet.content.Sheet;
import java.io.IOException;
import java.io.OutputStream;
import java.util.List;

/** Sets a builder's sheet as a document. */
public final class SheetPages implements Block.Writer<IOException> {
    private static final double INDENT = 16;
    private static final double GAP = 6;

    /** A heading with a table's caption, head and first rows, points. */
    private static final double HEADED = 110;

    private final Column column;
    private final Style body;
    private final Style small;
    private final Style strong;
    private final Style head;
    private final Style title;

    private SheetPages(Booklet booklet) throws IOException {
        Typeface regular = booklet.regular();
        Typeface medium = booklet.medium();
        this.column = new Column(booklet);
        this.body = new Style(regular, 9.5, 13);
        this.small = new Style(regular, 8.5, 11);
        this.strong = new Style(medium, 8.5, 11);
        this.head = new Style(medium, 13, 17);
        this.title = new Style(medium, 22, 27);
    }

    /**
     * Writes a sheet.
     *
     * @param sheet the sheet
     * @param paper what it will be printed on
     * @param out where to
     */
    public static void write(Sheet sheet, Paper paper, OutputStream out) throws IOException {
        try (Booklet booklet = new Booklet("Builder's sheet: " + sheet.title(), "Drumfall " + sheet.version(), paper)) {
            SheetPages pages = new SheetPages(booklet);
            pages.title(sheet);
            for (Section section : sheet.sections()) {
                pages.section(section, booklet);
            }
            pages.column.close();
            pages.foot(sheet, booklet);
            booklet.save(out);
        }
    }

    private void title(Sheet sheet) throws IOException {
        lines("Builder's sheet", small, Ink.GREY, 0);
        lines(sheet.title(), title, Ink.BLACK, 0);
        column.down(2);
        lines(sheet.subtitle(), body, Ink.GREY, 0);
    }

    private void section(Section section, Booklet booklet) throws IOException {
        column.need(HEADED + drawn(section));
        column.skip(16);
        double y = column.down(head.leading());
        column.ink().text(section.title(), head, Ink.BLACK, column.left(), y);
        column.ink().line(column.left(), y - 5, column.right(), y - 5, 0.6, Ink.BLACK);
        column.down(7);
        booklet.mark(section.title());
        for (Block block : section.blocks()) {
            block.write(this);
        }
    }

    /** Height of the drawings that a section begins with, so that its heading does not stand alone. */
    private double drawn(Section section) {
        return section.blocks().stream()
                .filter(Block.Figures.class::isInstance)
                .map(Block.Figures.class::cast)
                .findFirst()
                .map(figures -> new FigureSetter(column, small, figures.inARow()).firstRow(figures.drawings()))
                .orElse(0.0);
    }

    private void foot(Sheet sheet, Booklet booklet) throws IOException {
        for (int page = 0; page < booklet.pages(); page++) {
            try (Ink ink = booklet.again(page)) {
                double y = 11 * Paper.POINTS;
                ink.line(column.left(), y + 12, column.right(), y + 12, 0.4, Ink.PALE);
                ink.text(shortened(sheet.title()), small, Ink.GREY, column.left(), y);
                ink.textRight("Page " + (page + 1) + " of " + booklet.pages(), small, Ink.GREY, column.right(), y);
            }
        }
    }

    private String shortened(String text) throws IOException {
        List<String> fitting = Lines.of(text, small, column.width() - 80);
        return fitting.size() > 1 ? fitting.get(0) + " \u2026" : fitting.get(0);
    }

    private void lines(String text, Style style, java.awt.Color colour, double indent) throws IOException {
        for (String line : Lines.of(text, style, column.width() - indent)) {
            column.need(style.leading());
            column.ink().text(line, style, colour, column.left() + indent, column.down(style.leading()));
        }
    }

    @Override
    public void paragraph(Block.Paragraph paragraph) throws IOException {
        column.skip(GAP);
        lines(paragraph.text(), body, Ink.BLACK, 0);
    }

    @Override
    public void listing(Block.Listing listing) throws IOException {
        int number = 0;
        for (String item : listing.items()) {
            number++;
            column.skip(GAP / 2);
            List<String> wrapped = Lines.of(item, body, column.width() - INDENT);
            // No item is torn apart: all of them are short.
            column.need(wrapped.size() * body.leading());
            String mark = listing.ordered() ? number + "." : "\u2022";
            column.ink().text(mark, body, Ink.GREY, column.left(), column.down(0) - body.leading());
            lines(item, body, Ink.BLACK, INDENT);
        }
    }

    @Override
    public void table(Block.Table table) throws IOException {
        column.skip(GAP);
        new TableSetter(column, small, strong).set(table);
    }

    @Override
    public void figures(Block.Figures figures) throws IOException {
        column.skip(GAP);
        new FigureSetter(column, small, figures.inARow()).set(figures.drawings());
    }
}
